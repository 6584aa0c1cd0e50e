//! The dose in whole marks, strokes or caps, and what that really makes.

use super::Job;
use crate::answer::{Remark, Value, Weight};
use crate::form::{Outcome, names};
use crate::trade::formula;
use crate::trade::governing::{Governed, Governs};
use crate::trade::measure::Rounded;
use crate::trade::rounding::{Ruled, Whole};
use crate::units::{Kind, Volume};

/// Notes the rounded dose, its workings, and where it leaves the window.
pub(super) fn rounded(out: &mut Outcome, job: &Job, governed: Governed, step: Volume) {
    let bounds = job.rules.bounds(job.fill);
    let (asked, disinfects) = (job.rules.asked(job.fill), job.disinfects);
    let whole = Ruled { asked, bounds: &bounds, governed, disinfects }.whole(step);
    let Whole { rounded: Rounded { count, dose, inside }, window, .. } = whole;
    let total = job.fill.total(dose);
    if dose >= total || total / job.fill.tank > 1.0 + 1e-9 {
        let remark = Remark::new("remark-measure-too-big", Weight::Warn);
        out.answer.remark(remark.value("step", Value::new(step, Kind::Dose)));
        return;
    }
    // What the rules' range allows is not coarse, however far from the aim.
    if whole.is_coarse(governed.dose) {
        let remark = Remark::new("remark-measure-coarse", Weight::Warn);
        let remark = remark.value("rounded", Value::new(dose, Kind::Dose));
        out.answer.remark(remark.value("dose", Value::new(governed.dose, Kind::Dose)));
        return;
    }
    let water = total - dose;
    let ratio = Value::plain(water / dose, Kind::Ratio);
    let answer = &mut out.answer;
    let given = [("c", Value::new(governed.dose, Kind::Dose)), ("s", Value::new(step, Kind::Dose))];
    answer.step(&formula::ROUND, &given, Value::plain(count, Kind::Count));
    let given = [
        ("W", Value::new(water, Kind::Fill)),
        ("k", Value::plain(count, Kind::Count)),
        ("s", Value::new(step, Kind::Dose)),
    ];
    answer.step(&formula::TRUE_RATIO, &given, ratio);
    answer.figure(names::FILL_COUNT, Value::plain(count, Kind::Count));
    answer.figure(names::FILL_ROUNDED, Value::new(dose, Kind::Dose));
    answer.figure(names::FILL_ROUNDED_RATIO, ratio);
    let minimum = bounds.into_iter().find(|bound| bound.by == Governs::Minimum);
    if minimum.is_some_and(|minimum| minimum.allows(governed.dose) && !minimum.allows(dose)) {
        answer.remark(
            Remark::new("remark-rounded-below-minimum", Weight::Warn)
                .value("rounded", Value::new(dose, Kind::Dose))
                .value("dose", Value::new(governed.dose, Kind::Dose)),
        );
    } else if !(inside || window.is_point()) {
        answer.remark(
            Remark::new("remark-rounded-outside", Weight::Warn)
                .value("rounded", Value::new(dose, Kind::Dose))
                .window("window", window.low, window.high, Kind::Dose),
        );
    }
}
