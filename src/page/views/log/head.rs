//! What the log has, where it is kept, and what to do about it.

use super::fields::press;
use super::{Seen, day, record, told};
use crate::form::log::reminder;
use crate::page::components::warnings;
use crate::page::log::{self, Check, Held, Stage};
use crate::page::shared::Shared;
use crate::trade::calendar::Date;
use crate::words::Argument;
use yew::prelude::*;

/// The summary at the head of the view.
pub fn head(seen: &Seen) -> Html {
    let (shared, held) = (&seen.shared, &*seen.held);
    match &held.stage {
        Stage::Opening { done, of } => {
            let told = [("done", number(shared, *done)), ("of", number(shared, *of))];
            let key = if *of == 0 { "log-opening" } else { "log-opening-of" };
            return html! { <p role="status">{ shared.tell(key, &told) }</p> };
        }
        Stage::Shut(trouble) => {
            return html! {
                <section class="troubles" role="alert">
                    <h2>{ shared.say("log-shut") }</h2>
                    <p>{ told::trouble(shared, trouble) }</p>
                    <p>{ shared.say("log-shut-do") }</p>
                </section>
            };
        }
        Stage::Open => {}
    }
    let fills = held.view.fills.len();
    let struck = held.view.fills.iter().filter(|one| one.fill.struck).count();
    html! {
        <>
            <p>{ shared.tell("log-count", &[("n", number(shared, fills)), ("device", Argument::text(called(seen)))]) }
                if struck > 0 { { " " }{ shared.tell("log-count-struck", &[("n", number(shared, struck))]) } }
            </p>
            <p id="log-said" class="said" role="status" tabindex="-1">{ record::confirmed(shared, held) }</p>
            { backup(shared, held) }
            { lost(shared, held) }
            if let Check::Broken(broken) = &held.check {
                <div class="remark" data-remark="log-broken"><p>{ told::broken(shared, broken, "log-broken-do") }</p></div>
            }
            if !held.clock_back.is_empty() {
                <p class="hint">{ shared.tell("log-clock-back", &[("n", number(shared, held.clock_back.len()))]) }</p>
            }
            if !held.view.astray.is_empty() {
                <p class="hint">{ shared.tell("log-astray", &[("n", number(shared, held.view.astray.len()))]) }</p>
            }
        </>
    }
}

/// This device, as people call it.
fn called(seen: &Seen) -> String {
    match seen.draft.station.trim() {
        "" => seen.held.device.clone(),
        name => name.to_owned(),
    }
}

/// A whole number as an argument.
pub fn number(shared: &Shared, n: usize) -> Argument {
    super::told::count(shared, n)
}

/// When the log was last saved, and whether it is time again.
fn backup(shared: &Shared, held: &Held) -> Html {
    let since = held.backup.as_ref().map_or_else(|| records(held), |backup| backup.since);
    let last = held.backup.as_ref().and_then(|backup| Date::read(backup.when.get(..10)?));
    let said = match &held.backup {
        Some(backup) => {
            let told = [
                ("when", Argument::text(told::moment(shared, &backup.when))),
                ("n", number(shared, backup.since)),
            ];
            Some(shared.tell("log-backup-last", &told))
        }
        None => None,
    };
    let due = day().and_then(|today| reminder(last, since, today));
    html! {
        <>
            { for said.map(|said| html! { <p>{ said }</p> }) }
            { for due.map(|due| html! { <>{ warnings(shared, &[due]) }<div class="buttons">{ press(shared, "log-save-now", log::backup_ndjson) }</div></> }) }
        </>
    }
}

/// How many records the log has, by the ends of its chains.
pub fn records(held: &Held) -> usize {
    held.heads
        .iter()
        .map(|head| usize::try_from(head.number).unwrap_or(usize::MAX))
        .fold(0, usize::saturating_add)
}

fn lost(shared: &Shared, held: &Held) -> Html {
    if held.lost.is_empty() {
        return Html::default();
    }
    let line = |one: &log::Lost| {
        let told = [
            ("device", Argument::text(one.device.clone())),
            ("from", Argument::text(one.from.to_string())),
            ("to", Argument::text(one.to.to_string())),
        ];
        shared.tell("log-lost-line", &told)
    };
    html! {
        <section class="remark" role="alert">
            <h2>{ shared.say("log-lost") }</h2>
            <ul>{ for held.lost.iter().map(|one| html! { <li>{ line(one) }</li> }) }</ul>
            <p>{ shared.say("log-lost-do") }</p>
        </section>
    }
}
