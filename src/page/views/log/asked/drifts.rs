//! Whether readings wander.

use super::{Seen, question};
use crate::form::log::asked::{DriftRow, FEWEST_READINGS, drifts as ask};
use crate::page::components::computed;
use crate::page::drawing::drift_line;
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::log::Current;
use crate::words::Argument;
use yew::prelude::*;

/// The question.
pub fn drifts(seen: &Seen, fills: &[&Current]) -> Html {
    let shared = &seen.shared;
    let found = ask(fills.iter().copied());
    let columns = [
        "log-column-recipe",
        "log-column-readings",
        "log-column-mean",
        "log-column-week",
        "log-column-doubt",
        "log-column-says",
    ];
    let picture = found.rows.iter().find(|row| row.line.is_some());
    let rows = found.rows.iter().enumerate().map(|(index, row)| line(shared, index + 1, row)).collect();
    question(
        shared,
        "drift",
        &found.told,
        html! {
            <>
                { for picture.map(|row| html! { <>{ drift_line(shared, row) }<p class="legend">{ shared.say("ask-drift-legend") }</p></> }) }
                if !found.rows.is_empty() { { table(shared, "ask-drift-table", &columns, rows) } }
            </>
        },
    )
}

fn line(shared: &Shared, index: usize, row: &DriftRow) -> Html {
    let recipe = match (row.standard.as_str(), row.version) {
        ("", _) => row.product.clone(),
        (standard, version) => {
            let told = [("name", Argument::text(standard)), ("version", Argument::text(version.to_string()))];
            shared.words.said_of(&row.product, &shared.tell("log-standard-of", &told))
        }
    };
    let few = || shared.tell("ask-drift-few", &[("n", Argument::text(FEWEST_READINGS.to_string()))]);
    let (mean, week, doubt, says) = match row.line {
        None => (Html::default(), Html::default(), Html::default(), few()),
        Some(line) => {
            let week = line.slope * 7.0;
            let sign = if week < 0.0 { "−" } else { "+" };
            let shown = format!("{sign}{}", shared.show(row.value(week.abs())));
            let value = crate::answer::Value { si: week, ..row.value(week.abs()) };
            let says = match line {
                line if !line.is_clear() => "ask-drift-no",
                line if line.slope > 0.0 => "ask-drift-rises",
                _ => "ask-drift-falls",
            };
            (
                computed(shared, format!("log.drift.{index}.mean"), row.value(line.mean)),
                crate::page::components::computed_as(format!("log.drift.{index}.week"), value, shown),
                line.error.map_or_else(
                    Html::default,
                    |error| html! { { format!("±{}", shared.show(row.value(2.0 * error * 7.0))) } },
                ),
                shared.say(says),
            )
        }
    };
    html! {
        <tr>
            <th scope="row">{ recipe }</th>
            <td>{ row.readings.len() }</td>
            <td>{ mean }</td>
            <td>{ week }</td>
            <td>{ doubt }</td>
            <td>{ says }</td>
        </tr>
    }
}
