//! A tank that gravity drains: the flow at the start, half way and at the end.

use super::Row;
use crate::answer::{Remark, Value, Weight};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::Marks;
use crate::trade::calibration::fades;
use crate::trade::coverage::application_rate;
use crate::trade::formula;
use crate::trade::label::Window;
use crate::units::{ApplicationRate, Flow, Kind, Length, Productivity};

/// Notes how the flow of the chosen setting fades, where the machine has no pump: the setting's own flow is
/// taken as caught with a full tank.
pub(super) fn note(
    out: &mut Outcome,
    typed: &Typed,
    row: &Row,
    passing: Productivity,
    target: Window<ApplicationRate>,
    marks: Marks,
) {
    let full = out.may::<Length>(typed, Field::HeadFull, marks);
    let low = out.may::<Length>(typed, Field::HeadLow, marks);
    let (Some(Some(full)), Some(Some(low))) = (full, low) else { return };
    if low >= full {
        out.trouble(Field::HeadLow.name(), What::LeastAboveMost);
        return;
    }
    let half = (full + low) * 0.5;
    let (middle, last) = (fades(row.flow, full, half), fades(row.flow, full, low));
    let flow = |flow: Flow| Value::new(flow, Kind::Flow);
    let given =
        [("Q₀", flow(row.flow)), ("h", Value::new(low, Kind::Width)), ("h₀", Value::new(full, Kind::Width))];
    out.answer.step(&formula::FADES, &given, flow(last));
    out.answer.figure(names::FLOW_FULL, flow(row.flow));
    out.answer.figure(names::FLOW_HALF, flow(middle));
    out.answer.figure(names::FLOW_LAST, flow(last));
    // The level falls ever more slowly, the flow evenly: its mean is half way between first and last.
    let mean = (row.flow + last) * 0.5;
    let time = row.time * (row.flow / mean);
    out.answer.replace(names::FLOW_TANK_TIME, Value::new(time, Kind::Time));
    out.answer.replace(names::FLOW_TANK_AREA, Value::new(row.area * (row.flow / mean), Kind::Area));
    let rate = application_rate(last, passing);
    let code = if rate < target.low { "remark-fades-short" } else { "remark-fades" };
    let weight = if rate < target.low { Weight::Warn } else { Weight::Assumed };
    out.answer.remark(
        Remark::new(code, weight)
            .value("last", Value::new(rate, Kind::Rate))
            .value("first", Value::new(row.rate, Kind::Rate)),
    );
}
