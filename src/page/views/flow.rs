//! Flow: which setting this floor needs.

use crate::answer::Value;
use crate::form::action::Shelf;
use crate::form::flow::{Flow, Row, work};
use crate::form::saved::View;
use crate::form::{Field, names};
use crate::page::components::{
    Amount, AnswerTools, Assumptions, CautionStrip, Computed, Fact, Glance, NumberField, Picker, Remarks,
    Stop, Troubles, Workings,
};
use crate::page::drawing::RateBars;
use crate::page::editors::{FloorEditor, MachineBasics, MachineMotion, MachineSettings, Mistakes};
use crate::page::shared::{Shared, use_shared};
use crate::trade::setting::Fit;
use crate::units::Kind;
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The view.
#[component]
pub fn FlowView() -> Html {
    let shared = use_shared();
    let flow = work(&shared.typed, shared.marks());
    let mistakes = Mistakes::of(&flow.outcome);
    let tank = mistakes.at(&Field::Tank.name());
    html! {
        <div class="view flow">
            <section class="question" aria-labelledby="flow-heading">
                <h1 id="flow-heading">{ shared.say("flow-heading") }</h1>
                <div class="fields">
                    <Picker shelf={Shelf::Machine} />
                    <Picker shelf={Shelf::Floor} />
                    <FloorEditor mistakes={mistakes.clone()} />
                    <NumberField field={Field::Tank} trouble={tank} />
                    <MachineMotion mistakes={mistakes.clone()} />
                </div>
                <MachineSettings mistakes={mistakes.clone()} />
                <MachineBasics mistakes={mistakes.clone()} />
                <Glance text={glance(&shared, &flow)} />
            </section>
            <section id="answer" class="answer" tabindex="-1" aria-label={shared.say("answer")}>
                { answer(&shared, &flow, &mistakes) }
            </section>
        </div>
    }
}

fn glance(shared: &Shared, flow: &Flow) -> String {
    match flow.outcome.answer.get(names::FLOW_SETTING) {
        Some(setting) => shared.tell("flow-setting", &[("n", shared.argument(setting))]),
        None => shared.say("glance-trouble"),
    }
}

fn answer(shared: &Shared, flow: &Flow, mistakes: &Mistakes) -> Html {
    let answer = &flow.outcome.answer;
    let Some(setting) = answer.get(names::FLOW_SETTING) else {
        return html! { <Troubles troubles={mistakes.all()} /> };
    };
    let remarks = Rc::new(answer.remarks.clone());
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
    let text = shared.tell("flow-setting", &[("n", value(names::FLOW_SETTING))]);
    html! {
        <>
            <Stop remarks={remarks.clone()} />
            <Amount name={names::FLOW_SETTING} value={setting} {text} title={shared.say("flow-amount")} {sentence} />
            <Remarks remarks={remarks.clone()} />
            { chart(flow) }
            { table(shared, flow) }
            { facts(flow) }
            <CautionStrip />
            <Assumptions {remarks} />
            <Workings steps={Rc::new(answer.steps.clone())} />
            <AnswerTools view={View::Flow} />
        </>
    }
}

fn chart(flow: &Flow) -> Html {
    let (Some(target), Some(choice)) = (flow.target, flow.choice) else { return Html::default() };
    let rates: Vec<Value> = flow.rows.iter().map(|row| Value::new(row.rate, Kind::Rate)).collect();
    html! {
        <RateBars {rates} chosen={choice.index} low={Value::new(target.low, Kind::Rate)}
            high={Value::new(target.high, Kind::Rate)} />
    }
}

fn table(shared: &Shared, flow: &Flow) -> Html {
    let cell = |row: usize, what: &str, value: Value| {
        html! { <td><Computed name={format!("flow.setting.{}.{what}", row + 1)} {value} /></td> }
    };
    let line = |(index, row): (usize, &Row)| {
        let chosen = flow.choice.is_some_and(|choice| choice.index == index);
        let fit = match row.fit {
            Fit::Short => "fit-short",
            Fit::Meets => "fit-meets",
            Fit::TooWet => "fit-too-wet",
        };
        html! {
            <tr class={chosen.then_some("chosen")}>
                <th scope="row">{ index + 1 }</th>
                { cell(index, "flow", Value::new(row.flow, Kind::Flow)) }
                { cell(index, "rate", Value::new(row.rate, Kind::Rate)) }
                { cell(index, "tank_time", Value::new(row.time, Kind::Time)) }
                { cell(index, "tank_area", Value::new(row.area, Kind::Area)) }
                <td>{ shared.say(fit) }</td>
            </tr>
        }
    };
    let heads = [
        "column-setting",
        "column-flow",
        "column-rate",
        "column-tank-time",
        "column-tank-area",
        "column-fit",
    ];
    html! {
        <div class="scroll" tabindex="0" role="region" aria-label={shared.say("flow-table")}>
            <table>
                <caption>{ shared.say("flow-table") }</caption>
                <thead><tr>{ for heads.map(|key| html! { <th scope="col">{ shared.say(key) }</th> }) }</tr></thead>
                <tbody>{ for flow.rows.iter().enumerate().map(line) }</tbody>
            </table>
        </div>
    }
}

fn facts(flow: &Flow) -> Html {
    let answer = &flow.outcome.answer;
    let figures = [
        names::FLOW_RATE,
        names::FLOW_TANK_TIME,
        names::FLOW_TANK_AREA,
        names::FLOW_FLOW,
        names::FLOW_PASSING,
        names::FLOW_SPEED,
    ];
    html! {
        <dl class="facts">
            { for figures.into_iter().filter_map(|name| Some((name, answer.get(name)?))).map(|(name, value)| html! {
                <Fact key_={format!("figure-{}", name.replace(['.', '_'], "-"))}><Computed {name} {value} /></Fact>
            }) }
        </dl>
    }
}
