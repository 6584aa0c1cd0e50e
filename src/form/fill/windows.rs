//! What every rule asks for, and how the label was read.

use super::Job;
use crate::answer::{Remark, Value, Weight};
use crate::form::rules::Liquid;
use crate::form::{Outcome, names};
use crate::trade::governing::Governs;
use crate::trade::label::{Basis, Window};
use crate::units::{Kind, Volume, VolumeFraction};

/// Notes the window of each rule, how the label was read, and where rules part.
pub(super) fn note(out: &mut Outcome, job: &Job) {
    let asked = job.rules.asked(job.fill);
    figures(out, names::LABEL_LOW, names::LABEL_HIGH, asked);
    basis(out, job);
    for bound in job.rules.bounds(job.fill) {
        let (low, high) = match bound.by {
            Governs::Minimum => (names::MINIMUM_LOW, names::MINIMUM_LOW),
            Governs::Standard => (names::STANDARD_LOW, names::STANDARD_HIGH),
            Governs::Machine | Governs::Label => (names::MACHINE_LOW, names::MACHINE_HIGH),
        };
        figures(out, low, high, bound.window);
    }
    out.answer.remarks.extend(job.rules.partings(job.fill));
}

fn figures(out: &mut Outcome, low: &'static str, high: &'static str, window: Window<Volume>) {
    let dose = |volume: Volume| Value::new(volume, Kind::Dose);
    out.answer.figure(low, dose(window.low));
    if high != low && window.high < Volume::new(f64::INFINITY) {
        out.answer.figure(high, dose(window.high));
    }
}

/// How the label was read.
fn basis(out: &mut Outcome, job: &Job) {
    let basis = job.rules.label.basis;
    let remark = Remark::new(basis.code(), Weight::Assumed);
    let ratio = |window: &Window<VolumeFraction>| match basis {
        Basis::OfTotal => 1.0 / (window.low / VolumeFraction::new(1.0)),
        _ => window.low.parts_of_water(),
    };
    out.answer.remark(match &job.rules.liquid {
        Liquid::Strength(window) => remark.value("n", Value::plain(ratio(window), Kind::Ratio)),
        Liquid::PerTank(_) => remark,
    });
}
