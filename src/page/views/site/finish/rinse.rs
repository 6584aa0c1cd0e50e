//! Rinse to neutral.

use crate::chemistry::rinse::SOURCE;
use crate::form::Field;
use crate::form::site::finish::Finishing;
use crate::page::components::number_field;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// The reading, and what it says.
pub fn rinse(shared: &Shared, found: &Finishing) -> Html {
    let number = |field| number_field(shared, &found.outcome, field, None);
    let source = Argument::text(shared.words.source(SOURCE));
    html! {
        <>
            <p>{ shared.say("rinse-hint") }</p>
            <div class="fields">{ number(Field::RinsePh) }{ number(Field::TapPh) }</div>
            <p data-rinsed={found.rinsed.key()} role="status"><strong>{ shared.say(found.rinsed.key()) }</strong></p>
            <p class="source">{ shared.tell("rinse-rule", &[("source", source)]) }</p>
        </>
    }
}
