//! Rinsed to neutral: what the pH of the last rinse says before a finish goes on.
//!
//! Alkali that a stripper leaves keeps a finish from hardening and turns it powdery. The finish's own label
//! governs where it says more.

use crate::source::Source;

/// How far from the tap water's own pH a rinse may read: a strip tells about one unit.
pub const WITHIN: f64 = 1.0;
/// Beyond this nothing reads neutral, whatever comes out of the tap.
const NEUTRAL: std::ops::RangeInclusive<f64> = 6.0..=9.0;

/// Where the rule comes from.
pub const SOURCE: Source = Source::COMMON_PRACTICE;

/// What a reading says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Rinsed {
    /// Nobody has read it: nothing goes on this floor.
    Unknown,
    /// As good as the water that it is rinsed with.
    Neutral,
    /// Stripper is still on the floor.
    Alkaline,
    /// Too much of an acid rinse is on the floor.
    Acid,
}

impl Rinsed {
    /// Every one.
    pub const ALL: [Self; 4] = [Self::Unknown, Self::Neutral, Self::Alkaline, Self::Acid];

    /// The word key of what to do.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Unknown => "rinsed-unknown",
            Self::Neutral => "rinsed-neutral",
            Self::Alkaline => "rinsed-alkaline",
            Self::Acid => "rinsed-acid",
        }
    }
}

/// Whether a rinse reads neutral: within one unit of the tap water, since clean water can bring no rinse
/// nearer to 7 than it is itself, and from 6 to 9.
///
/// * `reading`: the pH of the last rinse, taken up from the floor, 0 to 14; none where nobody has read it.
/// * `tap`: the pH of the water.
///
/// Source: common practice; a strip reads to about one unit.
///
/// ```
/// use brimline::chemistry::rinse::{Rinsed, rinsed};
/// assert_eq!(rinsed(Some(8.0), 7.5), Rinsed::Neutral);
/// assert_eq!(rinsed(Some(9.5), 7.5), Rinsed::Alkaline);
/// assert_eq!(rinsed(Some(10.0), 9.5), Rinsed::Alkaline);
/// assert_eq!(rinsed(None, 7.5), Rinsed::Unknown);
/// ```
pub fn rinsed(reading: Option<f64>, tap: f64) -> Rinsed {
    let end = |ph: f64| ph.clamp(*NEUTRAL.start(), *NEUTRAL.end());
    match reading {
        Some(ph) if ph > end(tap + WITHIN) + 1e-9 => Rinsed::Alkaline,
        Some(ph) if ph < end(tap - WITHIN) - 1e-9 => Rinsed::Acid,
        Some(ph) if ph.is_finite() => Rinsed::Neutral,
        _ => Rinsed::Unknown,
    }
}

/// The word keys of rinsing.
pub fn word_keys() -> impl Iterator<Item = String> {
    Rinsed::ALL.iter().map(|one| one.key().to_owned())
}
