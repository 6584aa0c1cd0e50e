//! Small batches of use solution for trial patches: what can be measured, and what that makes.

use crate::units::{Quantity, Volume, VolumeFraction};

/// The least that a small cylinder or a syringe gives within reason: 1 mL, common practice.
pub const LEAST: Volume = Volume::new(1e-6);

/// Rounds a small amount to what a small measure can give: half units below ten, whole ones below fifty, fives
/// above.
///
/// `k = s × round(c / s)`
///
/// * `amount`: c, m³ or kg, above 0.
/// * `small`: one unit, 1 mL or 1 g.
///
/// Returns none below one unit, which no measure at hand gives. Source: common practice (a syringe or a 10 mL
/// cylinder, a 50 mL one, a cup).
///
/// ```
/// use brimline::trade::batch::{LEAST, measurable};
/// use brimline::units::Volume;
/// let ml = |ml: f64| Volume::new(ml * 1e-6);
/// let close = |got: Option<Volume>, want: f64| (got.unwrap() / ml(want) - 1.0).abs() < 1e-9;
/// assert!(close(measurable(ml(3.9), LEAST), 4.0) && close(measurable(ml(15.4), LEAST), 15.0));
/// assert_eq!(measurable(ml(0.8), LEAST), None);
/// ```
pub fn measurable<Q: Quantity>(amount: Q, small: Q) -> Option<Q> {
    let units = amount.si() / small.si();
    let step = match units {
        under if under < 1.0 => return None,
        under if under < 10.0 => 0.5,
        under if under < 50.0 => 1.0,
        _ => 5.0,
    };
    Some(Q::from_si((units / step).round() * step * small.si()))
}

/// The batch whose concentrate can be measured within a twentieth.
///
/// `B = 10 mL / r`
///
/// * `strength`: r, above 0.
///
/// Returns B, m³: half a millilitre is a twentieth of ten. Source: from [`measurable`].
///
/// ```
/// use brimline::trade::batch::enough;
/// use brimline::units::{Volume, VolumeFraction};
/// assert!((enough(VolumeFraction::new(0.01)) / Volume::new(0.001) - 1.0).abs() < 1e-12);
/// ```
pub fn enough(strength: VolumeFraction) -> Volume {
    LEAST * 10.0 / (strength / VolumeFraction::new(1.0))
}
