//! Classes of ceramic tile by how much water they take up: the thirst of a tile floor.

use crate::source::Source;

/// A class of tile by water absorption.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TileClass {
    /// Porcelain and its like.
    Impervious,
    /// Vitreous.
    Vitreous,
    /// Semi-vitreous, as many quarry tiles are.
    SemiVitreous,
    /// Non-vitreous, as terracotta is.
    NonVitreous,
}

/// The four classes.
pub const SOURCE: Source =
    Source::unverified("ASTM C373 and ANSI A137.1, after a tile maker's guide seen second-hand");
/// That porcelain takes up no more than 0.5 %.
pub const PORCELAIN: Source = Source::published("ISO 13006, as reported in Tile Magazine");

impl TileClass {
    /// The driest class first.
    pub const ALL: [Self; 4] = [Self::Impervious, Self::Vitreous, Self::SemiVitreous, Self::NonVitreous];

    /// The most water a tile of this class takes up, in percent of its mass; none for the last.
    pub const fn up_to(self) -> Option<f64> {
        match self {
            Self::Impervious => Some(0.5),
            Self::Vitreous => Some(3.0),
            Self::SemiVitreous => Some(7.0),
            Self::NonVitreous => None,
        }
    }

    /// The class of a tile that takes up this much water, in percent of its mass; none for a
    /// negative or undefined number.
    ///
    /// ```
    /// use brimline::chemistry::floor::tile::TileClass;
    /// assert_eq!(TileClass::of(0.5), Some(TileClass::Impervious));
    /// assert_eq!(TileClass::of(0.6), Some(TileClass::Vitreous));
    /// ```
    pub fn of(absorption: f64) -> Option<Self> {
        if absorption.is_nan() || absorption < 0.0 {
            return None;
        }
        Self::ALL.into_iter().find(|class| class.up_to().is_none_or(|most| absorption <= most))
    }

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Impervious => "tile-class-impervious",
            Self::Vitreous => "tile-class-vitreous",
            Self::SemiVitreous => "tile-class-semi-vitreous",
            Self::NonVitreous => "tile-class-non-vitreous",
        }
    }
}
