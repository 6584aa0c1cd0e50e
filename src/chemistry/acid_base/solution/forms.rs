//! The forms of a weak acid, with more and with fewer protons: how much of it is in each.

use crate::chemistry::acid_base::{Activity, Weak};

/// Most protons that one acid of the table gives.
const MOST: usize = 5;

/// A weak acid at one ionic strength.
#[derive(Clone, Copy, Debug)]
pub(super) struct Forms {
    charge: f64,
    count: usize,
    /// K of each proton, with the activity of H⁺ and the concentrations of both forms.
    constants: [f64; MOST],
}

/// The charges of a mole of an acid, over its forms.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Mean {
    /// Positive charges.
    pub plus: f64,
    /// Negative charges.
    pub minus: f64,
    /// How fast the positive ones grow with ln of 1 / [H⁺]: 0 or below.
    pub plus_slope: f64,
    /// How fast the negative ones grow: 0 or above.
    pub minus_slope: f64,
    /// `Σ z² c`.
    pub squares: f64,
}

impl Forms {
    /// `K' = K × γ(acid) / γ(base)` for each proton.
    pub fn new(weak: &Weak, activity: Activity, ionic_strength: f64) -> Self {
        let (ion, molecule) = (activity.of_ion(ionic_strength), activity.of_molecule(ionic_strength));
        let log_gamma = |charge: f64| if charge == 0.0 { molecule } else { -ion * charge * charge };
        let charge = f64::from(weak.charge);
        let mut constants = [0.0; MOST];
        let mut acid = charge;
        for (constant, pka) in constants.iter_mut().zip(weak.pka) {
            *constant = 10_f64.powf(log_gamma(acid) - log_gamma(acid - 1.0) - pka);
            acid -= 1.0;
        }
        Self { charge, count: weak.pka.len(), constants }
    }

    /// Where the activity of H⁺ is `1 / basicity`.
    pub fn at(&self, basicity: f64) -> Mean {
        let (mut share, mut all, mut lost) = (1.0, 1.0, 0.0);
        let (mut plus, mut minus, mut squares) = (0.0, 0.0, 0.0);
        let (mut plus_lost, mut minus_lost) = (0.0, 0.0);
        let mut count = |charge: f64, protons: f64, share: f64| {
            let (above, below) = (charge.max(0.0) * share, (-charge).max(0.0) * share);
            plus += above;
            minus += below;
            squares += charge * charge * share;
            plus_lost += protons * above;
            minus_lost += protons * below;
        };
        count(self.charge, 0.0, 1.0);
        let mut protons = 0.0;
        for constant in &self.constants[..self.count] {
            share *= constant * basicity;
            protons += 1.0;
            all += share;
            lost += protons * share;
            count(self.charge - protons, protons, share);
        }
        let (plus, minus, lost) = (plus / all, minus / all, lost / all);
        Mean {
            plus,
            minus,
            plus_slope: plus_lost / all - plus * lost,
            minus_slope: minus_lost / all - minus * lost,
            squares: squares / all,
        }
    }
}
