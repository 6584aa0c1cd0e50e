//! The buttons of a step: to the control that it speaks of, forward, back, and out of it.

use super::lead::{self, Control};
use super::offer::STEP;
use crate::page::focus;
use crate::page::keep::first_fill::change;
use crate::page::shared::Shared;
use crate::page::views::log::fields::press;
use crate::practice::first_fill::{FirstFill, Stage, Step};
use crate::words::Argument;
use yew::prelude::*;

/// Leads to a control, on whatever view it is.
pub fn to(shared: &Shared, step: Step, n: usize, (key, selector): Control) -> Html {
    let own = shared.clone();
    let onclick = move |_: MouseEvent| {
        lead::show(&own, step);
        lead::focus_on(selector);
    };
    let control = ("control", Argument::text(shared.say(key)));
    html! {
        <button type="button" name={format!("first-fill-to-{}", n + 1)} {onclick}>{ shared.tell("first-fill-to", &[control]) }</button>
    }
}

/// Forward, back, and out of it.
pub fn ways(shared: &Shared, step: Step, done: bool) -> Html {
    let moves = |with: fn(&mut FirstFill, bool)| {
        let own = shared.clone();
        move || {
            let mut to = None;
            change(|guide| {
                with(guide, done);
                to = (guide.stage == Stage::Running).then_some(guide.at);
            });
            if let Some(step) = to {
                lead::show(&own, step);
            }
            focus::soon(STEP.to_owned());
        }
    };
    let leaves = |with: fn(&mut FirstFill)| {
        move || {
            change(with);
            focus::soon("main".to_owned());
        }
    };
    let is_last = step.place() + 1 == Step::ALL.len();
    let next = match (done, is_last) {
        (false, _) => "first-fill-skip",
        (true, true) => "first-fill-finish",
        (true, false) => "first-fill-next",
    };
    let goes_on = moves(FirstFill::next);
    html! {
        <div class="buttons">
            <button type="button" name="first-fill-next" onclick={move |_: MouseEvent| goes_on()}>{ shared.say(next) }</button>
            if step.place() > 0 { { press(shared, "first-fill-back", moves(|guide, _| guide.back())) } }
            { press(shared, "first-fill-pause", leaves(FirstFill::pause)) }
            { press(shared, "first-fill-close", leaves(FirstFill::close)) }
        </div>
    }
}
