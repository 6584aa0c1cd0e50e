//! Environmental hazards, H400 to H420.

use super::hazard::{Hazard, row};
use super::pictogram::{
    Pictogram::{Ghs07, Ghs09},
    SignalWord::{None, Warning},
};
use crate::source::{Source, uncited};

/// Rows not yet checked against the standard's own tables.
const UN: Source =
    Source::unverified("UN GHS, ST/SG/AC.10/30, Annex 3, Table A3.1.3 and Annex 1; from memory");
/// Signal words and statements for the aquatic environment read there.
const AQUATIC: Source = Source::published(
    "INRS, table of CLP label elements for the aquatic environment (after CLP Annex I, part 4)",
);

/// The table, in code order.
#[rustfmt::skip]
pub(super) const CITED: &[(Hazard, Source)] = &[
    row("H400", Warning, &[Ghs09], 7, &[], AQUATIC),
    row("H401", None, &[], 8, &[], UN),
    row("H402", None, &[], 8, &[], UN),
    row("H410", Warning, &[Ghs09], 7, &[], AQUATIC),
    row("H411", None, &[Ghs09], 7, &[], AQUATIC),
    row("H412", None, &[], 8, &[], AQUATIC),
    row("H413", None, &[], 8, &[], UN),
    row("H420", Warning, &[Ghs07], 7, &[], UN),
];

/// Its rows.
pub(super) static ALL: &[Hazard] = &uncited::<Hazard, { CITED.len() }>(CITED);
