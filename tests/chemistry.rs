//! Chemistry against its published sources, and the laws no table row may break.

#![cfg(not(target_arch = "wasm32"))]

use brimline::chemistry::advice::advise;
use brimline::chemistry::family::Family;
use brimline::chemistry::floor::{FloorVerdict, PhRange, Surface, verdict};
use brimline::chemistry::ghs::{Hazard, Knowledge, SignalWord, codes, elements, hazard, precaution};
use brimline::chemistry::pairs::{self, clashes};
use proptest::prelude::*;

#[path = "chemistry/containers.rs"]
mod containers;
#[path = "chemistry/floor_fits.rs"]
mod floor_fits;
#[path = "chemistry/floors.rs"]
mod floors;
#[path = "chemistry/labels.rs"]
mod labels;
#[path = "chemistry/mixing.rs"]
mod mixing;
#[path = "chemistry/mixture_gaps.rs"]
mod mixture_gaps;
#[path = "chemistry/mixture_laws.rs"]
mod mixture_laws;
#[path = "chemistry/mixtures.rs"]
mod mixtures;
#[path = "chemistry/neat_ph.rs"]
mod neat_ph;
#[path = "chemistry/numbers.rs"]
mod numbers;
#[path = "chemistry/parts_decide.rs"]
mod parts_decide;
#[path = "chemistry/site_wide.rs"]
mod site_wide;

#[test]
fn tables_hold_together() {
    let mut seen = Vec::new();
    for row in hazard::all() {
        assert!(!seen.contains(&row.code), "{} stands twice", row.code);
        seen.push(row.code);
        assert!(row.parts().all(|part| hazard::find(part).is_some()), "{}", row.code);
        assert_eq!(row.signal == SignalWord::Danger, row.rank <= 3, "{}: rank and word disagree", row.code);
    }
    for row in precaution::ALL {
        assert!(!seen.contains(&row.code), "{} stands twice", row.code);
        seen.push(row.code);
    }
    let everything: Vec<&'static Hazard> = hazard::all().collect();
    for measure in advise(&everything, Knowledge::Partial).measures {
        assert!(precaution::find(measure.rests_on).is_some(), "{} rests on nothing", measure.key);
    }
    for pair in pairs::ALL {
        assert_ne!(pair.a, pair.b);
    }
    for surface in Surface::ALL {
        assert!(surface.window().is_none_or(|window| window.low < window.high));
    }
    for key in brimline::chemistry::word_keys() {
        assert!(
            key.chars().all(|one| one.is_ascii_lowercase() || one.is_ascii_digit() || one == '-'),
            "{key}"
        );
    }
}

fn any_hazards() -> impl Strategy<Value = Vec<&'static Hazard>> {
    let rows: Vec<&'static Hazard> = hazard::all().collect();
    proptest::collection::vec(proptest::sample::select(rows), 0..8)
}

fn any_families() -> impl Strategy<Value = Vec<Family>> {
    proptest::collection::vec(proptest::sample::select(Family::ALL.to_vec()), 0..4)
}

proptest! {
    #[test]
    fn reading_any_text_ends(text in ".*") {
        codes::read(&text);
    }

    #[test]
    fn reading_near_codes_ends(text in "[HPhpEUНР0-9+/ \\[\\](),;\n]{0,40}") {
        codes::read(&text);
    }

    /// What is shown reads back as itself, whatever stands between.
    #[test]
    fn codes_read_back(hazards in any_hazards(), between in "[ ,;\n]{1,3}") {
        let text = hazards.iter().map(|one| one.code).collect::<Vec<_>>().join(&between);
        let read = codes::read(&text);
        prop_assert!(hazards.iter().all(|one| read.hazards.contains(one)));
        prop_assert_eq!(read.unknown.len(), 0);
    }

    /// Missing information only ever adds: to the advice, and to the signal word.
    #[test]
    fn unknown_never_reassures(hazards in any_hazards()) {
        let full = advise(&hazards, Knowledge::Full);
        let partial = advise(&hazards, Knowledge::Partial);
        let nothing = advise(&[], Knowledge::Partial);
        prop_assert!(full.ppe().chain(nothing.ppe()).all(|one| partial.ppe().any(|other| other == one)));
        for measure in full.measures.iter().chain(&nothing.measures) {
            let kept = partial.measures.iter().any(|other| other.key == measure.key);
            let replaced = !measure.urgent && partial.of(measure.kind).any(|other| other.urgent);
            prop_assert!(kept || replaced, "{} is lost", measure.key);
        }
        prop_assert!(elements(&hazards, Knowledge::Partial).signal >= SignalWord::Unknown);
    }

    /// The order of the codes does not matter, the most serious stands first.
    #[test]
    fn elements_do_not_depend_on_order(hazards in any_hazards()) {
        let forth = elements(&hazards, Knowledge::Full);
        let back: Vec<_> = hazards.iter().rev().copied().collect();
        prop_assert_eq!(&forth, &elements(&back, Knowledge::Full));
        prop_assert!(forth.statements.windows(2).all(|two| two[0].rank <= two[1].rank));
    }

    /// Clashing is mutual, and one more family never clears a clash.
    #[test]
    fn clashing_is_mutual(a in any_families(), b in any_families(), more in any_families()) {
        prop_assert_eq!(clashes(&a, &b), clashes(&b, &a));
        let wider: Vec<_> = a.iter().chain(&more).copied().collect();
        prop_assert!(clashes(&a, &b).iter().all(|pair| clashes(&wider, &b).contains(pair)));
    }

    /// A floor is cleared only with a family, a pH, and no harm listed.
    #[test]
    fn floors_are_cleared_only_when_known(
        surface in proptest::sample::select(Surface::ALL.to_vec()),
        families in any_families(),
        low in 0.0..14.0_f64,
        width in 0.0..3.0_f64,
        known in any::<bool>(),
    ) {
        let range = known.then_some(PhRange { low, high: low + width });
        if verdict(surface, &families, range) == FloorVerdict::Fits {
            prop_assert!(known && !families.is_empty());
            prop_assert!(surface.harms().all(|harm| !families.contains(&harm.family)));
        }
    }
}
