//! Health hazards, H300 to H373, and their usual combinations.

use super::hazard::{
    Hazard,
    Route::{Breathe, Exposed, Eye, Skin, Swallow},
    row,
};
use super::pictogram::{
    Pictogram::{Ghs05, Ghs06, Ghs07, Ghs08},
    SignalWord::{Danger, None, Warning},
};
use crate::source::{Source, uncited};

/// Rows not yet checked against the standard's own tables.
const UN: Source =
    Source::unverified("UN GHS, ST/SG/AC.10/30, Annex 3, Table A3.1.2 and Annex 1; from memory");
/// Acute toxicity, category 4, swallowed: signal word and statement read there.
const SWALLOWED: Source = Source::published("Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.1.3");
/// Eye damage and irritation: signal word and statement read there.
const EYE: Source = Source::published("Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.3.5");

/// The table, in code order.
#[rustfmt::skip]
pub(super) const CITED: &[(Hazard, Source)] = &[
    row("H300", Danger, &[Ghs06], 1, &[Swallow], UN),
    row("H301", Danger, &[Ghs06], 2, &[Swallow], UN),
    row("H302", Warning, &[Ghs07], 4, &[Swallow], SWALLOWED),
    row("H303", Warning, &[], 6, &[Swallow], UN),
    row("H304", Danger, &[Ghs08], 2, &[Swallow], UN),
    row("H305", Warning, &[Ghs08], 4, &[Swallow], UN),
    row("H310", Danger, &[Ghs06], 1, &[Skin], UN),
    row("H311", Danger, &[Ghs06], 2, &[Skin], UN),
    row("H312", Warning, &[Ghs07], 4, &[Skin], UN),
    row("H313", Warning, &[], 6, &[Skin], UN),
    row("H314", Danger, &[Ghs05], 2, &[Eye, Skin, Breathe, Swallow], UN),
    row("H315", Warning, &[Ghs07], 5, &[Skin], UN),
    row("H316", Warning, &[], 6, &[Skin], UN),
    row("H317", Warning, &[Ghs07], 5, &[Skin], UN),
    row("H318", Danger, &[Ghs05], 3, &[Eye], EYE),
    row("H319", Warning, &[Ghs07], 5, &[Eye], EYE),
    row("H320", Warning, &[], 6, &[Eye], UN),
    row("H330", Danger, &[Ghs06], 1, &[Breathe], UN),
    row("H331", Danger, &[Ghs06], 2, &[Breathe], UN),
    row("H332", Warning, &[Ghs07], 4, &[Breathe], UN),
    row("H333", Warning, &[], 6, &[Breathe], UN),
    row("H334", Danger, &[Ghs08], 3, &[Breathe], UN),
    row("H335", Warning, &[Ghs07], 5, &[Breathe], UN),
    row("H336", Warning, &[Ghs07], 5, &[Breathe], UN),
    row("H340", Danger, &[Ghs08], 2, &[Exposed], UN),
    row("H341", Warning, &[Ghs08], 4, &[Exposed], UN),
    row("H350", Danger, &[Ghs08], 2, &[Exposed], UN),
    row("H351", Warning, &[Ghs08], 4, &[Exposed], UN),
    row("H360", Danger, &[Ghs08], 2, &[Exposed], UN),
    row("H361", Warning, &[Ghs08], 4, &[Exposed], UN),
    row("H362", None, &[], 6, &[Exposed], UN),
    row("H370", Danger, &[Ghs08], 2, &[Exposed], UN),
    row("H371", Warning, &[Ghs08], 4, &[Exposed], UN),
    row("H372", Danger, &[Ghs08], 3, &[Exposed], UN),
    row("H373", Warning, &[Ghs08], 4, &[Exposed], UN),
    row("H300+H310", Danger, &[Ghs06], 1, &[Skin, Swallow], UN),
    row("H300+H330", Danger, &[Ghs06], 1, &[Breathe, Swallow], UN),
    row("H310+H330", Danger, &[Ghs06], 1, &[Skin, Breathe], UN),
    row("H300+H310+H330", Danger, &[Ghs06], 1, &[Skin, Breathe, Swallow], UN),
    row("H301+H311", Danger, &[Ghs06], 2, &[Skin, Swallow], UN),
    row("H301+H331", Danger, &[Ghs06], 2, &[Breathe, Swallow], UN),
    row("H311+H331", Danger, &[Ghs06], 2, &[Skin, Breathe], UN),
    row("H301+H311+H331", Danger, &[Ghs06], 2, &[Skin, Breathe, Swallow], UN),
    row("H302+H312", Warning, &[Ghs07], 4, &[Skin, Swallow], UN),
    row("H302+H332", Warning, &[Ghs07], 4, &[Breathe, Swallow], UN),
    row("H312+H332", Warning, &[Ghs07], 4, &[Skin, Breathe], UN),
    row("H302+H312+H332", Warning, &[Ghs07], 4, &[Skin, Breathe, Swallow], UN),
    row("H303+H313", Warning, &[], 6, &[Skin, Swallow], UN),
    row("H303+H333", Warning, &[], 6, &[Breathe, Swallow], UN),
    row("H313+H333", Warning, &[], 6, &[Skin, Breathe], UN),
    row("H303+H313+H333", Warning, &[], 6, &[Skin, Breathe, Swallow], UN),
    row("H315+H320", Warning, &[Ghs07], 5, &[Eye, Skin], UN),
];

/// Its rows.
pub(super) static ALL: &[Hazard] = &uncited::<Hazard, { CITED.len() }>(CITED);
