//! Whose initials go with what is written down. Those of an earlier day are offered and never taken unasked.

use super::fields::{press, text_at};
use crate::form::log::Draft;
use crate::page::focus;
use crate::page::keep::log_draft::change;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// The field, and the initials of an earlier day.
pub fn initials(shared: &Shared, draft: &Draft) -> Html {
    html! { <div>{ field(shared, draft) }{ draft.offered().map(|who| still(shared, who)).unwrap_or_default() }</div> }
}

/// The field alone.
pub fn field(shared: &Shared, draft: &Draft) -> Html {
    text_at(shared, "log-who", &draft.by, false, None, |draft| &mut draft.by)
}

/// Whose the next record is, or that somebody is asked.
pub fn next(shared: &Shared, draft: &Draft) -> Html {
    let by = draft.by.trim();
    if !by.is_empty() {
        return html! { <p class="hint">{ shared.tell("log-as", &[("who", Argument::text(by))]) }</p> };
    }
    let Some(who) = draft.offered() else { return Html::default() };
    html! {
        <div data-asked="log-new-day">
            <p>{ shared.say("log-new-day") }</p>
            <div class="buttons">{ one_tap(shared, who) }{ press(shared, "log-other-person", || focus::on("log-who")) }</div>
        </div>
    }
}

/// The initials of an earlier day, by one tap.
pub fn still(shared: &Shared, who: &str) -> Html {
    html! { <div class="buttons">{ one_tap(shared, who) }</div> }
}

fn one_tap(shared: &Shared, who: &str) -> Html {
    let onclick = |_: MouseEvent| change(Draft::take_over);
    html! {
        <button type="button" name="log-still" {onclick}>{ shared.tell("log-still", &[("who", Argument::text(who))]) }</button>
    }
}
