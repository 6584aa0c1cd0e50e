//! What a cleaning leaves on the floor when its film has dried.

use crate::units::{ApplicationRate, ArealMass, MassConcentration, VolumeFraction};

/// Dissolved solids that one cleaning leaves.
///
/// `m = f × r × s`
///
/// * `film`: f, the solution that stays on the floor, m³/m², 0 or above.
/// * `strength`: r, concentrate in the use solution, 0 to 1.
/// * `solids`: s, what is dissolved in the concentrate and does not evaporate, kg/m³, 0 or above.
///
/// Returns m, kg/m². What tap water leaves (its hardness) is not in it. Source: definition (mass balance).
///
/// ```
/// use brimline::trade::residue::left_by_one;
/// use brimline::units::{ApplicationRate, ArealMass, MassConcentration, VolumeFraction};
/// // 2 mL on a square metre, 1 % of a concentrate with 100 g/L: 2 mg.
/// let left = left_by_one(ApplicationRate::new(2e-6), VolumeFraction::new(0.01), MassConcentration::new(100.0));
/// assert!((left / ArealMass::new(2e-6) - 1.0).abs() < 1e-12);
/// ```
pub fn left_by_one(film: ApplicationRate, strength: VolumeFraction, solids: MassConcentration) -> ArealMass {
    solids * film * (strength / VolumeFraction::new(1.0))
}

/// The most that so many cleanings leave, when none takes up what the one before left.
///
/// `M = n × m`
///
/// * `one`: m, by [`left_by_one`], kg/m².
/// * `cleanings`: n, 0 or above.
///
/// Returns M, kg/m²: an upper estimate, since each wet pass dissolves some of it and picks it up. Source:
/// definition.
///
/// ```
/// use brimline::trade::residue::left_at_most;
/// use brimline::units::ArealMass;
/// assert_eq!(left_at_most(ArealMass::new(0.5), 30.0), ArealMass::new(15.0));
/// ```
pub fn left_at_most(one: ArealMass, cleanings: f64) -> ArealMass {
    one * cleanings
}
