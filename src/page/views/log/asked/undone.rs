//! What was left undone at the end of a shift.

use super::super::told;
use super::{Seen, question};
use crate::form::log::asked::undone as ask;
use crate::page::drawing::{Bar, bars};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::log::Current;
use crate::words::Argument;
use yew::prelude::*;

/// The question.
pub fn undone(seen: &Seen, fills: &[&Current]) -> Html {
    let shared = &seen.shared;
    let found = ask(fills.iter().copied());
    let asked = found.tasks.iter().any(|task| task.done + task.not_done > 0);
    let drawn: Vec<Bar> = found
        .tasks
        .iter()
        .map(|task| Bar {
            name: shared.say(&format!("log-task-{}", task.task)),
            text: shared.tell("ask-undone-times", &[("n", told::count(shared, task.not_done))]),
            length: task.not_done as f64,
            mark: None,
        })
        .collect();
    let counts = found.tasks.iter().map(|task| {
        html! {
            <tr>
                <th scope="row">{ shared.say(&format!("log-task-{}", task.task)) }</th>
                <td>{ task.done }</td>
                <td>{ task.not_done }</td>
                <td>{ task.not_asked }</td>
            </tr>
        }
    });
    let shifts = found.shifts.iter().map(|one| {
        html! {
            <tr>
                <th scope="row">{ told::moment(shared, &one.when) }</th>
                <td>{ &*one.machine }</td>
                <td>{ &*one.who }</td>
                <td>{ told::tasks(shared, &one.tasks) }</td>
            </tr>
        }
    });
    let unticked = found.unticked.iter().map(|one| {
        html! {
            <tr>
                <th scope="row">{ told::moment(shared, &one.when) }</th>
                <td>{ &*one.machine }</td>
                <td>{ &*one.who }</td>
                <td>{ shared.say("log-state-not-asked") }</td>
            </tr>
        }
    });
    let columns = ["log-column-task", "log-state-done", "log-state-not-done", "log-state-not-asked"];
    let by_shift = ["log-column-when", "log-column-machine", "log-column-who", "log-column-left-undone"];
    question(
        shared,
        "undone",
        &found.told,
        html! {
            <>
                if asked {
                    { bars(&shared.say("ask-undone-picture"), &drawn) }
                    { table(shared, "ask-undone-table", &columns, counts.collect()) }
                    if !found.shifts.is_empty() {
                        { table(shared, "ask-undone-shifts", &by_shift, shifts.collect()) }
                        { more(shared, found.all - found.shifts.len()) }
                    }
                }
                if !found.unticked.is_empty() {
                    <details class="more">
                        <summary>{ shared.say("ask-undone-unticked") }</summary>
                        { table(shared, "ask-undone-unticked", &by_shift, unticked.collect()) }
                        { more(shared, found.all_unticked - found.unticked.len()) }
                    </details>
                }
            </>
        },
    )
}

/// How many are not listed.
fn more(shared: &Shared, n: usize) -> Html {
    if n == 0 {
        return Html::default();
    }
    html! { <p class="hint">{ shared.tell("ask-undone-more", &[("n", Argument::text(n.to_string()))]) }</p> }
}
