//! The tables: pH windows, and families that harm a floor.

use super::Surface::{
    self, BareConcrete, CalcareousStone, FinishedVinyl, GlazedTile, Granite, ImperviousTile, Linoleum,
    NonVitreousTile, Rubber, SealedConcrete, SealedWood, SemiVitreousTile, Terrazzo, VitreousTile,
};
use super::{Harm, Window};
use crate::chemistry::family::Family;
use crate::source::Source;

const NTMA: Source =
    Source::unverified("National Terrazzo and Mosaic Association care text, seen second-hand");
const GSA_TERRAZZO: Source = Source::published(
    "GSA Historic Preservation Technical Procedures, cleaning terrazzo: no acids, alkalis, carbonates or trisodium phosphate",
);
const STONE: Source = Source::unverified("Marble Institute of America care text, seen second-hand");
const GSA_RESILIENT: Source =
    Source::published("GSA Historic Preservation Technical Procedures 0966001P (linoleum, vinyl and rubber)");
const SELLERS: Source =
    Source::unverified("three rubber floor suppliers, seen second-hand; the range all three allow");
const LINOLEUM: Source = Source::unverified("trade text, seen second-hand; weak, so ask the floor's maker");
const CUSTOM: Source = Source::COMMON_PRACTICE;

/// Every floor without a window of its own bears a use solution near neutral.
pub(super) const NEAR_NEUTRAL: Window = Window { low: 6.0, high: 9.0, source: CUSTOM };

/// Windows, one a floor.
pub(super) static WINDOWS: &[(Surface, Window)] = &[
    (FinishedVinyl, NEAR_NEUTRAL),
    (SealedWood, NEAR_NEUTRAL),
    (Linoleum, Window { low: 5.0, high: 8.0, source: LINOLEUM }),
    (Rubber, Window { low: 7.0, high: 8.5, source: SELLERS }),
    (Terrazzo, Window { low: 7.0, high: 10.0, source: NTMA }),
    (CalcareousStone, Window { low: 7.0, high: 10.0, source: CUSTOM }),
];

const fn harm(surfaces: &'static [Surface], family: Family, reason: &'static str, source: Source) -> Harm {
    Harm { surfaces, family, reason, source }
}

/// Floors held together by cement grout.
const GROUTED: &[Surface] = &[ImperviousTile, GlazedTile, VitreousTile, SemiVitreousTile, NonVitreousTile];

/// Harms, most telling first for each floor.
pub(super) static HARMS: &[Harm] = &[
    harm(&[CalcareousStone], Family::Acid, "floor-reason-acid-stone", STONE),
    harm(&[CalcareousStone], Family::StrongAlkali, "floor-reason-alkali-stone", CUSTOM),
    harm(&[Terrazzo], Family::Acid, "floor-reason-acid-terrazzo", GSA_TERRAZZO),
    harm(&[Terrazzo], Family::Alkali, "floor-reason-alkali-terrazzo", GSA_TERRAZZO),
    harm(&[Granite], Family::StrongAcid, "floor-reason-acid-granite", CUSTOM),
    harm(GROUTED, Family::Acid, "floor-reason-acid-grout", CUSTOM),
    harm(&[SealedConcrete, BareConcrete], Family::Acid, "floor-reason-acid-concrete", CUSTOM),
    harm(&[SealedConcrete], Family::StrongAlkali, "floor-reason-alkali-seal", CUSTOM),
    harm(&[SealedConcrete], Family::Solvent, "floor-reason-solvent-seal", CUSTOM),
    harm(&[FinishedVinyl], Family::StrongAlkali, "floor-reason-alkali-finish", CUSTOM),
    harm(&[FinishedVinyl], Family::Ammonia, "floor-reason-ammonia-finish", CUSTOM),
    harm(&[FinishedVinyl], Family::Alcohol, "floor-reason-solvent-finish", CUSTOM),
    harm(&[FinishedVinyl], Family::Solvent, "floor-reason-solvent-finish", CUSTOM),
    harm(&[Linoleum], Family::StrongAlkali, "floor-reason-alkali-linoleum", LINOLEUM),
    harm(&[Linoleum], Family::Ammonia, "floor-reason-alkali-linoleum", LINOLEUM),
    harm(&[Rubber], Family::Solvent, "floor-reason-solvent-rubber", GSA_RESILIENT),
    harm(&[SealedWood], Family::StrongAlkali, "floor-reason-alkali-seal", CUSTOM),
    harm(&[SealedWood], Family::Ammonia, "floor-reason-alkali-seal", CUSTOM),
    harm(&[SealedWood], Family::Solvent, "floor-reason-solvent-seal", CUSTOM),
];
