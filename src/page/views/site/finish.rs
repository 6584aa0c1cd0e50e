//! A new finish, step by step: from its label to a draft of the standard that follows it.

mod choose;
mod coat;
mod fits;
mod rinse;
mod trial;

pub use trial::titled;

use crate::form::Field;
use crate::form::action::{Line, Shelf};
use crate::form::site::Act;
use crate::form::site::finish::trial::work as tried;
use crate::form::site::finish::{Finishing, work};
use crate::page::components::{Text, number_field, picker, switch, text_field, troubles_beside, workings};
use crate::page::shared::Shared;
use crate::page::views::site::library::shelf_buttons;
use yew::prelude::*;

/// All six steps.
pub fn finish_steps(shared: &Shared) -> Html {
    let found = work(&shared.typed, shared.marks());
    let tried = tried(&shared.typed, shared.marks());
    html! {
        <section class="finish-steps" aria-labelledby="finish-steps">
            <h2 id="finish-steps">{ shared.say("finish-steps") }</h2>
            <p class="hint">{ shared.say("finish-steps-hint") }</p>
            <ol>
                { step(shared, "finish-step-finish", finish(shared, &found)) }
                { step(shared, "finish-step-coat", coat::coat(shared, &found)) }
                { step(shared, "finish-step-rinse", rinse::rinse(shared, &found)) }
                { step(shared, "finish-step-fits", fits::fits(shared)) }
                { step(shared, "finish-step-trial", trial::trial(shared, &tried)) }
                { step(shared, "finish-step-choose", choose::choose(shared, &tried)) }
            </ol>
            { workings(shared, &found.outcome.answer.steps) }
        </section>
    }
}

fn step(shared: &Shared, key: &'static str, content: Html) -> Html {
    html! { <li aria-labelledby={key}><h3 id={key}>{ shared.say(key) }</h3>{ content }</li> }
}

/// The finish, as its label tells it.
fn finish(shared: &Shared, found: &Finishing) -> Html {
    let Some(finish) = shared.typed.finish() else {
        return html! { <><p>{ shared.say("finish-none") }</p>{ shelf_buttons(shared, Shelf::Finish, "finish-name") }</> };
    };
    let text = |line, name: &'static str, value: &str| {
        let text = Text {
            line,
            name: name.to_owned(),
            key: name,
            value: value.to_owned(),
            tall: false,
            mistake: None,
        };
        text_field(shared, text)
    };
    let number = |field| number_field(shared, &found.outcome, field, None);
    let burnish = if finish.burnish { "finish-burnish-yes" } else { "finish-burnish-no" };
    html! {
        <>
            { troubles_beside(shared, &found.outcome) }
            <div class="fields">
                { picker(shared, Shelf::Finish) }
                { text(Line::FinishName, "finish-name", &finish.name) }
                { number(Field::FinishPhLow) }
                { number(Field::FinishPhHigh) }
                <div class="wide">{ text(Line::FinishSource, "finish-source", &finish.source) }</div>
                { number(Field::FinishCoats) }
                { number(Field::FinishCoverage) }
                { number(Field::FinishDry) }
                { number(Field::FinishSolids) }
                { number(Field::FinishCure) }
                { switch(shared, "finish-burnish", shared.say("finish-burnish"), finish.burnish, |is| Act::Burnish(is).action()) }
            </div>
            { shelf_buttons(shared, Shelf::Finish, "finish-name") }
            { coat::said(shared, found, &["remark-finish-ph-unknown"]) }
            <p>{ shared.say(burnish) }</p>
        </>
    }
}
