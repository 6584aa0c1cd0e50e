//! The tasks at the end of a shift: which are asked, ticked late, and left undone.

use super::fills::{codes, dose, log};
use brimline::form::log::asked::undone;
use brimline::form::log::{Shift, end_of_shift, late, left_undone};
use brimline::site::log::{Checklist, Fill, Named, Task, When};

#[test]
fn the_end_of_the_shift() {
    let ticked = |squeegee: Task| Fill {
        checklist: Checklist { drain: Task::Done, squeegee, ..Checklist::default() },
        ..dose("p", 1.0, None)
    };
    let whole = Checklist {
        drain: Task::Done,
        rinse: Task::Done,
        filters: Task::Done,
        brush: Task::Done,
        squeegee: Task::Done,
    };
    let other = Fill { machine: Named::new("m2", "Second"), checklist: whole, ..dose("p", 1.0, None) };
    let fills = log(&[
        ("2026-03-05T08:00:00Z", ticked(Task::NotDone), ""),
        ("2026-03-06T08:00:00Z", dose("p", 1.0, None), ""),
        ("2026-03-06T18:00:00Z", ticked(Task::NotDone), "AB"),
        ("2026-03-06T19:00:00Z", other, ""),
        ("2026-03-07T08:00:00Z", dose("p", 1.0, None), ""),
    ]);
    let at = |when: &str| When::read(when).expect("a time");
    let places = |shifts: Vec<Shift>| -> Vec<(usize, usize)> {
        let place =
            |shift: &Shift| fills.iter().position(|one| one.id == shift.last.id).expect("of the view");
        shifts.iter().map(|shift| (place(shift), shift.fills)).collect()
    };
    let morning = at("2026-03-07T09:00:00Z");
    assert_eq!(places(end_of_shift(&fills, morning)), [(4, 1), (3, 1)]);
    let left = left_undone(&fills, morning);
    assert_eq!(left[0].undone(), ["rinse", "filters", "brush", "squeegee"]);
    assert!(!left[0].is_unticked());
    assert_eq!(places(left), [(2, 1)], "the last shift of an earlier day; the other machine is done");
    assert_eq!(places(late(&fills, morning)), [(2, 1)], "below, since the machine is filled again");
    let evening = at("2026-03-06T20:00:00Z");
    assert_eq!(places(end_of_shift(&fills[..4], evening)), [(2, 1), (3, 1)]);
    assert_eq!(
        places(left_undone(&fills[..4], evening)),
        [(1, 1)],
        "the morning's shift is over; the evening's is not"
    );
    let found = undone(&fills);
    assert_eq!((found.all, found.told.fills), (2, 5));
    assert_eq!(
        found.shifts[0].tasks,
        ["rinse", "filters", "brush", "squeegee"],
        "what nobody ticked off is open"
    );
    assert_eq!((found.tasks[4].not_done, found.tasks[4].done), (2, 1));
    let days = found.unticked.iter().map(|one| (&*one.when, &*one.machine, &*one.who)).collect::<Vec<_>>();
    assert_eq!(
        days,
        [("2026-03-07T08:00:00Z", "Scrubber", ""), ("2026-03-06T08:00:00Z", "Scrubber", "")],
        "the newest first"
    );
    assert_eq!((found.all_unticked, found.unticked[0].tasks.len()), (2, 0));
    let never = undone(&fills[4..]);
    assert_eq!(codes(&never.told.answer.remarks), ["remark-log-undone-unasked"]);
    assert_eq!((never.all_unticked, never.all), (1, 0));
}

#[test]
fn a_night_shift_is_ticked_off_after_midnight_and_late() {
    let night = |when| log(&[(when, dose("p", 1.0, None), "AB")]);
    let at = |when: &str| When::read(when).expect("a time");
    // Half past ten in the evening, five hours behind UTC.
    let fills = night("2026-03-06T22:30:00-05:00");
    let numbers = |now: &str| {
        let now = at(now);
        (end_of_shift(&fills, now).len(), left_undone(&fills, now).len(), late(&fills, now).len())
    };
    assert_eq!(numbers("2026-03-07T02:00:00-05:00"), (1, 0, 0), "the shift goes on");
    assert_eq!(numbers("2026-03-07T07:00:00-05:00"), (1, 1, 0), "nobody ticked it off");
    assert_eq!(numbers("2026-03-07T22:30:00-05:00"), (1, 1, 0), "24 hours");
    assert_eq!(numbers("2026-03-07T22:30:01-05:00"), (0, 1, 1), "late");
    assert_eq!(numbers("2026-03-13T22:30:00-05:00"), (0, 1, 1), "7 days");
    assert_eq!(numbers("2026-03-13T22:30:01-05:00"), (0, 0, 0));
    assert_eq!(numbers("2026-03-05T22:29:59-05:00"), (0, 0, 0), "a clock that was ahead by more than a day");
    assert!(left_undone(&fills, at("2026-03-07T07:00:00-05:00"))[0].is_unticked());
    let whole = ["drain", "rinse", "filters", "brush", "squeegee"]
        .iter()
        .fold(Checklist::default(), |list, task| list.with(task, Task::Done));
    let over = log(&[
        ("2026-03-06T22:30:00Z", dose("p", 1.0, None), ""),
        ("2026-03-07T01:30:00Z", Fill { checklist: whole, ..dose("p", 1.0, None) }, ""),
    ]);
    let noon = at("2026-03-08T12:00:00Z");
    assert!(left_undone(&over, noon).is_empty(), "the night's last fill says it for the night");
}
