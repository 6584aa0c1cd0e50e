//! Physical hazards, H200 to H290.

use super::hazard::{Hazard, Route, row, worst};
use super::pictogram::{
    Pictogram::{Ghs01, Ghs02, Ghs03, Ghs04, Ghs05},
    SignalWord::{Danger, Warning},
};
use crate::source::{Source, uncited};

/// Rows not yet checked against the standard's own tables.
const UN: Source =
    Source::unverified("UN GHS, ST/SG/AC.10/30, Annex 3, Table A3.1.1 and Annex 1; from memory");
/// Oxidizing liquids: signal word, pictogram and statement read there.
const OXIDISING: Source = Source::published("Regulation (EC) No 1272/2008 (CLP), Annex I, Table 2.13.2");

/// The table, in code order.
#[rustfmt::skip]
pub(super) const CITED: &[(Hazard, Source)] = &[
    row("H200", Danger, &[Ghs01], 1, &[], UN),
    row("H201", Danger, &[Ghs01], 1, &[], UN),
    row("H202", Danger, &[Ghs01], 1, &[], UN),
    row("H203", Danger, &[Ghs01], 1, &[], UN),
    row("H204", Warning, &[Ghs01], 4, &[], UN),
    row("H205", Danger, &[], 1, &[], UN),
    row("H206", Danger, &[Ghs02], 2, &[], UN),
    worst("H207", Danger, &[Ghs02], 2, UN),
    row("H208", Warning, &[Ghs02], 4, &[], UN),
    row("H209", Danger, &[Ghs01], 1, &[], UN),
    row("H210", Danger, &[Ghs01], 1, &[], UN),
    row("H211", Warning, &[Ghs01], 4, &[], UN),
    row("H220", Danger, &[Ghs02], 2, &[], UN),
    worst("H221", Danger, &[Ghs02], 3, UN),
    row("H222", Danger, &[Ghs02], 2, &[], UN),
    row("H223", Warning, &[Ghs02], 4, &[], UN),
    row("H224", Danger, &[Ghs02], 2, &[], UN),
    row("H225", Danger, &[Ghs02], 3, &[], UN),
    row("H226", Warning, &[Ghs02], 4, &[], UN),
    row("H227", Warning, &[], 6, &[], UN),
    worst("H228", Danger, &[Ghs02], 3, UN),
    // Its flame and a "Danger" come from H222 or H223 beside it.
    row("H229", Warning, &[], 4, &[], UN),
    row("H230", Danger, &[Ghs02], 2, &[], UN),
    row("H231", Danger, &[Ghs02], 2, &[], UN),
    row("H232", Danger, &[Ghs02], 2, &[], UN),
    row("H240", Danger, &[Ghs01], 1, &[], UN),
    row("H241", Danger, &[Ghs01, Ghs02], 2, &[], UN),
    worst("H242", Danger, &[Ghs02], 3, UN),
    row("H250", Danger, &[Ghs02], 2, &[], UN),
    row("H251", Danger, &[Ghs02], 3, &[], UN),
    row("H252", Warning, &[Ghs02], 4, &[], UN),
    row("H260", Danger, &[Ghs02], 2, &[], UN),
    worst("H261", Danger, &[Ghs02], 3, UN),
    row("H270", Danger, &[Ghs03], 2, &[], UN),
    row("H271", Danger, &[Ghs03], 2, &[], OXIDISING),
    worst("H272", Danger, &[Ghs03], 3, OXIDISING),
    row("H280", Warning, &[Ghs04], 4, &[], UN),
    row("H281", Warning, &[Ghs04], 4, &[Route::Skin, Route::Eye], UN),
    row("H282", Danger, &[Ghs02, Ghs04], 2, &[], UN),
    row("H283", Warning, &[Ghs02, Ghs04], 4, &[], UN),
    row("H284", Warning, &[Ghs04], 4, &[], UN),
    row("H290", Warning, &[Ghs05], 6, &[], UN),
];

/// Its rows.
pub(super) static ALL: &[Hazard] = &uncited::<Hazard, { CITED.len() }>(CITED);
