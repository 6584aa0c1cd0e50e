//! The laws of the merge, and records of which there are two.

use super::made::{acts, done, one, several, whole};
use brimline::site::log::{Amount, Fill, Log, Stamp, Words, changed, current, read, verify, write};
use proptest::prelude::*;

/// Two devices that began with the same log, wrote on and forgot a little: each also has a record under a number
/// that another one has.
fn grown() -> impl Strategy<Value = [Log; 3]> {
    (several(), acts(4), acts(4), acts(4)).prop_map(|(base, a, b, c)| {
        [("d1", a), ("d1", b), ("d3", c)].map(|(device, acts)| {
            let mut log = base.clone();
            done(&mut log, device, &acts);
            log
        })
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn merging_is_the_same_whoever_does_it(logs in grown()) {
        let [a, b, c] = &logs;
        let ab = a.merge(b);
        prop_assert_eq!(&ab.log, &b.merge(a).log);
        prop_assert_eq!(&ab.conflicts, &b.merge(a).conflicts);
        prop_assert_eq!(ab.log.merge(c).log, a.merge(&b.merge(c).log).log);
    }

    #[test]
    fn merging_again_changes_nothing(logs in grown()) {
        let [a, b, _] = &logs;
        prop_assert_eq!(&a.merge(a).log, a);
        let once = a.merge(b).log;
        let again = once.merge(b);
        prop_assert_eq!((&again.log, again.added), (&once, 0));
        prop_assert_eq!(once.merge(&Log::default()).log, once);
    }

    /// Nothing that anybody wrote is lost, but what somebody asked to be erased.
    #[test]
    fn every_record_is_there(logs in grown()) {
        let [a, b, _] = &logs;
        let merged = a.merge(b).log;
        for was in a.records().iter().chain(b.records()) {
            let is = merged.records().iter().find(|is| is.own == was.own && is.id() == was.id());
            prop_assert_eq!(is.map(|is| (&is.fill, &is.changes)), Some((&was.fill, &was.changes)));
        }
    }

    #[test]
    fn two_that_differ_are_shown(logs in grown()) {
        let [a, b, _] = &logs;
        let merged = a.merge(b);
        let differ = a.records().iter().filter(|ours| {
            b.record(&ours.id()).is_some_and(|theirs| theirs.own != ours.own)
        });
        prop_assert_eq!(merged.conflicts.len(), differ.count());
        prop_assert!(merged.conflicts.iter().all(|conflict| conflict.records.len() == 2));
        prop_assert_eq!(verify(merged.log.records()).is_err(), !merged.conflicts.is_empty());
    }

    #[test]
    fn devices_apart_make_chains_that_hold(a in one("d1"), b in one("d2")) {
        let merged = a.merge(&b);
        prop_assert_eq!(&merged.conflicts, &[]);
        prop_assert_eq!(verify(merged.log.records()), Ok(()));
        prop_assert_eq!(merged.log.records().len(), a.records().len() + b.records().len());
    }

    #[test]
    fn files_come_back_and_say_the_same_again(logs in grown()) {
        for log in &logs {
            let file = write(log);
            let opened = read(&file).expect("it opens");
            prop_assert_eq!(&opened.flaws, &[]);
            prop_assert_eq!(&opened.heads, &log.heads());
            prop_assert_eq!(&opened.log(), log);
            prop_assert_eq!(write(&opened.log()), file);
        }
        // A merged log with two records under one number, too.
        let merged = logs[0].merge(&logs[1]).log;
        prop_assert_eq!(read(write(&merged)).expect("it opens").log(), merged);
    }

    /// The view is the same in whatever order the logs came.
    #[test]
    fn the_view_does_not_depend_on_who_merged(logs in grown()) {
        let [a, b, c] = &logs;
        prop_assert_eq!(current(&a.merge(b).log.merge(c).log), current(&c.merge(b).log.merge(a).log));
    }
}

/// A record whose hash is wrong stands behind the one whose hash is right, and does not count.
#[test]
fn an_altered_twin_does_not_count() {
    let log = whole();
    let mut twin = log.records()[1].clone();
    twin.fill.water = Amount::new(0.001, "1 L");
    let merged = log.merge(&Log::of([twin.clone()]));
    assert_eq!(merged.conflicts[0].records[1].fill, twin.fill);
    let view = current(&merged.log);
    assert_eq!(view.fills[1].fill, log.records()[1].fill);
    assert!(view.fills[1].contested && !view.fills[0].contested);
}

/// Corrections of different fields by two devices both count; of the same field the later one.
#[test]
fn corrections_of_two_devices_add_up() {
    let mut ours = Log::default();
    let stamp = |device, when| Stamp { device, when, random: [3; 32] };
    let was = Fill::default();
    let id = ours.fill(&stamp("d1", "2026-03-01T08:00:00Z"), was.clone(), Words::default()).expect("taken");
    let mut theirs = ours.clone();
    let correct = |log: &mut Log, device, when, is: Fill| {
        log.correct(&stamp(device, when), &id, &changed(&was, &is), Words::default()).expect("taken");
    };
    let water = |text: &str| Amount::new(0.04, text);
    correct(&mut ours, "d1", "2026-03-01T10:00:00+01:00", Fill { water: water("early"), ..was.clone() });
    correct(
        &mut theirs,
        "d2",
        "2026-03-01T09:30:00Z",
        Fill { water: water("late"), struck: true, ..was.clone() },
    );
    correct(&mut ours, "d1", "2026-03-01T08:30:00Z", Fill { version: 7, ..was.clone() });
    let view = current(&ours.merge(&theirs).log);
    let fill = &view.fills[0];
    assert_eq!((&*fill.fill.water.text, fill.fill.struck, fill.fill.version), ("late", true, 7));
    let order: Vec<String> = fill.corrections.iter().map(ToString::to_string).collect();
    // The second of d1 has an earlier time than the first, which its chain overrules.
    assert_eq!(order, ["d1/2", "d1/3", "d2/1"]);
    // Without the fill they are shown, not dropped.
    let orphans = Log::of(theirs.records()[1..].iter().cloned());
    assert_eq!(current(&orphans).astray.len(), 1);
}
