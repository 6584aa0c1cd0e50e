//! Playing with the numbers: a cup and a tank, and the film on a floor, drawn from what is typed.

mod fields;
mod film;
mod mix;

use super::Props;
use crate::page::components::{warnings, workings};
use yew::prelude::*;

/// The part. A mistake in one half leaves the other half standing.
#[component]
pub fn NumbersPart(props: &Props) -> Html {
    let shared = &props.shared;
    let numbers = fields::shown(shared, &props.held.desk.numbers);
    let seen = numbers.work(shared.system(), shared.marks());
    let outcome = &seen.outcome;
    let none = || html! { <p class="unknown" data-none="">{ shared.say("numbers-none") }</p> };
    html! {
        <>
            <p>{ shared.say("numbers-about") }</p>
            <section aria-labelledby="numbers-mix">
                <h2 id="numbers-mix">{ shared.say("numbers-mix") }</h2>
                { fields::mix(shared, &numbers, outcome) }
                { warnings(shared, &outcome.answer.remarks) }
                if let Some(drawn) = &seen.mix { { mix::mix(shared, &outcome.answer, drawn) } }
                if seen.mix.is_none() && outcome.answer.remarks.is_empty() { { none() } }
            </section>
            <section aria-labelledby="numbers-film">
                <h2 id="numbers-film">{ shared.say("numbers-film") }</h2>
                { fields::film(shared, &numbers, outcome) }
                if let Some(drawn) = &seen.film { { film::film(shared, &outcome.answer, drawn) } } else { { none() } }
            </section>
            { workings(shared, &outcome.answer.steps) }
            <p class="hint">{ shared.say("practice-governs") }</p>
        </>
    }
}
