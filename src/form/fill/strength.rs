//! The workings of a dose: the steps that the page unfolds.

use super::{Job, total_of};
use crate::answer::{Formula, Value};
use crate::form::{Filling, Outcome};
use crate::trade::formula;
use crate::trade::governing::{Governed, Governs};
use crate::trade::label::{Basis, Rule, Window};
use crate::units::{Kind, Volume, VolumeFraction};

/// Notes the steps from the label to the dose and the water.
pub(super) fn steps(out: &mut Outcome, job: &Job, governed: Governed, takes: Option<Window<Volume>>) {
    let answer = &mut out.answer;
    let dose = Value::new(governed.dose, Kind::Dose);
    let level = Value::new(job.level, Kind::Fill);
    let tank = Value::new(job.tank, Kind::Fill);
    if let Some(takes) = takes.filter(|_| governed.governs == Governs::Machine) {
        let bound = if governed.dose == takes.low { takes.low } else { takes.high };
        let full = bound * (job.tank / job.level);
        let given = [("M", Value::new(full, Kind::Dose)), ("V", level), ("T", tank)];
        answer.step(&formula::MACHINE_WINDOW, &given, Value::new(bound, Kind::Dose));
        answer.step(&formula::GOVERN, &[("machine", Value::new(bound, Kind::Dose))], dose);
    } else {
        match &job.label.rule {
            Rule::PerTank(_) => {
                let full = governed.dose * (job.tank / job.level);
                let given = [("x", Value::new(full, Kind::Dose)), ("V", level), ("T", tank)];
                answer.step(&formula::PER_TANK, &given, dose);
            }
            Rule::Strength(_) => {
                let total = total_of(job, governed.dose);
                let strength = governed.dose.fraction_of(total);
                let (read, symbol, number) = reading(job.label.basis, strength);
                let r = Value::new(strength, Kind::Percent);
                answer.step(read, &[(symbol, number)], r);
                match job.filling {
                    Filling::MadeUp => answer.step(&formula::DOSE, &[("r", r), ("V", level)], dose),
                    Filling::OnTop => answer.step(&formula::DOSE_ON_TOP, &[("r", r), ("W", level)], dose),
                }
            }
        }
    }
    if job.filling == Filling::MadeUp {
        let water = Value::new(job.level - governed.dose, Kind::Fill);
        answer.step(&formula::WATER, &[("V", level), ("c", dose)], water);
    }
}

/// How the label's own numbers become r.
fn reading(basis: Basis, strength: VolumeFraction) -> (&'static Formula, &'static str, Value) {
    let parts = strength.parts_of_water();
    match basis {
        Basis::OfTotal => (&formula::OF_TOTAL, "n", Value::plain(parts + 1.0, Kind::Ratio)),
        Basis::PerWater => {
            (&formula::PER_WATER, "x", Value::new(VolumeFraction::new(1.0 / parts), Kind::Percent))
        }
        Basis::MadeUp => (&formula::MADE_UP, "x", Value::new(strength, Kind::Percent)),
        Basis::Percent => (&formula::PERCENT, "p", Value::plain(strength.percent(), Kind::Ratio)),
        Basis::PlusWater | Basis::PerTank => (&formula::PLUS_WATER, "n", Value::plain(parts, Kind::Ratio)),
    }
}
