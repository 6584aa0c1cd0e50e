//! What a strip, a drop test, a meter or a catch test says about the strength, and how surely.

mod chart;
mod meters;

pub use chart::{STRIP_SOURCES, Seen, drops, strip};
pub use meters::{BEYOND, BRIX_ERROR, Calibration, catch, conductivity, refractometer};

use super::label::Window;
use crate::units::{MassConcentration, Quantity, VolumeFraction};

/// How far a reading may be off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// One standard deviation.
    Deviation(VolumeFraction),
    /// The weakest and the strongest that it can be.
    Limits(Window<VolumeFraction>),
}

/// A strength that was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// The reading itself.
    pub strength: VolumeFraction,
    /// How far it may be off.
    pub doubt: Doubt,
}

/// Standard deviations on either side that a decision asks for: about 95 % of normal errors.
/// Source: JCGM 100:2008 (GUM), 6.3.3, from memory, unverified.
pub const COVERAGE: f64 = 2.0;

/// What was decided.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Below the window.
    TooWeak,
    /// Inside it.
    Inside,
    /// Above it.
    TooStrong,
}

/// What a reading can decide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Supports {
    /// All that the reading can mean lies on one side of each end of the window.
    CanDecide(Verdict),
    /// What it can mean reaches over an end of the window: read more finely, or do not decide.
    CannotDecide,
}

impl Reading {
    /// The weakest and the strongest that a decision must reckon with: the limits, or
    /// [`COVERAGE`] standard deviations on either side, within water and neat.
    pub fn bounds(self) -> Window<VolumeFraction> {
        match self.doubt {
            Doubt::Limits(window) => window,
            Doubt::Deviation(error) => Window {
                low: (self.strength - error * COVERAGE).max(VolumeFraction::ZERO),
                high: (self.strength + error * COVERAGE).min(VolumeFraction::new(1.0)),
            },
        }
    }

    /// What the reading can decide against a window.
    ///
    /// Inside where both bounds are; too weak or too strong where both are beyond the same end;
    /// nothing otherwise.
    ///
    /// * `window`: what the label allows. A window of one number holds no reading: widen it first
    ///   ([`with_tolerance`]).
    ///
    /// Source: common practice (decide only what the reading can support).
    ///
    /// ```
    /// use brimline::trade::label::Window;
    /// use brimline::trade::reading::{Doubt, Reading, Supports, Verdict};
    /// use brimline::units::VolumeFraction;
    /// let r = VolumeFraction::new;
    /// let reading = Reading { strength: r(0.02), doubt: Doubt::Deviation(r(0.001)) };
    /// let against = |low, high| reading.supports(Window { low: r(low), high: r(high) });
    /// assert_eq!(against(0.015, 0.025), Supports::CanDecide(Verdict::Inside));
    /// assert_eq!(against(0.03, 0.04), Supports::CanDecide(Verdict::TooWeak));
    /// assert_eq!(against(0.019, 0.04), Supports::CannotDecide);
    /// ```
    pub fn supports(self, window: Window<VolumeFraction>) -> Supports {
        let bounds = self.bounds();
        let slack = 1e-9;
        if bounds.high < window.low * (1.0 - slack) {
            Supports::CanDecide(Verdict::TooWeak)
        } else if bounds.low > window.high * (1.0 + slack) {
            Supports::CanDecide(Verdict::TooStrong)
        } else if bounds.low >= window.low * (1.0 - slack) && bounds.high <= window.high * (1.0 + slack) {
            Supports::CanDecide(Verdict::Inside)
        } else {
            Supports::CannotDecide
        }
    }
}

/// A window with room on either side, so that a label's single number can be held against a reading.
///
/// `low × (1 − a)` to `high × (1 + a)`
///
/// * `window`: what the label allows.
/// * `share`: a, 0 to 1; how much is the site's own rule, [`super::rescue::TOLERANCE`] is usual.
///
/// Source: common practice.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::reading::with_tolerance;
/// use brimline::units::VolumeFraction;
/// let r = VolumeFraction::new(0.02);
/// let wide = with_tolerance(Window { low: r, high: r }, 0.5);
/// assert_eq!((wide.low, wide.high), (VolumeFraction::new(0.01), VolumeFraction::new(0.03)));
/// ```
pub fn with_tolerance(window: Window<VolumeFraction>, share: f64) -> Window<VolumeFraction> {
    Window { low: window.low * (1.0 - share), high: window.high * (1.0 + share) }
}

/// Why a reading says nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadingMistake {
    /// The strip's chart has no such block.
    NoSuchBlock,
    /// The blocks of the chart do not rise.
    BlocksNotRising,
    /// The concentrate holds none of what is read.
    NoActive,
    /// The meter hardly tells the calibration solution from water.
    NoSpan,
    /// Far outside what the meter was calibrated with.
    BeyondCalibration,
    /// Nothing was caught.
    NothingCaught,
    /// More concentrate than the whole.
    MoreThanWhole,
}

/// The strength that holds `active`, between water and neat.
fn as_strength(active: MassConcentration, concentrate: MassConcentration) -> VolumeFraction {
    VolumeFraction::new((active.si() / concentrate.si()).clamp(0.0, 1.0))
}
