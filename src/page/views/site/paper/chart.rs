//! The wall chart of a fill station.

use super::code::code;
use super::facts;
use super::sheet::{edition, pairs, sheet, standing};
use crate::answer::{Remark, Value};
use crate::form::names;
use crate::form::site::chart::{Cell, Chart, Dose, Row, Why, chart as work};
use crate::page::components::{caution_of, computed, computed_as};
use crate::page::shared::Shared;
use crate::page::views::fill::amount::in_measure;
use crate::site::{Dispenser, Record, Standard};
use crate::units::{Kind, System};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The chart, or what is missing for one.
pub fn chart(shared: &Shared, standard: &Standard) -> Html {
    let measure = shared.typed.measure().map(Record::id).unwrap_or_default();
    match work(&shared.typed, standard, measure, shared.marks()) {
        Ok(chart) => {
            let of = format!("{}: {}", shared.say("paper-chart"), edition(shared, standard));
            sheet(shared, of, drawn(shared, &chart))
        }
        Err(shelf) => {
            let what = Argument::text(shared.say(shelf.code()));
            html! { <p class="unknown">{ shared.tell("paper-lacks", &[("what", what)]) }</p> }
        }
    }
}

fn drawn(shared: &Shared, chart: &Chart) -> Html {
    let Chart { standard, product, floor, measure, .. } = chart;
    let text = |text: &str| Argument::text(text);
    let caption = shared.tell("paper-doses", &[("measure", text(&measure.name))]);
    let columns = ["column-level", "paper-measure-out", "paper-same", "paper-really"];
    html! {
        <>
            <h2 class="chart-title">
                { shared.tell("paper-chart-title", &[
                    ("floor", text(&floor.name)), ("product", text(&product.name)), ("dilution", text(standard.dilution.trim())),
                ]) }
            </h2>
            { standing(shared, standard) }
            <div class="scroll" tabindex="0" role="region" aria-label={caption.clone()}>
                <table class="doses">
                    <caption><span>{ caption }</span></caption>
                    <thead><tr>{ for columns.map(|key| html! { <th scope="col">{ shared.say(key) }</th> }) }</tr></thead>
                    { for chart.rows.iter().enumerate().map(|(index, row)| machine(shared, index + 1, row)) }
                </table>
            </div>
            { for chart.warnings.iter().map(|remark| warned(shared, remark)) }
            <div class="beside">
                { asks(shared, chart) }
                { code(shared, standard, measure, |machine| {
                    format!(" {}", shared.tell("code-fill", &[("machine", text(machine))]))
                }) }
            </div>
            { caution_of(shared, product) }
        </>
    }
}

/// A remark whose heading, where it has one, stands before it.
fn warned(shared: &Shared, remark: &Remark) -> Html {
    let title = shared.words.remark_title(remark).map(|title| html! { <strong>{ title }{ ". " }</strong> });
    html! { <p data-remark={remark.code}>{ title }{ shared.words.remark(remark, shared.system()) }</p> }
}

/// One machine: its name and flow setting, a row a level, and what stands against it.
fn machine(shared: &Shared, number: usize, row: &Row) -> Html {
    let about = |cell: &Cell| Shared { typed: Rc::new(cell.asked.clone()), ..shared.clone() };
    let whole = row.cells.first().map_or_else(|| shared.clone(), about);
    let barred = row.barred();
    let full = |html: Html| html! { <tr><td colspan="4">{ html }</td></tr> };
    html! {
        <tbody data-machine={row.machine.id.clone()}>
            <tr class="machine"><th scope="rowgroup" colspan="4">
                { &row.machine.name }
                if barred.is_none() { { ". " }{ setting(&whole, number, row) } }
            </th></tr>
            if let Some(why) = barred {
                { full(html! { <strong class={classes!("why", matches!(why, Why::LeftOut(_)).then_some("dose"))}>{ facts::why(&whole, why) }</strong> }) }
            } else {
                { for row.cells.iter().map(|cell| level(&about(cell), number, cell)) }
                { for row.clashes.iter().map(|clash| full(html! {
                    <>{ shared.say("paper-full-tank") }{ " " }{ warned(&whole, clash) }</>
                })) }
            }
        </tbody>
    }
}

/// The flow setting of a machine, and where it misses what the floor should get.
fn setting(shared: &Shared, number: usize, row: &Row) -> Html {
    match &row.setting {
        Ok(setting) => {
            let text = shared.tell("flow-setting", &[("n", shared.argument(setting.number))]);
            html! {
                <>
                    { computed_as(format!("chart.{number}.setting"), setting.number, text) }
                    { for setting.remarks.iter().map(|remark| html! { <span class="why">{ ". " }{ shared.words.remark(remark, shared.system()) }</span> }) }
                </>
            }
        }
        Err(why) => html! {
            <span class="why">{ shared.tell("paper-no-setting", &[("why", Argument::text(facts::why(shared, why)))]) }</span>
        },
    }
}

/// One level; `shared` is about what was asked at it.
fn level(shared: &Shared, number: usize, cell: &Cell) -> Html {
    let name = |what: &str| format!("chart.{number}.{}.{what}", cell.percent);
    let head = |total: Option<Value>| {
        html! {
            <th scope="row">
                <span class="level">{ shared.say(&format!("fill-level-{}", cell.percent)) }</span>
                { for total.map(|total| html! { <span class="total">{ both(shared, total).join(" · ") }</span> }) }
            </th>
        }
    };
    match &cell.dose {
        Ok(Dose { name: figure, value, fill }) => {
            let answer = &fill.outcome.answer;
            let text = in_measure(shared, fill, *value);
            // A machine that adds from its own bottle is filled with water to its mark.
            let own_bottle = fill.dispenser == Dispenser::Metering;
            let level = if own_bottle { names::FILL_WATER } else { names::FILL_TOTAL };
            let counted = !matches!(fill.dispenser, Dispenser::Cup | Dispenser::Scale);
            let volume = [names::FILL_ROUNDED, figure].iter().find_map(|name| answer.get(name));
            let mut same = volume.map(|value| both(shared, value)).unwrap_or_default();
            same.retain(|other| *other != text);
            let exact = [names::FILL_DOSE, names::FILL_MASS].iter().find_map(|name| answer.get(name));
            html! {
                <tr>
                    { head(answer.get(level)) }
                    <td class={classes!("dose", counted.then_some("counted"))}>{ computed_as(name("rounded"), *value, text) }</td>
                    <td class="dose">{ for same.into_iter().map(|text| html! { <span>{ text }</span> }) }</td>
                    <td>
                        { for answer.get(names::FILL_ROUNDED_RATIO).map(|ratio| html! {
                            <span>{ shared.tell("paper-makes", &[("n", shared.argument(ratio))]) }</span>
                        }) }
                        { for exact.map(|exact| html! {
                            <span>{ shared.say("paper-exactly") }{ " " }{ computed(shared, name("dose"), exact) }</span>
                        }) }
                    </td>
                </tr>
            }
        }
        Err(why) => html! {
            <tr>{ head(None) }<td colspan="3"><strong class="why">{ facts::why(shared, why) }</strong></td></tr>
        },
    }
}

/// A value in the customary units of the reader and in metric ones, each once; a number without a unit says nothing
/// more in either.
pub fn both(shared: &Shared, value: Value) -> Vec<String> {
    if matches!(value.kind, Kind::Count | Kind::Ratio) {
        return Vec::new();
    }
    let customary = if shared.system() == System::Imperial { System::Imperial } else { System::Us };
    let mut both = vec![shared.words.value(value, customary), shared.words.value(value, System::Metric)];
    both.dedup();
    both
}

/// What the standard asks beside the dose.
fn asks(shared: &Shared, chart: &Chart) -> Html {
    let Chart { standard, product, .. } = chart;
    let text = |key: &str, text: String| (shared.say(key), html! { <>{ text }</> });
    let often = chart
        .frequency
        .map_or_else(|| facts::written(shared, &standard.frequency.text), |often| shared.show(often));
    // Water first, and what the label wants worn, stand with the cautions.
    let mut all = vec![text("paper-ratio", facts::ratio(shared, standard))];
    if !standard.order.trim().is_empty() {
        all.push(text("paper-order", standard.order.trim().to_owned()));
    }
    if !standard.ppe.trim().is_empty() {
        all.push(text("paper-wear-own", standard.ppe.trim().to_owned()));
    }
    all.extend([
        text("paper-foam", shared.say(product.foam.key())),
        text("paper-contact-title", facts::contact(shared, &chart.contact)),
        text("paper-rinse-title", facts::rinse(shared, standard)),
        text("paper-pad", facts::written(shared, &standard.pad)),
        text("standard-frequency", often),
        text("paper-version", edition(shared, standard)),
        text("paper-author", facts::written(shared, &standard.author)),
    ]);
    pairs(all)
}
