//! Two bottles that must never meet, and a bar between them.

use crate::page::shared::Shared;
use crate::practice::{Bottles, Fact};
use crate::words::Argument;
use yew::prelude::*;

const BOTTLE: &str = "v-26h24v26c20 8 26 20 26 36v56h-76v-56c0 -16 6 -28 26 -36";

/// The bottles with a number each; the names stand under them, since a name is as long as it is.
pub fn bottles(shared: &Shared, drawn: &Bottles) -> Html {
    let names = drawn.names.each_ref().map(|fact| match fact {
        Fact::Key(key) => shared.say(key),
        Fact::Text(text) => text.clone(),
        Fact::Entry(entry) => shared.words.entry(entry),
        Fact::Count(count) => count.to_string(),
        // No bottle is called by what may be in it.
        Fact::Window(..) => String::new(),
    });
    let [a, b] = names.each_ref().map(|name| Argument::text(&**name));
    let bottle = |left: f64, number: u32| {
        html! {
            <>
                <path class="vessel" d={format!("M{left} 40{BOTTLE}Z")} />
                <text x={(left + 12.0).to_string()} y="100" text-anchor="middle" font-weight="700">{ number }</text>
            </>
        }
    };
    html! {
        <>
            <svg class="drawing" role="img" aria-label={shared.tell("practice-drawing-bottles", &[("a", a), ("b", b)])} viewBox="0 0 280 140">
                { bottle(58.0, 1) }
                { bottle(198.0, 2) }
                <path class="line" d="M140 8V134M122 52l36 36M158 52l-36 36" />
            </svg>
            <ol>{ for names.iter().map(|name| html! { <li>{ name }</li> }) }</ol>
        </>
    }
}
