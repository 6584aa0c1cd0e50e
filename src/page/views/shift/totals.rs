//! What a shift, a month and a year take and cost, what to keep in stock, and what another way would take.

use crate::answer::{Answer, Value};
use crate::form::action::Shelf;
use crate::form::shift::{
    Shift, Stock,
    compare::{Difference, compare, differences},
};
use crate::form::{Action, Field, names};
use crate::page::components::{Choice, choice, computed, fold, named, number_field};
use crate::page::drawing::cost_bars;
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::units::{Kind, Money, Quantity};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The word key of a figure.
fn figure_key(name: &str) -> String {
    format!("figure-{}", name.replace(['.', '_'], "-"))
}

/// The same figure of the shift, of a mean month and of a mean year.
const OVER_TIME: &[[&str; 3]] = &[
    [names::SHIFT_AREA, names::MONTH_AREA, names::YEAR_AREA],
    [names::SHIFT_SOLUTION, names::MONTH_SOLUTION, names::YEAR_SOLUTION],
    [names::SHIFT_WATER, names::MONTH_WATER, names::YEAR_WATER],
    [names::SHIFT_CONCENTRATE, names::MONTH_CONCENTRATE, names::YEAR_CONCENTRATE],
    [names::SHIFT_WASTE, names::MONTH_WASTE, names::YEAR_WASTE],
    [names::SHIFT_LABOUR, names::MONTH_LABOUR, names::YEAR_LABOUR],
    [names::COST_TOTAL, names::MONTH_COST, names::YEAR_COST],
];

/// What it takes over time; the figures of the shift stand above already.
pub fn over_time(shared: &Shared, shift: &Shift) -> Html {
    let answer = &shift.outcome.answer;
    if shift.year.is_none() {
        return html! { <p class="hint">{ shared.say("year-none") }</p> };
    }
    let row = |[of_shift, of_month, of_year]: &[&'static str; 3]| {
        let cell = |name: &'static str| {
            html! { <td>{ for answer.get(name).map(|value| computed(shared, name, value)) }</td> }
        };
        answer.get(of_month)?;
        Some(html! {
            <tr>
                <th scope="row">{ shared.say(&figure_key(of_shift)) }</th>
                <td>{ for answer.get(of_shift).map(|value| shared.show(value)) }</td>
                { cell(of_month) }
                { cell(of_year) }
            </tr>
        })
    };
    let columns = ["column-what", "column-shift", "column-month", "column-year"];
    let shown = table(shared, "year-table", &columns, OVER_TIME.iter().filter_map(row).collect());
    html! { <><p class="hint">{ shared.say("year-hint") }</p>{ shown }</> }
}

/// What the shift costs, part by part.
pub fn costs(shared: &Shared, shift: &Shift) -> Html {
    let answer = &shift.outcome.answer;
    let Some(total) = answer.get(names::COST_TOTAL) else {
        return html! { <p class="hint">{ shared.say("cost-none") }</p> };
    };
    let parts: Vec<(&'static str, Value)> = [names::COST_CONCENTRATE, names::COST_WATER, names::COST_LABOUR]
        .into_iter()
        .filter_map(|name| Some((name, answer.get(name)?)))
        .collect();
    let share = |value: Value| {
        let share = shift.cost.share(Money::from_si(value.si));
        share.map(|share| shared.show(Value::new(share, Kind::Percent)))
    };
    let row = |name: &'static str, value: Value, part: bool| {
        html! {
            <tr>
                <th scope="row">{ shared.say(&figure_key(name)) }</th>
                <td>{ computed(shared, name, value) }</td>
                <td>{ for part.then(|| share(value)).flatten() }</td>
            </tr>
        }
    };
    let mut rows: Vec<Html> = parts.iter().map(|(name, value)| row(name, *value, true)).collect();
    rows.push(row(names::COST_TOTAL, total, true));
    rows.extend(answer.get(names::COST_EACH).map(|each| row(names::COST_EACH, each, false)));
    let bars: Vec<(String, Value)> =
        parts.iter().map(|(name, value)| (shared.say(&figure_key(name)), *value)).collect();
    let columns = ["column-what", "column-cost", "column-share"];
    html! { <>{ cost_bars(shared, &bars) }{ table(shared, "cost-table", &columns, rows) }</> }
}

/// What to keep of each product, and when to order.
pub fn stock(shared: &Shared, shift: &Shift) -> Html {
    let Some((_, _, stocks)) = shift.year.as_ref().filter(|(_, _, stocks)| !stocks.is_empty()) else {
        return Html::default();
    };
    let line = |(index, stock): (usize, &Stock)| {
        let cell = |what: &str, value: Option<Value>| {
            let name = format!("stock.{}.{what}", index + 1);
            html! { <td>{ value.map_or_else(|| "–".into(), |value| computed(shared, name, value)) }</td> }
        };
        let fill = |volume| Value::new(volume, Kind::Fill);
        let count = |number| Value::plain(number, Kind::Count);
        let product = shared.typed.site.products.get(stock.product).map(|product| product.name.clone());
        html! {
            <tr>
                <th scope="row">{ product }</th>
                { cell("month", Some(fill(stock.monthly))) }
                { cell("year_containers", stock.yearly.map(count)) }
                { cell("safety", stock.safety.map(fill)) }
                { cell("reorder", stock.reorder.map(fill)) }
                { cell("reorder_containers", stock.reorder_containers.map(count)) }
            </tr>
        }
    };
    let columns = [
        "column-product",
        "column-month",
        "column-year-containers",
        "column-safety",
        "column-reorder",
        "column-reorder-containers",
    ];
    let shown = table(shared, "stock-table", &columns, stocks.iter().enumerate().map(line).collect());
    let source = shared.words.source(crate::trade::stock::REORDER);
    html! {
        <>
            { shown }
            <p class="source">{ shared.tell("stock-formula", &[("source", Argument::text(source))]) }</p>
        </>
    }
}

/// Another product, another setting, or both, beside the plan.
pub fn comparison(shared: &Shared, shift: &Rc<Shift>) -> Html {
    let own = shift.clone();
    fold(shared, &shift.outcome, "compare", &["compare-"], move |shared, _| compared(shared, &own))
}

fn compared(shared: &Shared, shift: &Shift) -> Html {
    let outcome = &shift.outcome;
    let mut products = named(shared, Shelf::Product);
    let asked = shared.typed.product().map(|product| product.id.clone());
    products.retain(|(id, _)| Some(id) != asked.as_ref());
    products.insert(0, (String::new(), shared.say("compare-same")));
    let list = Choice {
        name: "compare-product".into(),
        label: shared.say("compare-product"),
        options: products,
        chosen: shared.typed.ask.other_product.clone(),
        hint: None,
    };
    let other = compare(&shared.typed, shift, shared.marks());
    html! {
        <>
            <div class="fields">
                { choice(shared, list, Action::OtherProduct) }
                { number_field(shared, outcome, Field::OtherSetting, None) }
            </div>
            { other.map(|other| side_by_side(shared, &outcome.answer, &other)).unwrap_or_default() }
        </>
    }
}

fn side_by_side(shared: &Shared, own: &Answer, other: &Shift) -> Html {
    let theirs = &other.outcome.answer;
    if other.rounds.is_empty() {
        return html! { <p class="mistake">{ shared.say("compare-none") }</p> };
    }
    let row = |one: Difference| {
        let Difference { name, own, other, change } = one;
        let sign = if change.si > 0.0 { "+" } else { "−" };
        let size = shared.show(Value { si: change.si.abs(), ..change });
        // A difference that reads as nothing is none.
        let same = size == shared.show(Value { si: 0.0, ..change });
        let change = if same { shared.say("compare-equal") } else { format!("{sign}{size}") };
        html! {
            <tr>
                <th scope="row">{ shared.say(&figure_key(name)) }</th>
                <td>{ shared.show(own) }</td>
                <td>{ computed(shared, format!("compare.{name}"), other) }</td>
                <td>{ change }</td>
            </tr>
        }
    };
    let columns = ["column-what", "column-own", "column-other", "column-change"];
    let warned = theirs.remarks.iter().filter(|remark| {
        let known = own.remarks.iter().any(|one| one == *remark);
        remark.weight != crate::answer::Weight::Assumed && !known
    });
    html! {
        <>
            { table(shared, "compare-table", &columns, differences(own, theirs).into_iter().map(row).collect()) }
            { for warned.map(|remark| html! {
                <p class="unknown" data-compare={remark.code}>{ shared.words.remark(remark, shared.system()) }</p>
            }) }
        </>
    }
}
