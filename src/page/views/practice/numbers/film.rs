//! The film on a tile, and the table of its numbers.

use crate::answer::Answer;
use crate::form::names;
use crate::page::components::facts;
use crate::page::drawing::film_on_tile;
use crate::page::shared::Shared;
use crate::practice::Film;
use crate::words::Argument;
use yew::prelude::*;

const FACTS: &[&str] = &[
    names::NUMBERS_RATE,
    names::NUMBERS_THICKNESS,
    names::NUMBERS_WEIGHT,
    names::NUMBERS_TILE,
    names::NUMBERS_SHEETS,
];

/// The drawing, its scale, and what stands behind the sheet and the weight.
pub fn film(shared: &Shared, answer: &Answer, drawn: &Film) -> Html {
    let (drawing, times) = film_on_tile(shared, drawn);
    let times = Argument::text(shared.words.number(times));
    html! {
        <>
            <figure class="cup">
                { drawing }
                <figcaption>{ shared.tell("numbers-film-scale", &[("times", times)]) }</figcaption>
            </figure>
            { facts(shared, answer, FACTS) }
            <p class="hint">{ shared.say("numbers-film-assumed") }</p>
        </>
    }
}
