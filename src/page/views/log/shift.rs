//! The end of the shift: five tasks for each machine that was filled today.

use super::{Seen, day, told};
use crate::form::log::{Day, end_of_shift, left_undone};
use crate::page::log;
use crate::page::shared::Shared;
use crate::site::log::{Current, Part, Task, Words};
use crate::words::Argument;
use yew::prelude::*;

/// What is to be done today, and what was left before.
pub fn shift(seen: &Seen) -> Html {
    let shared = &seen.shared;
    let Some(today) = day() else { return Html::default() };
    let fills = &seen.held.view.fills;
    let days = end_of_shift(fills, today);
    let left = left_undone(fills, today);
    html! {
        <>
            if !left.is_empty() {
                <section class="remark" aria-labelledby="log-left">
                    <h2 id="log-left">{ shared.say("log-left") }</h2>
                    <ul>{ for left.iter().map(|day| html! { <li>{ left_line(shared, fills, day) }</li> }) }</ul>
                </section>
            }
            <h2>{ shared.say("log-shift-today") }</h2>
            <p class="hint">{ shared.say("log-shift-hint") }</p>
            if days.is_empty() { <p>{ shared.say("log-shift-none") }</p> }
            { for days.iter().map(|day| machine(seen, &fills[day.place], day)) }
        </>
    }
}

fn left_line(shared: &Shared, fills: &[Current], day: &Day) -> String {
    let one = &fills[day.place];
    let told = [
        ("machine", Argument::text(&*one.fill.machine.name)),
        ("day", Argument::text(one.when.date.to_string())),
        ("tasks", Argument::text(told::tasks(shared, &day.undone(fills)))),
    ];
    shared.tell("log-left-line", &told)
}

fn machine(seen: &Seen, one: &Current, day: &Day) -> Html {
    let shared = &seen.shared;
    let counted = [
        ("machine", Argument::text(&*one.fill.machine.name)),
        ("n", Argument::number(day.fills as f64, day.fills.to_string())),
        ("time", Argument::text(told::clock(&one.said))),
    ];
    html! {
        <fieldset data-machine={one.fill.machine.id.to_string()}>
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
        let label = format!("{}: {}", shared.say(&format!("log-task-{code}")), shared.say(key));
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
