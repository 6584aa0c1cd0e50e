//! pH against the dose, for a picture.

use super::{Activity, Product, Water, estimate};
use crate::units::VolumeFraction;

/// One point of the band.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Concentrate in the use solution.
    pub strength: VolumeFraction,
    /// Lowest pH.
    pub low: f64,
    /// Highest pH.
    pub high: f64,
    /// Whether no ingredient that may matter is unknown.
    pub known: bool,
}

/// pH from plain water up to a strength, at even steps of strength.
///
/// [`estimate`](fn@estimate) at `r × i / n`, i from 0 to n
///
/// * `product`, `water`, `activity`: as there.
/// * `up_to`: r, above 0 up to 1.
/// * `steps`: n, 1 or above.
///
/// Returns n + 1 points. Source: as there.
///
/// ```
/// use brimline::chemistry::acid_base::{Activity, Ingredient, Product, Water, curve};
/// use brimline::units::{Density, MassConcentration, MassFraction, VolumeFraction};
/// let lye = Ingredient { cas: "1310-73-2", low: MassFraction::new(0.02), high: MassFraction::new(0.02) };
/// let product = Product { ingredients: &[lye], density: Density::new(1_020.0) };
/// let tap = Water { alkalinity: MassConcentration::new(0.1), ph: 7.5 };
/// let points = curve(product, tap, Activity::Davies, VolumeFraction::new(0.02), 10);
/// assert_eq!(points.len(), 11);
/// assert!((points[0].low - 7.5).abs() < 1e-6 && points.is_sorted_by(|a, b| a.high < b.high));
/// ```
pub fn curve(
    product: Product,
    water: Water,
    activity: Activity,
    up_to: VolumeFraction,
    steps: u16,
) -> Vec<Point> {
    let at = |step: u16| {
        let strength = up_to * (f64::from(step) / f64::from(steps.max(1)));
        let found = estimate(product, strength, water, activity);
        Point { strength, low: found.low, high: found.high, known: found.unknown.is_empty() }
    };
    (0..=steps.max(1)).map(at).collect()
}
