//! How long what stands on the shelf lasts.

use super::super::{day, fields};
use super::{Seen, question};
use crate::answer::Value;
use crate::form::What;
use crate::form::log::asked::{Lasting, shelf as ask};
use crate::form::log::{Counted, Draft};
use crate::page::components::{Typing, computed_as};
use crate::page::drawing::{Bar, bars};
use crate::page::keep::{log_draft::change, today};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::log::Current;
use crate::site::log::questions::Filter;
use crate::trade::stock::DAY;
use crate::units::Kind;
use crate::words::Argument;
use yew::prelude::*;

/// The question.
pub fn shelf(seen: &Seen, fills: &[&Current]) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    let Some(today) = day() else { return Html::default() };
    let found = ask(fills.iter().copied(), &shared.typed, draft, today, shared.marks());
    let lasts = |row: &Lasting| Some(row.supply?.ok()?.lasts / DAY);
    let drawn: Vec<Bar> = found
        .rows
        .iter()
        .filter_map(|row| Some((row, lasts(row)?)))
        .map(|(row, days)| Bar {
            name: row.name.clone(),
            text: told_days(shared, days),
            length: days,
            mark: row.lead.map(|lead| lead / DAY).filter(|lead| *lead > 0.0),
        })
        .collect();
    let columns = ["log-column-product", "log-column-left", "log-column-daily", "log-column-lasts"];
    let rows = found.rows.iter().enumerate().map(|(index, row)| line(shared, index + 1, row)).collect();
    question(
        shared,
        "stock",
        &found.told,
        html! {
            <>
                if draft.sought.filter() != Filter::default() { <p class="hint">{ shared.say("log-stock-all") }</p> }
                { for found.rows.iter().enumerate().map(|(index, row)| count(shared, draft, index + 1, row)) }
                if !drawn.is_empty() {
                    { bars(&shared.say("ask-stock-picture"), &drawn) }
                    <p class="legend">{ shared.say("ask-stock-legend") }</p>
                }
                if !found.rows.is_empty() { { table(shared, "ask-stock-table", &columns, rows) } }
            </>
        },
    )
}

fn told_days(shared: &Shared, days: f64) -> String {
    let whole = days.floor().max(0.0);
    shared.tell("ask-days", &[("n", Argument::number(whole, shared.words.number(whole)))])
}

/// What was counted of a product, and on which day.
fn count(shared: &Shared, draft: &Draft, index: usize, row: &Lasting) -> Html {
    let counted = draft.counted(&row.id);
    let label = shared.tell("stock-count", &[("product", Argument::text(row.name.clone()))]);
    let typed = (counted.containers.text.as_str(), counted.containers.unit.as_str());
    let mistake =
        row.mistake.map(|mistake| shared.words.trouble(&What::Number(mistake), &label, None, typed));
    let on_day = shared.tell("stock-day", &[("product", Argument::text(row.name.clone()))]);
    let no_day = row.no_day.then(|| shared.say("stock-no-day"));
    let day_typed = {
        let counted = counted.clone();
        move |day| keep(Counted { day, ..counted.clone() })
    };
    let count_typed = {
        let counted = counted.clone();
        Callback::from(move |text: String| {
            let mut counted = counted.clone();
            counted.containers.text = text;
            if counted.day.is_empty() {
                counted.day = today::now();
            }
            keep(counted);
        })
    };
    html! {
        <div class="fields" data-stock={row.id.clone()}>
            <Typing id={format!("stock-{index}")} label={label} hint={row.no_container.then(|| shared.say("stock-no-container"))} {mistake}
                value={counted.containers.text.clone()} number=true oninput={count_typed} />
            { fields::moment("date", format!("stock-{index}-day"), on_day, counted.day, no_day, day_typed) }
        </div>
    }
}

fn keep(counted: Counted) {
    change(|draft| *draft = draft.clone().with_count(counted));
}

fn line(shared: &Shared, index: usize, row: &Lasting) -> Html {
    let show = |volume, kind| shared.show(Value::new(volume, kind));
    let (daily, lasts) = match row.supply {
        Some(Ok(supply)) => {
            let days = supply.lasts / DAY;
            let value = Value::plain(days, Kind::Count);
            (
                show(supply.daily, Kind::Dose),
                computed_as(format!("log.stock.{index}.days"), value, told_days(shared, days)),
            )
        }
        Some(Err(mistake)) => (String::new(), html! { { shared.say(mistake.code()) } }),
        None => (String::new(), html! { { shared.say("stock-not-counted") } }),
    };
    html! {
        <tr class={row.is_late().then_some("chosen")}>
            <th scope="row">{ &row.name }</th>
            <td>{ for row.left.map(|left| show(left, Kind::Fill)) }</td>
            <td>{ daily }</td>
            <td>{ lasts }</td>
        </tr>
    }
}
