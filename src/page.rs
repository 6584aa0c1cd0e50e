//! The page: views, components and what the browser keeps. It draws answers and computes none.

mod app;
mod aside;
mod asked;
mod carried;
mod components;
mod day;
mod drawing;
mod editors;
mod focus;
mod keep;
mod language;
mod log;
mod pictogram;
mod place;
mod rest;
mod shared;
mod state;
mod views;

use app::{App, Opening};
use gloo::timers::future::TimeoutFuture;
use std::rc::Rc;

/// Puts the page into the document.
pub fn mount() {
    yew::platform::spawn_local(open());
}

/// Opens it in tasks of their own, the first after the one in which the browser started the program: between them it
/// draws, and listens.
async fn open() {
    let root = gloo::utils::document().get_element_by_id("app").expect("index.html has the element #app");
    TimeoutFuture::new(0).await;
    let found = Rc::new(keep::store::open());
    keep::tabs::begin();
    let typed = state::first(&found);
    TimeoutFuture::new(0).await;
    let words = language::first_words();
    TimeoutFuture::new(0).await;
    if place::now() == place::Place::Fill {
        // Fill finds its answer worked out.
        asked::of(&typed, words.marks());
        TimeoutFuture::new(0).await;
    }
    keep::behind_frame::finish_before_print();
    yew::Renderer::<App>::with_root_and_props(root, Opening { found, typed, words }).render();
}
