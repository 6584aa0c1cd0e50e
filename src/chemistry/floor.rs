//! What each kind of floor bears: its pH window and the families that harm it.
//!
//! The floor maker's own care sheet beats every row here.

mod ground;
mod rules;
pub mod thirst;
pub mod tile;
pub mod verdict;

use crate::coded::coded;

use super::family::Family;
use crate::source::Source;
pub use ground::{Cover, Ground};
pub use verdict::{FloorVerdict, Missing, PhRange, Reason, verdict, verdict_within};

coded! {
    /// A kind of floor surface, as far as a rule here depends on it.
    Surface {
        /// Nobody has said yet.
        Unknown = "unknown",
        /// Vinyl or vinyl composition tile under acrylic finish.
        FinishedVinyl = "finished_vinyl",
        /// Linoleum.
        Linoleum = "linoleum",
        /// Rubber.
        Rubber = "rubber",
        /// Wood under a clear seal: sports halls, stages.
        SealedWood = "sealed_wood",
        /// Terrazzo bound with cement or resin.
        Terrazzo = "terrazzo",
        /// Marble, limestone, travertine.
        CalcareousStone = "calcareous_stone",
        /// Granite.
        Granite = "granite",
        /// Porcelain and other tile that takes up no more than 0.5 % water, with cement grout.
        ImperviousTile = "impervious_tile",
        /// Glazed tile with cement grout.
        GlazedTile = "glazed_tile",
        /// Vitreous tile with cement grout.
        VitreousTile = "vitreous_tile",
        /// Quarry and other semi-vitreous tile with cement grout.
        SemiVitreousTile = "semi_vitreous_tile",
        /// Terracotta and other non-vitreous tile with cement grout.
        NonVitreousTile = "non_vitreous_tile",
        /// Sealed or coated concrete.
        SealedConcrete = "sealed_concrete",
        /// Bare concrete.
        BareConcrete = "bare_concrete",
    }
}

impl Surface {
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
        .chain(tile::IsoGroup::ALL.iter().map(|group| group.key()))
        .map(str::to_owned)
        .chain(thirst::word_keys())
}
