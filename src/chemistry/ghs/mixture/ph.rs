//! The extreme pH rule.

use super::Mixture;
use crate::chemistry::floor::PhRange;

/// A pH of 2 or less burns; so does one of 11.5 or more.
pub const EXTREME: PhRange = PhRange { low: 2.0, high: 11.5 };

/// What the pH of the use solution says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Verdict {
    /// It burns skin and eyes; the pH that says so.
    Extreme(f64),
    /// It does not by its pH.
    Mild,
    /// Nobody knows, and it may be extreme.
    Unknown,
}

/// The part of the pH that is extreme: the worse end of a range counts.
fn extreme(ph: PhRange) -> Option<f64> {
    let low = (ph.low <= EXTREME.low).then_some(ph.low);
    low.or_else(|| (ph.high >= EXTREME.high).then_some(ph.high))
}

/// A solution whose pH is not known may be extreme unless its concentrate is not, which water then only
/// brings nearer to its own, or nothing in it can make it so.
pub(super) fn judge(mixture: &Mixture, ph: Option<PhRange>) -> Verdict {
    if mixture.reserve_is_small {
        return Verdict::Mild;
    }
    match ph.filter(PhRange::is_sound) {
        Some(ph) => extreme(ph).map_or(Verdict::Mild, Verdict::Extreme),
        None if mixture
            .ph_of_concentrate
            .filter(PhRange::is_sound)
            .is_some_and(|ph| extreme(ph).is_none()) =>
        {
            Verdict::Mild
        }
        None => {
            let shifts = mixture.ingredients.iter().any(|one| one.range().1 > 0.0 && one.may_shift_ph());
            if shifts || mixture.rest() > 0.0 { Verdict::Unknown } else { Verdict::Mild }
        }
    }
}
