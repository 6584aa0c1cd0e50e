//! A shift as tables: its machines, and of each machine the fills as whole events, the areas, every step.

use super::shown::Shown;
use crate::answer::Value;
use crate::form::shift::{Round, Row, Shift};
use crate::page::components::{computed, computed_as, unfolds};
use crate::page::drawing::act_key;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::measured;
use crate::page::views::{captioned, fit_key, table};
use crate::trade::shift::{Act, Event};
use crate::units::{Area, Kind};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// What is drawn of a shift, and how much of it.
#[derive(Clone)]
pub struct Drawn {
    /// What every part needs.
    pub shared: Shared,
    /// The shift.
    pub shift: Rc<Shift>,
    /// How much of its lists.
    pub shown: Shown,
}

fn area_name(shared: &Shared, row: &Row) -> String {
    shared.typed.site.areas.get(row.area).map(|area| area.name.clone()).unwrap_or_default()
}

/// The name of a machine, where there are several.
pub fn machine_name(shared: &Shared, shift: &Shift, round: &Round) -> Option<String> {
    let machine = shared.typed.site.machines.get(round.machine)?;
    (shift.rounds.len() > 1).then(|| machine.name.clone())
}

fn product_name(shared: &Shared, row: &Row) -> String {
    shared.typed.site.products.get(row.product).map(|product| product.name.clone()).unwrap_or_default()
}

/// A table of one machine, which its caption names where there are several.
fn of_round(
    Drawn { shared, shift, shown }: &Drawn,
    round: &Round,
    key: &str,
    columns: &[&str],
    count: usize,
    row: impl Fn(usize) -> Html,
) -> Html {
    let caption = match machine_name(shared, shift, round) {
        Some(machine) => {
            let what = Argument::text(shared.say(key));
            shared.tell("table-of-machine", &[("what", what), ("machine", Argument::text(machine))])
        }
        None => shared.say(key),
    };
    html! {
        <>
            { captioned(shared, caption, columns, shown.rows(count, row)) }
            { shown.rest(shared, count) }
        </>
    }
}

/// Each machine with how many of something the machines before it have: figures are counted through.
fn counted(shift: &Shift, of: fn(&Round) -> usize) -> impl Iterator<Item = (&Round, usize)> {
    let mut before = 0;
    shift.rounds.iter().map(move |round| {
        let here = before;
        before += of(round);
        (round, here)
    })
}

/// When, where, and how much water and concentrate.
pub fn fills(drawn: &Drawn) -> Html {
    let Drawn { shared, shift, .. } = drawn;
    // Where the shift takes one product, the heading names it.
    let several = shift.rows.iter().any(|row| row.product != shift.rows[0].product);
    let by_hand = shared.typed.measure().is_none_or(|measure| measure.dispenser.steps());
    let dispenser = shared.typed.measure().map(|measure| measure.dispenser).unwrap_or_default();
    // What is read in a hurry stands first: a phone shows the rest when it is pushed aside.
    let mut columns = vec!["column-fill", "column-at", "column-water", "column-concentrate", "column-area"];
    columns.extend(several.then_some("column-product"));
    columns.extend(["column-exact", "column-makes"]);
    let tables = counted(shift, |round| round.plan.fills.len()).map(|(round, before)| {
        let line = |index: usize| {
            let fill = &round.plan.fills[index];
            let row = &shift.rows[round.rows[fill.task]];
            let name = |what: &str| format!("shift.fill.{}.{what}", before + index + 1);
            let cell = |what: &str, value: Value| html! { <td>{ computed(shared, name(what), value) }</td> };
            // In the middle of an area it says how far.
            let after = (fill.after > Area::ZERO).then(|| {
                let done = computed(shared, name("after"), Value::new(fill.after, Kind::Area));
                html! { <>{ " " }{ shared.say("fill-after") }{ " " }{ done }</> }
            });
            let makes = round.makes(index).map(|parts| Value::plain(parts, Kind::Ratio));
            let out = round.rounded[index].map(|rounded| {
                let dose = Value::new(rounded.dose, Kind::Dose);
                let count = Value::plain(rounded.count, Kind::Count);
                computed_as(name("rounded"), dose, measured(shared, dispenser, Some(count), dose))
            });
            html! {
                <tr>
                    <th scope="row">{ index + 1 }</th>
                    { cell("at", Value::new(fill.at, Kind::Time)) }
                    { cell("water", Value::new(fill.solution - fill.concentrate, Kind::Fill)) }
                    <td>{ out.or_else(|| by_hand.then(|| shared.say("level-coarse").into())) }</td>
                    <td>{ area_name(shared, row) }{ for after }</td>
                    if several { <td>{ product_name(shared, row) }</td> }
                    { cell("concentrate", Value::new(fill.concentrate, Kind::Dose)) }
                    <td>{ for makes.map(|ratio| computed_as(name("makes"), ratio, ratio_text(shared, ratio))) }</td>
                </tr>
            }
        };
        of_round(drawn, round, "shift-fill-table", &columns, round.plan.fills.len(), line)
    });
    let told = (!by_hand).then(|| html! { <p class="hint">{ shared.say("shift-measure-none") }</p> });
    html! { <>{ for told }{ for tables }</> }
}

fn ratio_text(shared: &Shared, ratio: Value) -> String {
    shared.tell("one-to", &[("n", shared.argument(ratio))])
}

/// Every step of the shift, as the timeline draws it.
pub fn steps(drawn: &Drawn) -> Html {
    unfolds(&drawn.shared, "more", "shift-steps", drawn.clone(), each_step)
}

fn each_step(drawn: &Drawn) -> Html {
    let Drawn { shared, shift, .. } = drawn;
    let columns = ["column-at", "column-step", "column-area", "column-lasts"];
    let tables = counted(shift, |round| round.plan.events.len()).map(|(round, before)| {
        let line = |index: usize| {
            let Event { act, task, from, lasts } = round.plan.events[index];
            let name = |what: &str| format!("shift.step.{}.{what}", before + index + 1);
            let time = |what: &str, time| computed(shared, name(what), Value::new(time, Kind::Time));
            let fill = match act {
                Act::Refill(index) | Act::Change(index) => format!(" {}", index + 1),
                _ => String::new(),
            };
            html! {
                <tr>
                    <td>{ time("from", from) }</td>
                    <th scope="row">{ shared.say(act_key(act)) }{ fill }</th>
                    <td>{ area_name(shared, &shift.rows[round.rows[task]]) }</td>
                    <td>{ time("lasts", lasts) }</td>
                </tr>
            }
        };
        of_round(drawn, round, "shift-step-table", &columns, round.plan.events.len(), line)
    });
    html! { { for tables } }
}

/// Setting, time and solution of each area.
pub fn areas(drawn: &Drawn) -> Html {
    let Drawn { shared, shift, .. } = drawn;
    let heavy = shift.rows.iter().any(|row| row.passes > 1.0);
    let mut columns = vec!["column-area", "column-setting", "column-fit"];
    columns.extend(heavy.then_some("column-passes"));
    columns.extend(["column-rate", "column-run", "column-solution"]);
    let tables = shift.rounds.iter().map(|round| {
        let line = |task: usize| {
            let index = round.rows[task];
            let row = &shift.rows[index];
            let name = |what: &str| format!("shift.area.{}.{what}", index + 1);
            let cell = |what: &str, value: Value| html! { <td>{ computed(shared, name(what), value) }</td> };
            html! {
                <tr>
                    <th scope="row"><span class="number">{ index + 1 }</span>{ area_name(shared, row) }</th>
                    { cell("setting", Value::plain(row.setting as f64, Kind::Count)) }
                    <td>{ shared.say(fit_key(row.fit)) }</td>
                    if heavy { { cell("passes", Value::plain(row.passes, Kind::Count)) } }
                    { cell("rate", Value::new(row.rate, Kind::Rate)) }
                    { cell("run_time", Value::new(row.run(), Kind::Time)) }
                    { cell("solution", Value::new(row.solution(), Kind::Fill)) }
                </tr>
            }
        };
        of_round(drawn, round, "shift-area-table", &columns, round.rows.len(), line)
    });
    html! { { for tables } }
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
                <th scope="row">{ machine_name(shared, shift, round) }</th>
                { cell("areas", Value::plain(round.rows.len() as f64, Kind::Count)) }
                { cell("fills", Value::plain(round.plan.fills.len() as f64, Kind::Count)) }
                { cell("run_time", Value::new(round.plan.run_time(), Kind::Time)) }
                { cell("total_time", Value::new(round.plan.total, Kind::Time)) }
                { cell("labour", Value::new(round.labour(), Kind::Time)) }
            </tr>
        }
    });
    let columns =
        ["column-machine", "column-areas", "column-fills", "column-run", "column-ends", "column-labour"];
    table(shared, "shift-machine-table", &columns, rows.collect())
}
