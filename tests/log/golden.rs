//! A file of each version that there ever was still opens, holds, and says what it said.

use super::made::whole;
use brimline::site::log::{Part, SCHEMA, current, read, write};

const SCHEMA_1: &str = include_str!("log-schema-1.ndjson");

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

/// As long as this version is written, it is written to the byte.
#[test]
fn schema_1_is_what_is_written() {
    assert_eq!(SCHEMA, 1, "a new version needs a file of its own beside this one");
    assert_eq!(write(&whole()), SCHEMA_1);
}
