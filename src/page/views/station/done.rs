//! The answer of a job at the fill station: the first thing to do, all of them in order, and why.

use crate::answer::Value;
use crate::form::cautions::banned;
use crate::form::names;
use crate::form::saved::View;
use crate::form::station::{Act, Done, Job, Mishap, others};
use crate::page::components::{
    Amount, Steps, amount, answer_tools, assumptions, caution_of, caution_strip, facts, stop, troubles,
    troubles_beside, warnings, workings,
};
use crate::page::shared::Shared;
use crate::page::views::fill::amount::measured;
use crate::page::views::fill::paper::wear;
use crate::site::Product;
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
    names::STATION_ACTIVE,
    names::STATION_RATIO,
];

/// The amount in one line, for a phone.
pub fn at_a_glance(shared: &Shared, done: &Done) -> String {
    match headline(shared, done) {
        _ if done.outcome.answer.stopped() => shared.say("glance-stop"),
        // Draining first is no amount to add: the bar must say which it is.
        Some((name, _, text, title)) if name == names::STATION_DRAIN => format!("{title}: {text}"),
        Some((_, _, text, _)) => text,
        None => done.acts.first().map_or_else(|| shared.say("glance-trouble"), |act| said(shared, act)),
    }
}

/// The answer.
pub fn answer(shared: &Shared, done: &Done, view: View) -> Html {
    let answer = &done.outcome.answer;
    let adds = |act: &&Act| !matches!(act, Act::Water(_) | Act::Concentrate(..));
    if answer.stopped() {
        // What empties the tank is right whatever was in it; only what is added waits.
        let steps = steps(shared, done.acts.iter().take_while(adds));
        return html! {
            <>
                { stop(shared, &answer.remarks) }
                if done.acts == [Act::OtherMachine] {
                    <p data-act="other-machine">{ said(shared, &Act::OtherMachine) }</p>
                } else if steps.len() > 1 { <Steps title={shared.say("steps")} {steps} /> }
                { cautions(shared) }
            </>
        };
    }
    let told: Vec<String> = done.acts.iter().map(|act| said(shared, act)).collect();
    // A reading has nothing to do but what it says.
    let verdict = answer.remarks.iter().find(|remark| remark.code.starts_with("remark-reading-"));
    let sentence = match verdict {
        Some(verdict) => shared.words.remark(verdict, shared.system()),
        None => told.join(" "),
    };
    let reads = view == View::Reading && answer.get(names::STATION_STRENGTH).is_some();
    if told.is_empty() && !reads {
        return troubles(shared, &done.outcome);
    }
    html! {
        <>
            { troubles_beside(shared, &done.outcome) }
            { for headline(shared, done).map(|(name, value, text, title)| amount(Amount {
                name, value, text, title, sentence: sentence.clone(), others: Html::default(),
            })) }
            { warnings(shared, &answer.remarks) }
            if !told.is_empty() && !reads && !banned(&answer.remarks) {
                <Steps title={shared.say("steps")} steps={steps(shared, done.acts.iter())} />
            }
            { facts(shared, answer, FACTS) }
            { cautions(shared) }
            { assumptions(shared, &answer.remarks) }
            { workings(shared, &answer.steps) }
            { answer_tools(shared, view) }
        </>
    }
}

/// What to wear, and then what to do, in order.
fn steps<'a>(shared: &Shared, acts: impl Iterator<Item = &'a Act>) -> Vec<String> {
    let acts: Vec<&Act> = acts.collect();
    let away = acts.first() == Some(&&Act::KeepAway);
    let acts: Vec<String> = acts.into_iter().map(|act| said(shared, act)).collect();
    if away {
        // Nobody stays to put gloves on.
        return acts;
    }
    let wears =
        [shared.typed.product(), other(shared)].into_iter().flatten().map(|product| wear(shared, product));
    let mut steps: Vec<String> = wears.collect();
    steps.dedup();
    steps.extend(acts);
    steps
}

/// The product that was put in by mistake, where that is what is put right.
fn other(shared: &Shared) -> Option<&Product> {
    let station = &shared.typed.ask.station;
    let asked = station.job == Job::Rescue && station.mishap == Mishap::WrongProduct;
    shared.typed.site.products.iter().find(|product| asked && product.id == station.other)
}

/// The cautions of what is in the tank: of both products, where another one went in.
fn cautions(shared: &Shared) -> Html {
    html! { <>{ for other(shared).map(|other| caution_of(shared, other)) }{ caution_strip(shared) }</> }
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
    let reads = done.acts.is_empty() || done.acts == [Act::OtherMachine];
    if done.acts.first() == Some(&Act::DrainAll) || reads {
        // Draining comes first and needs no figure; a reading has only what was read.
        return if reads { figure(names::STATION_STRENGTH, "station-read") } else { None };
    }
    if let Some(Act::Drain(_)) = done.acts.first() {
        return figure(names::STATION_DRAIN, "station-drain-first");
    }
    concentrate().or_else(|| figure(names::STATION_WATER, "station-add-water"))
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
        Act::OtherMachine => {
            let names: Vec<&str> = others(&shared.typed).iter().map(|one| one.name.as_str()).collect();
            match names.as_slice() {
                [] => shared.say("act-no-machine"),
                names => shared.tell("act-other-machine", &[("machines", Argument::text(names.join(", ")))]),
            }
        }
    }
}
