//! Finding the balance: pH at a given ionic strength, then the ionic strength that goes with it.

use super::forms::Forms;
use super::{Balance, Solution};
use crate::chemistry::acid_base::activity::DAVIES_REACH;
use crate::chemistry::acid_base::{Activity, PKW, Weak};
use std::f64::consts::LN_10;

/// pH of the strongest acid and the strongest lye that can be asked for lies well within.
const LOWEST: f64 = -6.0;
/// The other end.
const HIGHEST: f64 = 20.0;
/// When pH is found: a hundred-millionth of what a meter shows.
const CLOSE: f64 = 1e-11;
/// Rounds after which halving alone would have closed in.
const ROUNDS: usize = 120;

/// What is dissolved, at one ionic strength.
struct Held<'a> {
    solution: &'a Solution,
    weak: Vec<(Forms, f64)>,
    /// γ of an ion of charge 1.
    gamma: f64,
}

/// The charges at one pH.
struct Charges {
    plus: f64,
    minus: f64,
    /// `ln (plus / minus)`, and how fast it falls with pH.
    log_ratio: f64,
    slope: f64,
    ionic_strength: f64,
}

impl<'a> Held<'a> {
    fn new(solution: &'a Solution, activity: Activity, ionic_strength: f64) -> Self {
        let forms = |&(weak, amount)| (Forms::new(weak, activity, ionic_strength), amount);
        let weak = solution.weak.iter().filter(|(_, amount)| *amount > 0.0).map(forms).collect();
        Self { solution, weak, gamma: 10_f64.powf(-activity.of_ion(ionic_strength)) }
    }

    /// The strong ions count on one side only, by what they have too many of, so that nothing is lost in
    /// the difference of two large sums.
    fn charges(&self, ph: f64) -> Charges {
        let basicity = 10_f64.powf(ph);
        let (hydrogen, hydroxide) = (1.0 / basicity / self.gamma, basicity * 10_f64.powf(-PKW) / self.gamma);
        let net = self.solution.plus - self.solution.minus;
        let (mut plus, mut minus) = (hydrogen + net.max(0.0), hydroxide + (-net).max(0.0));
        let (mut plus_slope, mut minus_slope) = (-hydrogen, hydroxide);
        let mut squares = hydrogen + hydroxide + self.solution.plus + self.solution.minus;
        for (forms, amount) in &self.weak {
            let mean = forms.at(basicity);
            plus += mean.plus * amount;
            minus += mean.minus * amount;
            plus_slope += mean.plus_slope * amount;
            minus_slope += mean.minus_slope * amount;
            squares += mean.squares * amount;
        }
        Charges {
            plus,
            minus,
            log_ratio: (plus / minus).ln(),
            slope: (plus_slope / plus - minus_slope / minus) * LN_10,
            ionic_strength: squares / 2.0,
        }
    }

    /// Newton on the logarithm of the ratio of positive to negative charges, which is nearly straight in
    /// pH; halving where a step would leave what is left of the range.
    fn ph(&self, start: f64) -> f64 {
        let (mut low, mut high, mut ph) = (LOWEST, HIGHEST, start);
        for _ in 0..ROUNDS {
            let here = self.charges(ph);
            if here.log_ratio > 0.0 {
                low = ph;
            } else {
                high = ph;
            }
            let next = ph - here.log_ratio / here.slope;
            let next = if next > low && next < high { next } else { f64::midpoint(low, high) };
            let step = (next - ph).abs();
            ph = next;
            if step < CLOSE || high - low < CLOSE {
                break;
            }
        }
        ph
    }
}

/// The balance with the activities of a given ionic strength.
pub(super) fn balance_at(solution: &Solution, activity: Activity, assumed: f64, start: f64) -> Balance {
    let held = Held::new(solution, activity, assumed);
    let ph = held.ph(start);
    let Charges { plus, minus, ionic_strength, .. } = held.charges(ph);
    Balance { ph, ionic_strength, residual: plus - minus, charges: plus.max(minus), activity, assumed }
}

/// The balance of a solution.
pub(super) fn balance(solution: &Solution, activity: Activity) -> Balance {
    let mut found = balance_at(solution, activity, 0.0, 7.0);
    if activity == Activity::Ideal {
        return found;
    }
    // What the ions at the pH of an assumed ionic strength add up to, less that strength, is above 0 for an
    // assumed 0 and at most 0 for the greatest that counts; in between lies the true one.
    let (mut low, mut high) = (0.0, DAVIES_REACH);
    let mut before = (0.0, found.ionic_strength);
    let mut assumed = found.ionic_strength.min(DAVIES_REACH);
    for _ in 0..ROUNDS {
        found = balance_at(solution, activity, assumed, found.ph);
        let over = found.ionic_strength.min(DAVIES_REACH) - assumed;
        if over.abs() <= 1e-10 * assumed + 1e-16 || high - low <= 1e-15 {
            break;
        }
        if over > 0.0 {
            low = assumed;
        } else {
            high = assumed;
        }
        let straight = assumed - over * (assumed - before.0) / (over - before.1);
        before = (assumed, over);
        assumed = if straight > low && straight < high { straight } else { f64::midpoint(low, high) };
    }
    found
}

/// The amount of a weak acid that balances a solution at a pH.
pub(super) fn amount_for(solution: &Solution, weak: &Weak, ph: f64, activity: Activity) -> f64 {
    let (mut amount, mut ionic_strength) = (0.0, 0.0);
    for _ in 0..ROUNDS {
        let rest = Held::new(solution, activity, ionic_strength).charges(ph);
        let mean = Forms::new(weak, activity, ionic_strength).at(10_f64.powf(ph));
        let next = ((rest.plus - rest.minus) / (mean.minus - mean.plus)).max(0.0);
        let step = (next - amount).abs();
        (amount, ionic_strength) = (next, rest.ionic_strength + mean.squares * next / 2.0);
        if step <= 1e-13 * next {
            break;
        }
    }
    amount
}
