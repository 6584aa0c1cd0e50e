//! The amount of a fill, in the measure on the wall.

use crate::answer::{Answer, Value};
use crate::form::cautions::banned;
use crate::form::fill::Fill;
use crate::form::{Filling, names};
use crate::page::components::{Amount, amount, computed};
use crate::page::shared::Shared;
use crate::site::Dispenser;
use crate::units::{Kind, System, Unit, unit};
use crate::words::Argument;
use yew::prelude::*;

/// A dose as it is measured: so many strokes or caps, or so much in the jug's own unit.
pub fn in_measure(shared: &Shared, fill: &Fill, dose: Value) -> String {
    measured(shared, fill.dispenser, fill.outcome.answer.get(names::FILL_COUNT), dose)
}

/// A dose as so many of the measure, or in the measure's own unit.
pub fn measured(shared: &Shared, dispenser: Dispenser, count: Option<Value>, dose: Value) -> String {
    match (dispenser, count) {
        (Dispenser::Cup, _) | (_, None) => {
            step_unit(shared).map_or_else(|| shared.show(dose), |unit| shared.words.in_unit(dose.si, unit))
        }
        (dispenser, Some(count)) => {
            let n = Argument::number(count.si, shared.words.number(count.si));
            shared.tell(&format!("count-{}", dispenser.code()), &[("n", n)])
        }
    }
}

/// The measure's own unit: what is printed on the jug.
pub fn step_unit(shared: &Shared) -> Option<&'static Unit> {
    shared.typed.measure().and_then(|measure| unit(&measure.step.unit))
}

/// The amount, its other units, and the sentence that says what to do with it.
pub fn the_amount(shared: &Shared, fill: &Fill, dose: Value) -> Html {
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
