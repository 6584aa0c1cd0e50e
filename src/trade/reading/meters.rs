//! Readings of instruments, and the catch test.

use super::{Doubt, Reading, ReadingMistake};
use crate::trade::certainty::Measured;
use crate::trade::label::Window;
use crate::units::{Quantity, VolumeFraction};

/// What a hand refractometer is good for, ± °Brix. Common practice, no source.
pub const BRIX_ERROR: f64 = 0.2;

/// Reads a refractometer.
///
/// `m = B × f`, and `(B − e) × f` to `(B + e) × f`
///
/// * `brix`: B, °Brix, zeroed on the water that is used, 0 or above.
/// * `factor`: f, volume fraction of concentrate for 1 °Brix, above 0: the product's own.
/// * `error`: e, ± °Brix; [`BRIX_ERROR`] is usual.
///
/// Returns the strength with its limits, within water and neat. Soil and hardness in a used solution
/// read as concentrate, which is not checked. Source: common practice.
///
/// ```
/// use brimline::trade::reading::{BRIX_ERROR, refractometer};
/// use brimline::units::{Quantity, VolumeFraction};
/// let reading = refractometer(2.0, VolumeFraction::new(0.01), BRIX_ERROR);
/// assert_eq!(reading.strength, VolumeFraction::new(0.02));
/// assert!((reading.bounds().low.si() - 0.018).abs() < 1e-12);
/// ```
pub fn refractometer(brix: f64, factor: VolumeFraction, error: f64) -> Reading {
    let strength = |brix: f64| VolumeFraction::new((factor.si() * brix).clamp(0.0, 1.0));
    let window = Window { low: strength(brix - error), high: strength(brix + error) };
    Reading { strength: strength(brix), doubt: Doubt::Limits(window) }
}

/// What a conductivity meter showed when it was calibrated for one product and one water. All
/// readings are in the meter's own unit, at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Calibration {
    /// κ₀, in the water alone.
    pub water: f64,
    /// κₛ, in the calibration solution.
    pub solution: f64,
    /// s, the strength of that solution, above 0, with one standard deviation.
    pub strength: Measured<VolumeFraction>,
}

/// How many times the calibration's strength a conductivity may be read to: beyond, the line bends.
/// Common practice, no source.
pub const BEYOND: f64 = 2.0;

/// Reads a conductivity meter.
///
/// `f = (κ − κ₀) / (κₛ − κ₀)`, `m = s × f`,
/// `sₘ = √((s × u / (κₛ − κ₀))² × (1 + f² + (1 − f)²) + (f × sₛ)²)`
///
/// * `read`: κ, in the unit of the calibration.
/// * `error`: u, one standard deviation of one reading of the meter, 0 or above.
/// * `calibration`: κ₀, κₛ, s and sₛ.
///
/// Returns the strength with one standard deviation. That conductivity rises in a straight line, that
/// the water and the temperature are those of the calibration, and that no soil came in, is not
/// checked. Source: common practice; the error by first-order propagation.
///
/// # Errors
/// [`ReadingMistake::NoSpan`] where κₛ and κ₀ differ by less than 3 u or not at all,
/// [`ReadingMistake::BeyondCalibration`] where f is above [`BEYOND`] or below 0 by more than 3 u.
///
/// ```
/// use brimline::trade::certainty::Measured;
/// use brimline::trade::reading::{Calibration, conductivity};
/// use brimline::units::VolumeFraction;
/// let strength = Measured { value: VolumeFraction::new(0.02), error: VolumeFraction::ZERO };
/// let calibration = Calibration { water: 300.0, solution: 1_100.0, strength };
/// let reading = conductivity(700.0, 0.0, &calibration).unwrap();
/// assert_eq!(reading.strength, VolumeFraction::new(0.01));
/// ```
pub fn conductivity(read: f64, error: f64, calibration: &Calibration) -> Result<Reading, ReadingMistake> {
    let Calibration { water, solution, strength } = *calibration;
    let span = solution - water;
    if span.is_nan() || span.abs() <= 3.0 * error {
        return Err(ReadingMistake::NoSpan);
    }
    let share = (read - water) / span;
    if !(-3.0 * error / span.abs()..=BEYOND).contains(&share) {
        return Err(ReadingMistake::BeyondCalibration);
    }
    let meter = (strength.value.si() * error / span) * (1.0 + share.powi(2) + (1.0 - share).powi(2)).sqrt();
    let deviation = meter.hypot(share * strength.error.si());
    let read = strength.value * share.max(0.0);
    Ok(Reading { strength: read, doubt: Doubt::Deviation(VolumeFraction::new(deviation)) })
}

/// Reads a catch test: concentrate drawn and the whole that came out in the same time.
///
/// `m = q / Q`, `sₘ = m × √((s₁ / q)² + (s₂ / Q)²)`
///
/// * `drawn`: q, two volumes or two flows, above 0, with one standard deviation.
/// * `total`: Q, concentrate and water together, at least q, with one standard deviation.
///
/// Returns the strength with one standard deviation. That both were caught at the usual water
/// pressure is not checked. Source: definition of the volume fraction; first-order propagation.
///
/// # Errors
/// [`ReadingMistake::NothingCaught`], [`ReadingMistake::MoreThanWhole`].
///
/// ```
/// use brimline::trade::certainty::Measured;
/// use brimline::trade::reading::catch;
/// use brimline::units::{Volume, VolumeFraction};
/// let exact = |value| Measured { value: Volume::new(value), error: Volume::ZERO };
/// assert_eq!(catch(exact(1.0), exact(50.0)).unwrap().strength, VolumeFraction::new(0.02));
/// ```
pub fn catch<Q: Quantity>(drawn: Measured<Q>, total: Measured<Q>) -> Result<Reading, ReadingMistake> {
    let (part, whole) = (drawn.value.si(), total.value.si());
    if !(part > 0.0 && whole > 0.0) {
        return Err(ReadingMistake::NothingCaught);
    }
    if part > whole {
        return Err(ReadingMistake::MoreThanWhole);
    }
    let strength = part / whole;
    let deviation = strength * (drawn.error.si() / part).hypot(total.error.si() / whole);
    let doubt = Doubt::Deviation(VolumeFraction::new(deviation));
    Ok(Reading { strength: VolumeFraction::new(strength), doubt })
}
