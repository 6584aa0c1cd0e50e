//! What stays on the floor when the film has dried.

use crate::form::cautions::residue::work;
use crate::form::{Field, names};
use crate::page::components::{assumptions, facts, number_field, workings};
use crate::page::shared::Shared;
use yew::prelude::*;

/// What one cleaning and many leave on the floor.
pub fn residue(shared: &Shared) -> Html {
    let outcome = work(&shared.typed, shared.marks());
    let answer = &outcome.answer;
    let number = |field: Field| number_field(shared, &outcome, field, None);
    html! {
        <>
            <div class="fields">{ number(Field::Solids) }{ number(Field::Cleanings) }</div>
            if answer.figures.is_empty() {
                <p class="unknown">{ shared.say("residue-unknown") }</p>
            } else {
                { facts(shared, answer, &[names::RESIDUE_ONE, names::RESIDUE_SUM]) }
                { assumptions(shared, &answer.remarks) }
                { workings(shared, &answer.steps) }
            }
        </>
    }
}
