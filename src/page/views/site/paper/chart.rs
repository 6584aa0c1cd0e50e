//! The wall chart of a fill station.

use super::code::code;
use super::facts;
use super::pieces::{height, pieces, room};
use super::sheet::{edition, pairs, sheet, standing};
use crate::answer::{Remark, Value};
use crate::form::names;
use crate::form::site::chart::{Cell, Chart, Contact, Dose, LEVELS, Row, Why, chart as work};
use crate::page::components::{caution_of, computed, computed_as};
use crate::page::shared::Shared;
use crate::page::views::fill::amount::in_measure;
use crate::site::{Dispenser, Record, Standard};
use crate::units::{Kind, System};
use crate::words::Argument;
use std::ops::Range;
use std::rc::Rc;
use yew::prelude::*;

/// What the check finds where a level has no dose.
const NO_DOSE: &str = "finding-no-dose";

/// The chart, or what is missing for one: as many sheets as its machines take, each whole in itself.
pub fn chart(shared: &Shared, standard: &Standard) -> Html {
    let measure = shared.typed.measure().map(Record::id).unwrap_or_default();
    match work(&shared.typed, standard, measure, shared.marks()) {
        Ok(chart) => {
            let of = shared.words.said_of(&shared.say("paper-chart"), &edition(shared, standard));
            let drawn: Vec<Html> = chart
                .rows
                .iter()
                .enumerate()
                .map(|(index, row)| machine(shared, standard, index + 1, row))
                .collect();
            let asked = asked(shared, &chart);
            let heights: Vec<f64> =
                chart.rows.iter().map(|row| height(shared, standard, row, &all_texts(shared, row))).collect();
            let sheets = pieces(&heights, room(shared, &chart, &asked));
            let one = |(index, rows): (usize, Range<usize>)| {
                sheet(shared, of.clone(), on_a_sheet(shared, index + 1, &chart, &asked, &drawn[rows]))
            };
            html! { { for sheets.into_iter().enumerate().map(one) } }
        }
        Err(shelf) => {
            let what = Argument::text(shared.say(shelf.code()));
            html! { <p class="unknown">{ shared.tell("paper-lacks", &[("what", what)]) }</p> }
        }
    }
}

/// Some machines under all that holds for each of them: cautions, what to wear, version, day and code.
fn on_a_sheet(
    shared: &Shared,
    number: usize,
    chart: &Chart,
    asked: &[(String, String)],
    machines: &[Html],
) -> Html {
    let Chart { standard, product, floor, measure, .. } = chart;
    let text = |text: &str| Argument::text(text);
    let caption = shared.tell("paper-doses", &[("measure", text(&measure.name))]);
    // On the screen the sheets follow each other, each table a place of its own name.
    let region = if number > 1 { format!("{caption} ({number})") } else { caption.clone() };
    let percents = LEVELS.map(|percent| shared.say(&format!("fill-level-{percent}")));
    html! {
        <div class="wall">
            { code(shared, standard, measure, |machine| {
                format!(" {}", shared.tell("code-fill", &[("machine", text(machine))]))
            }) }
            <h2 class="chart-title">
                { shared.tell("paper-chart-title", &[
                    ("floor", text(&floor.name)), ("product", text(&product.name)), ("dilution", text(standard.dilution.trim())),
                ]) }
            </h2>
            { standing(shared, standard) }
            { caution_of(shared, product) }
            { pairs(asked.iter().map(|(name, text)| (name.clone(), html! { <>{ text }</> })).collect()) }
            { for chart.warnings.iter().map(|remark| warned(shared, standard, remark)) }
            <div class="scroll" tabindex="0" role="region" aria-label={region}>
                <table class="doses">
                    <caption><span>{ caption }</span></caption>
                    <thead><tr>{ for percents.map(|level| html! { <th scope="col" class="level">{ level }</th> }) }</tr></thead>
                    { for machines.iter().cloned() }
                </table>
            </div>
        </div>
    }
}

/// A remark whose heading, where it has one, stands before it; behind it, that and why the author let it pass.
fn warned(shared: &Shared, standard: &Standard, remark: &Remark) -> Html {
    let title = shared.words.remark_title(remark).map(|title| html! { <strong>{ title }{ ". " }</strong> });
    html! { <p data-remark={remark.code}>{ title }{ shared.words.remark(remark, shared.system()) }{ passed(shared, standard, remark.code) }</p> }
}

/// What stands behind a warning that the author let pass.
fn passed(shared: &Shared, standard: &Standard, code: &str) -> Html {
    facts::let_pass(shared, standard, code).map_or_else(
        Html::default,
        |text| html! { <span data-let-pass={code.to_owned()}>{ " " }{ text }</span> },
    )
}

/// One machine: its name and flow setting, a row a level, and what stands against it.
fn machine(shared: &Shared, standard: &Standard, number: usize, row: &Row) -> Html {
    let about = |cell: &Cell| about(shared, cell);
    let whole = row.cells.first().map_or_else(|| shared.clone(), about);
    let barred = row.barred();
    // Nobody lets pass that the standard is not for the machine.
    let no_dose = |why: &Why| match why {
        Why::LeftOut(_) => Html::default(),
        _ => passed(shared, standard, NO_DOSE),
    };
    let full = |html: Html| html! { <tr><td colspan="4">{ html }</td></tr> };
    html! {
        <tbody data-machine={row.machine.id.clone()}>
            <tr class="machine"><th scope="rowgroup" colspan="4">
                { &row.machine.name }
                if barred.is_none() {
                    <span class="told">
                        { ". " }{ setting(&whole, standard, number, row) }{ makes(shared, row) }{ exactly(&whole, number, row) }
                    </span>
                }
            </th></tr>
            if let Some(why) = barred {
                { full(html! { <strong class={classes!("why", matches!(why, Why::LeftOut(_)).then_some("dose"))}>{ facts::why(&whole, why) }{ no_dose(why) }</strong> }) }
            } else {
                <tr>{ for row.cells.iter().map(|cell| level(&about(cell), number, cell)) }</tr>
                { for reasons(row, |cell, why| facts::why(&about(cell), why)).into_iter().map(|(cells, why)| {
                    let levels: Vec<String> = cells.iter().map(|percent| shared.say(&format!("fill-level-{percent}"))).collect();
                    full(html! { <span class="why">{ shared.words.headed(&levels.join(", ")) }{ " " }{ why }{ passed(shared, standard, NO_DOSE) }</span> })
                }) }
                { for row.clashes.iter().map(|clash| full(html! {
                    <>{ shared.say("paper-full-tank") }{ " " }{ warned(&whole, standard, clash) }</>
                })) }
            }
        </tbody>
    }
}

/// Why levels have no dose, each reason once with the levels that it keeps from one.
fn reasons(row: &Row, told: impl Fn(&Cell, &Why) -> String) -> Vec<(Vec<u32>, String)> {
    let mut all: Vec<(Vec<u32>, String)> = Vec::new();
    for cell in &row.cells {
        let Err(why) = &cell.dose else { continue };
        let text = told(cell, why);
        match all.iter_mut().find(|(_, known)| *known == text) {
            Some((levels, _)) => levels.push(cell.percent),
            None => all.push((vec![cell.percent], text)),
        }
    }
    all
}

/// What the doses make, from the strongest to the weakest.
fn makes(shared: &Shared, row: &Row) -> Html {
    let doses = row.cells.iter().filter_map(|cell| cell.dose.as_ref().ok());
    let mut told: Vec<(f64, String)> = doses
        .filter_map(|dose| dose.fill.outcome.answer.get(names::FILL_ROUNDED_RATIO))
        .map(|ratio| (ratio.si, shared.show(ratio)))
        .collect();
    told.sort_by(|(one, _), (other, _)| one.total_cmp(other));
    let text = |text: &str| Argument::text(text);
    match (told.first(), told.last()) {
        (Some((_, low)), Some((_, high))) if low == high => {
            html! { <span>{ ". " }{ shared.tell("paper-makes-one", &[("n", text(low))]) }</span> }
        }
        (Some((_, low)), Some((_, high))) => {
            let ends = [("low", text(low)), ("high", text(high))];
            html! { <span>{ ". " }{ shared.tell("paper-makes-range", &ends) }</span> }
        }
        _ => Html::default(),
    }
}

/// What a full tank takes to the last digit: the marks of a measure are rounded.
fn exactly(shared: &Shared, number: usize, row: &Row) -> Html {
    let full = row.cells.first().and_then(|cell| cell.dose.as_ref().ok());
    let answer = full.map(|dose| &dose.fill.outcome.answer);
    let exact = [names::FILL_DOSE, names::FILL_MASS].iter().find_map(|name| answer?.get(name));
    exact.map_or_else(Html::default, |exact| {
        html! { <>{ ". " }{ shared.say("paper-exactly") }{ " " }{ computed(shared, format!("chart.{number}.100.dose"), exact) }</> }
    })
}

/// The flow setting of a machine, and where it misses what the floor should get.
fn setting(shared: &Shared, standard: &Standard, number: usize, row: &Row) -> Html {
    match &row.setting {
        Ok(setting) => {
            let text = shared.tell("flow-setting", &[("n", shared.argument(setting.number))]);
            html! {
                <>
                    { computed_as(format!("chart.{number}.setting"), setting.number, text) }
                    { for setting.remarks.iter().map(|remark| html! { <span class="why">{ ". " }{ shared.words.remark(remark, shared.system()) }{ passed(shared, standard, remark.code) }</span> }) }
                </>
            }
        }
        Err(why) => html! {
            <span class="why">
                { shared.tell("paper-no-setting", &[("why", Argument::text(facts::why(shared, why)))]) }
                { passed(shared, standard, "finding-no-setting") }
            </span>
        },
    }
}

/// A dose as it is measured out, and then the same in the reader's units.
fn texts(shared: &Shared, dose: &Dose) -> Vec<String> {
    let Dose { name, value, fill } = dose;
    let mut all = vec![in_measure(shared, fill, *value)];
    let volume = [names::FILL_ROUNDED, name].iter().find_map(|name| fill.outcome.answer.get(name));
    let same = volume.map(|value| both(shared, value)).unwrap_or_default();
    all.extend(same.into_iter().filter(|other| *other != all[0]).collect::<Vec<_>>());
    all
}

/// Those of every level that has a dose.
fn all_texts(shared: &Shared, row: &Row) -> Vec<Vec<String>> {
    let doses = row.cells.iter().filter_map(|cell| cell.dose.as_ref().ok().map(|dose| (cell, dose)));
    doses.map(|(cell, dose)| texts(&about(shared, cell), dose)).collect()
}

/// What every part needs, about what was asked at a level.
fn about(shared: &Shared, cell: &Cell) -> Shared {
    Shared { typed: Rc::new(cell.asked.clone()), ..shared.clone() }
}

/// One level; `shared` is about what was asked at it.
fn level(shared: &Shared, number: usize, cell: &Cell) -> Html {
    let name = |what: &str| format!("chart.{number}.{}.{what}", cell.percent);
    let Ok(dose) = &cell.dose else {
        return html! { <td><strong class="why">{ shared.say("paper-no-dose") }</strong></td> };
    };
    let Dose { value, fill, .. } = dose;
    let answer = &fill.outcome.answer;
    // A machine that adds from its own bottle is filled with water to its mark.
    let own_bottle = fill.dispenser == Dispenser::Metering;
    let total = answer.get(if own_bottle { names::FILL_WATER } else { names::FILL_TOTAL });
    let mut texts = texts(shared, dose).into_iter();
    let text = texts.next().unwrap_or_default();
    html! {
        <td>
            { for total.map(|total| html! { <span class="total">{ both(shared, total).join(" · ") }</span> }) }
            <div class="dose">
                { computed_as(name("rounded"), *value, text) }
                { for texts.map(|text| html! { <span>{ text }</span> }) }
            </div>
        </td>
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

/// What the standard asks beside the dose, by name; water first, and what the label wants worn, stand with the cautions
/// before it.
fn asked(shared: &Shared, chart: &Chart) -> Vec<(String, String)> {
    let Chart { standard, product, .. } = chart;
    let often = chart
        .frequency
        .map_or_else(|| facts::written(shared, &standard.frequency.text), |often| shared.show(often));
    let contact = match (&chart.contact, facts::let_pass(shared, standard, "remark-contact-unknown")) {
        (Contact::Unknown, Some(passed)) => format!("{} {passed}", facts::contact(shared, &chart.contact)),
        _ => facts::contact(shared, &chart.contact),
    };
    let own = [("paper-wear-own", &standard.ppe), ("paper-order", &standard.order)];
    let own = own.into_iter().filter(|(_, text)| !text.trim().is_empty());
    let own = own.map(|(key, text)| (key, text.trim().to_owned()));
    let rest = [
        ("paper-ratio", facts::ratio(shared, standard)),
        ("paper-foam", shared.say(product.foam.key())),
        ("paper-contact-title", contact),
        ("paper-rinse-title", facts::rinse(shared, standard)),
        ("paper-pad", facts::written(shared, &standard.pad)),
        ("standard-frequency", often),
        ("paper-version", edition(shared, standard)),
        ("paper-author", facts::written(shared, &standard.author)),
    ];
    own.chain(rest).map(|(key, text)| (shared.say(key), text)).collect()
}
