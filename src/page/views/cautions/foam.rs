//! Foam: the test, and what to do with a tank that foams.

use crate::chemistry::foam::{self, Foam};
use crate::form::cautions::shake::work;
use crate::form::{Action, Field};
use crate::page::components::{button, number_field};
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// The shake test, and what to do with a tank that foams.
pub fn foam_help(shared: &Shared) -> Html {
    let found = work(&shared.typed, shared.marks());
    let number = |field: Field| number_field(shared, &found.outcome, field, None);
    let says = |class: Foam| {
        let told = Argument::text(shared.say(class.key()));
        html! {
            <p class="hint">
                { shared.tell("foam-says", &[("class", told)]) }{ " " }
                { button(shared, "foam-take", shared.say("foam-take"), move || Action::Foam(class)) }
            </p>
        }
    };
    html! {
        <>
            <p>{ shared.say(foam::SHAKE_TEST) }</p>
            <p class="hint">{ shared.say("foam-limits") }</p>
            <div class="fields">{ number(Field::FoamFirst) }{ number(Field::FoamLater) }</div>
            { found.class.map(says).unwrap_or_default() }
            <h3>{ shared.say("foam-tank") }</h3>
            <p>{ shared.say(foam::WHY) }</p>
            <ol>{ for ["foam-tank-stop", "foam-tank-drain", "foam-tank-rinse", "foam-tank-refill"].map(|key| html! { <li>{ shared.say(key) }</li> }) }</ol>
            <p>{ shared.say(foam::DEFOAMER) }</p>
        </>
    }
}
