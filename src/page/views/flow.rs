//! Flow: which setting this floor needs.

mod calibrate;

use super::{fit_key, frame, table};
use crate::answer::Value;
use crate::form::action::Shelf;
use crate::form::flow::{Flow, Row, work};
use crate::form::saved::View;
use crate::form::{Field, Outcome, names};
use crate::page::components::{
    Amount, amount, answer_tools, assumptions, caution_strip, computed, facts, fold, glance, later,
    number_field, picker, stop, troubles, troubles_beside, warnings, workings,
};
use crate::page::drawing::{RateBars, rate_bars};
use crate::page::editors::{floor_editor, machine_basics, machine_motion, machine_settings};
use crate::page::shared::Shared;
use crate::units::Kind;
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The view.
pub fn flow_view(shared: &Shared) -> Html {
    let flow = Rc::new(work(&shared.typed, shared.marks()));
    let outcome = &flow.outcome;
    let pickers = html! {
        <>
            <div class="wide">{ picker(shared, Shelf::Machine) }</div>
            <div class="wide">{ picker(shared, Shelf::Floor) }</div>
        </>
    };
    if shared.locked {
        let question = html! { <div class="fields">{ pickers }</div> };
        return frame(shared, "flow", question, answer(shared, &flow));
    }
    let question = html! {
        <>
            { glance(shared, at_a_glance(shared, &flow)) }
            <div class="fields">
                { pickers }
                { floor_editor(shared, outcome) }
                { number_field(shared, outcome, Field::Tank, None) }
                { machine_motion(shared, outcome) }
            </div>
            { machine_settings(shared, outcome) }
            { calibrate::calibrate(shared) }
            { fold(shared, outcome, "flow-room", ROOM, room) }
            { machine_basics(shared, outcome) }
        </>
    };
    frame(shared, "flow", question, answer(shared, &flow))
}

/// The inputs of drying, or how their names begin.
const ROOM: &[&str] = &["air-", "machine-pick-up", "machine-head"];

/// What dries the floor, and what fades the flow.
fn room(shared: &Shared, outcome: &Outcome) -> Html {
    let fields =
        [Field::PickUp, Field::Air, Field::Humidity, Field::Draught, Field::HeadFull, Field::HeadLow];
    html! { <div class="fields">{ for fields.map(|field| number_field(shared, outcome, field, None)) }</div> }
}

fn at_a_glance(shared: &Shared, flow: &Flow) -> String {
    match flow.outcome.answer.get(names::FLOW_SETTING) {
        _ if flow.outcome.answer.stopped() => shared.say("glance-stop"),
        Some(setting) => shared.tell("flow-setting", &[("n", shared.argument(setting))]),
        None => shared.say("glance-trouble"),
    }
}

fn answer(shared: &Shared, flow: &Rc<Flow>) -> Html {
    let answer = &flow.outcome.answer;
    if answer.stopped() {
        return html! { <>{ stop(shared, &answer.remarks) }{ caution_strip(shared) }</> };
    }
    let Some(setting) = answer.get(names::FLOW_SETTING) else { return troubles(shared, &flow.outcome) };
    let value = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
    let floor = shared.typed.floor().map(|floor| floor.name.clone()).unwrap_or_default();
    let sentence = shared.tell(
        "flow-sentence",
        &[
            ("setting", value(names::FLOW_SETTING)),
            ("floor", Argument::text(floor)),
            ("rate", value(names::FLOW_RATE)),
            ("time", value(names::FLOW_TANK_TIME)),
            ("area", value(names::FLOW_TANK_AREA)),
        ],
    );
    let number = Amount {
        name: names::FLOW_SETTING,
        value: setting,
        text: shared.tell("flow-setting", &[("n", value(names::FLOW_SETTING))]),
        title: shared.say("flow-amount"),
        sentence,
        others: Html::default(),
    };
    html! {
        <>
            { troubles_beside(shared, &flow.outcome) }
            { amount(number) }
            { warnings(shared, &answer.remarks) }
            { chart(shared, flow) }
            { later("flow-behind", (shared.clone(), flow.clone()), |(shared, flow)| behind(shared, flow)) }
        </>
    }
}

/// What stands behind the answer.
fn behind(shared: &Shared, flow: &Flow) -> Html {
    let answer = &flow.outcome.answer;
    html! {
        <>
            { settings(shared, flow) }
            { facts(shared, answer, FACTS) }
            { caution_strip(shared) }
            { assumptions(shared, &answer.remarks) }
            { workings(shared, &answer.steps) }
            { answer_tools(shared, View::Flow) }
        </>
    }
}

const FACTS: &[&str] = &[
    names::FLOW_RATE,
    names::FLOW_THICKNESS,
    names::FLOW_TANK_TIME,
    names::FLOW_TANK_AREA,
    names::FLOW_FLOW,
    names::FLOW_PASSING,
    names::FLOW_SPEED,
    names::FLOW_PASSES,
    names::FLOW_PASSES_SETTING,
    names::FLOW_FILM,
    names::FLOW_FILM_THICKNESS,
    names::FLOW_DRY_FROM,
    names::FLOW_DRY_TO,
    names::FLOW_FULL,
    names::FLOW_HALF,
    names::FLOW_LAST,
];

fn chart(shared: &Shared, flow: &Flow) -> Html {
    let (Some(target), Some(choice)) = (flow.target, flow.choice) else { return Html::default() };
    let rate = |rate| Value::new(rate, Kind::Rate);
    let rates = flow.rows.iter().map(|row| rate(row.rate)).collect();
    rate_bars(
        shared,
        &RateBars { rates, chosen: Some(choice.index), low: rate(target.low), high: rate(target.high) },
    )
}

fn settings(shared: &Shared, flow: &Flow) -> Html {
    let line = |(index, row): (usize, &Row)| {
        let chosen = flow.choice.is_some_and(|choice| choice.index == index);
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("flow.setting.{}.{what}", index + 1), value) }</td> }
        };
        html! {
            <tr class={chosen.then_some("chosen")}>
                <th scope="row">{ index + 1 }</th>
                <td>{ shared.say(fit_key(row.fit)) }</td>
                { cell("tank_time", Value::new(row.time, Kind::Time)) }
                { cell("tank_area", Value::new(row.area, Kind::Area)) }
                { cell("rate", Value::new(row.rate, Kind::Rate)) }
            </tr>
        }
    };
    let columns = ["column-setting", "column-fit", "column-tank-time", "column-tank-area", "column-rate"];
    table(shared, "flow-table", &columns, flow.rows.iter().enumerate().map(line).collect())
}
