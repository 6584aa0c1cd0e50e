//! Machines and wall units that draw the concentrate themselves.

use super::Job;
use crate::answer::{Remark, Value, Weight};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::{self, Marks};
use crate::trade::formula;
use crate::trade::governing::Governed;
use crate::trade::label::Window;
use crate::trade::metering::{Chosen, Orifice, bottle_time, nearest, orifice};
use crate::trade::reading::with_tolerance;
use crate::trade::rescue::TOLERANCE;
use crate::units::{Flow, Kind, Quantity, Volume, VolumeFraction};

/// The name of the field with a machine's ratios.
pub const RATIOS: &str = "machine-ratios";

/// The machine's own bottle: the nearest ratio, and how long the bottle lasts.
pub(super) fn own_bottle(out: &mut Outcome, typed: &Typed, job: &Job, governed: Governed, marks: Marks) {
    let texts = typed.machine().map(|machine| machine.ratios.as_str()).unwrap_or_default();
    // "1:64" says the same as "64".
    let parts = |text: &str| {
        number::read(text.strip_prefix("1:").unwrap_or(text), marks).ok().filter(|parts| *parts > 0.0)
    };
    let ratios: Option<Vec<f64>> =
        texts.split([' ', ';', '/']).filter(|text| !text.is_empty()).map(parts).collect();
    let Some(ratios) = ratios.filter(|ratios| !ratios.is_empty()) else {
        out.trouble(RATIOS, What::Ratios);
        return;
    };
    let strengths: Vec<VolumeFraction> =
        ratios.iter().map(|parts| VolumeFraction::from_parts_of_water(*parts)).collect();
    let (window, aim) = allowed(job, governed);
    let Some(chosen) = nearest(&strengths, window, aim) else { return };
    note(out, typed, job, chosen, window);
    let Some(Some(bottle)) = out.may::<Volume>(typed, Field::Bottle, marks) else { return };
    let needs = job.fill.concentrate(chosen.strength);
    let fills = bottle / needs;
    if fills < 1.0 {
        out.answer.remark(
            Remark::new("remark-bottle-short", Weight::Warn)
                .value("needs", Value::new(needs, Kind::Dose))
                .value("bottle", Value::new(bottle, Kind::Dose)),
        );
    }
    out.answer.figure(names::FILL_BOTTLE_FILLS, Value::plain(fills, Kind::Ratio));
    // The flow of the lowest setting: the others use the bottle up sooner.
    let field = Field::Setting(0);
    let flow = field.entry(typed).and_then(|entry| entry.read::<Flow>(field.limit(), marks).ok());
    if let Some(flow) = flow {
        let time = Value::new(bottle_time(bottle, chosen.strength, flow), Kind::Time);
        let given = [
            ("B", Value::new(bottle, Kind::Dose)),
            ("r", Value::new(chosen.strength, Kind::Percent)),
            ("Q", Value::new(flow, Kind::Flow)),
        ];
        out.answer.step(&formula::BOTTLE_TIME, &given, time);
        out.answer.figure(names::FILL_BOTTLE_TIME, time);
    }
}

/// A wall unit: the metering tip whose measured flow is nearest.
pub(super) fn wall(out: &mut Outcome, typed: &Typed, job: &Job, governed: Governed, marks: Marks) {
    let total = out.need::<Flow>(typed, Field::MeasureTotal, marks);
    let count = typed.measure().map_or(0, |measure| measure.tips.len());
    // A tip that was not measured yet is left out, and keeps its number.
    let mut table = Vec::new();
    for index in 0..count {
        if let Some(Some(drawn)) = out.may::<Flow>(typed, Field::Tip(index), marks) {
            match total {
                Some(total) if drawn >= total => out.trouble(Field::Tip(index).name(), What::AboveTotal),
                Some(total) => table.push((index, Orifice { drawn, total })),
                None => {}
            }
        }
    }
    if total.is_none() {
        return;
    }
    let rows: Vec<Orifice> = table.iter().map(|(_, row)| *row).collect();
    let (window, aim) = allowed(job, governed);
    let Some(chosen) = orifice(&rows, window, aim) else {
        out.trouble(Field::Tip(0).name(), What::NoTip);
        return;
    };
    let (index, row) = table[chosen.index];
    let given = [("q", Value::new(row.drawn, Kind::Flow)), ("Q", Value::new(row.total, Kind::Flow))];
    out.answer.step(&formula::CATCH, &given, Value::new(chosen.strength, Kind::Percent));
    out.answer.figure(names::FILL_SETTING, Value::plain(index as f64 + 1.0, Kind::Count));
    note(out, typed, job, chosen, window);
    out.answer.remark(Remark::new("remark-wall", Weight::Assumed));
}

/// The window of strengths and the aim in it; a label with one number gets the tolerance of a rescue.
fn allowed(job: &Job, governed: Governed) -> (Window<VolumeFraction>, VolumeFraction) {
    let share = |dose: Volume| {
        let dose = dose.min(job.fill.level);
        dose.fraction_of(job.fill.total(dose))
    };
    let window = Window { low: share(governed.window.low), high: share(governed.window.high) };
    let window = if window.is_point() { with_tolerance(window, TOLERANCE) } else { window };
    (window, share(governed.dose))
}

fn note(out: &mut Outcome, typed: &Typed, job: &Job, chosen: Chosen, window: Window<VolumeFraction>) {
    let parts = chosen.strength.parts_of_water();
    let drawn = job.fill.concentrate(chosen.strength);
    let total = job.fill.total(drawn);
    out.answer.figure(names::FILL_ROUNDED, Value::new(drawn, Kind::Dose));
    out.answer.replace(names::FILL_TOTAL, Value::new(total, Kind::Fill));
    out.answer.replace(names::FILL_WATER, Value::new(total - drawn, Kind::Fill));
    out.answer.figure(names::FILL_ROUNDED_RATIO, Value::plain(parts, Kind::Ratio));
    if !chosen.inside {
        // A setting that breaks the rules is no instruction until that was read.
        let stop = if typed.ask.stop_read { Weight::Warn } else { Weight::Stop };
        out.answer.remark(
            Remark::new("remark-setting-outside", stop)
                .value("n", Value::plain(parts, Kind::Ratio))
                .value("least", Value::plain(window.high.parts_of_water().max(0.0), Kind::Ratio))
                .value("most", Value::plain(weakest(window), Kind::Ratio)),
        );
    }
}

/// Parts of water at the weak end; an end that is open counts as very weak.
fn weakest(window: Window<VolumeFraction>) -> f64 {
    window.low.max(VolumeFraction::from_si(1e-6)).parts_of_water()
}
