//! What every rule asks for, and the remarks where they part.

use super::Job;
use crate::answer::{Remark, Value, Weight};
use crate::form::rules::Liquid;
use crate::form::{Outcome, names};
use crate::trade::governing::{Bound, Governed, Governs};
use crate::trade::label::{Basis, Window};
use crate::units::{Kind, Volume, VolumeFraction};

/// Notes the window of each rule, how the label was read, and where rules part.
pub(super) fn note(out: &mut Outcome, job: &Job, governed: Governed) {
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
        if let Some(code) = parting(bound, governed, asked) {
            out.answer.remark(
                Remark::new(code, Weight::Warn)
                    .window("label", asked.low, asked.high, Kind::Dose)
                    .window("rule", bound.window.low, bound.window.high, Kind::Dose)
                    .value("dose", Value::new(governed.dose, Kind::Dose)),
            );
        }
    }
}

/// The remark of a rule that moved the dose, or that the dose does not keep.
fn parting(bound: Bound, governed: Governed, asked: Window<Volume>) -> Option<&'static str> {
    let narrows = bound.by == governed.governs;
    match bound.by {
        Governs::Machine if governed.clash && narrows => Some("remark-clash-machine"),
        Governs::Machine if governed.clash => Some("remark-clash-label"),
        Governs::Machine if narrows => Some("remark-machine-narrows"),
        // Where the machine has the last word a standard that the label allows is not what is wrong.
        Governs::Standard if governed.clash && bound.meets(asked) => None,
        Governs::Standard if !bound.allows(governed.dose) => Some("remark-standard-outside"),
        Governs::Standard if narrows => Some("remark-standard-narrows"),
        Governs::Minimum if !bound.allows(governed.dose) => Some("remark-minimum-missed"),
        Governs::Minimum if narrows => Some("remark-minimum-narrows"),
        _ => None,
    }
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
