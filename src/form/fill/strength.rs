//! The workings of a dose: the steps that the page unfolds.

use super::Job;
use crate::answer::{Formula, Value};
use crate::form::rules::Liquid;
use crate::form::{Filling, Outcome};
use crate::trade::formula;
use crate::trade::governing::{Governed, Governs};
use crate::trade::label::Basis;
use crate::units::{Kind, VolumeFraction};

/// Notes the steps from the label to the dose and the water.
pub(super) fn steps(out: &mut Outcome, job: &Job, governed: Governed) {
    let answer = &mut out.answer;
    let extent = job.fill;
    let dose = Value::new(governed.dose, Kind::Dose);
    let level = Value::new(extent.level, Kind::Fill);
    let tank = Value::new(extent.tank, Kind::Fill);
    let bounds = job.rules.bounds(extent);
    let takes = bounds.iter().find(|bound| bound.by == Governs::Machine).map(|bound| bound.window);
    if let Some(takes) = takes.filter(|_| governed.governs == Governs::Machine) {
        let raised = governed.dose == takes.low;
        let bound = if raised { takes.low } else { takes.high };
        let full = bound * (extent.tank / extent.level);
        let given = [("M", Value::new(full, Kind::Dose)), ("V", level), ("T", tank)];
        answer.step(&formula::MACHINE_WINDOW, &given, Value::new(bound, Kind::Dose));
        // The machine's least is the dose already; its most is the smaller of two amounts.
        if !raised {
            answer.step(&formula::GOVERN, &[("machine", Value::new(bound, Kind::Dose))], dose);
        }
    } else {
        match job.rules.liquid {
            Liquid::PerTank(_) => {
                let full = governed.dose * (extent.tank / extent.level);
                let given = [("x", Value::new(full, Kind::Dose)), ("V", level), ("T", tank)];
                answer.step(&formula::PER_TANK, &given, dose);
            }
            Liquid::Strength(_) => {
                let strength = governed.dose.fraction_of(extent.total(governed.dose));
                let r = Value::new(strength, Kind::Percent);
                if let Some((read, symbol, number)) = reading(job.rules.label.basis, strength) {
                    answer.step(read, &[(symbol, number)], r);
                }
                match extent.filling {
                    Filling::MadeUp => answer.step(&formula::DOSE, &[("r", r), ("V", level)], dose),
                    Filling::OnTop => answer.step(&formula::DOSE_ON_TOP, &[("r", r), ("W", level)], dose),
                }
            }
        }
    }
    if extent.filling == Filling::MadeUp {
        let water = Value::new(extent.level - governed.dose, Kind::Fill);
        answer.step(&formula::WATER, &[("V", level), ("c", dose)], water);
    }
}

/// How the label's own numbers become r.
fn reading(basis: Basis, strength: VolumeFraction) -> Option<(&'static Formula, &'static str, Value)> {
    let parts = strength.parts_of_water();
    Some(match basis {
        Basis::OfTotal => (&formula::OF_TOTAL, "n", Value::plain(parts + 1.0, Kind::Ratio)),
        Basis::PerWater => {
            (&formula::PER_WATER, "x", Value::new(VolumeFraction::new(1.0 / parts), Kind::Percent))
        }
        Basis::MadeUp => (&formula::MADE_UP, "x", Value::new(strength, Kind::Percent)),
        Basis::Percent => (&formula::PERCENT, "p", Value::plain(strength.percent(), Kind::Ratio)),
        Basis::PlusWater | Basis::PerTank => (&formula::PLUS_WATER, "n", Value::plain(parts, Kind::Ratio)),
        // ppm became r when the label was read; the others are no share of a volume.
        Basis::Active | Basis::Powder | Basis::Packets => return None,
    })
}
