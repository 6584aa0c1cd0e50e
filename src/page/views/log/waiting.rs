//! What the browser has not confirmed: it stays on the screen with why, and what can be done.

use super::fields::press;
use super::told;
use crate::page::log::{self, Held, Waiting};
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// Acts that wait; nothing where none does.
pub fn waiting(shared: &Shared, held: &Held) -> Html {
    let refused: Vec<&Waiting> = held.waiting.iter().filter(|one| one.trouble.is_some()).collect();
    if refused.is_empty() {
        return Html::default();
    }
    let n = refused.len() as f64;
    html! {
        <section class="troubles" role="alert">
            <h2>{ shared.tell("log-not-kept", &[("n", Argument::number(n, shared.words.number(n)))]) }</h2>
            <ul class="plain">{ for refused.into_iter().map(|one| row(shared, one)) }</ul>
            <div class="buttons">{ press(shared, "log-waiting-save", log::save_waiting) }</div>
        </section>
    }
}

fn row(shared: &Shared, one: &Waiting) -> Html {
    let key = one.key;
    html! {
        <li>
            <p>{ for one.trouble.as_ref().map(|trouble| told::trouble(shared, trouble)) }</p>
            if !one.line.is_empty() {
                <p>{ told::of_line(shared, &one.line) }</p>
            }
            <div class="buttons">
                { press(shared, "log-again", move || log::again(key)) }
                { press(shared, "log-let-go", move || log::let_go(key)) }
            </div>
        </li>
    }
}
