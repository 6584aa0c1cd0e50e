//! A shift as tables: its fills as whole events, its steps, its areas and its machines.

use crate::answer::Value;
use crate::form::shift::{Round, Row, Shift};
use crate::page::components::{computed, computed_as};
use crate::page::drawing::act_key;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::measured;
use crate::page::views::{fit_key, table};
use crate::trade::shift::{Act, Event};
use crate::units::Kind;
use yew::prelude::*;

fn area_name(shared: &Shared, row: &Row) -> String {
    shared.typed.site.areas.get(row.area).map(|area| area.name.clone()).unwrap_or_default()
}

fn machine_name(shared: &Shared, machine: usize) -> String {
    shared.typed.site.machines.get(machine).map(|machine| machine.name.clone()).unwrap_or_default()
}

fn product_name(shared: &Shared, row: &Row) -> String {
    shared.typed.site.products.get(row.product).map(|product| product.name.clone()).unwrap_or_default()
}

/// Each thing of each machine with what came before it counted.
fn each<'a, T: 'a>(
    shift: &'a Shift,
    list: fn(&'a Round) -> &'a [T],
) -> impl Iterator<Item = (usize, &'a Round, usize, &'a T)> {
    let of_round = move |round| list(round).iter().enumerate().map(move |(index, one)| (round, index, one));
    let all = shift.rounds.iter().flat_map(of_round);
    all.enumerate().map(|(number, (round, index, one))| (number + 1, round, index, one))
}

/// When, where, and how much water and concentrate.
pub fn fills(shared: &Shared, shift: &Shift) -> Html {
    // Where the shift takes one product, the heading names it.
    let several = shift.rows.iter().any(|row| row.product != shift.rows[0].product);
    let machines = shift.rounds.len() > 1;
    let by_hand = shared.typed.measure().is_none_or(|measure| measure.dispenser.steps());
    let dispenser = shared.typed.measure().map(|measure| measure.dispenser).unwrap_or_default();
    let rows = each(shift, |round| &round.plan.fills).map(|(number, round, index, fill)| {
        let row = &shift.rows[round.rows[fill.task]];
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("shift.fill.{number}.{what}"), value) }</td> }
        };
        let out = round.rounded[index].map(|rounded| {
            let dose = Value::new(rounded.dose, Kind::Dose);
            let count = Value::plain(rounded.count, Kind::Count);
            let text = measured(shared, dispenser, Some(count), dose);
            computed_as(format!("shift.fill.{number}.rounded"), dose, text)
        });
        html! {
            <tr>
                <th scope="row">{ index + 1 }</th>
                if machines { <td>{ machine_name(shared, round.machine) }</td> }
                { cell("water", Value::new(fill.solution - fill.concentrate, Kind::Fill)) }
                <td>{ out.or_else(|| by_hand.then(|| shared.say("level-coarse").into())) }</td>
                { cell("concentrate", Value::new(fill.concentrate, Kind::Dose)) }
                { cell("at", Value::new(fill.at, Kind::Time)) }
                <td>{ area_name(shared, row) }</td>
                if several { <td>{ product_name(shared, row) }</td> }
                { cell("after", Value::new(fill.after, Kind::Area)) }
            </tr>
        }
    });
    let mut columns = vec!["column-fill"];
    columns.extend(machines.then_some("column-machine"));
    columns.extend(["column-water", "column-concentrate", "column-exact", "column-at", "column-area"]);
    columns.extend(several.then_some("column-product"));
    columns.push("column-after");
    let told = (!by_hand).then(|| html! { <p class="hint">{ shared.say("shift-measure-none") }</p> });
    let shown = table(shared, "shift-fill-table", &columns, rows.collect());
    html! { <>{ for told }{ shown }</> }
}

/// Every step of the shift, as the timeline draws it.
pub fn steps(shared: &Shared, shift: &Shift) -> Html {
    let machines = shift.rounds.len() > 1;
    let rows = each(shift, |round| &round.plan.events).map(|(number, round, _, event)| {
        let Event { act, task, from, lasts } = *event;
        let row = &shift.rows[round.rows[task]];
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("shift.step.{number}.{what}"), value) }</td> }
        };
        let fill = match act {
            Act::Refill(index) | Act::Change(index) => format!(" {}", index + 1),
            _ => String::new(),
        };
        html! {
            <tr>
                { cell("from", Value::new(from, Kind::Time)) }
                if machines { <td>{ machine_name(shared, round.machine) }</td> }
                <th scope="row">{ shared.say(act_key(act)) }{ fill }</th>
                <td>{ area_name(shared, row) }</td>
                { cell("lasts", Value::new(lasts, Kind::Time)) }
            </tr>
        }
    });
    let mut columns = vec!["column-at"];
    columns.extend(machines.then_some("column-machine"));
    columns.extend(["column-step", "column-area", "column-lasts"]);
    html! {
        <details class="more">
            <summary>{ shared.say("shift-steps") }</summary>
            { table(shared, "shift-step-table", &columns, rows.collect()) }
        </details>
    }
}

/// Setting, time and solution of each area.
pub fn areas(shared: &Shared, shift: &Shift) -> Html {
    let machines = shift.rounds.len() > 1;
    let heavy = shift.rows.iter().any(|row| row.passes > 1.0);
    let rows = shift.rows.iter().enumerate().map(|(index, row)| {
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("shift.area.{}.{what}", index + 1), value) }</td> }
        };
        html! {
            <tr>
                <th scope="row">{ format!("{} {}", index + 1, area_name(shared, row)) }</th>
                if machines { <td>{ machine_name(shared, row.machine) }</td> }
                { cell("setting", Value::plain(row.setting as f64, Kind::Count)) }
                <td>{ shared.say(fit_key(row.fit)) }</td>
                if heavy { { cell("passes", Value::plain(row.passes, Kind::Count)) } }
                { cell("rate", Value::new(row.rate, Kind::Rate)) }
                { cell("run_time", Value::new(row.run(), Kind::Time)) }
                { cell("solution", Value::new(row.solution(), Kind::Fill)) }
            </tr>
        }
    });
    let mut columns = vec!["column-area"];
    columns.extend(machines.then_some("column-machine"));
    columns.extend(["column-setting", "column-fit"]);
    columns.extend(heavy.then_some("column-passes"));
    columns.extend(["column-rate", "column-run", "column-solution"]);
    table(shared, "shift-area-table", &columns, rows.collect())
}

/// What each of several machines does.
pub fn machines(shared: &Shared, shift: &Shift) -> Html {
    if shift.rounds.len() < 2 {
        return Html::default();
    }
    let rows = shift.rounds.iter().enumerate().map(|(index, round)| {
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("shift.machine.{}.{what}", index + 1), value) }</td> }
        };
        html! {
            <tr>
                <th scope="row">{ machine_name(shared, round.machine) }</th>
                { cell("areas", Value::plain(round.rows.len() as f64, Kind::Count)) }
                { cell("fills", Value::plain(round.plan.fills.len() as f64, Kind::Count)) }
                { cell("run_time", Value::new(round.plan.run_time(), Kind::Time)) }
                { cell("total_time", Value::new(round.plan.total, Kind::Time)) }
                { cell("labour", Value::new(round.labour, Kind::Time)) }
            </tr>
        }
    });
    let columns =
        ["column-machine", "column-areas", "column-fills", "column-run", "column-ends", "column-labour"];
    table(shared, "shift-machine-table", &columns, rows.collect())
}
