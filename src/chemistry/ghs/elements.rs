//! Which pictograms, signal word and statements stand on one label together.

use super::Knowledge;
use super::hazard::{Hazard, Route};
use super::pictogram::{Pictogram, SignalWord};
use crate::source::Source;

/// The label elements of a product, after the rules of precedence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabelElements {
    /// One signal word.
    pub signal: SignalWord,
    /// Pictograms in code order, each once.
    pub pictograms: Vec<Pictogram>,
    /// Hazard statements, the most serious first; those another one covers are left out.
    pub statements: Vec<&'static Hazard>,
}

/// Which pictograms give way to which.
pub const PICTOGRAM_RULE: Source = Source::published(
    "Regulation (EC) No 1272/2008 (CLP), Article 26(1)(b) to (d), after UN GHS 1.4.10.5.3.1",
);
/// "Danger" stands alone.
pub const SIGNAL_RULE: Source = Source::unverified("UN GHS, ST/SG/AC.10/30, 1.4.10.5.3.2; from memory");
/// Statements that say the same in weaker words are left out; for H318 also CLP Table 3.3.5, note (a).
pub const STATEMENT_RULE: Source =
    Source::unverified("UN GHS, ST/SG/AC.10/30, 1.4.10.5.3.3; seen second-hand");

/// A statement that stands, and the one it makes needless (UN GHS 1.4.10.5.3.3).
const COVERS: &[(&str, &str)] = &[("H314", "H318"), ("H410", "H400"), ("H411", "H401"), ("H412", "H402")];

/// The label elements for these hazard statements.
///
/// With partial knowledge the signal word is never less than `Unknown`.
///
/// ```
/// use brimline::chemistry::ghs::{Knowledge, Pictogram, SignalWord, codes, elements};
/// let read = codes::read("H315, H318, H302");
/// let label = elements(&read.hazards, Knowledge::Full);
/// assert_eq!(label.signal, SignalWord::Danger);
/// assert_eq!(label.pictograms, [Pictogram::Ghs05, Pictogram::Ghs07]); // GHS07 for H302, not for H315
/// ```
pub fn elements(hazards: &[&'static Hazard], knowledge: Knowledge) -> LabelElements {
    // Put in place one by one: a handful, for which a general sort would be two kilobytes of the page.
    let mut statements: Vec<&'static Hazard> = Vec::new();
    for hazard in hazards.iter().copied().filter(|hazard| !is_covered(hazard, hazards)) {
        let place = |one: &&Hazard| (one.rank, one.code).cmp(&(hazard.rank, hazard.code));
        if let Err(index) = statements.binary_search_by(place) {
            statements.insert(index, hazard);
        }
    }

    let mut signal = hazards.iter().map(|hazard| hazard.signal).max().unwrap_or(SignalWord::None);
    if knowledge == Knowledge::Partial {
        signal = signal.max(SignalWord::Unknown);
    }

    let called_for: Vec<_> = hazards.iter().flat_map(|hazard| shown(hazard, hazards)).collect();
    let pictograms = Pictogram::ALL.into_iter().filter(|one| called_for.contains(one)).collect();
    LabelElements { signal, pictograms, statements }
}

fn is_covered(hazard: &Hazard, hazards: &[&'static Hazard]) -> bool {
    COVERS
        .iter()
        .any(|(stands, goes)| hazard.code == *goes && hazards.iter().any(|other| other.code == *stands))
}

/// The pictograms of one hazard that still stand beside the others.
fn shown(hazard: &'static Hazard, hazards: &[&'static Hazard]) -> impl Iterator<Item = Pictogram> {
    let any = |wanted: &dyn Fn(&Hazard) -> bool| hazards.iter().any(|other| wanted(other));
    let skull = any(&|other| other.pictograms.contains(&Pictogram::Ghs06));
    // The corrosion symbol for metals alone (H290) says nothing about skin or eyes.
    let corrosive = any(&|other| {
        other.pictograms.contains(&Pictogram::Ghs05)
            && other.routes.iter().any(|route| matches!(route, Route::Skin | Route::Eye))
    });
    let asthma = any(&|other| other.code == "H334");
    let irritates = matches!(hazard.code, "H315" | "H319" | "H315+H320");
    let mark_goes = skull || (irritates && (corrosive || asthma)) || (hazard.code == "H317" && asthma);
    hazard.pictograms.iter().copied().filter(move |one| *one != Pictogram::Ghs07 || !mark_goes)
}
