//! How much was used, against what was planned.

use super::super::{fields::pick, told};
use super::{Seen, question};
use crate::answer::Value;
use crate::form::log::asked::{UseRow, uses as ask};
use crate::form::names;
use crate::page::components::{computed, facts};
use crate::page::drawing::{Bar, bars};
use crate::page::keep::log_draft::change;
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::log::Current;
use crate::units::{Kind, Quantity, Volume, VolumeFraction};
use yew::prelude::*;

/// So many bars are drawn; the table has all.
const DRAWN: usize = 12;

const FACTS: &[&str] = &[names::LOG_USED, names::LOG_PLANNED, names::LOG_MEASURED];

/// The question.
pub fn uses(seen: &Seen, fills: &[&Current]) -> Html {
    let (shared, by) = (&seen.shared, seen.draft.by_what);
    let found = ask(fills.iter().copied(), by);
    let mut longest: Vec<&UseRow> = found.rows.iter().collect();
    longest.sort_by(|a, b| b.of.used.si().total_cmp(&a.of.used.si()));
    let drawn: Vec<Bar> = longest
        .iter()
        .take(DRAWN)
        .map(|row| Bar {
            name: name(shared, row),
            text: shared.show(Value::new(row.of.used, Kind::Fill)),
            length: row.of.used.si(),
            mark: Some(row.of.planned.si()).filter(|planned| *planned > 0.0),
        })
        .collect();
    let columns = [
        "log-column-what",
        "log-column-fills",
        "log-column-used",
        "log-column-compared-planned",
        "log-column-compared",
        "log-column-off",
        "log-column-share",
        "log-column-uncounted",
    ];
    let rows = found.rows.iter().enumerate().map(|(index, row)| line(shared, index + 1, row)).collect();
    question(
        shared,
        "use",
        &found.told,
        html! {
            <>
                { facts(shared, &found.told.answer, FACTS) }
            { pick(shared, "log-by", by, |by| change(|draft| draft.by_what = by)) }
                if !drawn.is_empty() {
                    { bars(&shared.say("ask-use-picture"), &drawn) }
                    <p class="legend">{ shared.say("ask-use-legend") }</p>
                    { table(shared, "ask-use-table", &columns, rows) }
                }
            </>
        },
    )
}

fn name(shared: &Shared, row: &UseRow) -> String {
    if row.of.name.is_empty() { shared.say("log-unnamed") } else { row.of.name.clone() }
}

fn line(shared: &Shared, index: usize, row: &UseRow) -> Html {
    let of = &row.of;
    let cell = |column: &str, value: Value| computed(shared, format!("log.use.{index}.{column}"), value);
    let off = row.off.map(|off| {
        let amount = shared.show(Value::new(Volume::new(off.abs()), Kind::Dose));
        let sign = if off < 0.0 { "−" } else { "+" };
        let value = Value::new(Volume::new(off), Kind::Dose);
        crate::page::components::computed_as(format!("log.use.{index}.off"), value, format!("{sign}{amount}"))
    });
    let share = row.share.map(|share| {
        let value = Value::new(VolumeFraction::new(share), Kind::Percent);
        let text = told::share(shared, share);
        crate::page::components::computed_as(format!("log.use.{index}.share"), value, text)
    });
    html! {
        <tr>
            <th scope="row">{ name(shared, row) }</th>
            <td>{ of.fills }</td>
            <td>{ cell("used", Value::new(of.used, Kind::Fill)) }</td>
            // Of the same fills, so that what follows fits them; where nobody measured nothing is known.
            <td>{ for (of.compared > 0).then(|| cell("planned", Value::new(of.compared_planned, Kind::Fill))) }</td>
            <td>{ for (of.compared > 0).then(|| cell("measured", Value::new(of.compared_measured, Kind::Fill))) }</td>
            <td>{ for off }</td>
            <td>{ for share }</td>
            <td>{ of.unknown }</td>
        </tr>
    }
}
