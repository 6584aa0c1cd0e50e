//! What was spent.

use super::{Seen, question};
use crate::answer::Value;
use crate::form::log::asked::{CostRow, costs as ask};
use crate::form::names;
use crate::page::components::{computed, facts};
use crate::page::drawing::{Bar, bars};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::log::Current;
use crate::units::{Kind, Quantity};
use yew::prelude::*;

const FACTS: &[&str] = &[names::LOG_COST, names::LOG_COST_CONCENTRATE, names::LOG_COST_WATER];

/// The question.
pub fn costs(seen: &Seen, fills: &[&Current]) -> Html {
    let shared = &seen.shared;
    let found = ask(fills.iter().copied(), &shared.typed, shared.marks());
    let money = |cost| Value::new(cost, Kind::Money);
    let mut drawn: Vec<Bar> = found
        .rows
        .iter()
        .filter_map(|row| Some((row, row.cost?)))
        .map(|(row, cost)| Bar {
            name: row.name.clone(),
            text: shared.show(money(cost)),
            length: cost.si(),
            mark: None,
        })
        .collect();
    drawn.sort_by(|a, b| b.length.total_cmp(&a.length));
    drawn.truncate(12);
    let columns = [
        "log-column-product",
        "log-column-used",
        "log-column-price",
        "log-column-cost",
        "log-column-uncounted",
    ];
    let rows = found.rows.iter().enumerate().map(|(index, row)| line(shared, index + 1, row)).collect();
    let has = found.told.answer.get(names::LOG_COST).is_some();
    question(
        shared,
        "cost",
        &found.told,
        html! {
            if has {
                { facts(shared, &found.told.answer, FACTS) }
                if !drawn.is_empty() { { bars(&shared.say("ask-cost-picture"), &drawn) } }
                { table(shared, "ask-cost-table", &columns, rows) }
            }
        },
    )
}

fn line(shared: &Shared, index: usize, row: &CostRow) -> Html {
    let cost =
        row.cost.map(|cost| computed(shared, format!("log.cost.{index}"), Value::new(cost, Kind::Money)));
    html! {
        <tr>
            <th scope="row">{ &row.name }</th>
            <td>{ shared.show(Value::new(row.used, Kind::Fill)) }</td>
            <td>{ for row.price.map(|price| shared.show(Value::new(price, Kind::VolumePrice))) }</td>
            <td>{ for cost }</td>
            <td>{ row.unknown }</td>
        </tr>
    }
}
