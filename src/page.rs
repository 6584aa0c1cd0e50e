//! The page: views, components and what the browser keeps. It draws answers and computes none.

mod app;
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

use gloo::timers::callback::Timeout;

/// Puts the page into the document.
///
/// # Panics
/// When the document lacks the element that `index.html` gives it.
pub fn mount() {
    let root = gloo::utils::document().get_element_by_id("app").expect("index.html has the element #app");
    // A task of its own: what the browser does to start the program is one already.
    Timeout::new(0, || drop(yew::Renderer::<app::App>::with_root(root).render())).forget();
}
