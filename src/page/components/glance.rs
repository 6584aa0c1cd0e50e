//! The amount in one line at the head of a phone's screen, while the question is typed: a keyboard on the screen would
//! cover its foot.

use crate::page::focus;
use crate::page::shared::Shared;
use yew::prelude::*;

/// Leads to the answer.
pub fn glance(shared: &Shared, text: String) -> Html {
    let onclick = |event: MouseEvent| {
        // The fragment of the address names the view and must stay.
        event.prevent_default();
        focus::on("answer");
    };
    let long = (text.chars().count() > 12).then_some("long");
    html! {
        <a class="glance" href="#answer" {onclick}>
            <span>{ shared.say("glance") }</span>{ " " }<span class={long}>{ text }</span>
        </a>
    }
}
