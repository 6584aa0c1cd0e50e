//! What the log is asked: each question as a sentence, a picture, and the table behind it.

mod costs;
mod doses;
mod drifts;
mod shelf;
mod undone;
mod uses;

use super::{Seen, told};
use crate::answer::Remark;
use crate::form::log::asked::Told;
use crate::page::components::workings;
use crate::page::shared::Shared;
use crate::site::log::Current;
use crate::site::log::questions::Filter;
use yew::prelude::*;

/// All questions, of the fills that are looked at.
pub fn asked(seen: &Seen) -> Html {
    let filter = seen.draft.sought.filter();
    let fills: Vec<&Current> = filter.of(&seen.held.view.fills).collect();
    // A shift is a machine's, whoever filled it with what.
    let of_machine =
        Filter { machine: filter.machine.clone(), month: filter.month.clone(), ..Filter::default() };
    let shifts: Vec<&Current> = of_machine.of(&seen.held.view.fills).collect();
    // Every machine draws on the same shelf: no filter narrows it.
    let everything = Filter::default();
    let all: Vec<&Current> = everything.of(&seen.held.view.fills).collect();
    html! {
        <>
            { uses::uses(seen, &fills) }
            { doses::doses(seen, &fills) }
            { costs::costs(seen, &fills) }
            { shelf::shelf(seen, &all) }
            { drifts::drifts(seen, &fills) }
            { undone::undone(seen, &shifts) }
        </>
    }
}

/// A question under its heading: what it says, the picture, the table, and what could not be counted.
fn question(shared: &Shared, code: &'static str, told: &Told, content: Html) -> Html {
    let heading = format!("ask-{code}");
    html! {
        <section class="asked" data-asked={code} aria-labelledby={heading.clone()}>
            <h2 id={heading.clone()}>{ shared.say(&heading) }</h2>
            { for told.answer.remarks.iter().map(|remark| said(shared, remark)) }
            { content }
            if told.uncounted > 0 {
                <p class="hint" data-uncounted={told.uncounted.to_string()}>
                    { shared.tell("log-uncounted", &[("n", told::count(shared, told.uncounted)), ("of", told::count(shared, told.fills))]) }
                </p>
            }
            if !told.answer.steps.is_empty() { { workings(shared, &told.answer.steps) } }
        </section>
    }
}

fn said(shared: &Shared, remark: &Remark) -> Html {
    use crate::answer::Weight;
    let warns = (remark.weight == Weight::Warn).then_some("unknown");
    html! { <p class={warns} data-remark={remark.code}>{ shared.words.remark(remark, shared.system()) }</p> }
}
