//! Fill: how much concentrate goes into this fill.

use super::frame;
use crate::answer::{Answer, Value};
use crate::form::action::Shelf;
use crate::form::fill::{Fill, work};
use crate::form::saved::View;
use crate::form::{Action, Field, Filling, names};
use crate::page::components::{
    Amount, Choice, amount, answer_tools, assumptions, caution_strip, choice, computed, facts, glance,
    number_field, picker, stop, troubles, warnings, workings,
};
use crate::page::drawing::{JugAndTank, jug_and_tank};
use crate::page::editors::{label_field, machine_basics, measure_editor, product_basics};
use crate::page::shared::Shared;
use crate::site::Dispenser;
use crate::trade::governing::Aim;
use crate::units::{Kind, System, Unit, Volume, unit};
use crate::words::Argument;
use yew::prelude::*;

/// The view.
pub fn fill_view(shared: &Shared) -> Html {
    let fill = work(&shared.typed, shared.marks());
    frame(shared, "fill", question(shared, &fill), answer(shared, &fill))
}

fn question(shared: &Shared, fill: &Fill) -> Html {
    let outcome = &fill.outcome;
    html! {
        <>
            <div class="fields">
                { picker(shared, Shelf::Machine) }
                { number_field(shared, outcome, Field::Tank, None) }
                { picker(shared, Shelf::Product) }
                { label_field(shared, outcome) }
                <div>{ number_field(shared, outcome, Field::Level, None) }{ levels(shared) }</div>
                if fill.label.as_ref().is_some_and(|label| label.rule.is_range()) { { aim(shared) } }
                { picker(shared, Shelf::Measure) }
                { picker(shared, Shelf::Floor) }
            </div>
            { machine_basics(shared, outcome) }
            { product_basics(shared) }
            <details class="more">
                <summary>{ shared.say("fill-more") }</summary>
                { filling(shared) }
                { measure_editor(shared, outcome) }
            </details>
            { glance(shared, at_a_glance(shared, fill)) }
        </>
    }
}

/// The four levels that a tank's marks show.
fn levels(shared: &Shared) -> Html {
    let entry = &shared.typed.ask.level;
    let level = |share: &'static str| {
        let pressed = entry.text == share && entry.unit == "percent";
        let act = shared.act.clone();
        let onclick = move |_| {
            act.emit(Action::Unit(Field::Level, "percent".to_owned()));
            act.emit(Action::Write(Field::Level, share.to_owned()));
        };
        html! {
            <button type="button" name={format!("level-{share}")} {onclick} aria-pressed={pressed.to_string()}>
                { shared.say(&format!("fill-level-{share}")) }
            </button>
        }
    };
    html! {
        <div class="levels" role="group" aria-label={shared.say("fill-levels")}>
            { for ["25", "50", "75", "100"].map(level) }
        </div>
    }
}

fn aim(shared: &Shared) -> Html {
    let list = Choice {
        name: "fill-aim".into(),
        label: shared.say("fill-aim"),
        options: Aim::ALL
            .map(|one| (one.code().to_owned(), shared.say(&format!("aim-{}", one.code()))))
            .to_vec(),
        chosen: shared.typed.ask.aim.code().to_owned(),
        hint: None,
    };
    choice(shared, list, |code| Action::Aim(Aim::from_code(&code).unwrap_or_default()))
}

fn filling(shared: &Shared) -> Html {
    let option = |one: Filling| (one.code().to_owned(), shared.say(&format!("filling-{}", one.code())));
    let list = Choice {
        name: "fill-filling".into(),
        label: shared.say("fill-filling"),
        options: Filling::ALL.map(option).to_vec(),
        chosen: shared.typed.ask.filling.code().to_owned(),
        hint: None,
    };
    choice(shared, list, |code| Action::Filling(Filling::from_code(&code).unwrap_or_default()))
}

fn answer(shared: &Shared, fill: &Fill) -> Html {
    let answer = &fill.outcome.answer;
    if answer.stopped() {
        return html! { <>{ stop(shared, &answer.remarks) }{ caution_strip(shared) }</> };
    }
    let Some(dose) = answer.get(names::FILL_DOSE) else { return troubles(shared, &fill.outcome) };
    html! {
        <>
            { troubles(shared, &fill.outcome) }
            { the_amount(shared, fill, dose) }
            { warnings(shared, &answer.remarks) }
            { drawing(shared, fill, dose) }
            { facts(shared, answer, FACTS) }
            { caution_strip(shared) }
            { assumptions(shared, &answer.remarks) }
            { workings(shared, &answer.steps) }
            { answer_tools(shared, View::Fill) }
        </>
    }
}

const FACTS: &[&str] = &[
    names::FILL_COUNT,
    names::FILL_WATER,
    names::FILL_TOTAL,
    names::FILL_RATIO,
    names::FILL_ROUNDED_RATIO,
    names::FILL_STRENGTH,
    names::LABEL_LOW,
    names::LABEL_HIGH,
    names::MACHINE_LOW,
    names::MACHINE_HIGH,
];

fn at_a_glance(shared: &Shared, fill: &Fill) -> String {
    let answer = &fill.outcome.answer;
    match answer.get(names::FILL_ROUNDED).or(answer.get(names::FILL_DOSE)) {
        _ if answer.stopped() => shared.say("glance-stop"),
        Some(dose) => in_measure(shared, fill, dose),
        None => shared.say("glance-trouble"),
    }
}

/// A dose as it is measured: so many strokes or caps, or so much in the jug's own unit.
fn in_measure(shared: &Shared, fill: &Fill, dose: Value) -> String {
    match (fill.dispenser, fill.outcome.answer.get(names::FILL_COUNT)) {
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
fn step_unit(shared: &Shared) -> Option<&'static Unit> {
    shared.typed.measure().and_then(|measure| unit(&measure.step.unit))
}

fn the_amount(shared: &Shared, fill: &Fill, dose: Value) -> Html {
    let answer = &fill.outcome.answer;
    let (name, value) = match answer.get(names::FILL_ROUNDED) {
        Some(rounded) => (names::FILL_ROUNDED, rounded),
        None => (names::FILL_DOSE, dose),
    };
    let text = in_measure(shared, fill, value);
    let customary = if shared.system() == System::Imperial { System::Imperial } else { System::Us };
    let mut others = vec![shared.words.value(value, customary), shared.words.value(value, System::Metric)];
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

fn drawing(shared: &Shared, fill: &Fill, dose: Value) -> Html {
    let answer = &fill.outcome.answer;
    let tank = Field::Tank.entry(&shared.typed);
    let tank = tank.and_then(|tank| tank.read::<Volume>(Field::Tank.limit(), shared.marks()).ok());
    let (Some(tank), Some(total)) = (tank, answer.get(names::FILL_TOTAL)) else { return Html::default() };
    let dose = answer.get(names::FILL_ROUNDED).unwrap_or(dose);
    let step = match (answer.get(names::FILL_COUNT), fill.dispenser) {
        (Some(count), Dispenser::Cup) => Some(Value { si: dose.si / count.si, ..dose }),
        _ => None,
    };
    let unit = step_unit(shared).map(|unit| unit.code);
    jug_and_tank(shared, &JugAndTank { tank: Value::new(tank, Kind::Fill), total, dose, step, unit })
}
