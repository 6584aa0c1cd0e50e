//! A section that unfolds on demand, and says when there is something to mend inside.

use crate::form::Outcome;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// `key` is the word key of its heading; `names` are the inputs inside, or how their names begin.
pub fn fold(shared: &Shared, outcome: &Outcome, key: &str, names: &[&str], content: Html) -> Html {
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
            { content }
        </details>
    }
}
