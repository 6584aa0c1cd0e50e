//! A shift as tables: its fills as whole events, and its areas.

use crate::answer::Value;
use crate::form::shift::Shift;
use crate::page::components::{computed, computed_as};
use crate::page::shared::Shared;
use crate::page::views::fill::amount::measured;
use crate::page::views::{fit_key, table};
use crate::units::Kind;
use yew::prelude::*;

fn area_name(shared: &Shared, shift: &Shift, row: usize) -> String {
    let area = shift.rows.get(row).and_then(|row| shared.typed.site.areas.get(row.area));
    area.map(|area| area.name.clone()).unwrap_or_default()
}

fn product_name(shared: &Shared, shift: &Shift, row: usize) -> String {
    let product = shift.rows.get(row).and_then(|row| shared.typed.site.products.get(row.product));
    product.map(|product| product.name.clone()).unwrap_or_default()
}

/// When, where, and how much water and concentrate.
pub fn fills(shared: &Shared, shift: &Shift) -> Html {
    let Some(plan) = &shift.plan else { return Html::default() };
    // Where the shift takes one product, the heading names it.
    let several = shift.rows.iter().any(|row| row.product != shift.rows[0].product);
    let by_hand = shared.typed.measure().is_none_or(|measure| measure.dispenser.steps());
    let rows = plan.fills.iter().enumerate().map(|(index, fill)| {
        let number = index + 1;
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("shift.fill.{number}.{what}"), value) }</td> }
        };
        let dispenser = shared.typed.measure().map(|measure| measure.dispenser).unwrap_or_default();
        let out = shift.rounded.get(index).copied().flatten().map(|rounded| {
            let dose = Value::new(rounded.dose, Kind::Dose);
            let count = Value::plain(rounded.count, Kind::Count);
            computed_as(
                format!("shift.fill.{number}.rounded"),
                dose,
                measured(shared, dispenser, Some(count), dose),
            )
        });
        html! {
            <tr>
                <th scope="row">{ number }</th>
                { cell("water", Value::new(fill.solution - fill.concentrate, Kind::Fill)) }
                <td>{ out.or_else(|| by_hand.then(|| shared.say("level-coarse").into())) }</td>
                { cell("concentrate", Value::new(fill.concentrate, Kind::Dose)) }
                { cell("at", Value::new(fill.at, Kind::Time)) }
                <td>{ area_name(shared, shift, fill.task) }</td>
                if several { <td>{ product_name(shared, shift, fill.task) }</td> }
                { cell("after", Value::new(fill.after, Kind::Area)) }
            </tr>
        }
    });
    let mut columns = vec![
        "column-fill",
        "column-water",
        "column-concentrate",
        "column-exact",
        "column-at",
        "column-area",
        "column-after",
    ];
    if several {
        columns.insert(6, "column-product");
    }
    let told = (!by_hand).then(|| html! { <p class="hint">{ shared.say("shift-measure-none") }</p> });
    let shown = table(shared, "shift-fill-table", &columns, rows.collect());
    html! { <>{ for told }{ shown }</> }
}

/// Setting, time and solution of each area.
pub fn areas(shared: &Shared, shift: &Shift) -> Html {
    let rows = shift.rows.iter().enumerate().map(|(index, row)| {
        let cell = |what: &str, value: Value| {
            html! { <td>{ computed(shared, format!("shift.area.{}.{what}", index + 1), value) }</td> }
        };
        html! {
            <tr>
                <th scope="row">{ area_name(shared, shift, index) }</th>
                { cell("setting", Value::plain(row.setting as f64, Kind::Count)) }
                <td>{ shared.say(fit_key(row.fit)) }</td>
                { cell("rate", Value::new(row.rate, Kind::Rate)) }
                { cell("run_time", Value::new(row.run, Kind::Time)) }
                { cell("solution", Value::new(row.solution, Kind::Fill)) }
            </tr>
        }
    });
    let columns =
        ["column-area", "column-setting", "column-fit", "column-rate", "column-run", "column-solution"];
    table(shared, "shift-area-table", &columns, rows.collect())
}
