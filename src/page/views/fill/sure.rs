//! How sure the dose is: the three tolerances, what they make, and which matters most.

use crate::form::fill::Fill;
use crate::form::{Field, Outcome, names};
use crate::page::asked;
use crate::page::components::{facts, fold, number_field};
use crate::page::shared::Shared;
use yew::prelude::*;

const FACTS: &[&str] = &[
    names::SURE_ERROR,
    names::SURE_RATIO_ERROR,
    names::SURE_STRONGEST,
    names::SURE_WEAKEST,
    names::SURE_INSIDE,
    names::SURE_DRAWN,
];

/// Unfolds on demand; nothing where nobody measures a liquid.
pub fn sure(shared: &Shared, fill: &Fill) -> Html {
    let outcome = &fill.outcome;
    if outcome.answer.get(names::FILL_DOSE).is_none() || fill.dispenser.draws() {
        return Html::default();
    }
    fold(shared, outcome, "sure", &["sure-"], |shared, _| told(shared, &asked::fill(shared).outcome))
}

fn told(shared: &Shared, outcome: &Outcome) -> Html {
    let fields = [Field::SureMeasure, Field::SureTank, Field::SureLabel];
    let cause = outcome.answer.remarks.iter().find(|remark| remark.code.starts_with("sure-cause-"));
    html! {
        <div class="sure">
            <p class="hint">{ shared.say("sure-hint") }</p>
            <div class="fields">{ for fields.map(|field| number_field(shared, outcome, field, None)) }</div>
            { facts(shared, &outcome.answer, FACTS) }
            if let Some(cause) = cause {
                <p data-remark={cause.code}>{ shared.words.remark(cause, shared.system()) }</p>
            }
            <p class="hint">{ shared.say("sure-is-estimate") }</p>
        </div>
    }
}
