//! A file of each version that there ever was still opens, holds, and says what it said.

use super::made::whole;
use brimline::site::log::{Part, SCHEMA, current, read, write};

const SCHEMA_1: &str = include_str!("log-schema-1.ndjson");
const SCHEMA_2: &str = include_str!("log-schema-2.ndjson");

#[test]
fn schema_1_opens_and_holds() {
    let opened = read(SCHEMA_1).expect("it opens");
    assert_eq!((opened.schema, opened.flaws.len(), opened.verify()), (1, 0, Ok(())));
    let view = current(&opened.log());
    assert_eq!(view.fills.len(), 2);
    let fill = &view.fills[0];
    assert_eq!(fill.fill.measured.si.value(), Some(0.000_58));
    assert_eq!((&*fill.who, fill.fill.struck, fill.fill.version), ("EF", false, 2));
    assert_eq!(fill.corrections[0].to_string(), "station-1/3");
    assert_eq!(opened.records[3].erased, [Part::Who, Part::Notes]);
    assert_eq!(view.fills[1].who.to_string(), "");
}

/// What was written under an earlier version stays what it was, line by line.
#[test]
fn a_record_of_schema_1_is_written_as_it_stood() {
    let written = write(&read(SCHEMA_1).expect("it opens").log());
    assert!(written.lines().skip(1).eq(SCHEMA_1.lines().skip(1)));
}

#[test]
fn schema_2_opens_and_holds() {
    let opened = read(SCHEMA_2).expect("it opens");
    assert_eq!((opened.schema, opened.flaws.len(), opened.verify()), (2, 0, Ok(())));
    let view = current(&opened.log());
    let fill = &view.fills[0];
    assert_eq!((&*fill.said, &*fill.written), ("2026-03-06T06:10:00-05:00", "2026-03-06T18:30:00-05:00"));
    assert_eq!((&*fill.station, fill.is_corrected()), ("Fill station, library", true));
    let lesson = &view.lessons[0];
    assert_eq!((&*lesson.who, lesson.lesson.until.as_str()), ("GH", "2027-04-02"));
    assert_eq!((lesson.lesson.shown.len(), lesson.lesson.missed.len()), (2, 1));
}

/// As long as this version is written, it is written to the byte.
#[test]
fn schema_2_is_what_is_written() {
    assert_eq!(SCHEMA, 2, "a new version needs a file of its own beside this one");
    if std::env::var_os("BRIMLINE_WRITE").is_some() {
        let file = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/log/log-schema-2.ndjson");
        std::fs::write(file, write(&whole())).expect("the file is written");
    }
    assert_eq!(write(&whole()), SCHEMA_2);
}
