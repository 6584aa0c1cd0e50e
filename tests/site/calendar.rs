//! The calendar against Python's `datetime`, which follows the proleptic Gregorian calendar as ISO 8601 does.

use brimline::trade::calendar::{Date, Moment, minutes};
use brimline::units::Duration;
use proptest::prelude::*;
use serde_json::Value;
use std::process::Command;

/// Year, month, day; days since 1970-01-01 and the day of the week, by `date.toordinal` and `date.isoweekday` of
/// Python 3.11.
const PYTHON: [((i64, i64, i64), i64, i64); 12] = [
    ((1, 1, 1), -719_162, 1),
    ((1582, 10, 15), -141_427, 5),
    ((1600, 2, 29), -135_081, 2),
    ((1899, 12, 31), -25_568, 7),
    ((1900, 3, 1), -25_508, 4),
    ((1969, 12, 31), -1, 3),
    ((1970, 1, 1), 0, 4),
    ((2000, 2, 29), 11_016, 2),
    ((2024, 12, 31), 20_088, 2),
    ((2026, 3, 7), 20_519, 6),
    ((2100, 2, 28), 47_540, 7),
    ((9999, 12, 31), 2_932_896, 5),
];

#[test]
fn days_are_those_of_python() {
    for ((year, month, day), days, weekday) in PYTHON {
        let date = Date::new(year, month, day).expect("a day");
        assert_eq!((date.days(), date.weekday()), (days, weekday), "{date}");
        assert_eq!(Date::from_days(days), Some(date));
    }
    assert_eq!(Date::from_days(-719_163), None);
    assert_eq!(Date::from_days(2_932_897), None);
    assert_eq!(Date::from_days(i64::MAX), None);
}

/// Every day of the calendar, one after the other: each is the next one, and none is left out.
#[test]
fn every_day_follows_the_one_before() {
    let mut last = Date::from_days(-719_162).expect("the first day");
    for days in -719_161..=2_932_896 {
        let date = Date::from_days(days).expect("a day");
        assert!(date > last && date.days() == days, "{date}");
        last = date;
    }
    assert_eq!(last.to_string(), "9999-12-31");
}

#[test]
fn what_is_no_day_and_no_time_is_not_read() {
    for text in [
        "",
        "2026",
        "2026-03",
        "2026-13-01",
        "2026-00-10",
        "2026-02-29",
        "1900-02-29",
        "26-03-07",
        "07.03.2026",
        "2026/03/07",
        "2026-03-07-1",
        "2026-3x-07",
        "-2026-03-07",
        "20260307",
        "2026-03-007",
        "２０２６-03-07",
    ] {
        assert_eq!(Date::read(text), None, "{text}");
    }
    assert_eq!(Date::read(" 2026-3-7 "), Date::new(2026, 3, 7));
    for text in ["", "7", "24:00", "12:60", "1:2", "12:5", "12:345", "noon", "-1:00", "12:00:00", "6:30 pm"] {
        assert_eq!(minutes(text), None, "{text}");
    }
    assert_eq!((minutes("0:00"), minutes(" 7:05 "), minutes("23:59")), (Some(0), Some(425), Some(1_439)));
}

#[test]
fn time_that_passes_is_never_cut_short() {
    let start = Moment { date: Date::new(2023, 12, 31).expect("a day"), minute: 23 * 60 + 59 };
    let after = |seconds| start.after(Duration::new(seconds)).map(|moment| moment.to_string());
    assert_eq!(after(0.0).as_deref(), Some("2023-12-31 23:59"));
    assert_eq!(after(60.0).as_deref(), Some("2024-01-01 00:00"));
    assert_eq!(after(1.0).as_deref(), Some("2024-01-01 00:00"), "a started minute counts");
    assert_eq!(after(366.0 * 86_400.0).as_deref(), Some("2024-12-31 23:59"), "2024 has a leap day");
    for never in [f64::INFINITY, f64::NAN, -60.0, 1e300] {
        assert_eq!(after(never), None, "{never}");
    }
    let last = Moment { date: Date::new(9999, 12, 31).expect("a day"), minute: 1_439 };
    assert_eq!(last.after(Duration::new(60.0)), None);
}

proptest! {
    #[test]
    fn what_is_written_reads_back(days in -719_162..2_932_897_i64, minute in 0..1_440_i64) {
        let moment = Moment { date: Date::from_days(days).expect("a day"), minute };
        let text = moment.to_string();
        let (date, time) = text.split_once(' ').expect("a day and a time");
        prop_assert_eq!(Date::read(date), Some(moment.date));
        prop_assert_eq!(minutes(time), Some(minute));
        let week_later = Date::from_days(days.min(2_932_889) + 7).expect("a day");
        prop_assert_eq!(Date::from_days(days.min(2_932_889)).expect("a day").weekday(), week_later.weekday());
    }

    #[test]
    fn any_text_is_read_or_refused(text in ".{0,12}", near in "[0-9:-]{0,11}") {
        for text in [text, near] {
            if let Some(date) = Date::read(&text) {
                prop_assert_eq!(Date::from_days(date.days()), Some(date));
            }
            prop_assert!(minutes(&text).is_none_or(|minutes| (0..1_440).contains(&minutes)));
        }
    }

    /// Waiting twice is waiting once for both, in whole minutes.
    #[test]
    fn waits_add_up(days in 0..40_000_i64, minute in 0..1_440_i64, one in 0..100_000_u32, other in 0..100_000_u32) {
        let start = Moment { date: Date::from_days(days).expect("a day"), minute };
        let wait = |minutes: u32| Duration::new(f64::from(minutes) * 60.0);
        let twice = start.after(wait(one)).and_then(|then| then.after(wait(other)));
        prop_assert_eq!(twice, start.after(wait(one + other)));
    }
}

#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn python_counts_the_same_days_and_minutes() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/calendar_days.py");
    let run = Command::new(python).arg(script).output().expect("Python starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    let rows = theirs.as_array().expect("a list");
    assert!(rows.len() >= 2_000);
    for row in rows {
        let text = |key: &str| row[key].as_str().expect("a text");
        let date = Date::read(text("date")).expect("a day");
        assert_eq!(Some(date.days()), row["days"].as_i64(), "{date}");
        assert_eq!(Some(date.weekday()), row["weekday"].as_i64(), "{date}");
        let start = Moment { date, minute: minutes(text("time")).expect("a time") };
        let wait = Duration::new(row["wait"].as_f64().expect("minutes") * 60.0);
        assert_eq!(start.after(wait).expect("a time").to_string(), text("then"));
    }
}
