//! One solution: what is in it, and the pH at which its charges sum to nothing.

mod forms;
mod root;

use super::{Activity, Makeup, Weak};
use forms::Forms;

/// What is dissolved, mol/L, each weak acid in whatever form.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solution {
    plus: f64,
    minus: f64,
    weak: Vec<(&'static Weak, f64)>,
}

/// A solution in balance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    /// −log of the activity of H⁺.
    pub ph: f64,
    /// `½ Σ z² c`, mol/L.
    pub ionic_strength: f64,
    /// What the charges sum to, mol/L: nothing but rounding.
    pub residual: f64,
    /// All charges of one sign, mol/L: what the residual is small beside.
    pub charges: f64,
    /// Which activities counted.
    pub activity: Activity,
    /// The ionic strength whose activities counted, mol/L.
    assumed: f64,
}

impl Solution {
    /// Water with nothing in it.
    pub fn water() -> Self {
        Self::default()
    }

    /// With more strong ions of charge 1, mol/L, 0 or above: positive ones, and negative ones.
    #[must_use]
    pub fn strong(mut self, plus: f64, minus: f64) -> Self {
        self.plus += plus;
        self.minus += minus;
        self
    }

    /// With more of a weak acid, mol/L, 0 or above, in its form with all protons; its charge comes with
    /// it only where that form has one.
    #[must_use]
    pub fn weak(mut self, weak: &'static Weak, amount: f64) -> Self {
        self.add_weak(weak, amount);
        self
    }

    /// With more of a substance, mol/L, 0 or above.
    #[must_use]
    pub fn with(mut self, makeup: &Makeup, amount: f64) -> Self {
        self.plus += makeup.plus * amount;
        self.minus += makeup.minus * amount;
        for (weak, count) in makeup.weak {
            self.add_weak(weak, count * amount);
        }
        self
    }

    /// With another solution poured in, which takes up no room of its own.
    #[must_use]
    pub fn and(mut self, other: &Self) -> Self {
        self.plus += other.plus;
        self.minus += other.minus;
        for &(weak, amount) in &other.weak {
            self.add_weak(weak, amount);
        }
        self
    }

    /// Diluted with pure water: a share of it in the volume, 0 to 1.
    #[must_use]
    pub fn diluted(mut self, share: f64) -> Self {
        self.plus *= share;
        self.minus *= share;
        self.weak.iter_mut().for_each(|(_, amount)| *amount *= share);
        self
    }

    fn add_weak(&mut self, weak: &'static Weak, amount: f64) {
        match self.weak.iter_mut().find(|(one, _)| *one == weak) {
            Some((_, sum)) => *sum += amount,
            None => self.weak.push((weak, amount)),
        }
    }

    /// Its pH at 25 °C.
    ///
    /// `[H⁺] − [OH⁻] + strong ions + Σ cᵢ × qᵢ(pH) = 0`, with activities as `activity` says
    ///
    /// Takes what was put in, each amount 0 to 1,000 mol/L; ends after a bounded number of rounds whatever
    /// it was. The ionic strength, which the activities need, is found with it. What is not modelled:
    /// [`super`]. Source: [`super::SOURCE`].
    ///
    /// ```
    /// use brimline::chemistry::acid_base::{Activity, Solution, weak};
    /// let vinegar = Solution::water().weak(&weak::ACETIC, 0.1);
    /// assert!((vinegar.balance(Activity::Ideal).ph - 2.881_372).abs() < 1e-6);
    /// ```
    pub fn balance(&self, activity: Activity) -> Balance {
        root::balance(self, activity)
    }

    /// Where a search for the balance begins.
    pub(super) const fn neutral(activity: Activity) -> Balance {
        Balance { ph: 7.0, ionic_strength: 0.0, residual: 0.0, charges: 0.0, activity, assumed: 0.0 }
    }

    /// The same where the activities are those of another ionic strength, mol/L.
    pub(super) fn balance_at(&self, activity: Activity, ionic_strength: f64) -> Balance {
        root::balance_at(self, activity, ionic_strength, 7.0)
    }

    /// How much of a weak acid gives this solution the pH, mol/L; nothing where only a base could.
    pub(super) fn amount_for(&self, weak: &'static Weak, ph: f64, activity: Activity) -> f64 {
        root::amount_for(self, weak, ph, activity)
    }

    /// The mean charge that a mole of a substance brings at the pH of this solution: above 0 it makes it
    /// more alkaline, below 0 more acid.
    pub(super) fn charge_of(makeup: &Makeup, at: &Balance) -> f64 {
        let weak = makeup.weak.iter().map(|(weak, count)| {
            let forms = Forms::new(weak, at.activity, at.assumed);
            let mean = forms.at(10_f64.powf(at.ph));
            count * (mean.plus - mean.minus)
        });
        makeup.plus - makeup.minus + weak.sum::<f64>()
    }
}
