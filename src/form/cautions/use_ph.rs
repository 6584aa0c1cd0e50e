//! What is known of a pH: as the maker prints it, as it is estimated, and the worse of both.

use super::floors::PhOf;
use super::{by_kinds, printed_ph};
use crate::answer::{Remark, Value, Weight};
use crate::chemistry::floor::{FloorVerdict, Ground, Missing, PhRange};
use crate::form::Typed;
use crate::number::Marks;
use crate::site::Product;
use crate::units::Kind;

/// A printed pH may lie so far outside an estimated band before both count. Common practice, no source.
pub const TOLERANCE: f64 = 1.0;

/// So near the edge of a window an estimate clears nothing. Common practice, no source: strips read to half a unit,
/// and the estimate is made for 25 °C.
pub const EDGE: f64 = 0.3;

/// What is known of the pH of a use solution.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct UsePh {
    /// As its maker prints it, or estimated from what it is made of.
    pub range: Option<PhRange>,
    /// Whether nothing that is not listed can change it: only then it may clear anything.
    pub sure: bool,
    /// Whether its maker prints it; otherwise it is an estimate.
    pub printed: bool,
    /// The estimate, where it lies by more than [`TOLERANCE`] beside the printed one: then both count.
    pub against: Option<PhRange>,
}

impl UsePh {
    /// The pH of the product asked about, at the strength that Fill works out for it.
    pub fn of(typed: &Typed, marks: Marks) -> Self {
        PhOf::in_machine(typed, marks).used
    }

    /// The pH of any product of the site, at the dilution of its label or of the site's standard. Without a list of
    /// parts it is what is printed.
    pub fn by_label(typed: &Typed, product: &Product, marks: Marks) -> Self {
        if product.parts.is_empty() {
            return Self::of_both(printed_ph(product, marks), None, product, true);
        }
        let mut own = typed.without_areas();
        own.ask.product.clone_from(&product.id);
        PhOf::by_label(&own, marks).used
    }

    /// Of what is printed and what is estimated. `holds` says whether the printed one was printed for this dilution
    /// or a stronger one: for less it speaks, for more it clears nothing.
    pub(super) fn of_both(
        printed: Option<PhRange>,
        estimated: Option<PhRange>,
        product: &Product,
        holds: bool,
    ) -> Self {
        let Some(range) = printed else {
            return Self { range: estimated, sure: product.listed, printed: false, against: None };
        };
        let against = estimated.filter(|band| disagree(range, *band));
        Self { range: Some(range), sure: holds, printed: true, against }
    }

    /// From the lowest to the highest of what is printed and what contradicts it.
    pub fn widest(self) -> Option<PhRange> {
        let (range, against) = (self.range?, self.against);
        Some(against.map_or(range, |other| joined(range, other)))
    }

    /// Whether a product may be used on a floor. An estimate can refuse it, and clears it only where all that
    /// matters is listed and the edge of the window is not near; where print and estimate disagree, the worse
    /// counts.
    pub fn verdict(self, product: &Product, ground: Ground) -> FloorVerdict {
        let verdict = by_kinds(product, ground, self.range);
        let verdict = match self.against {
            Some(estimate) => verdict.and(by_kinds(product, ground, Some(estimate))),
            None => verdict,
        };
        if verdict != FloorVerdict::Fits {
            return verdict;
        }
        match self.range {
            _ if !self.sure => FloorVerdict::Unknown { missing: vec![Missing::Ph] },
            Some(PhRange { low, high }) if !self.printed => {
                by_kinds(product, ground, Some(PhRange { low: low - EDGE, high: high + EDGE }))
            }
            _ => verdict,
        }
    }

    /// That print and estimate disagree, with both.
    pub(super) fn differs(self) -> Option<Remark> {
        let (printed, estimate) = (self.range?, self.against?);
        let ph = |ph: f64| Value::plain(ph, Kind::Ph);
        let remark = Remark::new("remark-ph-differs", Weight::Warn).value("printed", ph(printed.low));
        Some(remark.value("low", ph(estimate.low)).value("high", ph(estimate.high)))
    }
}

/// Whether a printed pH lies outside an estimated band by more than [`TOLERANCE`].
///
/// ```
/// use brimline::chemistry::floor::PhRange;
/// use brimline::form::cautions::use_ph::disagree;
/// let at = |low, high| PhRange { low, high };
/// assert!(disagree(at(7.0, 7.0), at(11.0, 12.5)) && !disagree(at(10.5, 10.5), at(11.0, 12.5)));
/// ```
pub fn disagree(printed: PhRange, band: PhRange) -> bool {
    band.low - printed.high > TOLERANCE || printed.low - band.high > TOLERANCE
}

/// Both ranges and what lies between them.
pub(super) fn joined(one: PhRange, other: PhRange) -> PhRange {
    PhRange { low: one.low.min(other.low), high: one.high.max(other.high) }
}
