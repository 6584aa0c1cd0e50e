//! A governed dose in whole steps of a measure: what the rules let rounding make of it.

use super::governing::{Aim, Bound, Governed, Governs, govern};
use super::label::Window;
use super::measure::{Rounded, round_to};
use crate::units::Volume;

/// A dose more than a tenth off its aim is no longer what the label says. Common practice, no source.
pub const COARSE: f64 = 0.1;

/// The rules for one fill, and the dose that they make.
#[derive(Clone, Copy, Debug)]
pub struct Ruled<'a> {
    /// What the label asks, m³.
    pub asked: Window<Volume>,
    /// The other rules.
    pub bounds: &'a [Bound],
    /// What they come to together.
    pub governed: Governed,
    /// Whether less than the label asks would fail to disinfect.
    pub disinfects: bool,
}

/// A dose in whole steps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Whole {
    /// The steps.
    pub rounded: Rounded,
    /// What they should have stayed in, m³.
    pub window: Window<Volume>,
    /// Whether a range of rules holds what was found: then it is not coarse, however far from the aim.
    pub in_range: bool,
}

impl Ruled<'_> {
    /// What the rounded dose must stay in. A label with one number cannot be met to the drop: the machine's
    /// window still can, a minimum by law is never missed, and a disinfectant is never rounded to less than
    /// its label asks.
    ///
    /// ```
    /// use brimline::trade::governing::{Aim, govern};
    /// use brimline::trade::label::Window;
    /// use brimline::trade::rounding::Ruled;
    /// use brimline::units::Volume;
    /// let asked = Window { low: Volume::new(4.98), high: Volume::new(4.98) };
    /// let ruled = Ruled { asked, bounds: &[], governed: govern(asked, &[], Aim::Low), disinfects: true };
    /// assert_eq!(ruled.allowed().low, Volume::new(4.98));
    /// assert_eq!(ruled.whole(Volume::new(0.5)).rounded.count, 10.0);
    /// ```
    pub fn allowed(&self) -> Window<Volume> {
        let governed = self.governed;
        if !governed.window.is_point() || governed.clash {
            return governed.window;
        }
        let mut window = Window { low: Volume::ZERO, high: Volume::new(f64::INFINITY) };
        for bound in self.bounds.iter().filter(|bound| bound.by != Governs::Standard) {
            window.low = window.low.max(bound.window.low);
            window.high = window.high.min(bound.window.high);
        }
        if self.disinfects {
            window.low = window.low.max(governed.dose);
        }
        window
    }

    /// Rounds within all rules; where no whole number serves, without the site's own standard: it may narrow
    /// the others, and a coarse measure is no reason to leave them.
    ///
    /// * `step`: one step of the measure, m³, above 0.
    pub fn whole(&self, step: Volume) -> Whole {
        let window = self.allowed();
        let rounded = round_to(self.governed.dose, step, window);
        if rounded.inside {
            return Whole { rounded, window, in_range: !self.governed.window.is_point() };
        }
        let bounds: Vec<Bound> =
            self.bounds.iter().copied().filter(|bound| bound.by != Governs::Standard).collect();
        let wider = Governed { dose: self.governed.dose, ..govern(self.asked, &bounds, Aim::Low) };
        let other = round_to(self.governed.dose, step, Self { governed: wider, ..*self }.allowed());
        if other.inside {
            let rounded = Rounded { inside: false, ..other };
            Whole { rounded, window, in_range: !wider.window.is_point() }
        } else {
            Whole { rounded, window, in_range: false }
        }
    }
}

impl Whole {
    /// Whether it is too far from a dose to be poured for it.
    ///
    /// * `dose`: what was rounded, m³.
    pub fn is_coarse(&self, dose: Volume) -> bool {
        !self.in_range && (self.rounded.dose / dose - 1.0).abs() > COARSE
    }
}

/// Rounds what is added to a tank to whole steps, never to less than is allowed. What a range of rules allows is not
/// coarse, however far from the aim.
///
/// * `dose`, `step`: m³, above 0; `allowed`: what the addition must stay in, m³; `ranged`: whether the rules give a
///   range.
///
/// # Errors
/// What is coarse comes back as an error.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::rounding::near;
/// use brimline::units::Volume;
/// let open = Window { low: Volume::ZERO, high: Volume::new(100.0) };
/// assert_eq!(near(Volume::new(4.98), Volume::new(0.5), open, false).unwrap().count, 10.0);
/// assert!(near(Volume::new(4.98), Volume::new(3.0), open, false).is_err());
/// ```
pub fn near(dose: Volume, step: Volume, allowed: Window<Volume>, ranged: bool) -> Result<Rounded, Rounded> {
    let mut rounded = round_to(dose, step, allowed);
    if rounded.dose < allowed.low * (1.0 - 1e-9) {
        rounded = round_to(step * (allowed.low / step).ceil(), step, allowed);
    }
    let close = (rounded.dose / dose - 1.0).abs() <= COARSE;
    if close || rounded.inside && ranged { Ok(rounded) } else { Err(rounded) }
}
