//! The extreme pH rule.

use super::Mixture;
use crate::chemistry::floor::PhRange;
use crate::coded::coded;

coded! {
    /// What a safety data sheet says of the acid or alkali reserve: how much a product holds behind its pH.
    #[derive(Default)]
    Reserve {
        /// Nobody has looked, or it says nothing: it counts as large.
        #[default]
        Unknown = "unknown",
        /// It was assessed and is so small that the product does not burn by its pH.
        Small = "small",
        /// It is not small.
        Large = "large",
    }
}

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
/// brings nearer to its own, or nothing in it can make it so. A concentrate whose pH is extreme holds something
/// that does, listed or not.
pub(super) fn judge(mixture: &Mixture, ph: Option<PhRange>) -> Verdict {
    if mixture.reserve_is_small {
        return Verdict::Mild;
    }
    let neat = mixture.ph_of_concentrate.filter(PhRange::is_sound).map(extreme);
    match (ph.filter(PhRange::is_sound), neat) {
        (Some(ph), _) => extreme(ph).map_or(Verdict::Mild, Verdict::Extreme),
        (None, Some(None)) => Verdict::Mild,
        (None, Some(Some(_))) => Verdict::Unknown,
        (None, None) => {
            let shifts = mixture.ingredients.iter().any(|one| one.range().1 > 0.0 && one.may_shift_ph());
            if shifts || mixture.rest() > 0.0 { Verdict::Unknown } else { Verdict::Mild }
        }
    }
}
