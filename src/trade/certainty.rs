//! How sure a dose is: from the errors of the measure and of the water to the error of the strength.

mod cylinder;
mod draws;
mod first_order;

pub use cylinder::{CYLINDERS, Class, Cylinder, JUG_SHARE, cylinder};
pub use draws::{Drawn, draw};
pub use first_order::{Cause, Overall, Spread, chance_inside, first_order, worst_case};

use crate::units::{Quantity, Volume};

/// A value with its error. Which error is meant, the function that takes it says: one standard
/// deviation, or the limit of a tolerance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured<Q> {
    /// The value.
    pub value: Q,
    /// Its error, 0 or above.
    pub error: Q,
}

impl<Q: Quantity> Measured<Q> {
    /// A value and the standard deviation of a tolerance that says no more than "not further off
    /// than this".
    ///
    /// `s = a / √3`
    ///
    /// * `value`: any.
    /// * `limit`: a, the tolerance, 0 or above.
    ///
    /// Every value within the tolerance is taken as equally likely. Source: JCGM 100:2008 (GUM),
    /// 4.3.7, from memory, unverified; the variance of an even distribution is a² / 3.
    ///
    /// ```
    /// use brimline::trade::certainty::Measured;
    /// use brimline::units::{Quantity, Volume};
    /// let jug = Measured::within_limits(Volume::new(1.0), Volume::new(0.03));
    /// assert!((jug.error.si() - 0.017_320_5).abs() < 5e-8);
    /// ```
    pub fn within_limits(value: Q, limit: Q) -> Self {
        Self { value, error: Q::from_si(limit.si() / 3.0_f64.sqrt()) }
    }
}

/// How a use solution was made, with the errors of both volumes, which do not depend on each other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Dose {
    /// Concentrate on top of measured water: `x = c / (c + w)`.
    OnTop {
        /// c, m³, above 0.
        concentrate: Measured<Volume>,
        /// w, m³, 0 or above.
        water: Measured<Volume>,
    },
    /// Made up to a tank mark with the concentrate in it: `x = c / V`.
    MadeUp {
        /// c, m³, above 0.
        concentrate: Measured<Volume>,
        /// V, m³, at least c.
        total: Measured<Volume>,
    },
}

impl Dose {
    /// Concentrate, and water or total: the two that were measured.
    fn parts(self) -> (Measured<Volume>, Measured<Volume>) {
        match self {
            Self::OnTop { concentrate, water } => (concentrate, water),
            Self::MadeUp { concentrate, total } => (concentrate, total),
        }
    }

    /// The strength that two volumes make, m³ both, 0 to 1.
    fn strength(self, concentrate: f64, other: f64) -> f64 {
        let concentrate = concentrate.max(0.0);
        let total = match self {
            Self::OnTop { .. } => concentrate + other.max(0.0),
            Self::MadeUp { .. } => other.max(concentrate),
        };
        if total > 0.0 { concentrate / total } else { 0.0 }
    }
}
