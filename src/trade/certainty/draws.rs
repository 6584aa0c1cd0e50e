//! The error of the strength by drawing doses: a check of the closed form, and the way where errors
//! are large.

use super::Dose;
use crate::trade::label::Window;
use crate::units::{Quantity, VolumeFraction};

/// What the draws show.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drawn {
    /// The mean strength.
    pub mean: VolumeFraction,
    /// One standard deviation of the strengths drawn.
    pub error: VolumeFraction,
    /// The part of the draws that lies inside the window, 0 to 1.
    pub inside: f64,
    /// One standard deviation of that part, `√(p × (1 − p) / N)`.
    pub inside_error: f64,
}

/// Draws doses and counts those inside a window.
///
/// `c = c₀ + s₁ × z₁`, `w = w₀ + s₂ × z₂`, z normal, by the polar method: a point (x, y) evenly drawn
/// inside the unit circle, at the distance √q, gives `z₁ = x × √(−2 ln q / q)` and `z₂` with y. Volumes
/// below nothing count as nothing.
///
/// * `dose`: both volumes, each with one standard deviation as its error.
/// * `window`: what the label allows.
/// * `label`: u, one relative standard deviation of what the label means, 0 or above: a draw counts as
///   inside by its strength times `1 + u × z₃`.
/// * `seed`: any; the same seed gives the same draws.
/// * `count`: N, how many, at least 2; 10 000 give the chance to within 0.5 %, one standard deviation.
///
/// Returns `None` for fewer than 2 draws. Source: Marsaglia and Bray, SIAM Review 6:260
/// (1964), from memory, unverified; the even numbers are those of the crate fastrand (wyrand).
///
/// ```
/// use brimline::trade::certainty::{Dose, Measured, draw};
/// use brimline::trade::label::Window;
/// use brimline::units::{Volume, VolumeFraction};
/// let volume = |value, error| Measured { value: Volume::new(value), error: Volume::new(error) };
/// let dose = Dose::OnTop { concentrate: volume(20.0, 1.0), water: volume(1280.0, 64.0) };
/// let window = Window { low: VolumeFraction::new(0.0), high: VolumeFraction::new(1.0) };
/// let drawn = draw(dose, window, 0.0, 7, 1_000).unwrap();
/// assert_eq!(drawn.inside, 1.0);
/// assert_eq!(draw(dose, window, 0.0, 7, 1_000), Some(drawn));
/// ```
pub fn draw(dose: Dose, window: Window<VolumeFraction>, label: f64, seed: u64, count: u32) -> Option<Drawn> {
    if count < 2 {
        return None;
    }
    let (concentrate, other) = dose.parts();
    let (low, high) = (window.low.si(), window.high.si());
    let usual = dose.strength(concentrate.value.si(), other.value.si());
    let mut even = fastrand::Rng::with_seed(seed);
    // Sums of the differences from the usual strength lose no digits.
    let (mut sum, mut squares, mut inside) = (0.0, 0.0, 0_u32);
    let mut pair = move || loop {
        let (x, y) = (2.0 * even.f64() - 1.0, 2.0 * even.f64() - 1.0);
        let square = x * x + y * y;
        if square > 0.0 && square < 1.0 {
            let far = (-2.0 * square.ln() / square).sqrt();
            return (far * x, far * y);
        }
    };
    for _ in 0..count {
        let (first, second) = pair();
        // The third is drawn only where it counts, so that a label without doubt keeps its draws.
        let meant = if label > 0.0 { 1.0 + label * pair().0 } else { 1.0 };
        let strength = dose.strength(
            concentrate.value.si() + concentrate.error.si() * first,
            other.value.si() + other.error.si() * second,
        );
        sum += strength - usual;
        squares += (strength - usual).powi(2);
        inside += u32::from(low <= strength * meant && strength * meant <= high);
    }
    let n = f64::from(count);
    let share = f64::from(inside) / n;
    let variance = ((squares - sum * sum / n) / (n - 1.0)).max(0.0);
    Some(Drawn {
        mean: VolumeFraction::new(usual + sum / n),
        error: VolumeFraction::new(variance.sqrt()),
        inside: share,
        inside_error: (share * (1.0 - share) / n).sqrt(),
    })
}
