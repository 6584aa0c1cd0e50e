//! Printing one part of a view, and nothing else.

use crate::page::shared::Shared;
use gloo::utils::{document, window};
use yew::prelude::*;

/// What the style sheet leaves on the paper: an element with this attribute, and all that it holds.
const PRINTED: &str = "data-printed";

/// A button named `name`, which is also the key of its words. It prints the element whose `data-part` is `part`.
pub fn print_part(shared: &Shared, name: &'static str, part: &'static str) -> Html {
    let onclick = move |_: MouseEvent| {
        let found = document().query_selector(&format!("[data-part={part}]")).ok().flatten();
        // The part alone is printed while this stands; where it cannot be set the whole view is.
        let marked = found.filter(|found| found.set_attribute(PRINTED, "").is_ok());
        // Where a browser has no printer the button does nothing, and nothing is lost.
        let _ = window().print();
        if let Some(found) = marked {
            let _ = found.remove_attribute(PRINTED);
        }
    };
    html! { <button type="button" {name} {onclick}>{ shared.say(name) }</button> }
}
