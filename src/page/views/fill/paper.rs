//! A fill to tick off and to hang up: the steps, and the dose at every level.

use super::amount::{counted, headline, in_measure, measured};
use crate::form::cautions::panel;
use crate::form::fill::Fill;
use crate::form::fill::levels::{Level, levels};
use crate::form::names;
use crate::page::components::{Steps, computed, computed_as};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::Dispenser;
use crate::units::{Kind, unit};
use crate::words::Argument;
use yew::prelude::*;

/// What to do, in order. The water is measured before the concentrate, whatever rounds.
pub fn steps(shared: &Shared, fill: &Fill) -> Html {
    let answer = &fill.outcome.answer;
    let Some((_, dose)) = headline(fill) else { return Html::default() };
    let (Some(product), Some(water)) = (shared.typed.product(), answer.get(names::FILL_WATER)) else {
        return Html::default();
    };
    let ppe: Vec<String> = panel(product).advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    let wear = match ppe.as_slice() {
        [] => shared.say("step-wear-none"),
        ppe => shared.tell("step-wear", &[("ppe", Argument::text(ppe.join("; ")))]),
    };
    let amount = Argument::text(in_measure(shared, fill, dose));
    let product = Argument::text(product.name.clone());
    if fill.dispenser.draws() {
        let setting = Argument::text(in_measure(shared, fill, dose));
        // The machine adds to the water; a wall unit fills up with the solution.
        let total = if fill.dispenser == Dispenser::Wall { answer.get(names::FILL_TOTAL) } else { None };
        let total = total.unwrap_or(water);
        let steps = vec![
            wear,
            shared.tell("step-set", &[("setting", setting)]),
            shared.tell("step-fill-up", &[("total", shared.argument(total))]),
            shared.say("step-close"),
            shared.say("step-label"),
        ];
        return html! { <Steps title={shared.say("steps")} {steps} /> };
    }
    let steps = vec![
        wear,
        shared.tell("step-water", &[("water", shared.argument(water))]),
        shared.tell("step-measure", &[("amount", amount), ("product", product)]),
        shared.say("step-add"),
        shared.say("step-rinse"),
        shared.say("step-close"),
        shared.say("step-label"),
    ];
    html! { <Steps title={shared.say("steps")} {steps} /> }
}

/// The dose at every level, for the wall.
pub fn level_table(shared: &Shared, dispenser: Dispenser) -> Html {
    if dispenser.draws() {
        return Html::default();
    }
    let line = |(index, level): (usize, Level)| {
        let name = |what: &str| format!("fill.level.{}.{what}", index + 1);
        let unit = unit(&level.entry.unit).map(|unit| unit.symbol).unwrap_or_default();
        let out = level.rounded.map(|rounded| {
            let text = match rounded.kind {
                Kind::Count => counted(shared, "count-packet", rounded),
                _ => measured(shared, dispenser, level.count, rounded),
            };
            computed_as(name("rounded"), rounded, text)
        });
        html! {
            <tr>
                <th scope="row">{ format!("{}\u{202f}{unit}", level.entry.text) }</th>
                <td>{ computed(shared, name("water"), level.water) }</td>
                <td>{ out.unwrap_or_else(|| shared.say("level-coarse").into()) }</td>
                <td>{ computed(shared, name("dose"), level.dose) }</td>
            </tr>
        }
    };
    let rows = levels(&shared.typed, shared.marks()).into_iter().enumerate().map(line).collect();
    let columns = ["column-level", "column-water", "column-concentrate", "column-exact"];
    html! {
        <details class="levels-table">
            <summary>{ shared.say("levels") }</summary>
            <p class="hint">{ shared.say("levels-hint") }</p>
            { table(shared, "levels", &columns, rows) }
        </details>
    }
}
