//! Practice in the log, and when a fill was done.

use super::made;
use brimline::site::log::{
    Amount, Checklist, Fill, Lesson, Log, Part, Stamp, Task, Words, changed, current, read, verify, write,
};
use proptest::prelude::*;

const AT: Stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00-05:00", random: [7; 32] };

fn lesson() -> Lesson {
    Lesson {
        session: "0badcafe".into(),
        level: 1,
        day: "2026-03-07".into(),
        shown: vec!["dose".into()],
        ..Lesson::default()
    }
}

#[test]
fn a_lesson_says_something_that_can_be() {
    let mut log = Log::default();
    let who = || Words::default().with(Part::Who, "AB");
    let refused = [
        (Lesson { session: String::new(), ..lesson() }, "session"),
        (Lesson { level: 4, ..lesson() }, "level"),
        (Lesson { day: "2026-02-29".into(), ..lesson() }, "day"),
        (Lesson { until: "2026-03-06".into(), ..lesson() }, "until before its day"),
        (Lesson { until: "soon".into(), ..lesson() }, "until"),
        (Lesson { shown: Vec::new(), ..lesson() }, "nothing"),
        (Lesson { missed: vec!["dose".into()], ..lesson() }, "shown and missed"),
        (Lesson { shown: vec!["=1+1".into()], ..lesson() }, "no code"),
    ];
    for (lesson, what) in refused {
        assert_eq!(log.lesson(&AT, lesson, who()).map_err(|flaw| flaw.code()), Err("log-lesson"), "{what}");
    }
    assert_eq!(log.lesson(&AT, lesson(), Words::default()).map_err(|flaw| flaw.code()), Err("log-nobody"));
    assert!(log.records().is_empty());
    let id = log.lesson(&AT, lesson(), who()).expect("taken");
    assert_eq!(
        log.correct(
            &AT,
            &id,
            &changed(&Fill::default(), &Fill { version: 2, ..Fill::default() }),
            Words::default()
        )
        .map_err(|flaw| flaw.code()),
        Err("log-not-a-fill")
    );
}

/// Removed on request: the chain holds, and nobody is named any more.
#[test]
fn the_initials_of_a_lesson_can_be_erased() {
    let mut log = Log::default();
    let id = log.lesson(&AT, lesson(), Words::default().with(Part::Who, "AB")).expect("taken");
    log.erase(&AT, &id, &[Part::Who], Words::default()).expect("erased");
    assert_eq!(verify(log.records()), Ok(()));
    assert_eq!(&*current(&log).lessons[0].who, "");
    let file = write(&log);
    assert!(!file.contains("AB"));
    assert_eq!(read(file).expect("it opens").log(), log);
}

#[test]
fn a_fill_counts_when_it_was_done() {
    let mut log = Log::default();
    let now = Fill { water: Amount::new(0.04, "40 L"), ..Fill::default() };
    let before = Fill { at: "2026-02-28T06:00-05:00".into(), ..now.clone() };
    log.fill(&AT, now.clone(), Words::default()).expect("taken");
    let late = log.fill(&AT, before.clone(), Words::default()).expect("taken");
    let fills = current(&log).fills;
    assert_eq!((fills[0].id.number, fills[0].when.month()), (2, "2026-02".to_owned()));
    assert_eq!(&*fills[0].written, AT.when);
    // A correction moves it.
    let right = Fill { at: "2026-03-08T06:00-05:00".into(), ..before.clone() };
    log.correct(&AT, &late, &changed(&before, &right), Words::default()).expect("taken");
    let fills = current(&log).fills;
    assert_eq!((fills[1].id.number, &*fills[1].said), (2, "2026-03-08T06:00-05:00"));
    let wrong = Fill { at: "yesterday".into(), ..now };
    assert_eq!(log.fill(&AT, wrong, Words::default()).map_err(|flaw| flaw.code()), Err("log-when"));
}

#[test]
fn a_tick_does_not_make_a_fill_corrected() {
    let mut log = Log::default();
    let was = Fill::default();
    let id = log.fill(&AT, was.clone(), Words::default()).expect("taken");
    let ticked = Fill { checklist: Checklist { drain: Task::Done, ..Checklist::default() }, ..was.clone() };
    log.correct(&AT, &id, &changed(&was, &ticked), Words::default().with(Part::By, "AB")).expect("taken");
    let one = &current(&log).fills[0];
    assert_eq!((one.corrections.len(), one.is_corrected()), (1, false));
    let right = Fill { version: 2, ..ticked.clone() };
    log.correct(&AT, &id, &changed(&ticked, &right), Words::default()).expect("taken");
    assert!(current(&log).fills[0].is_corrected());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_log_with_lessons_comes_back_from_its_file(log in made::several()) {
        let opened = read(write(&log)).expect("it opens");
        prop_assert_eq!(opened.verify(), Ok(()));
        prop_assert_eq!(current(&opened.log()), current(&log));
        prop_assert!(current(&log).fills.is_sorted_by(|one, next| one.by_time(next).is_le()));
    }
}
