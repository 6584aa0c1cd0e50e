//! The dose in whole marks, strokes or caps, and what that really makes.

use super::{COARSE, Job};
use crate::answer::{Remark, Value, Weight};
use crate::form::{Outcome, names};
use crate::trade::formula;
use crate::trade::governing::{Governed, Governs};
use crate::trade::label::Window;
use crate::trade::measure::{Rounded, round_to};
use crate::units::{Kind, Volume};

/// Notes the rounded dose, its workings, and where it leaves the window.
pub(super) fn rounded(out: &mut Outcome, job: &Job, governed: Governed, step: Volume) {
    let window = rounding_window(job, governed);
    let Rounded { count, dose, inside } = round_to(governed.dose, step, window);
    let total = job.fill.total(dose);
    if dose >= total || total / job.fill.tank > 1.0 + 1e-9 {
        let remark = Remark::new("remark-measure-too-big", Weight::Warn);
        out.answer.remark(remark.value("step", Value::new(step, Kind::Dose)));
        return;
    }
    // What the rules' range allows is not coarse, however far from the aim.
    let in_range = inside && !governed.window.is_point();
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
    if !(inside || window.is_point()) {
        answer.remark(
            Remark::new("remark-rounded-outside", Weight::Warn)
                .value("rounded", Value::new(dose, Kind::Dose))
                .window("window", window.low, window.high, Kind::Dose),
        );
    }
}

/// What the rounded dose must stay in. A label with one number cannot be met to the drop: the machine's
/// window still can, and a disinfectant is never rounded to less than its label asks.
fn rounding_window(job: &Job, governed: Governed) -> Window<Volume> {
    if !governed.window.is_point() || governed.clash {
        return governed.window;
    }
    let open = Window { low: Volume::ZERO, high: Volume::new(f64::INFINITY) };
    let bounds = job.rules.bounds(job.fill);
    let takes = bounds.iter().find(|bound| bound.by == Governs::Machine).map_or(open, |bound| bound.window);
    if job.disinfects { Window { low: governed.dose.max(takes.low), ..takes } } else { takes }
}
