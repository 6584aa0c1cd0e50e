//! The dose in whole marks, strokes or caps, and what that really makes.

use super::Job;
use crate::answer::{Remark, Value, Weight};
use crate::form::{Filling, Outcome, names};
use crate::trade::formula;
use crate::trade::governing::Governed;
use crate::trade::measure::{Rounded, round_to};
use crate::units::{Kind, Volume};

/// A dose more than a tenth off its aim is no longer what the label says.
const COARSE: f64 = 0.1;

/// Notes the rounded dose, its workings, and where it leaves the window.
pub(super) fn rounded(out: &mut Outcome, job: &Job, governed: Governed, step: Volume) {
    // A label with one number cannot be met to the drop; the machine's window still can.
    let window = match job.takes() {
        Some(takes) if governed.window.is_point() && !governed.clash => takes,
        _ => governed.window,
    };
    let Rounded { count, dose, inside } = round_to(governed.dose, step, window);
    let total = match job.filling {
        Filling::MadeUp => job.level,
        Filling::OnTop => job.level + dose,
    };
    if dose >= total || total / job.tank > 1.0 + 1e-9 {
        let remark = Remark::new("remark-measure-too-big", Weight::Warn);
        out.answer.remark(remark.value("step", Value::new(step, Kind::Dose)));
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
    let off = (dose / governed.dose - 1.0).abs() > COARSE;
    if off || !(inside || window.is_point()) {
        let code = if off { "remark-measure-coarse" } else { "remark-rounded-outside" };
        answer.remark(
            Remark::new(code, Weight::Warn)
                .value("rounded", Value::new(dose, Kind::Dose))
                .value("dose", Value::new(governed.dose, Kind::Dose))
                .window("window", window.low, window.high, Kind::Dose),
        );
    }
}
