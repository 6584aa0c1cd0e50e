//! One fill, unfolded: what it says, what it said first, and each correction with who, when and why.

use super::fields::press;
use super::{Seen, form, told};
use crate::page::log::{self, history};
use crate::page::shared::Shared;
use crate::site::log::{Checklist, Current, Deviation, Fill, Id, Kind, Part, Record, State, Words};
use crate::words::Argument;
use yew::prelude::*;

/// Which fill.
#[derive(Properties, PartialEq)]
pub struct HistoryProps {
    /// What all parts draw from.
    pub seen: Seen,
    /// Its record.
    pub id: Id,
}

/// The unfolded row.
#[component]
pub fn History(props: &HistoryProps) -> Html {
    let HistoryProps { seen, id } = props;
    let shared = &seen.shared;
    let records = use_state(Vec::<Record>::new);
    let asks = use_state(|| false);
    {
        let records = records.clone();
        let one = form::found(seen, &id.to_string());
        // It is read again when it was corrected.
        let of = (
            id.clone(),
            one.map(|one| (one.corrections.clone(), one.who.clone(), one.reason.clone(), one.notes.clone())),
        );
        use_effect_with(of, move |(id, _)| {
            let id = id.clone();
            yew::platform::spawn_local(async move { records.set(history(&id).await) });
        });
    }
    let Some(one) = form::found(seen, &id.to_string()) else { return Html::default() };
    let open = {
        let (shared, one) = (shared.clone(), one.clone());
        move || form::open(&shared, &one)
    };
    let ask = |wanted: bool| {
        let asks = asks.clone();
        move || asks.set(wanted)
    };
    let erase = {
        let (asks, texts) = (asks.clone(), written(&records));
        move || {
            asks.set(false);
            for (id, parts) in &texts {
                log::erase(id.clone(), parts.clone(), Words::default());
            }
        }
    };
    html! {
        <>
            <h3>{ told::title(shared, one) }</h3>
            { now(shared, one) }
            <h3>{ shared.say("log-history") }</h3>
            <ol class="plain history">{ for records.iter().map(|record| html! { <li>{ past(shared, record) }</li> }) }</ol>
            <div class="buttons">
                { press(shared, "log-correct", open) }
                if !shared.locked && !written(&records).is_empty() && !*asks { { press(shared, "log-erase-texts", ask(true)) } }
            </div>
            if *asks {
                <div class="remark" role="alert" data-remark="log-erase">
                    <p>{ shared.say("log-erase-warning") }</p>
                    <div class="buttons">{ press(shared, "log-erase-do", erase) }{ press(shared, "log-erase-leave", ask(false)) }</div>
                </div>
            }
        </>
    }
}

/// Whatever people wrote in their own words, record by record.
fn written(records: &[Record]) -> Vec<(Id, Vec<Part>)> {
    let parts = |record: &Record| -> Vec<Part> {
        Part::ALL.iter().copied().filter(|part| !record.words.get(*part).text.is_empty()).collect()
    };
    let all = records.iter().map(|record| (record.id(), parts(record)));
    all.filter(|(_, parts)| !parts.is_empty()).collect()
}

fn pairs(all: Vec<(String, String)>) -> Html {
    let known = all.into_iter().filter(|(_, what)| !what.is_empty());
    html! {
        <dl class="pairs">
            { for known.map(|(name, what)| html! { <div><dt>{ name }</dt><dd>{ what }</dd></div> }) }
        </dl>
    }
}

fn now(shared: &Shared, one: &Current) -> Html {
    let mut all = said(shared, &one.fill);
    all.push((shared.say("log-station"), one.station.to_string()));
    all.push((shared.say("log-done-by"), one.who.to_string()));
    all.push((shared.say("log-reason"), one.reason.to_string()));
    all.push((shared.say("log-notes"), one.notes.to_string()));
    pairs(all)
}

/// What a fill says, field by field; what it does not say is empty.
fn said(shared: &Shared, fill: &Fill) -> Vec<(String, String)> {
    let standard = match (&*fill.standard.name, fill.version) {
        ("", _) => String::new(),
        (name, version) => shared.tell(
            "log-standard-of",
            &[("name", Argument::text(name)), ("version", Argument::text(version.to_string()))],
        ),
    };
    let areas: Vec<&str> = fill.areas.iter().map(|area| &*area.name).collect();
    let deviation = match fill.deviation {
        Deviation::None => String::new(),
        other => shared.say(&format!("log-deviation-{}", other.code().replace('_', "-"))),
    };
    let reading = match &*fill.reading.text {
        "" => String::new(),
        text => format!("{text} ({})", shared.say(&format!("log-scale-{}", fill.reading.scale.code()))),
    };
    let rows = [
        ("log-at", told::moment(shared, &fill.at)),
        ("log-product", fill.product.name.to_string()),
        ("log-machine", fill.machine.name.to_string()),
        ("log-floor", fill.floor.name.to_string()),
        ("log-areas", areas.join(", ")),
        ("log-standard", standard),
        ("log-concentrate", fill.concentrate.text.to_string()),
        ("log-water", fill.water.text.to_string()),
        ("log-level", fill.level.text.to_string()),
        ("log-measured", fill.measured.text.to_string()),
        ("log-reading", reading),
        ("log-deviation", deviation),
        ("log-end-of-shift", checklist(shared, &fill.checklist)),
    ];
    rows.into_iter().map(|(key, text)| (shared.say(key), text)).collect()
}

fn checklist(shared: &Shared, list: &Checklist) -> String {
    if *list == Checklist::default() {
        return String::new();
    }
    let task = |(code, task): (&str, crate::site::log::Task)| {
        let state = shared.say(&format!("log-state-{}", task.code().replace('_', "-")));
        shared.words.said_of(&shared.say(&format!("log-task-{code}")), &state)
    };
    list.tasks().into_iter().map(task).collect::<Vec<_>>().join("; ")
}

fn past(shared: &Shared, record: &Record) -> Html {
    let by = written_by(shared, record);
    let head = [
        ("number", Argument::text(record.id().to_string())),
        ("when", Argument::text(told::moment(shared, &record.when))),
        ("kind", Argument::text(shared.say(&format!("log-kind-{}", record.kind.code())))),
    ];
    let changes = match record.kind {
        Kind::Fill => said(shared, &record.fill),
        Kind::Correction => changed(shared, record),
        Kind::Erasure => {
            let parts = record.erased.iter().map(|part| shared.say(&format!("log-part-{}", part.code())));
            vec![(shared.say("log-erased-parts"), parts.collect::<Vec<_>>().join(", "))]
        }
        Kind::Lesson | Kind::Unsaid => Vec::new(),
    };
    let words = Part::ALL.iter().filter(|part| **part != Part::By).filter_map(|part| {
        let text = match record.words.state(*part, &record.seals) {
            State::None => return None,
            State::Whole => record.words.get(*part).text.clone(),
            State::Blanked => shared.say("log-blanked"),
            State::Altered => shared.say("log-altered-text"),
        };
        Some((shared.say(&format!("log-part-{}", part.code())), text))
    });
    html! {
        <>
            <p><strong>{ shared.tell("log-past", &head) }</strong>{ by }</p>
            { pairs(changes.into_iter().chain(words).collect()) }
        </>
    }
}

fn written_by(shared: &Shared, record: &Record) -> String {
    match record.words.by.text.as_str() {
        "" => String::new(),
        by => format!(" {}", shared.tell("log-written-by", &[("who", Argument::text(by))])),
    }
}

/// The fields that a correction changes, with what they say from then on.
fn changed(shared: &Shared, record: &Record) -> Vec<(String, String)> {
    let text = serde_json::to_string(&record.changes).unwrap_or_default();
    let Ok(fill) = serde_json::from_str::<Fill>(&text) else { return Vec::new() };
    let all = [
        "at",
        "product",
        "machine",
        "floor",
        "areas",
        "standard",
        "concentrate",
        "water",
        "level",
        "measured",
        "reading",
        "deviation",
        "checklist",
    ];
    let mut rows: Vec<(String, String)> = said(shared, &fill)
        .into_iter()
        .zip(all)
        .filter(|(_, field)| record.changes.contains_key(*field))
        .map(|((name, text), _)| (name, if text.is_empty() { shared.say("log-nothing") } else { text }))
        .collect();
    if record.changes.contains_key("struck") {
        let key = if fill.struck { "log-is-struck" } else { "log-not-struck" };
        rows.push((shared.say("log-struck-field"), shared.say(key)));
    }
    rows
}
