//! How an answer was worked out: formula, numbers, source.

use super::unfolds;
use crate::answer::Step;
use crate::page::shared::Shared;
use yew::prelude::*;

/// Unfolds on demand.
pub fn workings(shared: &Shared, steps: &[Step]) -> Html {
    let of = (shared.clone(), steps.to_vec());
    unfolds(shared, "workings", "workings", of, |(shared, steps)| list(shared, steps))
}

fn list(shared: &Shared, steps: &[Step]) -> Html {
    let line = |step: &Step| {
        let formula = step.formula;
        let result = shared.words.equation(formula.result);
        let given = step
            .given
            .iter()
            .map(|(symbol, value)| format!("{} = {}", shared.words.equation(symbol), shared.show(*value)));
        let about = if step.about.is_empty() {
            String::new()
        } else {
            format!("{} ", shared.words.headed(&step.about))
        };
        html! {
            <li>
                <p>{ about }{ shared.say(formula.code) }</p>
                <p class="formula">{ format!("{result} = {}", shared.words.equation(formula.equation)) }</p>
                <p>{ given.collect::<Vec<_>>().join("; ") }</p>
                <p class="formula">{ format!("{result} = {}", shared.show(step.result)) }</p>
                <p class="source">{ shared.words.source(formula.source) }</p>
            </li>
        }
    };
    html! { <ol>{ for steps.iter().map(line) }</ol> }
}
