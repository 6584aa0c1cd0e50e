//! Warnings and assumptions, and the warning that stands where the amount would stand.

use crate::answer::{Remark, Weight};
use crate::chemistry::foam;
use crate::form::Action;
use crate::page::shared::use_shared;
use std::rc::Rc;
use yew::prelude::*;

/// An answer.
#[derive(Properties, PartialEq)]
pub struct RemarksProps {
    /// Its remarks.
    pub remarks: Rc<Vec<Remark>>,
}

impl RemarksProps {
    fn of(&self, weight: Weight) -> impl Iterator<Item = &Remark> {
        self.remarks.iter().filter(move |remark| remark.weight == weight)
    }
}

/// What to mind and what to do about it.
#[component]
pub fn Remarks(props: &RemarksProps) -> Html {
    let shared = use_shared();
    html! {
        { for props.of(Weight::Warn).map(|remark| html! {
            <div class="remark" data-remark={remark.code}>
                if let Some(title) = shared.words.remark_title(remark) { <h3>{ title }</h3> }
                <p>{ shared.words.remark(remark, shared.system()) }</p>
            </div>
        }) }
    }
}

/// What was taken for granted.
#[component]
pub fn Assumptions(props: &RemarksProps) -> Html {
    let shared = use_shared();
    if props.of(Weight::Assumed).next().is_none() {
        return Html::default();
    }
    html! {
        <section class="assumptions">
            <h3>{ shared.say("assumptions") }</h3>
            <ul>
                { for props.of(Weight::Assumed).map(|remark| html! {
                    <li data-remark={remark.code}>{ shared.words.remark(remark, shared.system()) }</li>
                }) }
            </ul>
        </section>
    }
}

/// The warning that stands where the amount would stand, until it was read.
#[component]
pub fn Stop(props: &RemarksProps) -> Html {
    let shared = use_shared();
    html! {
        { for props.of(Weight::Stop).map(|remark| html! {
            <section class="stop" role="alert" data-remark={remark.code}>
                if let Some(title) = shared.words.remark_title(remark) { <h3>{ title }</h3> }
                <p>{ shared.words.remark(remark, shared.system()) }</p>
                <p>{ shared.say(foam::WHY) }</p>
                if remark.code == "remark-foam-test-first" { <p>{ shared.say(foam::SHAKE_TEST) }</p> }
                <p>{ shared.say(foam::DEFOAMER) }</p>
                <button type="button" name="foam-read" onclick={shared.on(|_| Action::FoamRead)}>
                    { shared.say(&format!("{}-read", remark.code)) }
                </button>
            </section>
        }) }
    }
}
