//! Rounding a dose to the measure at hand.

use super::label::Window;
use crate::units::Volume;

/// A dose as a whole number of graduations, strokes or caps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rounded {
    /// How many.
    pub count: f64,
    /// The volume that they make, m³.
    pub dose: Volume,
    /// Whether the window holds it. A window of one number holds only that number.
    pub inside: bool,
}

/// Rounds to whole steps of a measure.
///
/// `k = round(c / s)`, and of the two whole numbers beside `c / s` the one inside the window is
/// taken where only one is.
///
/// * `dose`: c, m³, above 0.
/// * `step`: s, the volume of one graduation, stroke or cap, m³, above 0.
/// * `window`: what the governing rule allows, m³.
///
/// Returns at least one step: a dose that rounds to nothing needs a finer measure, which `inside`
/// tells. Source: common practice.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::measure::round_to;
/// use brimline::units::Volume;
/// let window = Window { low: Volume::new(3.0), high: Volume::new(5.9) };
/// let rounded = round_to(Volume::new(5.8), Volume::new(1.0), window);
/// assert_eq!((rounded.count, rounded.inside), (5.0, true));
/// ```
pub fn round_to(dose: Volume, step: Volume, window: Window<Volume>) -> Rounded {
    let steps = dose / step;
    let holds = |count: f64| {
        let slack = 1e-9;
        let volume = step * count;
        volume / window.low.max(Volume::new(f64::MIN_POSITIVE)) >= 1.0 - slack
            && volume / window.high <= 1.0 + slack
    };
    let nearest = steps.round().max(1.0);
    let other = if nearest > steps { nearest - 1.0 } else { nearest + 1.0 };
    let count = if !holds(nearest) && other >= 1.0 && holds(other) { other } else { nearest };
    Rounded { count, dose: step * count, inside: holds(count) }
}
