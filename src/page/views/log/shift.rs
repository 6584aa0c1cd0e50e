//! The end of the shift: five tasks for each machine that was filled, and what the last shift left undone.

use super::{Seen, initials, now, told};
use crate::form::log::{Part as Tab, Shift, end_of_shift, late, left_undone};
use crate::page::keep::log_draft::change;
use crate::page::log;
use crate::page::shared::Shared;
use crate::site::log::{Current, Part, Task, Words};
use crate::words::Argument;
use yew::prelude::*;

/// What is to be ticked off now, and what late.
pub fn shift(seen: &Seen) -> Html {
    let shared = &seen.shared;
    let Some(now) = now() else { return Html::default() };
    let fills = &seen.held.view.fills;
    let (offered, late) = (end_of_shift(fills, now), late(fills, now));
    let named = |shift: &Shift| {
        // Where the day is today's the time says enough.
        let is_today = shift.last.when.date == now.date;
        let said = &shift.last.said;
        machine(seen, shift, if is_today { told::clock(said) } else { told::moment(shared, said) })
    };
    html! {
        <>
            <h2>{ shared.say("log-shift-today") }</h2>
            <p class="hint">{ shared.say("log-shift-hint") }</p>
            if !(offered.is_empty() && late.is_empty()) { { who(seen) } }
            if offered.is_empty() { <p>{ shared.say("log-shift-none") }</p> }
            { for offered.iter().map(named) }
            if !late.is_empty() {
                <h2>{ shared.say("log-shift-late") }</h2>
                <p class="hint">{ shared.say("log-shift-late-hint") }</p>
                { for late.iter().map(named) }
            }
        </>
    }
}

/// Whose initials go with what is written down now.
pub fn who(seen: &Seen) -> Html {
    initials::initials(&seen.shared, &seen.draft)
}

/// What the last shift of each machine left undone, and the way to tick it off.
pub fn left(seen: &Seen) -> Html {
    let shared = &seen.shared;
    let Some(now) = now() else { return Html::default() };
    let left = left_undone(&seen.held.view.fills, now);
    if left.is_empty() {
        return Html::default();
    }
    html! {
        <section class="remark" data-remark="log-left" aria-labelledby="log-left">
            <h2 id="log-left">{ shared.say("log-left") }</h2>
            <ul>{ for left.iter().map(|shift| html! { <li>{ left_line(shared, ["log-left-line", "log-left-line-unticked"], shift) }</li> }) }</ul>
            <p>{ way(shared) }</p>
        </section>
    }
}

/// What a shift left undone, in the first of two sentences, or in the second where nobody ticked anything off.
pub fn left_line(shared: &Shared, keys: [&str; 2], shift: &Shift) -> String {
    let one = shift.last;
    let told = [
        ("machine", Argument::text(&*one.fill.machine.name)),
        ("day", shared.day(&one.when.date.to_string())),
        ("tasks", Argument::text(told::tasks(shared, &shift.undone()))),
    ];
    shared.tell(keys[usize::from(shift.is_unticked())], &told)
}

/// The way to the end of the shift, from wherever it stands.
pub fn way(shared: &Shared) -> Html {
    let onclick = |_: MouseEvent| change(|draft| draft.part = Tab::Shift);
    html! { <a href="#log" data-way="log-shift" {onclick}>{ shared.say("log-left-way") }</a> }
}

fn machine(seen: &Seen, shift: &Shift, time: String) -> Html {
    let (shared, one) = (&seen.shared, shift.last);
    let counted = [
        ("machine", Argument::text(&*one.fill.machine.name)),
        ("n", Argument::number(shift.fills as f64, shift.fills.to_string())),
        ("time", Argument::text(time)),
    ];
    html! {
        <fieldset data-machine={one.fill.machine.id.to_string()} data-shift={one.id.to_string()}>
            <legend>{ shared.tell("log-shift-machine", &counted) }</legend>
            { for one.fill.checklist.tasks().into_iter().map(|(code, state)| task(seen, one, code, state)) }
        </fieldset>
    }
}

fn task(seen: &Seen, one: &Current, code: &'static str, state: Task) -> Html {
    let shared = &seen.shared;
    let way = |to: Task, key: &'static str| {
        let pressed = state == to;
        let id = one.id.clone();
        let by = seen.draft.by.trim().to_owned();
        let onclick = move |_: MouseEvent| {
            // A second press takes it back.
            let now = if pressed { Task::NotAsked } else { to };
            log::tick(id.clone(), code, now, Words::default().with(Part::By, by.clone()));
        };
        let label = shared.words.said_of(&shared.say(&format!("log-task-{code}")), &shared.say(key));
        html! {
            <button type="button" name={format!("log-{code}-{}", to.code().replace('_', "-"))} aria-pressed={pressed.to_string()} aria-label={label} {onclick}>
                { shared.say(key) }
            </button>
        }
    };
    html! {
        <div class="task">
            <p>{ shared.say(&format!("log-task-{code}")) }</p>
            <div class="levels">
                { way(Task::Done, "log-state-done") }
                { way(Task::NotDone, "log-state-not-done") }
            </div>
        </div>
    }
}
