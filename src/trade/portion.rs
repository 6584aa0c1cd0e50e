//! Packets and tablets: only whole ones, so that the water follows them.

use super::label::Window;
use crate::units::{Mass, MassConcentration, Quantity, Volume, VolumeFraction};

/// The use solution that one packet or tablet makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Makes {
    /// At the strength to aim for, m³.
    pub aim: Volume,
    /// From the strongest that the label allows to the weakest, m³; the aim lies in it.
    pub window: Window<Volume>,
}

impl Makes {
    /// A packet of liquid concentrate.
    ///
    /// `V = u / r`
    ///
    /// * `unit`: u, what one holds, m³, above 0.
    /// * `aim`, `window`: r, above 0 up to 1; the aim within the window, which is not checked.
    ///
    /// Source: definition of the volume fraction.
    ///
    /// ```
    /// use brimline::trade::label::Window;
    /// use brimline::trade::portion::Makes;
    /// use brimline::units::{Volume, VolumeFraction};
    /// let r = VolumeFraction::new;
    /// let makes = Makes::of_liquid(Volume::new(0.1), r(0.01), Window { low: r(0.005), high: r(0.02) });
    /// assert_eq!((makes.window.low, makes.aim, makes.window.high), (Volume::new(5.0), Volume::new(10.0), Volume::new(20.0)));
    /// ```
    pub fn of_liquid(unit: Volume, aim: VolumeFraction, window: Window<VolumeFraction>) -> Self {
        let makes = |strength: VolumeFraction| unit / strength.si();
        Self { aim: makes(aim), window: Window { low: makes(window.high), high: makes(window.low) } }
    }

    /// A packet of powder or a tablet.
    ///
    /// `V = u / c`
    ///
    /// * `unit`: u, what one weighs, kg, above 0.
    /// * `aim`, `window`: c, kg/m³, above 0; the aim within the window, which is not checked.
    ///
    /// Source: definition.
    ///
    /// ```
    /// use brimline::trade::label::Window;
    /// use brimline::trade::portion::Makes;
    /// use brimline::units::{Mass, MassConcentration, Volume};
    /// let c = MassConcentration::new(5.0);
    /// assert_eq!(Makes::of_solid(Mass::new(0.05), c, Window { low: c, high: c }).aim, Volume::new(0.01));
    /// ```
    pub fn of_solid(unit: Mass, aim: MassConcentration, window: Window<MassConcentration>) -> Self {
        Self { aim: unit / aim, window: Window { low: unit / window.high, high: unit / window.low } }
    }
}

/// A number of whole packets or tablets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Whole {
    /// k, how many.
    pub count: f64,
    /// The level to fill to instead, where they make exactly the strength to aim for, m³.
    pub level: Volume,
    /// Whether the tank holds that level.
    pub fits: bool,
    /// At the wanted level: the strength that they make, as a multiple of the one to aim for.
    pub share: f64,
    /// At the wanted level: whether the label allows that strength.
    pub inside: bool,
}

/// The whole numbers on both sides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sides {
    /// The number below, where it is at least one.
    pub below: Option<Whole>,
    /// The number above; the same as below where the level takes a whole number.
    pub above: Whole,
    /// The one to take at the wanted level: inside the window where one is, else the nearer.
    pub best: Whole,
}

/// Packets or tablets for a level, and the level for packets or tablets.
///
/// `k = V / Vᵤ`, rounded down and up; `V = k × Vᵤ`
///
/// * `makes`: Vᵤ of one, m³, above 0.
/// * `level`: V, the wanted level, m³, above 0.
/// * `tank`: m³, at least the level, which is not checked.
///
/// Returns both whole numbers with the level that each makes exactly, and with the strength that each
/// makes at the wanted level. Parts of a packet are never offered: a label counts whole ones. Source:
/// common practice.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::portion::{Makes, whole_units};
/// use brimline::units::Volume;
/// let v = Volume::new;
/// let makes = Makes { aim: v(8.0), window: Window { low: v(8.0), high: v(12.0) } };
/// let sides = whole_units(makes, v(22.0), v(24.0));
/// // Three would be stronger than the label allows; two make 1 packet in 11.
/// assert_eq!((sides.best.count, sides.best.inside, sides.best.level), (2.0, true, v(16.0)));
/// assert_eq!((sides.above.inside, sides.above.level, sides.above.fits), (false, v(24.0), true));
/// ```
pub fn whole_units(makes: Makes, level: Volume, tank: Volume) -> Sides {
    let slack = 1e-9;
    let exact = level / makes.aim;
    let whole = |count: f64| {
        let each = level / count;
        Whole {
            count,
            level: makes.aim * count,
            fits: makes.aim * count <= tank * (1.0 + slack),
            share: count / exact,
            inside: each >= makes.window.low * (1.0 - slack) && each <= makes.window.high * (1.0 + slack),
        }
    };
    let nearest = exact.round();
    let is_whole = nearest >= 1.0 && (exact - nearest).abs() <= slack * nearest;
    let (down, up) = if is_whole { (nearest, nearest) } else { (exact.floor(), exact.floor() + 1.0) };
    let above = whole(up);
    let below = (down >= 1.0).then(|| whole(down));
    let best = match below {
        Some(below) if below.inside != above.inside => {
            if below.inside {
                below
            } else {
                above
            }
        }
        Some(below) if exact - down <= up - exact => below,
        _ => above,
    };
    Sides { below, above, best }
}
