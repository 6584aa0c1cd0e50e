//! What a mixture is classified for, and in which category.

use super::super::hazard::{self, Hazard};
use std::cmp::Ordering;

/// A hazard that is worked out from the ingredients.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Endpoint {
    /// Burns or irritates the skin.
    Skin,
    /// Damages or irritates the eyes.
    Eye,
    /// Poisons when it is swallowed.
    Swallowed,
    /// Poisons through the skin.
    ThroughSkin,
    /// Harms what lives in water, at once.
    WaterAcute,
    /// Harms what lives in water, for long.
    WaterChronic,
}

impl Endpoint {
    /// All of them, in the order shown.
    pub const ALL: [Self; 6] =
        [Self::Skin, Self::Eye, Self::Swallowed, Self::ThroughSkin, Self::WaterAcute, Self::WaterChronic];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Skin => "mixture-for-skin",
            Self::Eye => "mixture-for-eye",
            Self::Swallowed => "mixture-for-swallowed",
            Self::ThroughSkin => "mixture-for-through-skin",
            Self::WaterAcute => "mixture-for-water-acute",
            Self::WaterChronic => "mixture-for-water-chronic",
        }
    }

    /// Whether it is about people: the rules of some countries leave water out.
    pub const fn is_health(self) -> bool {
        !matches!(self, Self::WaterAcute | Self::WaterChronic)
    }
}

/// A category of an endpoint. The worse one is the greater one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Class {
    /// For what.
    pub endpoint: Endpoint,
    /// 1 is the worst.
    pub category: u8,
}

impl Ord for Class {
    fn cmp(&self, other: &Self) -> Ordering {
        (self.endpoint, other.category).cmp(&(other.endpoint, self.category))
    }
}

impl PartialOrd for Class {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

/// Category by category, the statement that a label bears for it. Categories 1 and 2 of acute toxicity share
/// one, which is read as the worse of them.
const STATEMENTS: &[(Endpoint, u8, &str)] = &[
    (Endpoint::Skin, 1, "H314"),
    (Endpoint::Skin, 2, "H315"),
    (Endpoint::Eye, 1, "H318"),
    (Endpoint::Eye, 2, "H319"),
    (Endpoint::Swallowed, 1, "H300"),
    (Endpoint::Swallowed, 2, "H300"),
    (Endpoint::Swallowed, 3, "H301"),
    (Endpoint::Swallowed, 4, "H302"),
    (Endpoint::ThroughSkin, 1, "H310"),
    (Endpoint::ThroughSkin, 2, "H310"),
    (Endpoint::ThroughSkin, 3, "H311"),
    (Endpoint::ThroughSkin, 4, "H312"),
    (Endpoint::WaterAcute, 1, "H400"),
    (Endpoint::WaterChronic, 1, "H410"),
    (Endpoint::WaterChronic, 2, "H411"),
    (Endpoint::WaterChronic, 3, "H412"),
    (Endpoint::WaterChronic, 4, "H413"),
];

/// Statements that also stand for another endpoint: what burns the skin damages the eye; milder eye
/// irritation counts as eye irritation; a label that bears H410 leaves H400 out.
const ALSO: &[(&str, Endpoint, u8)] =
    &[("H314", Endpoint::Eye, 1), ("H320", Endpoint::Eye, 2), ("H410", Endpoint::WaterAcute, 1)];

impl Class {
    /// The statement that a label bears for it.
    ///
    /// ```
    /// use brimline::chemistry::ghs::mixture::{Class, Endpoint};
    /// assert_eq!(Class { endpoint: Endpoint::Eye, category: 2 }.hazard().unwrap().code, "H319");
    /// ```
    pub fn hazard(self) -> Option<&'static Hazard> {
        let row = STATEMENTS.iter().find(|row| (row.0, row.1) == (self.endpoint, self.category))?;
        hazard::find(row.2)
    }

    /// The worst class for an endpoint among these statements.
    ///
    /// ```
    /// use brimline::chemistry::ghs::{codes, mixture::{Class, Endpoint}};
    /// let hazards = codes::read("H314 H302").hazards;
    /// assert_eq!(Class::among(&hazards, Endpoint::Eye).unwrap().category, 1);
    /// assert_eq!(Class::among(&hazards, Endpoint::ThroughSkin), None);
    /// ```
    pub fn among(hazards: &[&'static Hazard], endpoint: Endpoint) -> Option<Self> {
        let parts = || hazards.iter().flat_map(|hazard| hazard.parts());
        let plain = STATEMENTS.iter().map(|(of, category, code)| (*code, *of, *category));
        let bears = |code: &str| parts().any(|part| part == code);
        plain
            .chain(ALSO.iter().copied())
            .filter(|(code, of, _)| *of == endpoint && bears(code))
            .map(|(_, endpoint, category)| Self { endpoint, category })
            .max()
    }

    /// Whether a statement is judged here at all; the others are left to the label of the concentrate.
    pub fn judges(hazard: &Hazard) -> bool {
        let known =
            |part: &str| STATEMENTS.iter().any(|row| row.2 == part) || ALSO.iter().any(|row| row.0 == part);
        hazard.parts().all(known)
    }
}
