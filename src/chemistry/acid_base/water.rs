//! Tap water: its alkalinity and pH tell how much acid or lye it takes up.

use super::solution::Solution;
use super::{Activity, weak};
use crate::units::{MassConcentration, Quantity};

/// Tap water at 25 °C, as a waterworks reports it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Water {
    /// Total alkalinity as calcium carbonate, kg/m³: 0.1 is 100 mg/L. 0 for pure water, whose pH is 7
    /// whatever `ph` says.
    pub alkalinity: MassConcentration,
    /// 4.5 to 11.
    pub ph: f64,
}

/// Grams of calcium carbonate for each mole of charge: half of 100.087, from the standard atomic masses.
pub const CALCIUM_CARBONATE: f64 = 50.0435;

impl Water {
    /// Water with nothing in it.
    pub const PURE: Self = Self { alkalinity: MassConcentration::ZERO, ph: 7.0 };

    /// What is in it: strong ions as much as its alkalinity, and carbonate as much as its pH tells.
    ///
    /// `A = a / 50.0435`, `C = (A + [H⁺] − [OH⁻]) / −q(pH)`
    ///
    /// * `activity`: in which its own pH must come out again.
    ///
    /// The strong ions count as singly charged: hardness pairs up with nothing. Where the pH asks for more
    /// alkalinity than there is, C is 0: [`Self::agrees`]. Source: definition of alkalinity, of carbonate
    /// alone.
    ///
    /// ```
    /// use brimline::chemistry::acid_base::{Activity, Water};
    /// use brimline::units::MassConcentration;
    /// let tap = Water { alkalinity: MassConcentration::new(0.1), ph: 7.5 };
    /// assert!((tap.solution(Activity::Davies).balance(Activity::Davies).ph - 7.5).abs() < 1e-6);
    /// ```
    pub fn solution(self, activity: Activity) -> Solution {
        let alkalinity = self.alkalinity.si() / CALCIUM_CARBONATE;
        if alkalinity <= 0.0 {
            return Solution::water();
        }
        let ions = Solution::water().strong(alkalinity, 0.0);
        let carbonate = ions.amount_for(&weak::CARBONIC, self.ph, activity);
        ions.weak(&weak::CARBONIC, carbonate)
    }

    /// Whether its pH and its alkalinity can go together: within 0.05 of each other in pH.
    ///
    /// ```
    /// use brimline::chemistry::acid_base::Water;
    /// use brimline::units::MassConcentration;
    /// assert!(Water { alkalinity: MassConcentration::new(0.1), ph: 7.5 }.agrees());
    /// assert!(!Water { alkalinity: MassConcentration::new(0.001), ph: 10.0 }.agrees());
    /// ```
    pub fn agrees(self) -> bool {
        let made = self.solution(Activity::Ideal).balance(Activity::Ideal).ph;
        (made - self.ph).abs() < 0.05
    }
}
