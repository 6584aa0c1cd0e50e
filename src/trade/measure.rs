//! Rounding a dose to the measure at hand.

use super::label::Window;
use crate::units::{Quantity, Volume};

/// A dose as a whole number of graduations, strokes or caps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rounded<Q = Volume> {
    /// How many.
    pub count: f64,
    /// The volume or the mass that they make, m³ or kg.
    pub dose: Q,
    /// Whether the window holds it. A window of one number holds only that number.
    pub inside: bool,
}

/// Rounds to whole steps of a measure.
///
/// `k = round(c / s)`, and of the two whole numbers beside `c / s` the one inside the window is
/// taken where only one is.
///
/// * `dose`: c, m³ or kg, above 0.
/// * `step`: s, one graduation, stroke, cap or scoop, m³ or kg, above 0.
/// * `window`: what the governing rule allows, m³ or kg.
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
pub fn round_to<Q: Quantity>(dose: Q, step: Q, window: Window<Q>) -> Rounded<Q> {
    let Window { low, high } = window;
    let (count, inside) = whole_steps(dose.si() / step.si(), low.si() / step.si(), high.si() / step.si());
    Rounded { count, dose: Q::from_si(step.si() * count), inside }
}

/// All three in steps.
fn whole_steps(steps: f64, low: f64, high: f64) -> (f64, bool) {
    let slack = 1e-9;
    let holds = |count: f64| count >= low * (1.0 - slack) && count <= high * (1.0 + slack);
    let nearest = steps.round().max(1.0);
    let other = if nearest > steps { nearest - 1.0 } else { nearest + 1.0 };
    let count = if !holds(nearest) && other >= 1.0 && holds(other) { other } else { nearest };
    (count, holds(count))
}
