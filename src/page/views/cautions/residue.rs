//! What stays on the floor when the film has dried.

use crate::answer::{Remark, Weight};
use crate::form::cautions::residue::{missing, work};
use crate::form::{Field, names};
use crate::page::components::{assumptions, facts, number_field, warnings, workings};
use crate::page::shared::Shared;
use yew::prelude::*;

/// What one cleaning and many leave on the floor.
pub fn residue(shared: &Shared) -> Html {
    let outcome = work(&shared.typed, shared.marks());
    let answer = &outcome.answer;
    let heavy: Vec<Remark> =
        answer.remarks.iter().filter(|one| one.weight == Weight::Warn).cloned().collect();
    let number = |field: Field| number_field(shared, &outcome, field, None);
    html! {
        <>
            <div class="fields">{ number(Field::Solids) }{ number(Field::Cleanings) }</div>
            <p class="hint">{ shared.say("residue-film") }{ " " }<a href="#flow">{ shared.say("view-flow") }</a></p>
            { warnings(shared, &heavy) }
            if answer.figures.is_empty() {
                <p class="unknown">{ shared.say(missing(&shared.typed, shared.marks())) }</p>
            } else {
                { facts(shared, answer, &[names::RESIDUE_ONE, names::RESIDUE_SUM]) }
                { assumptions(shared, &answer.remarks) }
                { workings(shared, &answer.steps) }
            }
        </>
    }
}
