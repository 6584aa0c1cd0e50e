//! How an answer was worked out: formula, numbers, source.

use crate::answer::Step;
use crate::page::shared::use_shared;
use std::rc::Rc;
use yew::prelude::*;

/// The steps.
#[derive(Properties)]
pub struct WorkingsProps {
    /// In order.
    pub steps: Rc<Vec<Step>>,
}

/// Steps are made anew with each answer.
impl PartialEq for WorkingsProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.steps, &other.steps)
    }
}

/// Unfolds on demand.
#[component]
pub fn Workings(props: &WorkingsProps) -> Html {
    let shared = use_shared();
    html! {
        <details class="workings">
            <summary>{ shared.say("workings") }</summary>
            <ol>
                { for props.steps.iter().map(|step| {
                    let given = step.given.iter().map(|(symbol, value)| format!("{symbol} = {}", shared.show(*value)));
                    html! {
                        <li>
                            <p>{ shared.say(step.formula.code) }</p>
                            <p class="formula">{ format!("{} = {}", step.formula.result, step.formula.equation) }</p>
                            <p>{ given.collect::<Vec<_>>().join("; ") }</p>
                            <p class="formula">{ format!("{} = {}", step.formula.result, shared.show(step.result)) }</p>
                            <p class="source">{ shared.words.source(step.formula.source) }</p>
                        </li>
                    }
                }) }
            </ol>
        </details>
    }
}
