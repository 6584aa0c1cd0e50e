//! The active substance: from per cent and density to ppm, and back to a dilution.
//!
//! 1 ppm of a use solution is 1 mg/L: the convention of labels and strips. By mass it is 1 mg/kg,
//! which is the same where a litre weighs a kilogram.

use crate::units::{Density, MassConcentration, MassFraction, Quantity, VolumeFraction};

/// Active substance in a volume of concentrate, from its share by mass.
///
/// `C = w × ρ`
///
/// * `share`: w, "% w/w" of the safety data sheet, 0 to 1.
/// * `density`: ρ, kg/m³, above 0.
///
/// Returns C, kg/m³. Where the label gives "% w/v", that is C already: 1 % w/v is 10 kg/m³. Source:
/// definition.
///
/// ```
/// use brimline::trade::actives::in_concentrate;
/// use brimline::units::{Density, MassConcentration, MassFraction};
/// let active = in_concentrate(MassFraction::new(0.25), Density::new(1_200.0));
/// assert_eq!(active, MassConcentration::new(300.0));
/// ```
pub fn in_concentrate(share: MassFraction, density: Density) -> MassConcentration {
    share * density
}

/// The share by mass, from the active substance in a volume: [`in_concentrate`] the other way, and
/// ppm by mass from ppm by volume.
///
/// `w = C / ρ`
///
/// * `active`: C, kg/m³, 0 or above.
/// * `density`: ρ of the liquid that it is in, kg/m³, above 0.
///
/// Returns w, 0 to 1 for what exists, which is not checked. Source: definition.
///
/// ```
/// use brimline::trade::actives::by_mass;
/// use brimline::units::{Density, MassConcentration, MassFraction};
/// let share = by_mass(MassConcentration::new(300.0), Density::new(1_200.0));
/// assert_eq!(share, MassFraction::new(0.25));
/// ```
pub fn by_mass(active: MassConcentration, density: Density) -> MassFraction {
    active / density
}

/// Active substance in a use solution.
///
/// `c = r × C`
///
/// * `strength`: r, 0 to 1.
/// * `concentrate`: C, kg/m³, 0 or above.
///
/// Returns c, kg/m³; 0.001 kg/m³ is 1 ppm. What hard water or soil uses up is not in it. Source:
/// definition of the volume fraction.
///
/// ```
/// use brimline::trade::actives::in_solution;
/// use brimline::units::{MassConcentration, VolumeFraction};
/// // 1 in 100 of 5 % w/v: 500 ppm.
/// let active = in_solution(VolumeFraction::new(0.01), MassConcentration::new(50.0));
/// assert_eq!(active, MassConcentration::new(0.5));
/// ```
pub fn in_solution(strength: VolumeFraction, concentrate: MassConcentration) -> MassConcentration {
    MassConcentration::new(strength.si() * concentrate.si())
}

/// Why no dilution gives the wanted ppm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ActiveMistake {
    /// The concentrate holds less than is wanted.
    TooWeak,
    /// The concentrate holds none, or how much is not a number.
    NoActive,
}

/// The dilution that gives a wanted amount of active substance.
///
/// `r = c / C`, with `C = w × ρ`
///
/// * `wanted`: c, kg/m³, above 0; 1 ppm is 0.001 kg/m³.
/// * `concentrate`: C, kg/m³, above 0.
///
/// Returns r, above 0 up to 1. Whether the label allows that dilution is not checked. Source:
/// definition of the volume fraction.
///
/// # Errors
/// [`ActiveMistake`].
///
/// ```
/// use brimline::trade::actives::{ActiveMistake, dilution_for};
/// use brimline::units::{MassConcentration, VolumeFraction};
/// let c = MassConcentration::new;
/// assert_eq!(dilution_for(c(0.5), c(50.0)), Ok(VolumeFraction::new(0.01)));
/// assert_eq!(dilution_for(c(60.0), c(50.0)), Err(ActiveMistake::TooWeak));
/// ```
pub fn dilution_for(
    wanted: MassConcentration,
    concentrate: MassConcentration,
) -> Result<VolumeFraction, ActiveMistake> {
    if concentrate.si().is_nan() || concentrate <= MassConcentration::ZERO {
        return Err(ActiveMistake::NoActive);
    }
    if wanted > concentrate * (1.0 + 1e-9) {
        return Err(ActiveMistake::TooWeak);
    }
    Ok(VolumeFraction::new((wanted / concentrate).min(1.0)))
}

/// Active substance in the concentrate, from a disinfectant's label that gives a dilution and the
/// ppm it makes.
///
/// `C = c / r`
///
/// * `stated`: c, kg/m³, above 0.
/// * `strength`: r of the same line of the label, above 0 up to 1.
///
/// Returns C, kg/m³. It is as rounded as the label's ppm. Source: definition of the volume fraction.
///
/// ```
/// use brimline::trade::actives::from_label;
/// use brimline::units::{MassConcentration, VolumeFraction};
/// let concentrate = from_label(MassConcentration::new(0.5), VolumeFraction::new(0.0078125));
/// assert_eq!(concentrate, MassConcentration::new(64.0));
/// ```
pub fn from_label(stated: MassConcentration, strength: VolumeFraction) -> MassConcentration {
    stated / strength.si()
}

/// What "ppm of chlorine" counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Chlorine {
    /// The hypochlorite itself, "% × 10⁴": the convention of health guidance.
    AsHypochlorite,
    /// The chlorine that it can set free, Cl₂: less by [`CHLORINE_IN_HYPOCHLORITE`].
    AsChlorine,
}

/// Mass of Cl₂ that one mass of sodium hypochlorite sets free: 70.906 / 74.44217, from the standard
/// atomic masses Na 22.98977, O 15.9994, Cl 35.453, written down from memory.
pub const CHLORINE_IN_HYPOCHLORITE: f64 = 0.952_498;

/// Available chlorine of a bleach, from its sodium hypochlorite.
///
/// `C × 1` or `C × 0.952498`
///
/// * `hypochlorite`: C of the bleach or of the use solution, kg/m³, 0 or above.
/// * `counted`: which convention.
///
/// Returns kg/m³ in that convention. What a stored bleach has lost is not in it. Source: WHO,
/// Infection prevention and control of epidemic- and pandemic-prone acute respiratory infections in
/// health care (2014), Annex G, Table G.1, for the first: 5 %, 1 in 100, 500 ppm; molar masses for
/// the second.
///
/// ```
/// use brimline::trade::actives::{Chlorine, available_chlorine};
/// use brimline::units::{MassConcentration, Quantity};
/// let bleach = MassConcentration::new(52.5);
/// assert_eq!(available_chlorine(bleach, Chlorine::AsHypochlorite), bleach);
/// assert!((available_chlorine(bleach, Chlorine::AsChlorine).si() - 50.0061).abs() < 5e-5);
/// ```
pub fn available_chlorine(hypochlorite: MassConcentration, counted: Chlorine) -> MassConcentration {
    match counted {
        Chlorine::AsHypochlorite => hypochlorite,
        Chlorine::AsChlorine => hypochlorite * CHLORINE_IN_HYPOCHLORITE,
    }
}
