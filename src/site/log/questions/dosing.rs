//! Too much and too little.

use super::usage::volume;
use crate::site::log::{Current, Id};

/// One fill that was dosed otherwise than planned.
#[derive(Clone, Debug, PartialEq)]
pub struct Dose {
    /// The fill.
    pub id: Id,
    /// Measured of planned, a ratio.
    pub ratio: f64,
}

/// How fills stand to their plans.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Dosing {
    /// Within the tolerance.
    pub within: usize,
    /// Above it, the strongest first.
    pub over: Vec<Dose>,
    /// Below it, the weakest first.
    pub under: Vec<Dose>,
    /// Fills without a plan or without a measured amount: nobody knows.
    pub unknown: usize,
}

/// Which fills had too much concentrate or too little, against what was planned.
///
/// * `tolerance`: how far from the plan is as planned, a share of it, 0 or above; both ends are within.
///
/// A plan of nothing has no ratio and is counted as unknown. Source: definition.
///
/// ```
/// use brimline::site::log::{Amount, Fill, Log, Stamp, Words, current};
/// use brimline::site::log::questions::{Filter, dosing};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// for measured in [0.5e-3, 1.05e-3, 2e-3] {
///     let (concentrate, measured) = (Amount::new(1e-3, "1 L"), Amount::new(measured, ""));
///     log.fill(&stamp, Fill { concentrate, measured, ..Fill::default() }, Words::default()).unwrap();
/// }
/// let found = dosing(Filter::default().of(&current(&log).fills), 0.1);
/// assert_eq!((found.within, found.over[0].ratio, found.under[0].ratio), (1, 2.0, 0.5));
/// ```
pub fn dosing<'a>(fills: impl IntoIterator<Item = &'a Current>, tolerance: f64) -> Dosing {
    let mut found = Dosing::default();
    for one in fills {
        let (planned, measured) = (volume(one.fill.concentrate.si), volume(one.fill.measured.si));
        let ratio = planned.zip(measured).map(|(planned, measured)| measured / planned);
        let Some(ratio) = ratio.filter(|ratio| ratio.is_finite()) else {
            found.unknown += 1;
            continue;
        };
        // What is at an end but for rounding is within.
        let slack = tolerance + 1e-9;
        if ratio > 1.0 + slack {
            found.over.push(Dose { id: one.id.clone(), ratio });
        } else if ratio < 1.0 - slack {
            found.under.push(Dose { id: one.id.clone(), ratio });
        } else {
            found.within += 1;
        }
    }
    found.over.sort_by(|a, b| b.ratio.total_cmp(&a.ratio));
    found.under.sort_by(|a, b| a.ratio.total_cmp(&b.ratio));
    found
}
