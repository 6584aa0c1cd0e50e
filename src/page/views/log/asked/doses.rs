//! Too much and too little, on a control chart.

use super::super::told;
use super::{Seen, question};
use crate::answer::Value;
use crate::form::log::asked::{Doses, Point, doses as ask};
use crate::form::names;
use crate::page::components::{computed, facts};
use crate::page::drawing::control_chart;
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::log::Current;
use crate::trade::control::CONSTANTS;
use crate::units::{Kind, VolumeFraction};
use crate::words::Argument;
use yew::prelude::*;

const FACTS: &[&str] =
    &[names::LOG_CENTRE, names::LOG_LOWER, names::LOG_UPPER, names::LOG_RANGE, names::LOG_RANGE_UPPER];

/// The question.
pub fn doses(seen: &Seen, fills: &[&Current]) -> Html {
    let shared = &seen.shared;
    let found = ask(fills.iter().copied());
    let picture = found.limits.is_some().then(|| chart(shared, &found));
    question(shared, "doses", &found.told, picture.unwrap_or_default())
}

fn chart(shared: &Shared, found: &Doses) -> Html {
    let columns = [
        "log-column-number",
        "log-column-when",
        "log-column-machine",
        "log-column-ratio",
        "log-column-range",
        "log-column-stands-out",
    ];
    let constants = CONSTANTS.iter().map(|one| {
        let text = [
            ("symbol", Argument::text(one.symbol)),
            ("value", Argument::text(shared.words.number(one.value))),
        ];
        shared.tell("ask-constant", &text)
    });
    let rows = found.points.iter().enumerate().map(|(at, point)| row(shared, at + 1, point)).collect();
    html! {
        <>
            { facts(shared, &found.told.answer, FACTS) }
            { control_chart(shared, found) }
            <p class="legend">{ shared.say("ask-doses-legend") }</p>
            <details class="more">
                <summary>{ shared.say("ask-doses-table") }</summary>
                { table(shared, "ask-doses-table", &columns, rows) }
            </details>
            <p class="hint">{ constants.collect::<Vec<_>>().join("; ") }{ " " }{ shared.words.source(CONSTANTS[0].source) }</p>
        </>
    }
}

fn row(shared: &Shared, number: usize, point: &Point) -> Html {
    let percent = |ratio: f64| Value::new(VolumeFraction::new(ratio), Kind::Percent);
    let rules = point.rules.iter().map(|rule| shared.say(rule.code())).collect::<Vec<_>>().join("; ");
    html! {
        <tr class={(!point.rules.is_empty()).then_some("chosen")}>
            <th scope="row">{ number }</th>
            <td>{ told::moment(shared, &point.when) }</td>
            <td>{ &point.machine }</td>
            <td>{ computed(shared, format!("log.dose.{number}.ratio"), percent(point.ratio)) }</td>
            <td>{ for point.range.map(|range| computed(shared, format!("log.dose.{number}.range"), percent(range))) }</td>
            <td>{ rules }</td>
        </tr>
    }
}
