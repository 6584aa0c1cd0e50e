//! Where the rules for a dose part, and what is said of it: by every job that makes such a solution.

use super::{Extent, Rules};
use crate::answer::{Remark, Value, Weight};
use crate::trade::governing::{Bound, Governed, Governs};
use crate::trade::label::Window;
use crate::units::{Kind, Volume};

impl Rules {
    /// A remark for each rule that moves the dose of a fill, or that the dose does not keep.
    pub(in crate::form) fn partings(&self, fill: Extent) -> Vec<Remark> {
        let (asked, governed) = (self.asked(fill), self.govern(fill));
        let remark = |bound: Bound| {
            let remark = Remark::new(parting(bound, asked, governed)?, Weight::Warn)
                .window("label", asked.low, asked.high, Kind::Dose)
                .window("rule", bound.window.low, bound.window.high, Kind::Dose);
            Some(remark.value("dose", Value::new(governed.dose, Kind::Dose)))
        };
        self.bounds(fill).into_iter().filter_map(remark).collect()
    }
}

/// The remark of a rule that moved the dose, or that the dose does not keep.
fn parting(bound: Bound, asked: Window<Volume>, governed: Governed) -> Option<&'static str> {
    let narrows = bound.by == governed.governs;
    // Where the machine has the last word, a standard that keeps the label is not what is wrong.
    let overruled = governed.clash && bound.meets(asked);
    match bound.by {
        Governs::Machine if governed.clash && narrows => Some("remark-clash-machine"),
        Governs::Machine if governed.clash => Some("remark-clash-label"),
        Governs::Machine if narrows => Some("remark-machine-narrows"),
        Governs::Standard if !bound.allows(governed.dose) && !overruled => Some("remark-standard-outside"),
        Governs::Standard if narrows => Some("remark-standard-narrows"),
        Governs::Minimum if !bound.allows(governed.dose) => Some("remark-minimum-missed"),
        Governs::Minimum if narrows => Some("remark-minimum-narrows"),
        _ => None,
    }
}
