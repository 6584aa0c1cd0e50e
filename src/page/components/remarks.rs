//! Warnings and assumptions, and the warning that stands where the amount would stand.

use super::choice::button;
use crate::answer::{Remark, Weight};
use crate::chemistry::foam;
use crate::form::Action;
use crate::page::shared::Shared;
use yew::prelude::*;

fn of(remarks: &[Remark], weight: Weight) -> impl Iterator<Item = &Remark> {
    remarks.iter().filter(move |remark| remark.weight == weight)
}

fn title(shared: &Shared, remark: &Remark) -> Html {
    shared.words.remark_title(remark).map(|title| html! { <h3>{ title }</h3> }).unwrap_or_default()
}

/// What to mind and what to do about it.
pub fn warnings(shared: &Shared, remarks: &[Remark]) -> Html {
    html! {
        { for of(remarks, Weight::Warn).map(|remark| html! {
            <div class="remark" data-remark={remark.code}>
                { title(shared, remark) }
                <p>{ shared.words.remark(remark, shared.system()) }</p>
            </div>
        }) }
    }
}

/// What was taken for granted.
pub fn assumptions(shared: &Shared, remarks: &[Remark]) -> Html {
    if of(remarks, Weight::Assumed).next().is_none() {
        return Html::default();
    }
    html! {
        <section class="assumptions">
            <h3>{ shared.say("assumptions") }</h3>
            <ul>
                { for of(remarks, Weight::Assumed).map(|remark| html! {
                    <li data-remark={remark.code}>{ shared.words.remark(remark, shared.system()) }</li>
                }) }
            </ul>
        </section>
    }
}

/// The warning that stands where the amount would stand, until it was read.
pub fn stop(shared: &Shared, remarks: &[Remark]) -> Html {
    html! {
        { for of(remarks, Weight::Stop).map(|remark| html! {
            <section class="stop" role="alert" data-remark={remark.code}>
                { title(shared, remark) }
                <p>{ shared.words.remark(remark, shared.system()) }</p>
                <p>{ shared.say(foam::WHY) }</p>
                if remark.code == "remark-foam-test-first" { <p>{ shared.say(foam::SHAKE_TEST) }</p> }
                <p>{ shared.say(foam::DEFOAMER) }</p>
                { button(shared, "foam-read", shared.say(&format!("{}-read", remark.code)), || Action::FoamRead) }
            </section>
        }) }
    }
}
