//! What each kind of floor bears: its pH window and the families that harm it.
//!
//! The floor maker's own care sheet beats every row here.

mod rules;
pub mod tile;
pub mod verdict;

use serde::{Deserialize, Serialize};

use super::family::Family;
use crate::source::Source;
pub use verdict::{FloorVerdict, Missing, PhRange, Reason, verdict, verdict_within};

/// A kind of floor surface, as far as a rule here depends on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Surface {
    /// Vinyl or vinyl composition tile under acrylic finish.
    FinishedVinyl,
    /// Linoleum.
    Linoleum,
    /// Rubber.
    Rubber,
    /// Wood under a clear seal: sports halls, stages.
    SealedWood,
    /// Terrazzo bound with cement or resin.
    Terrazzo,
    /// Marble, limestone, travertine.
    CalcareousStone,
    /// Granite.
    Granite,
    /// Porcelain and other tile that takes up no more than 0.5 % water, with cement grout.
    ImperviousTile,
    /// Glazed tile with cement grout.
    GlazedTile,
    /// Vitreous tile with cement grout.
    VitreousTile,
    /// Quarry and other semi-vitreous tile with cement grout.
    SemiVitreousTile,
    /// Terracotta and other non-vitreous tile with cement grout.
    NonVitreousTile,
    /// Sealed or coated concrete.
    SealedConcrete,
    /// Bare concrete.
    BareConcrete,
    /// Nobody has said yet.
    Unknown,
}

impl Surface {
    /// Every kind, in the order a list shows them.
    pub const ALL: [Self; 15] = [
        Self::Unknown,
        Self::FinishedVinyl,
        Self::Linoleum,
        Self::Rubber,
        Self::SealedWood,
        Self::Terrazzo,
        Self::CalcareousStone,
        Self::Granite,
        Self::ImperviousTile,
        Self::GlazedTile,
        Self::VitreousTile,
        Self::SemiVitreousTile,
        Self::NonVitreousTile,
        Self::SealedConcrete,
        Self::BareConcrete,
    ];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::FinishedVinyl => "surface-finished-vinyl",
            Self::Linoleum => "surface-linoleum",
            Self::Rubber => "surface-rubber",
            Self::SealedWood => "surface-sealed-wood",
            Self::Terrazzo => "surface-terrazzo",
            Self::CalcareousStone => "surface-calcareous-stone",
            Self::Granite => "surface-granite",
            Self::ImperviousTile => "surface-impervious-tile",
            Self::GlazedTile => "surface-glazed-tile",
            Self::VitreousTile => "surface-vitreous-tile",
            Self::SemiVitreousTile => "surface-semi-vitreous-tile",
            Self::NonVitreousTile => "surface-non-vitreous-tile",
            Self::SealedConcrete => "surface-sealed-concrete",
            Self::BareConcrete => "surface-bare-concrete",
            Self::Unknown => "surface-unknown",
        }
    }

    /// The pH window of the use solution, where one is known.
    pub fn window(self) -> Option<&'static Window> {
        rules::WINDOWS.iter().find(|(surface, _)| *surface == self).map(|(_, window)| window)
    }

    /// What harms it, most telling first.
    pub fn harms(self) -> impl Iterator<Item = &'static Harm> {
        rules::HARMS.iter().filter(move |harm| harm.surfaces.contains(&self))
    }
}

/// The pH a floor bears from a use solution, both ends included.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Window {
    /// The lowest pH.
    pub low: f64,
    /// The highest pH.
    pub high: f64,
    /// Where it comes from.
    pub source: Source,
}

/// A family that harms some floors.
#[derive(Debug, PartialEq, Eq)]
pub struct Harm {
    /// The floors it harms.
    pub surfaces: &'static [Surface],
    /// The family.
    pub family: Family,
    /// The word key of what it does there.
    pub reason: &'static str,
    /// Where it comes from.
    pub source: Source,
}

/// The word keys of floors.
pub fn word_keys() -> impl Iterator<Item = String> {
    Surface::ALL
        .iter()
        .map(|surface| surface.key())
        .chain(rules::HARMS.iter().map(|harm| harm.reason))
        .chain(verdict::KEYS)
        .chain(tile::TileClass::ALL.iter().map(|class| class.key()))
        .map(str::to_owned)
}
