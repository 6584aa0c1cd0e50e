//! Personal words can go, and the chain stays.

use super::made::{several, whole};
use brimline::site::log::{
    Fill, Flaw, Id, Log, Part, Stamp, State, Text, Why, Words, current, read, verify, write,
};
use proptest::prelude::*;

const STAMP: Stamp = Stamp { device: "station-9", when: "2026-05-01T08:00:00-04:00", random: [9; 32] };

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    /// After the initials were erased wherever they stand, no file has them, and everything else is as it was.
    #[test]
    fn erased_initials_are_nowhere(mut log in several()) {
        let before = log.clone();
        let stamp = Stamp { device: "d1", random: [77; 32], ..STAMP };
        for (id, parts) in log.naming("zz") {
            log.erase(&stamp, &id, &parts, Words::default()).expect("it is there");
        }
        prop_assert_eq!(log.naming("ZZ"), []);
        prop_assert!(!write(&log).contains("ZZ"));
        prop_assert_eq!(verify(log.records()), Ok(()));
        for was in before.records() {
            let is = log.record(&was.id()).expect("it stays");
            prop_assert_eq!((&is.own, &is.fill), (&was.own, &was.fill));
            // Chance may have drawn these initials there, too.
            if was.words.who.text.trim().to_lowercase() != "zz" {
                prop_assert_eq!(&is.words.who, &was.words.who);
            }
        }
        // A copy that still has them loses them with the merge, and says so before anybody keeps it.
        let merged = before.merge(&log);
        prop_assert_eq!(&merged.log, &log);
        prop_assert_eq!(merged.erased.len(), before.naming("zz").iter().map(|(_, parts)| parts.len()).sum::<usize>());
    }
}

#[test]
fn a_text_that_is_blanked_without_a_record_is_found() {
    let log = whole();
    let mut records = log.records().to_vec();
    records[0].words.notes = Text::default();
    let found = verify(&records).expect_err("nobody asked for it");
    assert_eq!((found.place, found.id, found.why), (0, records[0].id(), Why::WordsGone(Part::Notes)));
}

#[test]
fn a_text_that_is_put_in_is_found() {
    let mut records = whole().records().to_vec();
    records[0].words.why.text = "Because".to_owned();
    assert_eq!(verify(&records).expect_err("it has no seal").why, Why::WordsAltered(Part::Why));
}

#[test]
fn each_text_has_a_salt_of_its_own() {
    let log = whole();
    let record = &log.records()[0];
    assert_ne!(record.words.by.salt, record.words.who.salt);
    assert_eq!(record.words.state(Part::By, &record.seals), State::Whole);
    assert_eq!(log.records()[1].words.state(Part::Who, &log.records()[1].seals), State::Blanked);
    assert_eq!(record.words.state(Part::Why, &record.seals), State::None);
    // The same text under the same random bytes in another part has another seal.
    let mut twice = Log::default();
    twice
        .fill(&STAMP, Fill::default(), Words::default().with(Part::By, "AB").with(Part::Who, "AB"))
        .expect("taken");
    assert_ne!(twice.records()[0].seals.by, twice.records()[0].seals.who);
}

/// Corrected initials that were erased do not bring the first ones back.
#[test]
fn erased_corrections_leave_nothing() {
    let mut log = whole();
    assert_eq!(current(&log).fills[0].who.to_string(), "EF");
    log.erase(&STAMP, &Id::new("station-1", 3), &[Part::Who], Words::default()).expect("it is there");
    assert_eq!(current(&log).fills[0].who.to_string(), "");
    assert_eq!(current(&log).fills[0].fill, current(&whole()).fills[0].fill);
}

#[test]
fn what_is_not_there_cannot_be_erased() {
    let mut log = whole();
    let (nobody, why) = (Id::new("station-7", 1), [Part::Why]);
    assert_eq!(log.erase(&STAMP, &nobody, &why, Words::default()), Err(Flaw::Unknown(nobody)));
    let first = log.records()[0].id();
    assert_eq!(log.erase(&STAMP, &first, &why, Words::default()), Err(Flaw::NothingToErase(first)));
    assert_eq!(log, whole());
}

#[test]
fn an_erased_log_comes_back_from_its_file() {
    let log = whole();
    let opened = read(write(&log)).expect("it opens");
    assert_eq!((opened.verify(), opened.log()), (Ok(()), log));
}
