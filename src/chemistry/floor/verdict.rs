//! Whether a product's use solution fits a floor.

use super::rules::NEAR_NEUTRAL;
use super::{Harm, Surface, Window};
use crate::chemistry::family::Family;

/// The pH a use solution may have, lowest to highest. One known value is a range of no width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PhRange {
    /// The lowest it may be.
    pub low: f64,
    /// The highest it may be.
    pub high: f64,
}

/// Why a product does not fit a floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reason {
    /// A family in it harms this floor.
    Family(&'static Harm),
    /// Its use solution lies below the floor's pH window.
    TooAcid(Window),
    /// Its use solution lies above the floor's pH window.
    TooAlkaline(Window),
}

impl Reason {
    /// The word key; the pH keys take `$low` and `$high`.
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Family(harm) => harm.reason,
            Self::TooAcid(_) => KEYS[0],
            Self::TooAlkaline(_) => KEYS[1],
        }
    }
}

/// What must be known before a floor can be cleared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Missing {
    /// What the floor is made of.
    Surface,
    /// What families the product belongs to.
    Families,
    /// The pH of the use solution.
    Ph,
    /// A closer figure: the range lies partly outside the window.
    CloserPh,
    /// What this floor bears, beyond a solution near neutral.
    FloorLimit,
    /// What the finish on it bears.
    FinishLimit,
}

impl Missing {
    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Surface => KEYS[9],
            Self::Families => KEYS[2],
            Self::Ph => KEYS[3],
            Self::CloserPh => KEYS[4],
            Self::FloorLimit => KEYS[5],
            Self::FinishLimit => KEYS[10],
        }
    }
}

/// The word keys of verdicts that are not those of a harm.
pub(super) const KEYS: [&str; 11] = [
    "floor-reason-too-acid",
    "floor-reason-too-alkaline",
    "floor-missing-families",
    "floor-missing-ph",
    "floor-missing-closer-ph",
    "floor-missing-limit",
    "floor-verdict-fits",
    "floor-verdict-does-not-fit",
    "floor-verdict-unknown",
    "floor-missing-surface",
    "floor-missing-finish-limit",
];

/// Whether a product fits a floor.
#[derive(Clone, Debug, PartialEq)]
pub enum FloorVerdict {
    /// Every rule listed for this floor is met. The floor maker's care sheet still governs.
    Fits,
    /// It harms this floor.
    DoesNotFit {
        /// Why, families before pH.
        reasons: Vec<Reason>,
    },
    /// No rule forbids it, but not enough is known to clear it.
    Unknown {
        /// What to find out.
        missing: Vec<Missing>,
    },
}

impl FloorVerdict {
    /// What is so where this and another must both hold: harm counts before what is not known, and that before
    /// a fit. What both say is told once.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        fn all<T: PartialEq>(mut one: Vec<T>, other: Vec<T>) -> Vec<T> {
            for more in other {
                if !one.contains(&more) {
                    one.push(more);
                }
            }
            one
        }
        match (self, other) {
            (Self::DoesNotFit { reasons: one }, Self::DoesNotFit { reasons: other }) => {
                Self::DoesNotFit { reasons: all(one, other) }
            }
            (harm @ Self::DoesNotFit { .. }, _) | (_, harm @ Self::DoesNotFit { .. }) => harm,
            (Self::Unknown { missing: one }, Self::Unknown { missing: other }) => {
                Self::Unknown { missing: all(one, other) }
            }
            (unknown @ Self::Unknown { .. }, _) | (_, unknown @ Self::Unknown { .. }) => unknown,
            (Self::Fits, Self::Fits) => Self::Fits,
        }
    }

    /// The word key of the verdict itself.
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Fits => KEYS[6],
            Self::DoesNotFit { .. } => KEYS[7],
            Self::Unknown { .. } => KEYS[8],
        }
    }
}

/// Whether a product of these families, with this pH in its use solution, fits a floor.
///
/// What is not known never clears a floor: no family, no pH, a pH range that is only partly inside
/// the window, or a floor without a known window under anything but a solution near neutral.
///
/// ```
/// use brimline::chemistry::family::Family;
/// use brimline::chemistry::floor::{FloorVerdict, PhRange, Surface, verdict};
/// let vinegar = verdict(Surface::CalcareousStone, &[Family::Acid], None);
/// assert!(matches!(vinegar, FloorVerdict::DoesNotFit { .. }));
/// let neutral = verdict(Surface::Terrazzo, &[Family::Neutral], Some(PhRange { low: 7.2, high: 7.8 }));
/// assert_eq!(neutral, FloorVerdict::Fits);
/// ```
pub fn verdict(surface: Surface, families: &[Family], ph: Option<PhRange>) -> FloorVerdict {
    verdict_within(surface, surface.window().copied(), families, ph)
}

/// The same with the site's own pH window, such as one from the floor maker's care sheet.
pub fn verdict_within(
    surface: Surface,
    window: Option<Window>,
    families: &[Family],
    ph: Option<PhRange>,
) -> FloorVerdict {
    let harms = |harm: &&Harm| families.iter().any(|one| one.is_a(harm.family));
    let mut reasons: Vec<_> = surface.harms().filter(harms).map(Reason::Family).collect();
    let mut missing = Vec::new();
    if surface == Surface::Unknown {
        missing.push(Missing::Surface);
    }
    if families.is_empty() {
        missing.push(Missing::Families);
    }
    match (ph.filter(PhRange::is_sound), window) {
        (None, _) => missing.push(Missing::Ph),
        (Some(ph), Some(window)) if ph.high < window.low => reasons.push(Reason::TooAcid(window)),
        (Some(ph), Some(window)) if ph.low > window.high => reasons.push(Reason::TooAlkaline(window)),
        (Some(ph), Some(window)) if !ph.is_within(&window) => missing.push(Missing::CloserPh),
        (Some(ph), None) if !ph.is_within(&NEAR_NEUTRAL) => missing.push(Missing::FloorLimit),
        (Some(_), _) => {}
    }
    if !reasons.is_empty() {
        FloorVerdict::DoesNotFit { reasons }
    } else if !missing.is_empty() {
        FloorVerdict::Unknown { missing }
    } else {
        FloorVerdict::Fits
    }
}

impl PhRange {
    fn is_within(&self, window: &Window) -> bool {
        self.low >= window.low && self.high <= window.high
    }

    /// Two real numbers in order; anything else says nothing.
    pub(in crate::chemistry) fn is_sound(&self) -> bool {
        self.low.is_finite() && self.high.is_finite() && self.low <= self.high
    }
}
