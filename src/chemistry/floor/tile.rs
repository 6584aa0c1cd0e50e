//! Classes of ceramic tile by how much water they take up: the thirst of a tile floor.

use crate::source::Source;

/// A class of tile by water absorption, as American standards name it.
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
    Source::unverified("ASTM C373 and ANSI A137.1, after two tile makers' guides seen second-hand");
/// That porcelain takes up no more than 0.5 %.
pub const PORCELAIN: Source = Source::published("ISO 13006, as reported in Tile Magazine");

/// A typed per cent is a share and back: 7 % must stay at most 7 %.
const SLACK: f64 = 1e-9;

fn position(limits: &[f64], absorption: f64) -> Option<usize> {
    if absorption.is_nan() || absorption < 0.0 {
        return None;
    }
    let within = limits.iter().position(|most| absorption <= most + SLACK);
    Some(within.unwrap_or(limits.len()))
}

impl TileClass {
    /// The driest class first.
    pub const ALL: [Self; 4] = [Self::Impervious, Self::Vitreous, Self::SemiVitreous, Self::NonVitreous];

    /// The most water that a tile of each class but the last takes up, in percent of its mass.
    pub const UP_TO: [f64; 3] = [0.5, 3.0, 7.0];

    /// The class of a tile that takes up this much water, in percent of its mass; none for a
    /// negative or undefined number.
    ///
    /// ```
    /// use brimline::chemistry::floor::tile::TileClass;
    /// assert_eq!(TileClass::of(0.5), Some(TileClass::Impervious));
    /// assert_eq!(TileClass::of(0.6), Some(TileClass::Vitreous));
    /// ```
    pub fn of(absorption: f64) -> Option<Self> {
        Some(Self::ALL[position(&Self::UP_TO, absorption)?])
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

/// A group of tile by water absorption, as ISO 13006 names it. The letter of how the tile was shaped, A
/// or B, stands before it on data sheets and changes none of the limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum IsoGroup {
    /// Up to 0.5 %.
    Ia,
    /// Over 0.5 to 3 %.
    Ib,
    /// Over 3 to 6 %.
    IIa,
    /// Over 6 to 10 %.
    IIb,
    /// Over 10 %.
    III,
}

const ANNEXES: Source = Source::published("ISO 13006:2018, titles of annexes A to C");
const GROUPS: Source =
    Source::unverified("ISO 13006:2018, 4.3; limits as a list of EN 14411:2006 gives them");

impl IsoGroup {
    /// The driest group first.
    pub const ALL: [Self; 5] = [Self::Ia, Self::Ib, Self::IIa, Self::IIb, Self::III];

    /// The most water that a tile of each group but the last takes up, in percent of its mass.
    pub const UP_TO: [f64; 4] = [0.5, 3.0, 6.0, 10.0];

    /// The group of a tile that takes up this much water, in percent of its mass; none for a negative or
    /// undefined number.
    ///
    /// ```
    /// use brimline::chemistry::floor::tile::IsoGroup;
    /// assert_eq!(IsoGroup::of(6.0), Some(IsoGroup::IIa));
    /// assert_eq!(IsoGroup::of(6.1), Some(IsoGroup::IIb));
    /// ```
    pub fn of(absorption: f64) -> Option<Self> {
        Some(Self::ALL[position(&Self::UP_TO, absorption)?])
    }

    /// Where its limits were read.
    pub const fn source(self) -> Source {
        match self {
            Self::Ib | Self::IIa => ANNEXES,
            Self::Ia | Self::IIb | Self::III => GROUPS,
        }
    }

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Ia => "iso-group-ia",
            Self::Ib => "iso-group-ib",
            Self::IIa => "iso-group-iia",
            Self::IIb => "iso-group-iib",
            Self::III => "iso-group-iii",
        }
    }
}
