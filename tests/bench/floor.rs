//! The least that a page made with the same tools weighs: a counter, compiled as the page is.

#![cfg(target_arch = "wasm32")]

use wasm_bindgen::prelude::wasm_bindgen;
use yew::prelude::*;

#[component]
fn Counter() -> Html {
    let count = use_state(|| 0);
    let onclick = {
        let count = count.clone();
        move |_: MouseEvent| count.set(*count + 1)
    };
    html! { <button {onclick}>{ *count }</button> }
}

/// Puts the counter into the document.
#[wasm_bindgen]
pub fn start() {
    yew::Renderer::<Counter>::new().render();
}
