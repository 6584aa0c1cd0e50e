//! A section that unfolds on demand, and says when there is something to mend inside. What it holds is drawn behind the
//! frame.

use super::later;
use crate::form::Outcome;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// `key` is the word key of its heading; `names` are the inputs inside, or how their names begin.
pub fn fold(
    shared: &Shared,
    outcome: &Outcome,
    key: &'static str,
    names: &[&str],
    draw: impl Fn(&Shared, &Outcome) -> Html + 'static,
) -> Html {
    folded(shared, outcome, key, names, Box::new(draw))
}

/// How what is folded is drawn.
type Draw = Box<dyn Fn(&Shared, &Outcome) -> Html>;

fn folded(shared: &Shared, outcome: &Outcome, key: &'static str, names: &[&str], draw: Draw) -> Html {
    if shared.locked {
        return Html::default();
    }
    let inside = |name: &str| names.iter().any(|start| name.starts_with(start));
    let wrong = outcome.troubles.iter().any(|trouble| inside(&trouble.name));
    let mut heading = shared.say(key);
    if wrong {
        heading = shared.tell("fold-wrong", &[("heading", Argument::text(heading))]);
    }
    html! {
        <details class="more">
            <summary class={wrong.then_some("wrong")}>{ heading }</summary>
            { later(key, (shared.clone(), outcome.clone()), move |(shared, outcome)| draw(shared, outcome)) }
        </details>
    }
}
