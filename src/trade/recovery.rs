//! The recovery tank: what comes back from the floor, and how far the solution tank may be filled for it.

use crate::units::{Volume, VolumeFraction};

/// The share of a recovery tank that is kept free for foam: common practice, no source.
pub const FOAM_ROOM: VolumeFraction = VolumeFraction::new(0.1);

/// The part of the solution spent that ends in the recovery tank to be dumped.
///
/// `d = (p − u) / (1 − u)`
///
/// * `pick_up`: p, the share of what is laid down that is picked up again, 0 to below 1.
/// * `reuse`: u, the share of what is laid down that is filtered and used again, 0 to below 1.
///
/// Returns a plain number, 0 where all that is picked up is used again. Source: definition (mass balance:
/// laid = used again + dumped + left on the floor).
///
/// ```
/// use brimline::trade::recovery::dumped_share;
/// use brimline::units::VolumeFraction;
/// assert_eq!(dumped_share(VolumeFraction::new(0.9), VolumeFraction::ZERO), 0.9);
/// assert_eq!(dumped_share(VolumeFraction::new(0.875), VolumeFraction::new(0.75)), 0.5);
/// ```
pub fn dumped_share(pick_up: VolumeFraction, reuse: VolumeFraction) -> f64 {
    ((pick_up - reuse) / reuse.water()).max(0.0)
}

/// How far the solution tank may be filled so that the recovery tank is never more than full.
///
/// `V = min(T, R × (1 − f) / d)`
///
/// * `tank`: T, m³, above 0.
/// * `recovery`: R, m³, above 0.
/// * `dumped`: d, by [`dumped_share`], 0 to 1.
///
/// Returns V, m³; f is [`FOAM_ROOM`]. Both tanks are emptied or filled on the same trip. Source: definition.
///
/// ```
/// use brimline::trade::recovery::fill_for;
/// use brimline::units::Volume;
/// let litres = |litres: f64| Volume::new(litres / 1000.0);
/// assert!((fill_for(litres(40.0), litres(30.0), 0.9) / litres(30.0) - 1.0).abs() < 1e-12);
/// assert_eq!(fill_for(litres(40.0), litres(50.0), 0.9), litres(40.0));
/// ```
pub fn fill_for(tank: Volume, recovery: Volume, dumped: f64) -> Volume {
    if dumped > 0.0 { tank.min(FOAM_ROOM.water() * recovery / dumped) } else { tank }
}
