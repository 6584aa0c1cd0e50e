//! The amount in one line at the foot of a phone's screen, while the question is typed.

use crate::page::shared::use_shared;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// What the line says.
#[derive(Properties, PartialEq)]
pub struct GlanceProps {
    /// The amount, or that there is none.
    pub text: String,
}

/// Leads to the answer.
#[component]
pub fn Glance(props: &GlanceProps) -> Html {
    let shared = use_shared();
    let onclick = |event: MouseEvent| {
        // The fragment of the address names the view and must stay.
        event.prevent_default();
        let answer = gloo::utils::document().get_element_by_id("answer");
        if let Some(answer) = answer.and_then(|answer| answer.dyn_into::<HtmlElement>().ok()) {
            answer.scroll_into_view();
            // An element that takes no focus is scrolled to all the same.
            let _ = answer.focus();
        }
    };
    html! {
        <a class="glance" href="#answer" {onclick}>
            <span>{ shared.say("glance") }</span>{ " " }<span>{ &props.text }</span>
        </a>
    }
}
