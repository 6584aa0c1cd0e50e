//! How much concentrate makes a use solution.

use crate::units::{Volume, VolumeFraction};

/// Concentrate for an empty tank that is made up to a mark.
///
/// `c = r × V`
///
/// * `total`: V, the volume of use solution at the mark, m³, above 0.
/// * `strength`: r, volume fraction of concentrate, 0 to 1.
///
/// Returns the concentrate, m³. Mixing is taken as additive in volume (no shrinkage), which label
/// directions take for granted. Source: definition of the volume fraction.
///
/// ```
/// use brimline::trade::dilution::made_up_to;
/// use brimline::units::{Quantity, Volume, VolumeFraction, unit};
/// let tank = Volume::of(20.0, unit("gal_us").unwrap()).unwrap();
/// let dose = made_up_to(tank, VolumeFraction::from_parts_of_water(64.0));
/// assert!((dose.value_in(unit("floz_us").unwrap()).unwrap() - 39.3846).abs() < 5e-5);
/// ```
pub fn made_up_to(total: Volume, strength: VolumeFraction) -> Volume {
    strength * total
}

/// Concentrate added on top of a measured volume of water.
///
/// `c = W × r / (1 − r)`
///
/// * `water`: W, the water already in the tank, m³, above 0.
/// * `strength`: r, volume fraction of concentrate, 0 to below 1.
///
/// Returns the concentrate, m³; the tank must have room for `W + c`, which is not checked here.
/// Source: from `r = c / (W + c)`.
///
/// ```
/// use brimline::trade::dilution::on_top_of;
/// use brimline::units::{Quantity, Volume, VolumeFraction, unit};
/// let water = Volume::of(20.0, unit("gal_us").unwrap()).unwrap();
/// let dose = on_top_of(water, VolumeFraction::from_parts_of_water(64.0));
/// assert!((dose.value_in(unit("floz_us").unwrap()).unwrap() - 40.0).abs() < 1e-9);
/// ```
pub fn on_top_of(water: Volume, strength: VolumeFraction) -> Volume {
    water / strength.parts_of_water()
}

/// Concentrate for a fill that is less than the full tank its amount is given for.
///
/// `c = x × V / T`
///
/// * `amount`: x, concentrate for a full tank, m³.
/// * `total`: V, what is filled now, m³.
/// * `tank`: T, the tank, m³, above 0.
///
/// Returns the concentrate for this fill, m³. Source: definition (the same strength at every level).
///
/// ```
/// use brimline::trade::dilution::scaled_to_level;
/// use brimline::units::Volume;
/// let half = scaled_to_level(Volume::new(6.0), Volume::new(50.0), Volume::new(100.0));
/// assert_eq!(half, Volume::new(3.0));
/// ```
pub fn scaled_to_level(amount: Volume, total: Volume, tank: Volume) -> Volume {
    amount * (total / tank)
}
