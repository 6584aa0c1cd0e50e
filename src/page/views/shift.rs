//! Shift: areas in, fills, gallons and hours out.

use crate::answer::Value;
use crate::form::action::{Line, Shelf};
use crate::form::saved::View;
use crate::form::shift::{Shift, work};
use crate::form::{Action, Field, names};
use crate::page::components::{
    Amount, AnswerTools, Assumptions, CautionStrip, Choice, Computed, Fact, Glance, LineField, NumberField,
    Picker, Remarks, Stop, Switch, Troubles, Workings, named,
};
use crate::page::editors::{LabelField, MachineBasics, MachineMotion, MachineSettings, Mistakes};
use crate::page::shared::{Shared, use_shared};
use crate::site::Area;
use crate::trade::setting::Fit;
use crate::units::Kind;
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The view.
#[component]
pub fn ShiftView() -> Html {
    let shared = use_shared();
    let shift = work(&shared.typed, shared.marks());
    let mistakes = Mistakes::of(&shift.outcome);
    let number = |field: Field| html! { <NumberField {field} trouble={mistakes.at(&field.name())} /> };
    html! {
        <div class="view shift">
            <section class="question" aria-labelledby="shift-heading">
                <h1 id="shift-heading">{ shared.say("shift-heading") }</h1>
                <div class="fields">
                    <Picker shelf={Shelf::Machine} />
                    <Picker shelf={Shelf::Product} />
                    { number(Field::Tank) }
                    <LabelField mistakes={mistakes.clone()} />
                    { number(Field::Refill) }
                </div>
                { areas(&shared, &mistakes) }
                <details class="more">
                    <summary>{ shared.say("shift-more") }</summary>
                    <div class="fields"><MachineMotion mistakes={mistakes.clone()} efficiency=true /></div>
                    <MachineSettings mistakes={mistakes.clone()} />
                </details>
                <MachineBasics mistakes={mistakes.clone()} />
                <Glance text={glance(&shared, &shift)} />
            </section>
            <section id="answer" class="answer" tabindex="-1" aria-label={shared.say("answer")}>
                { answer(&shared, &shift, &mistakes) }
            </section>
        </div>
    }
}

fn areas(shared: &Shared, mistakes: &Mistakes) -> Html {
    let floors = named(shared, Shelf::Floor, &shared.typed.site.floors);
    let row = |(index, area): (usize, &Area)| {
        let number = index + 1;
        let field = Field::AreaSize(index);
        let of = |key: &str| shared.tell(key, &[("area", Argument::text(area.name.clone()))]);
        html! {
            <li class="area" key={area.id.clone()}>
                <Switch name={format!("area-{number}-included")} key_="area-included" on={area.included}
                    label={of("area-included")} onswitch={shared.on(move |on| Action::Include(index, on))} />
                <div class="fields">
                    <LineField line={Line::AreaName(index)} name={format!("area-{number}-name")} key_="area-name"
                        value={area.name.clone()} />
                    <NumberField {field} trouble={mistakes.at(&field.name())} />
                    <Choice name={format!("area-{number}-floor")} label={shared.say("area-floor")} options={floors.clone()}
                        chosen={area.floor.clone()} onchoose={shared.on(move |id| Action::AreaFloor(index, id))} />
                </div>
                <div class="buttons">
                    if index > 0 {
                        <button type="button" name={format!("area-{number}-up")} aria-label={of("area-up-of")}
                            onclick={shared.on(move |_| Action::MoveUp(index))}>{ shared.say("area-up") }</button>
                    }
                    <button type="button" name={format!("area-{number}-remove")} aria-label={of("area-remove-of")}
                        onclick={shared.on(move |_| Action::Remove(Shelf::Area, index))}>{ shared.say("area-remove") }</button>
                </div>
            </li>
        }
    };
    html! {
        <section class="areas" aria-labelledby="areas-heading">
            <h2 id="areas-heading">{ shared.say("areas-heading") }</h2>
            <ol>{ for shared.typed.site.areas.iter().enumerate().map(row) }</ol>
            <div class="buttons">
                <button type="button" id="area-add" name="area-add" onclick={shared.on(|_| Action::Add(Shelf::Area))}>
                    { shared.say("area-add") }
                </button>
            </div>
        </section>
    }
}

fn glance(shared: &Shared, shift: &Shift) -> String {
    let answer = &shift.outcome.answer;
    match answer.get(names::SHIFT_SOLUTION) {
        _ if answer.stopped() => shared.say("glance-stop"),
        Some(solution) => shared.show(solution),
        None => shared.say("glance-trouble"),
    }
}

fn answer(shared: &Shared, shift: &Shift, mistakes: &Mistakes) -> Html {
    let answer = &shift.outcome.answer;
    let remarks = Rc::new(answer.remarks.clone());
    if answer.stopped() {
        return html! { <><Stop {remarks} /><CautionStrip /></> };
    }
    let (Some(solution), Some(fills)) = (answer.get(names::SHIFT_SOLUTION), answer.get(names::SHIFT_FILLS))
    else {
        return html! { <Troubles troubles={mistakes.all()} /> };
    };
    let value = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
    let sentence = shared.tell(
        "shift-sentence",
        &[
            ("fills", Argument::number(fills.si, shared.words.number(fills.si))),
            ("water", value(names::SHIFT_WATER)),
            ("concentrate", value(names::SHIFT_CONCENTRATE)),
            ("run", value(names::SHIFT_RUN_TIME)),
            ("total", value(names::SHIFT_TOTAL_TIME)),
        ],
    );
    let count =
        shared.tell("shift-fills", &[("n", Argument::number(fills.si, shared.words.number(fills.si)))]);
    html! {
        <>
            <Amount name={names::SHIFT_SOLUTION} value={solution} title={shared.say("shift-amount")} {sentence}>
                <Computed name={names::SHIFT_FILLS} value={fills} text={count} />
            </Amount>
            <Remarks remarks={remarks.clone()} />
            { fill_table(shared, shift) }
            { area_table(shared, shift) }
            { facts(shift) }
            <CautionStrip />
            <Assumptions {remarks} />
            <Workings steps={Rc::new(answer.steps.clone())} />
            <AnswerTools view={View::Shift} />
        </>
    }
}

fn area_name(shared: &Shared, shift: &Shift, row: usize) -> String {
    let area = shift.rows.get(row).and_then(|row| shared.typed.site.areas.get(row.area));
    area.map(|area| area.name.clone()).unwrap_or_default()
}

fn table(shared: &Shared, caption: &str, heads: &[&str], body: Html) -> Html {
    html! {
        <div class="scroll" tabindex="0" role="region" aria-label={shared.say(caption)}>
            <table>
                <caption>{ shared.say(caption) }</caption>
                <thead><tr>{ for heads.iter().map(|key| html! { <th scope="col">{ shared.say(key) }</th> }) }</tr></thead>
                <tbody>{ body }</tbody>
            </table>
        </div>
    }
}

/// The fills as whole events: when, where, how much water and concentrate.
fn fill_table(shared: &Shared, shift: &Shift) -> Html {
    let Some(plan) = &shift.plan else { return Html::default() };
    let rows = plan.fills.iter().enumerate().map(|(index, fill)| {
        let number = index + 1;
        let cell = |what: &str, value: Value| {
            html! { <td><Computed name={format!("shift.fill.{number}.{what}")} {value} /></td> }
        };
        html! {
            <tr>
                <th scope="row">{ number }</th>
                { cell("at", Value::new(fill.at, Kind::Time)) }
                <td>{ area_name(shared, shift, fill.task) }</td>
                { cell("after", Value::new(fill.after, Kind::Area)) }
                { cell("water", Value::new(fill.solution - fill.concentrate, Kind::Fill)) }
                { cell("concentrate", Value::new(fill.concentrate, Kind::Dose)) }
            </tr>
        }
    });
    let heads =
        ["column-fill", "column-at", "column-area", "column-after", "column-water", "column-concentrate"];
    table(shared, "shift-fill-table", &heads, html! { { for rows } })
}

fn area_table(shared: &Shared, shift: &Shift) -> Html {
    let rows = shift.rows.iter().enumerate().map(|(index, row)| {
        let number = index + 1;
        let cell = |what: &str, value: Value| {
            html! { <td><Computed name={format!("shift.area.{number}.{what}")} {value} /></td> }
        };
        let fit = match row.fit {
            Fit::Short => "fit-short",
            Fit::Meets => "fit-meets",
            Fit::TooWet => "fit-too-wet",
        };
        html! {
            <tr>
                <th scope="row">{ area_name(shared, shift, index) }</th>
                { cell("size", Value::new(row.size, Kind::Area)) }
                { cell("setting", Value::plain(row.setting as f64, Kind::Count)) }
                { cell("rate", Value::new(row.rate, Kind::Rate)) }
                { cell("run_time", Value::new(row.run, Kind::Time)) }
                { cell("solution", Value::new(row.solution, Kind::Fill)) }
                <td>{ shared.say(fit) }</td>
            </tr>
        }
    });
    let heads = [
        "column-area",
        "column-size",
        "column-setting",
        "column-rate",
        "column-run",
        "column-solution",
        "column-fit",
    ];
    table(shared, "shift-area-table", &heads, html! { { for rows } })
}

fn facts(shift: &Shift) -> Html {
    let answer = &shift.outcome.answer;
    let figures = [
        names::SHIFT_AREA,
        names::SHIFT_RUN_TIME,
        names::SHIFT_TOTAL_TIME,
        names::SHIFT_WATER,
        names::SHIFT_CONCENTRATE,
    ];
    html! {
        <dl class="facts">
            { for figures.into_iter().filter_map(|name| Some((name, answer.get(name)?))).map(|(name, value)| html! {
                <Fact key_={format!("figure-{}", name.replace(['.', '_'], "-"))}><Computed {name} {value} /></Fact>
            }) }
        </dl>
    }
}
