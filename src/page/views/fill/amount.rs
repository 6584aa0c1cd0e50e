//! The amount of a fill, in the measure on the wall.

use crate::answer::{Answer, Value};
use crate::form::cautions::banned;
use crate::form::fill::Fill;
use crate::form::{Field, Filling, names};
use crate::page::components::{Amount, amount, computed};
use crate::page::shared::Shared;
use crate::site::Dispenser;
use crate::units::{Kind, Mass, Quantity, System, Unit, Volume, unit};
use crate::words::Argument;
use yew::prelude::*;

/// A dose as it is measured: so many strokes or caps, or so much in the jug's own unit; a setting by
/// its number.
pub fn in_measure(shared: &Shared, fill: &Fill, dose: Value) -> String {
    let n = || [("n", shared.argument(dose))];
    match (fill.dispenser, dose.kind) {
        (Dispenser::Metering, Kind::Ratio) => return shared.tell("fill-setting", &n()),
        (Dispenser::Wall, Kind::Count) => return shared.tell("fill-tip", &n()),
        (_, Kind::Count) => return counted(shared, "count-whole", dose),
        _ => {}
    }
    measured(shared, fill.dispenser, fill.outcome.answer.get(names::FILL_COUNT), dose)
}

/// A dose as so many of the measure, or in the measure's own unit.
pub fn measured(shared: &Shared, dispenser: Dispenser, count: Option<Value>, dose: Value) -> String {
    let solid = dose.kind == Kind::Mass;
    match (dispenser, count) {
        (Dispenser::Scale, Some(count)) => divisions::<Mass>(shared, Field::MeasureWeight, count),
        (Dispenser::Cup, Some(count)) if solid => divisions::<Volume>(shared, Field::MeasureStep, count),
        (Dispenser::Cup, _) | (_, None) if !solid => {
            step_unit(shared).map(|unit| shared.words.in_unit(dose.si, unit))
        }
        (_, None) => None,
        (dispenser, Some(count)) => Some(counted(shared, &format!("count-{}", dispenser.code()), count)),
    }
    .unwrap_or_else(|| shared.show(dose))
}

/// So many divisions of a scale or a jug, in its own unit.
fn divisions<Q: Quantity>(shared: &Shared, field: Field, count: Value) -> Option<String> {
    let entry = field.entry(&shared.typed)?;
    let step: Q = entry.read(field.limit(), shared.marks()).ok()?;
    Some(shared.words.in_unit(step.si() * count.si, unit(&entry.unit)?))
}

/// So many of something, by the key of its words.
pub fn counted(shared: &Shared, key: &str, count: Value) -> String {
    shared.tell(key, &[("n", Argument::number(count.si, shared.words.number(count.si)))])
}

/// The measure's own unit: what is printed on the jug.
pub fn step_unit(shared: &Shared) -> Option<&'static Unit> {
    shared.typed.measure().and_then(|measure| unit(&measure.step.unit))
}

/// What Fill is about, and the sentence that says what to do with it.
pub fn main(shared: &Shared, fill: &Fill) -> Option<Html> {
    let answer = &fill.outcome.answer;
    let (name, value) = fill.headline()?;
    if let (false, Some(dose)) = (fill.dispenser.draws(), answer.get(names::FILL_DOSE)) {
        return Some(the_amount(shared, fill, dose));
    }
    let text = in_measure(shared, fill, value);
    let (title, sentence) = match (fill.dispenser, value.kind) {
        _ if answer.remarks.iter().any(|remark| remark.code == "remark-setting-outside") => {
            ("fill-nearest", "fill-nearest-sentence")
        }
        (_, Kind::Mass | Kind::Count) if banned(&answer.remarks) && !fill.dispenser.draws() => {
            ("fill-amount", "fill-solid-banned")
        }
        _ if banned(&answer.remarks) => ("fill-amount", "fill-sentence-banned"),
        (Dispenser::Metering, _) => ("fill-setting-title", "fill-setting-sentence"),
        (Dispenser::Wall, _) => ("fill-tip-title", "fill-tip-sentence"),
        (_, Kind::Count) => ("fill-packets-title", "fill-packets-sentence"),
        _ => ("fill-powder-title", "fill-powder-sentence"),
    };
    let mut weights = [System::Us, System::Metric].map(|system| shared.words.value(value, system)).to_vec();
    weights.retain(|weight| *weight != text);
    let other = match (value.kind, answer.get(names::FILL_ROUNDED)) {
        (Kind::Mass, _) => weights.join(" · "),
        (_, Some(drawn)) => shared.words.value(drawn, System::Metric),
        _ => String::new(),
    };
    let told = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
    let drawn = told(names::FILL_ROUNDED);
    let arguments = [
        ("amount", if fill.dispenser.draws() { drawn } else { Argument::text(text.clone()) }),
        ("other", Argument::text(other.clone())),
        (
            "product",
            Argument::text(shared.typed.product().map(|product| product.name.clone()).unwrap_or_default()),
        ),
        ("water", told(names::FILL_WATER)),
        ("total", told(names::FILL_TOTAL)),
        ("ratio", told(names::FILL_ROUNDED_RATIO)),
    ];
    let sentence = shared.tell(sentence, &arguments);
    Some(amount(Amount {
        name,
        value,
        title: shared.say(title),
        sentence,
        text,
        others: if value.kind == Kind::Mass { other.into() } else { Html::default() },
    }))
}

/// The amount, its other units, and the sentence that says what to do with it.
fn the_amount(shared: &Shared, fill: &Fill, dose: Value) -> Html {
    let answer = &fill.outcome.answer;
    let (name, value) = match answer.get(names::FILL_ROUNDED) {
        Some(rounded) => (names::FILL_ROUNDED, rounded),
        None => (names::FILL_DOSE, dose),
    };
    let text = in_measure(shared, fill, value);
    let customary = if shared.system() == System::Imperial { System::Imperial } else { System::Us };
    let mut others = vec![shared.words.value(value, customary), shared.words.value(value, System::Metric)];
    // Nobody counts two hundred marks: a large dose is told in gallons too.
    let in_fills = Value { kind: Kind::Fill, ..value };
    if in_fills.kind.unit(shared.system()).is_some_and(|unit| unit.from_si(value.si) >= 1.0) {
        others.push(shared.show(in_fills));
    }
    others.retain(|other| *other != text);
    let both = others.join(" · ");
    amount(Amount {
        name,
        value,
        title: shared.say("fill-amount"),
        sentence: sentence(shared, answer, &text, &both),
        text,
        others: html! {
            <>
                { both }
                if name == names::FILL_ROUNDED {
                    { " " }{ shared.say("fill-exact") }{ " " }{ computed(shared, names::FILL_DOSE, dose) }
                }
            </>
        },
    })
}

/// What to do, in one sentence.
fn sentence(shared: &Shared, answer: &Answer, amount: &str, other: &str) -> String {
    let value = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
    let product = shared.typed.product().map(|product| product.name.clone()).unwrap_or_default();
    let key = match shared.typed.ask.filling {
        _ if banned(&answer.remarks) => "fill-sentence-banned",
        Filling::MadeUp => "fill-sentence-made-up",
        Filling::OnTop => "fill-sentence-on-top",
    };
    let rounded = answer.get(names::FILL_ROUNDED_RATIO).is_some();
    shared.tell(
        key,
        &[
            ("amount", Argument::text(amount)),
            ("other", Argument::text(other)),
            ("product", Argument::text(product)),
            ("water", value(names::FILL_WATER)),
            ("total", value(names::FILL_TOTAL)),
            ("ratio", value(if rounded { names::FILL_ROUNDED_RATIO } else { names::FILL_RATIO })),
        ],
    )
}
