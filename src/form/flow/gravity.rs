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

/// How the flow fades in a machine without a pump.
#[derive(Clone, Copy, Debug)]
pub(in crate::form) struct Fading {
    full: Length,
    low: Length,
}

impl Fading {
    /// Reads the water above the valve with a full and an empty tank; none where a pump feeds the machine.
    /// Mistakes are noted.
    pub(in crate::form) fn read(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Self> {
        let full = out.may::<Length>(typed, Field::HeadFull, marks);
        let low = out.may::<Length>(typed, Field::HeadLow, marks);
        let (full, low) = (full??, low??);
        if low >= full {
            out.trouble(Field::HeadLow.name(), What::LeastAboveMost);
            return None;
        }
        Some(Self { full, low })
    }

    /// The flow with an empty tank: a setting's own flow is taken as caught with a full one.
    pub(in crate::form) fn last(self, flow: Flow) -> Flow {
        fades(flow, self.full, self.low)
    }

    /// The mean flow of a tank: the level falls ever more slowly, the flow evenly, so that it is half way
    /// between first and last.
    pub(in crate::form) fn mean(self, flow: Flow) -> Flow {
        (flow + self.last(flow)) * 0.5
    }
}

/// Notes how the flow of the chosen setting fades.
pub(super) fn note(
    out: &mut Outcome,
    fading: Fading,
    row: &Row,
    passing: Productivity,
    target: Window<ApplicationRate>,
) {
    let Fading { full, low } = fading;
    let half = (full + low) * 0.5;
    let (middle, last) = (fades(row.flow, full, half), fading.last(row.flow));
    let flow = |flow: Flow| Value::new(flow, Kind::Flow);
    let given =
        [("Q₀", flow(row.flow)), ("h", Value::new(low, Kind::Width)), ("h₀", Value::new(full, Kind::Width))];
    out.answer.step(&formula::FADES, &given, flow(last));
    out.answer.step(&formula::FADE_MEAN, &[("Q₀", flow(row.flow)), ("Qₑ", flow(last))], flow(row.mean));
    out.answer.figure(names::FLOW_FULL, flow(row.flow));
    out.answer.figure(names::FLOW_HALF, flow(middle));
    out.answer.figure(names::FLOW_LAST, flow(last));
    let rate = application_rate(last, passing);
    let code = if rate < target.low { "remark-fades-short" } else { "remark-fades" };
    let weight = if rate < target.low { Weight::Warn } else { Weight::Assumed };
    out.answer.remark(
        Remark::new(code, weight)
            .value("last", Value::new(rate, Kind::Rate))
            .value("first", Value::new(row.rate, Kind::Rate)),
    );
}
