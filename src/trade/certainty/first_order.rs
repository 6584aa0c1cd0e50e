//! The error of the strength in closed form.

use super::Dose;
use crate::trade::label::Window;
use crate::units::{Quantity, VolumeFraction};

/// Which error matters most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// The measure of the concentrate.
    Measure,
    /// The water, or the mark that the tank is made up to.
    Water,
    /// What the label means by its numbers.
    Label,
}

/// A strength with its error.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// x, the strength.
    pub strength: VolumeFraction,
    /// s, one standard deviation of it.
    pub error: VolumeFraction,
    /// n, parts of water to 1 of concentrate.
    pub parts: f64,
    /// One standard deviation of n.
    pub parts_error: f64,
    /// The measure's part of the variance, 0 to 1; the rest is the water's.
    pub by_measure: f64,
}

impl Spread {
    /// Which of the two errors is the larger.
    pub fn cause(self) -> Cause {
        if self.by_measure >= 0.5 { Cause::Measure } else { Cause::Water }
    }
}

/// The error of a strength beside what the label means, and what each of the three adds to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overall {
    /// One standard deviation of the strength beside the label's.
    pub error: VolumeFraction,
    /// u, one relative standard deviation of what the label means.
    pub label: f64,
    /// The measure's part of the variance, 0 to 1.
    pub by_measure: f64,
    /// The water's part.
    pub by_water: f64,
    /// The label's part.
    pub by_label: f64,
}

impl Overall {
    /// Adds the doubt about the label to the error of a strength.
    ///
    /// `s = √(sₓ² + (x × u)²)`
    ///
    /// * `spread`: x and sₓ, as [`first_order`] gives them.
    /// * `label`: u, relative, 0 or above: read as parts of the total, 1 to n means a strength that is
    ///   1/n greater.
    ///
    /// That the label's doubt does not depend on the other two is taken for granted. Source: law of
    /// propagation of uncertainty, as [`first_order`].
    ///
    /// ```
    /// use brimline::trade::certainty::{Cause, Dose, Measured, Overall, first_order};
    /// use brimline::units::{Quantity, Volume};
    /// let volume = |value, error| Measured { value: Volume::new(value), error: Volume::new(error) };
    /// let spread = first_order(Dose::MadeUp { concentrate: volume(1.0, 0.03), total: volume(5.0, 0.2) });
    /// let overall = Overall::of(spread, 0.12);
    /// assert!((overall.error.si() - 0.026).abs() < 1e-12); // 3, 4 and 12 % make 13 %
    /// assert_eq!(overall.cause(), Cause::Label);
    /// ```
    pub fn of(spread: Spread, label: f64) -> Self {
        let by_label = spread.strength.si() * label;
        let error = spread.error.si().hypot(by_label);
        let part = |share: f64| if error > 0.0 { share / (error * error) } else { 0.0 };
        let made = spread.error.si().powi(2);
        Self {
            error: VolumeFraction::new(error),
            label,
            by_measure: part(made * spread.by_measure),
            by_water: part(made * (1.0 - spread.by_measure)),
            by_label: part(by_label * by_label),
        }
    }

    /// Which of the three matters most.
    pub fn cause(self) -> Cause {
        if self.by_label > self.by_measure.max(self.by_water) {
            Cause::Label
        } else if self.by_measure >= self.by_water {
            Cause::Measure
        } else {
            Cause::Water
        }
    }
}

/// The strength of a dose and its standard deviation, to first order.
///
/// On top of water: `x = c / (c + w)`, `s = √((w × s₁)² + (c × s₂)²) / (c + w)²`. Made up:
/// `x = c / V`, `s = √(s₁² + (x × s₂)²) / V`. Parts of water: `n = (1 − x) / x`, `sₙ = s / x²`.
///
/// * `dose`: both volumes, each with one standard deviation as its error.
///
/// First order holds where the errors are small beside the values: at 10 % it is some 1 % off, which
/// [`super::draw`] shows. That the errors do not depend on each other is taken for granted. Source:
/// law of propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2, from memory, unverified.
///
/// ```
/// use brimline::trade::certainty::{Cause, Dose, Measured, first_order};
/// use brimline::units::{Quantity, Volume};
/// let volume = |value, error| Measured { value: Volume::new(value), error: Volume::new(error) };
/// let spread = first_order(Dose::OnTop { concentrate: volume(6.0, 0.25), water: volume(1280.0, 64.0) });
/// assert!((spread.strength.si() - 0.004_665_63).abs() < 5e-9);
/// assert!((spread.error.si() - 0.000_302_248).abs() < 5e-10);
/// assert_eq!(spread.cause(), Cause::Water);
/// ```
pub fn first_order(dose: Dose) -> Spread {
    let (concentrate, other) = dose.parts();
    let (c, w) = (concentrate.value.si(), other.value.si());
    let x = dose.strength(c, w);
    let (by_c, by_w) = match dose {
        Dose::OnTop { .. } => (w / (c + w).powi(2), c / (c + w).powi(2)),
        Dose::MadeUp { .. } => (1.0 / w, c / w.powi(2)),
    };
    let (measure, water) = (by_c * concentrate.error.si(), by_w * other.error.si());
    let error = measure.hypot(water);
    Spread {
        strength: VolumeFraction::new(x),
        error: VolumeFraction::new(error),
        parts: (1.0 - x) / x,
        parts_error: error / (x * x),
        by_measure: if error > 0.0 { (measure / error).powi(2) } else { 0.5 },
    }
}

/// The weakest and the strongest that the tolerances allow.
///
/// On top of water: `(c − a) / (c − a + w + b)` to `(c + a) / (c + a + w − b)`. Made up:
/// `(c − a) / (V + b)` to `(c + a) / (V − b)`.
///
/// * `dose`: both volumes, each with the limit of its tolerance, a and b, as its error.
///
/// A volume below nothing counts as nothing. Source: interval arithmetic.
///
/// ```
/// use brimline::trade::certainty::{Dose, Measured, worst_case};
/// use brimline::units::{Quantity, Volume};
/// let volume = |value, error| Measured { value: Volume::new(value), error: Volume::new(error) };
/// let worst = worst_case(Dose::OnTop { concentrate: volume(6.0, 0.25), water: volume(1280.0, 64.0) });
/// assert!((worst.low.si() - 0.004_260_05).abs() < 5e-9 && (worst.high.si() - 0.005_113_52).abs() < 5e-9);
/// ```
pub fn worst_case(dose: Dose) -> Window<VolumeFraction> {
    let (concentrate, other) = dose.parts();
    let (c, a) = (concentrate.value.si(), concentrate.error.si());
    let (w, b) = (other.value.si(), other.error.si());
    Window {
        low: VolumeFraction::new(dose.strength(c - a, w + b)),
        high: VolumeFraction::new(dose.strength(c + a, w - b)),
    }
}

/// The chance that a strength lies inside a window, when its errors are normal.
///
/// `p = Φ((high − x) / s) − Φ((low − x) / s)`
///
/// * `strength`, `error`: x and one standard deviation s, as [`first_order`] gives them.
/// * `window`: what the label allows. A window of one number is never met but by chance 0: give it a
///   tolerance first ([`crate::trade::reading::with_tolerance`]).
///
/// Returns 0 to 1, within 2 × 10⁻⁷ of the exact integral. Source: the error function by Abramowitz
/// and Stegun, Handbook of Mathematical Functions (1964), 7.1.26, from memory; tests hold it against
/// the normal distribution of Python's statistics library.
///
/// ```
/// use brimline::trade::certainty::chance_inside;
/// use brimline::trade::label::Window;
/// use brimline::units::VolumeFraction;
/// let window = Window { low: VolumeFraction::new(0.04), high: VolumeFraction::new(0.06) };
/// let chance = chance_inside(VolumeFraction::new(0.05), VolumeFraction::new(0.01), window);
/// assert!((chance - 0.682_689).abs() < 1e-6);
/// ```
pub fn chance_inside(strength: VolumeFraction, error: VolumeFraction, window: Window<VolumeFraction>) -> f64 {
    if error <= VolumeFraction::ZERO {
        return f64::from(u8::from(window.low <= strength && strength <= window.high));
    }
    let below = |bound: VolumeFraction| {
        let deviations: f64 = (bound - strength) / error;
        0.5 * (1.0 + erf(deviations / 2.0_f64.sqrt()))
    };
    (below(window.high) - below(window.low)).clamp(0.0, 1.0)
}

/// The error function, within 1.5 × 10⁻⁷.
fn erf(x: f64) -> f64 {
    const A: [f64; 5] = [1.061_405_429, -1.453_152_027, 1.421_413_741, -0.284_496_736, 0.254_829_592];
    let t = 1.0 / (1.0 + 0.327_591_1 * x.abs());
    let polynomial = A.iter().fold(0.0, |sum, a| sum * t + a) * t;
    (1.0 - polynomial * (-x * x).exp()).copysign(x)
}
