//! At what dilution the estimate leaves the pH that a floor bears.

use super::ph;
use crate::chemistry::floor::{PhRange, Window};
use crate::form::Typed;
use crate::number::Marks;
use crate::units::{Quantity, VolumeFraction};

/// Where the estimated band leaves a window, from weak to strong.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Leaving {
    /// Nowhere: the concentrate itself lies within it.
    Never,
    /// It lies outside, or may, with hardly any product: that is the tap water.
    Always,
    /// From a strength on.
    From {
        /// The band's nearer end is outside: from here on it may leave.
        may: VolumeFraction,
        /// All of the band is outside: from here on it surely does, where it does at all.
        surely: Option<VolumeFraction>,
        /// Whether it gets too acid; else too alkaline.
        acid: bool,
    },
}

/// The weakest solution that is looked at, one part in a hundred thousand: near enough to plain water.
const WEAKEST: f64 = 1e-5;
/// Halvings of five tenfold steps: the ratio is within 0.1 %.
const HALVINGS: usize = 14;

/// Where the product asked about leaves a window, by halving the strength on its logarithm between
/// plain water and the concentrate. More product moves its pH towards that of the product and never back, so that
/// there is one crossing on a side.
///
/// Returns none where there is no estimate. Source: the estimate, `chemistry::acid_base`.
///
/// ```
/// use brimline::chemistry::floor::Surface;
/// use brimline::form::{Action, Typed, action::{Shelf, reduce}, cautions::leaving::{Leaving, leaving}};
/// use brimline::number::Marks;
/// let vinegar = reduce(Typed::default(), Action::Pick(Shelf::Product, "vinegar".into()));
/// let window = *Surface::CalcareousStone.window().unwrap();
/// assert!(matches!(leaving(&vinegar, window, Marks::POINT), Some(Leaving::From { acid: true, .. })));
/// ```
pub fn leaving(typed: &Typed, window: Window, marks: Marks) -> Option<Leaving> {
    let band = |strength: f64| ph::at(typed, Some(VolumeFraction::new(strength)), marks).band;
    let (weakest, strongest) = (band(WEAKEST)?, band(1.0)?);
    let may = |band: PhRange| band.low < window.low || band.high > window.high;
    let surely = |band: PhRange| band.high < window.low || band.low > window.high;
    if may(weakest) {
        return Some(Leaving::Always);
    }
    if !may(strongest) {
        return Some(Leaving::Never);
    }
    let first = |outside: &dyn Fn(PhRange) -> bool| {
        let (mut inside, mut out) = (WEAKEST, 1.0_f64);
        for _ in 0..HALVINGS {
            let middle = (inside * out).sqrt();
            if band(middle).is_some_and(outside) { out = middle } else { inside = middle }
        }
        VolumeFraction::from_si(out)
    };
    Some(Leaving::From {
        may: first(&may),
        surely: surely(strongest).then(|| first(&surely)),
        acid: strongest.low < window.low,
    })
}
