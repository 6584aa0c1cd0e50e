//! Out and in: backups, a file from elsewhere, the chains, the room that the browser gives, and what is erased.

mod erase;
mod incoming;

use super::fields::{press, text_at};
use super::{Seen, head, told};
use crate::page::log::{self, Check, Held};
use crate::page::shared::Shared;
use crate::units::System;
use crate::words::Argument;
use yew::prelude::*;

/// What the part needs.
#[derive(Properties, PartialEq)]
pub struct KeepProps {
    /// What all parts draw from.
    pub seen: Seen,
}

/// The part. Taking a file and erasing are left to a device that is free.
#[component]
pub fn Keep(props: &KeepProps) -> Html {
    let seen = &props.seen;
    let (shared, held) = (&seen.shared, &*seen.held);
    let (system, marks): (System, _) = (shared.system(), shared.marks());
    html! {
        <>
            <section aria-labelledby="log-out">
                <h2 id="log-out">{ shared.say("log-out") }</h2>
                <p>{ shared.say("log-out-hint") }</p>
                <div class="buttons">
                    { press(shared, "log-save", log::backup_ndjson) }
                    { press(shared, "log-csv", move || log::backup_csv(system, marks)) }
                </div>
                <p class="hint">{ shared.say("log-csv-hint") }</p>
            </section>
            if shared.locked {
                <p class="hint">{ shared.say("log-locked") }</p>
            } else {
                <incoming::Taking seen={seen.clone()} />
            }
            { station(seen) }
            { chain(shared, held) }
            <Room seen={seen.clone()} />
            if !shared.locked { <erase::Erase seen={seen.clone()} /> }
            <p class="hint">{ shared.say("log-honest") }</p>
        </>
    }
}

/// What people call this device: the records that it writes from then on say so.
fn station(seen: &Seen) -> Html {
    let shared = &seen.shared;
    html! {
        <section aria-labelledby="log-this-device">
            <h2 id="log-this-device">{ shared.say("log-this-device") }</h2>
            { text_at(shared, "log-station", &seen.draft.station, false, None, |draft| &mut draft.station) }
        </section>
    }
}

/// Whether the chains hold.
fn chain(shared: &Shared, held: &Held) -> Html {
    let said = match &held.check {
        Check::NotYet => shared.say("log-check-not-yet"),
        Check::Running { done, of } => {
            let told = [("done", told::count(shared, *done)), ("of", told::count(shared, *of))];
            shared.tell("log-check-running", &told)
        }
        Check::Whole { records } => shared.tell("log-check-whole", &[("n", told::count(shared, *records))]),
        Check::Broken(broken) => told::broken(shared, broken, "log-broken-do"),
        Check::Failed(trouble) => told::trouble(shared, trouble),
    };
    html! {
        <section aria-labelledby="log-chain">
            <h2 id="log-chain">{ shared.say("log-chain") }</h2>
            <p>{ shared.say("log-chain-hint") }</p>
            <p role="status" data-check={match held.check { Check::Whole { .. } => "whole", Check::Broken(_) => "broken", _ => "open" }}>{ said }</p>
            <div class="buttons">{ press(shared, "log-check", log::check_now) }</div>
            <details class="more">
                <summary>{ shared.say("log-heads") }</summary>
                <p class="hint">{ shared.say("log-heads-hint") }</p>
                <ul class="plain">{ for held.heads.iter().map(|end| html! {
                    <li>{ format!("{}/{} ", end.device, end.number) }<span class="key">{ &*end.own }</span></li>
                }) }</ul>
            </details>
        </section>
    }
}

/// How much room is used, and whether the browser keeps it.
#[component]
fn Room(props: &KeepProps) -> Html {
    let (shared, held) = (&props.seen.shared, &*props.seen.held);
    let asked = use_state(|| None::<bool>);
    let megabytes = |bytes: f64| Argument::text(format!("{}\u{202f}MB", shared.words.number(bytes / 1e6)));
    let kept = *asked == Some(true) || held.usage.is_some_and(|usage| usage.kept);
    let used = match held.usage {
        Some(usage) => {
            let told = [("used", megabytes(usage.used)), ("allowed", megabytes(usage.allowed))];
            shared.tell("log-room-used", &told)
        }
        None => shared.say("log-room-unknown"),
    };
    let told = match (kept, *asked) {
        (true, _) => "log-room-kept",
        (false, Some(_)) => "log-room-refused",
        (false, None) => "log-room-loose",
    };
    let ask = move || {
        let asked = asked.clone();
        yew::platform::spawn_local(async move { asked.set(Some(log::ask_to_keep().await)) });
    };
    html! {
        <section aria-labelledby="log-room">
            <h2 id="log-room">{ shared.say("log-room") }</h2>
            <p>{ shared.tell("log-records", &[("n", told::count(shared, head::records(held)))]) }{ " " }{ used }</p>
            <p role="status">{ shared.say(told) }</p>
            if !kept { <div class="buttons">{ press(shared, "log-persist", ask) }</div> }
        </section>
    }
}
