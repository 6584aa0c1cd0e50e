//! How much concentrate there is in a use solution by mass, from how much there is by volume.

use crate::source::Source;
use crate::units::{Density, MassFraction, Quantity, VolumeFraction};

/// What the density is taken for where nobody knows it: about that of a caustic lye of half its mass, and a
/// heavier concentrate makes the share greater. Common practice, no source.
pub const HEAVIEST: Density = Density::new(1500.0);

/// Water at room temperature, rounded up (998 kg/m³ at 20 °C, IAPWS-95).
pub const WATER: Density = Density::new(1000.0);

/// Where the equation comes from.
pub const SOURCE: Source = Source::DEFINITION;

/// The share of the concentrate in the use solution by mass.
///
/// `w = r ρ / (r ρ + (1 − r) ρ_water)`
///
/// * `strength`: r, volume of concentrate in the volume of use solution, 0 to 1; volumes are taken to add up.
/// * `density`: ρ of the concentrate, kg/m³, above 0; where it is not known, [`HEAVIEST`], the worse case.
///
/// Returns the share, 0 to 1; the whole where the strength is none. Source: [`SOURCE`].
///
/// ```
/// use brimline::chemistry::ghs::mixture::{WATER, concentrate_share};
/// use brimline::units::{Quantity, VolumeFraction};
/// assert_eq!(concentrate_share(VolumeFraction::new(0.25), Some(WATER)).si(), 0.25);
/// assert!((concentrate_share(VolumeFraction::new(0.25), None).si() - 1.0 / 3.0).abs() < 1e-12);
/// ```
pub fn concentrate_share(strength: VolumeFraction, density: Option<Density>) -> MassFraction {
    if !(0.0..=1.0).contains(&strength.si()) {
        return MassFraction::new(1.0);
    }
    let known = density.filter(|one| one.si() > 0.0 && one.si().is_finite());
    let concentrate = strength.si() * known.unwrap_or(HEAVIEST).si();
    MassFraction::new(concentrate / (concentrate + (1.0 - strength.si()) * WATER.si()))
}
