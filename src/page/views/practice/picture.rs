//! The numbers of a fill as a picture, and in words beside it.

use crate::number;
use crate::page::drawing::cup_and_tank;
use crate::page::shared::Shared;
use crate::practice::{Exercise, Picture};
use crate::units::unit;
use crate::words::Argument;
use yew::prelude::*;

/// As many digits as tell half a step of a fine cup apart.
const DIGITS: i32 = 4;

/// The cup and the tank, and what half a step of the cup does to the ratio.
pub fn picture(shared: &Shared, exercise: &Exercise, drawn: &Picture) -> Html {
    let ratio = |parts: f64| Argument::text(number::write(parts, DIGITS, shared.marks()));
    let step = unit(drawn.unit).map_or_else(String::new, |unit| shared.words.in_unit(drawn.step, unit));
    let told = [
        ("ratio", ratio(drawn.ratio)),
        ("less", ratio(drawn.less)),
        ("more", ratio(drawn.more)),
        ("step", Argument::text(step)),
    ];
    html! {
        <figure class="cup">
            { cup_and_tank(shared, drawn, exercise.system) }
            <figcaption>
                <p>{ shared.tell("practice-picture-ratio", &told) }</p>
                <p>{ shared.tell("practice-picture-half", &told) }</p>
            </figcaption>
        </figure>
    }
}
