//! The dose in whole marks, strokes or caps, and what that really makes.

use super::{COARSE, Job};
use crate::answer::{Remark, Value, Weight};
use crate::form::{Outcome, names};
use crate::trade::formula;
use crate::trade::governing::{Aim, Bound, Governed, Governs, govern};
use crate::trade::label::Window;
use crate::trade::measure::{Rounded, round_to};
use crate::units::{Kind, Volume};

/// Notes the rounded dose, its workings, and where it leaves the window.
pub(super) fn rounded(out: &mut Outcome, job: &Job, governed: Governed, step: Volume) {
    let (Rounded { count, dose, inside }, window, in_range) = whole(job, governed, step);
    let total = job.fill.total(dose);
    if dose >= total || total / job.fill.tank > 1.0 + 1e-9 {
        let remark = Remark::new("remark-measure-too-big", Weight::Warn);
        out.answer.remark(remark.value("step", Value::new(step, Kind::Dose)));
        return;
    }
    // What the rules' range allows is not coarse, however far from the aim.
    if !in_range && (dose / governed.dose - 1.0).abs() > COARSE {
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
    let minimum = job.rules.bounds(job.fill).into_iter().find(|bound| bound.by == Governs::Minimum);
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

/// What the rounded dose must stay in. A label with one number cannot be met to the drop: the machine's
/// window still can, a minimum by law is never missed, and a disinfectant is never rounded to less than
/// its label asks.
fn rounding_window(job: &Job, governed: Governed) -> Window<Volume> {
    if !governed.window.is_point() || governed.clash {
        return governed.window;
    }
    let mut window = Window { low: Volume::ZERO, high: Volume::new(f64::INFINITY) };
    for bound in job.rules.bounds(job.fill).iter().filter(|bound| bound.by != Governs::Standard) {
        window.low = window.low.max(bound.window.low);
        window.high = window.high.min(bound.window.high);
    }
    if job.disinfects {
        window.low = window.low.max(governed.dose);
    }
    window
}

/// Rounds within all rules; where no whole number serves, without the site's own standard: it may narrow
/// the others, and a coarse measure is no reason to leave them. With it come the window that was missed, and
/// whether a range of rules holds what was found.
fn whole(job: &Job, governed: Governed, step: Volume) -> (Rounded, Window<Volume>, bool) {
    let window = rounding_window(job, governed);
    let rounded = round_to(governed.dose, step, window);
    if rounded.inside {
        return (rounded, window, !governed.window.is_point());
    }
    let bounds: Vec<Bound> =
        job.rules.bounds(job.fill).into_iter().filter(|bound| bound.by != Governs::Standard).collect();
    let wider = govern(job.rules.asked(job.fill), &bounds, Aim::Low);
    let wider = Governed { dose: governed.dose, ..wider };
    let other = round_to(governed.dose, step, rounding_window(job, wider));
    if other.inside {
        (Rounded { inside: false, ..other }, window, !wider.window.is_point())
    } else {
        (rounded, window, false)
    }
}
