//! The answer of a job at the fill station: the first thing to do, all of them in order, and why.

use crate::answer::Value;
use crate::form::cautions::banned;
use crate::form::names;
use crate::form::saved::View;
use crate::form::station::{Act, Done};
use crate::page::components::{
    Amount, Steps, amount, answer_tools, assumptions, caution_strip, facts, stop, troubles, warnings,
    workings,
};
use crate::page::shared::Shared;
use crate::page::views::fill::amount::measured;
use crate::units::Kind;
use crate::words::Argument;
use yew::prelude::*;

const FACTS: &[&str] = &[
    names::STATION_DRAIN,
    names::STATION_WATER,
    names::STATION_CONCENTRATE,
    names::STATION_ROUNDED,
    names::STATION_COUNT,
    names::STATION_LEVEL,
    names::STATION_STRENGTH,
    names::STATION_STRENGTH_LOW,
    names::STATION_STRENGTH_HIGH,
    names::STATION_RATIO,
];

/// The amount in one line, for a phone.
pub fn at_a_glance(shared: &Shared, done: &Done) -> String {
    match headline(shared, done) {
        _ if done.outcome.answer.stopped() => shared.say("glance-stop"),
        Some((_, _, text, _)) => text,
        None => done.acts.first().map_or_else(|| shared.say("glance-trouble"), |act| said(shared, act)),
    }
}

/// The answer.
pub fn answer(shared: &Shared, done: &Done, view: View) -> Html {
    let answer = &done.outcome.answer;
    if answer.stopped() {
        return html! { <>{ stop(shared, &answer.remarks) }{ caution_strip(shared) }</> };
    }
    let steps: Vec<String> = done.acts.iter().map(|act| said(shared, act)).collect();
    // A reading has nothing to do but what it says.
    let verdict = answer.remarks.iter().find(|remark| remark.code.starts_with("remark-reading-"));
    let sentence = match verdict {
        Some(verdict) => shared.words.remark(verdict, shared.system()),
        None => steps.join(" "),
    };
    let reads = view == View::Reading && answer.get(names::STATION_STRENGTH).is_some();
    if steps.is_empty() && !reads {
        return troubles(shared, &done.outcome);
    }
    html! {
        <>
            { troubles(shared, &done.outcome) }
            { for headline(shared, done).map(|(name, value, text, title)| amount(Amount {
                name, value, text, title, sentence: sentence.clone(), others: Html::default(),
            })) }
            { warnings(shared, &answer.remarks) }
            if !steps.is_empty() && !banned(&answer.remarks) { <Steps title={shared.say("steps")} {steps} /> }
            { facts(shared, answer, FACTS) }
            { caution_strip(shared) }
            { assumptions(shared, &answer.remarks) }
            { workings(shared, &answer.steps) }
            { answer_tools(shared, view) }
        </>
    }
}

/// The figure that matters most: what is poured or drained, or what was read.
fn headline(shared: &Shared, done: &Done) -> Option<(&'static str, Value, String, String)> {
    let answer = &done.outcome.answer;
    let figure = |name: &'static str, key: &str| {
        let value = answer.get(name)?;
        Some((name, value, shared.show(value), shared.say(key)))
    };
    let concentrate = || {
        let (name, value) = match answer.get(names::STATION_ROUNDED) {
            Some(rounded) => (names::STATION_ROUNDED, rounded),
            None => (names::STATION_CONCENTRATE, answer.get(names::STATION_CONCENTRATE)?),
        };
        Some((
            name,
            value,
            in_measure(shared, answer.get(names::STATION_COUNT), value),
            shared.say("station-add"),
        ))
    };
    if done.acts.first() == Some(&Act::DrainAll) || done.acts.is_empty() {
        // Draining comes first and needs no figure; a reading has only what was read.
        return if done.acts.is_empty() { figure(names::STATION_STRENGTH, "station-read") } else { None };
    }
    concentrate()
        .or_else(|| figure(names::STATION_WATER, "station-add-water"))
        .or_else(|| figure(names::STATION_DRAIN, "station-drain-first"))
}

fn in_measure(shared: &Shared, count: Option<Value>, dose: Value) -> String {
    let dispenser = shared.typed.measure().map(|measure| measure.dispenser).unwrap_or_default();
    measured(shared, dispenser, count, dose)
}

/// One thing to do, in words.
fn said(shared: &Shared, act: &Act) -> String {
    let fill = |volume| [("amount", shared.argument(Value::new(volume, Kind::Fill)))];
    match act {
        Act::KeepAway => shared.say("act-keep-away"),
        Act::Read => shared.say("act-read"),
        Act::Drain(volume) => shared.tell("act-drain", &fill(*volume)),
        Act::DrainAll => shared.say("act-drain-all"),
        Act::Rinse => shared.say("act-rinse"),
        Act::Water(volume) => shared.tell("act-water", &fill(*volume)),
        Act::Concentrate(dose, rounded) => {
            let (count, dose) = match rounded {
                Some(rounded) => (Some(Value::plain(rounded.count, Kind::Count)), rounded.dose),
                None => (None, *dose),
            };
            let amount = in_measure(shared, count, Value::new(dose, Kind::Dose));
            shared.tell("act-concentrate", &[("amount", Argument::text(amount))])
        }
        Act::Nothing => shared.say("act-nothing"),
    }
}
