//! Powders, and liquids that are weighed: grams, scoops, and the density between them.

use crate::units::{Density, Mass, MassConcentration, Volume};

/// The density of the product is needed and not known: the label, section 9 of the safety data sheet
/// or a weighed scoop gives it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DensityMissing;

/// Powder for a volume of use solution.
///
/// `m = c × V`
///
/// * `label`: c, kg/m³, above 0: g/L, or ounces of weight for a gallon.
/// * `volume`: V, m³, above 0.
///
/// Returns m, kg. For a volume of water and for one of solution the same mass is taken: a powder of
/// 30 g/L swells the water by some 1 % (common practice, no source). That it dissolves is not checked.
/// Source: definition.
///
/// ```
/// use brimline::trade::powder::powder_for;
/// use brimline::units::{Mass, MassConcentration, Volume};
/// assert_eq!(powder_for(MassConcentration::new(10.0), Volume::new(0.075)), Mass::new(0.75));
/// ```
pub fn powder_for(label: MassConcentration, volume: Volume) -> Mass {
    label * volume
}

/// The volume that a mass takes up: of a powder as it is poured, or of a liquid.
///
/// `v = m / ρ`
///
/// * `mass`: m, kg, 0 or above.
/// * `density`: ρ, kg/m³, above 0; as poured, not pressed, for a powder.
///
/// Returns v, m³, for a jug or for [`super::measure::round_to`]. That the powder lies as loose
/// as when its density was found is not checked. Source: definition.
///
/// # Errors
/// [`DensityMissing`].
///
/// ```
/// use brimline::trade::powder::{DensityMissing, volume_of};
/// use brimline::units::{Density, Mass, Volume};
/// assert_eq!(volume_of(Mass::new(3.0), Some(Density::new(750.0))), Ok(Volume::new(0.004)));
/// assert_eq!(volume_of(Mass::new(3.0), None), Err(DensityMissing));
/// ```
pub fn volume_of(mass: Mass, density: Option<Density>) -> Result<Volume, DensityMissing> {
    density.filter(|density| *density > Density::ZERO).map(|density| mass / density).ok_or(DensityMissing)
}

/// The mass of a volume: of a scoop of powder as it is poured, or of a liquid that is weighed out.
///
/// `m = ρ × v`
///
/// * `volume`: v, m³, 0 or above.
/// * `density`: ρ, kg/m³, above 0.
///
/// Returns m, kg. That a scoop is level is not checked. Source: definition.
///
/// # Errors
/// [`DensityMissing`].
///
/// ```
/// use brimline::trade::powder::mass_of;
/// use brimline::units::{Density, Mass, Volume};
/// assert_eq!(mass_of(Volume::new(0.004), Some(Density::new(750.0))), Ok(Mass::new(3.0)));
/// ```
pub fn mass_of(volume: Volume, density: Option<Density>) -> Result<Mass, DensityMissing> {
    density.filter(|density| *density > Density::ZERO).map(|density| density * volume).ok_or(DensityMissing)
}

/// Scoops that hold a mass.
///
/// `k = m / (ρ × s)`
///
/// * `mass`: m, kg, 0 or above.
/// * `scoop`: s, a level scoop, m³, above 0.
/// * `density`: ρ, as poured, kg/m³, above 0.
///
/// Returns k, not rounded: [`super::measure::round_to`] does that on the volumes. That a scoop is
/// level is not checked. Source: definition.
///
/// # Errors
/// [`DensityMissing`].
///
/// ```
/// use brimline::trade::powder::scoops;
/// use brimline::units::{Density, Mass, Volume};
/// assert_eq!(scoops(Mass::new(0.75), Volume::new(0.0001), Some(Density::new(750.0))), Ok(10.0));
/// ```
pub fn scoops(mass: Mass, scoop: Volume, density: Option<Density>) -> Result<f64, DensityMissing> {
    volume_of(mass, density).map(|volume| volume / scoop)
}
