//! What the log does not take, each with its code.

use super::made::whole;
use brimline::site::log::{
    Fill, Flaw, Id, Log, MOST_LINE, Named, Part, Record, Stamp, Words, line, read, write,
};
use serde_json::{Map, Value, json};

const HEADER: &str = r#"{"brimline":"log","schema":1,"heads":[]}"#;

fn stamp() -> Stamp<'static> {
    Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] }
}

/// The code of the one flaw of a file with this line, and the path it names.
fn flaw(line: &str) -> Flaw {
    let opened = read(format!("{HEADER}\n{line}\n")).expect("its first line is right");
    assert_eq!((opened.flaws.len(), opened.flaws[0].line, opened.records.len()), (1, 2, 0), "{line}");
    opened.flaws[0].flaw.clone()
}

/// A line with one field put in, and the flaw that this makes.
fn with(place: usize, field: &str, value: Value) -> Flaw {
    let mut fields: Map<String, Value> =
        serde_json::from_str(&line(&whole().records()[place])).expect("JSON");
    fields.insert(field.to_owned(), value);
    flaw(&Value::Object(fields).to_string())
}

#[test]
fn every_flaw_of_a_line_has_its_code() {
    let cases = [
        (0, "device", json!("a/b"), "log-device"),
        (0, "device", json!(""), "log-device"),
        (0, "device", json!(7), "passing-type"),
        (0, "number", json!(0), "log-number"),
        (0, "number", json!(1_u64 << 53), "log-number"),
        (0, "number", json!(1.5), "passing-unreadable"),
        (0, "number", json!(-1), "passing-unreadable"),
        (0, "when", json!("yesterday"), "log-when"),
        (0, "kind", json!("unsaid"), "log-kind"),
        (0, "kind", json!("other"), "passing-choice"),
        (0, "own", json!("ABC"), "log-hash"),
        (0, "own", json!(""), "log-hash"),
        (0, "before", json!("zz"), "log-hash"),
        (0, "seals", json!({"by": "1"}), "log-hash"),
        (0, "words", json!({"by": {"salt": "x", "text": "AB"}}), "log-hash"),
        (0, "of", json!("station-1/1"), "log-stray"),
        (0, "changes", json!({"struck": true}), "log-stray"),
        (0, "erased", json!(["by"]), "log-stray"),
        (2, "fill", json!({"struck": true}), "log-stray"),
        (2, "of", json!("station-1/01"), "log-of"),
        (2, "of", json!(""), "log-of"),
        (2, "changes", json!({"colour": "red"}), "passing-unknown-field"),
        (2, "changes", json!({"struck": "yes"}), "passing-type"),
        (2, "changes", json!({"water": {"si": -1}}), "passing-unreadable"),
        (3, "erased", json!([]), "log-nothing-to-erase"),
        (3, "erased", json!(["name"]), "passing-choice"),
        (0, "colour", json!("red"), "passing-unknown-field"),
        (0, "fill", json!({"water": {"si": "1"}}), "passing-type"),
        (0, "fill", json!({"water": {"text": "\u{202e}12 L"}}), "passing-hidden"),
    ];
    for (place, field, value, code) in cases {
        assert_eq!(with(place, field, value.clone()).code(), code, "{field}: {value}");
    }
    let mut empty: Record = whole().records()[2].clone();
    (empty.changes, empty.seals) = (Map::new(), brimline::site::log::Seals::default());
    assert_eq!(flaw(&line(&empty)).code(), "log-nothing-changed");
    assert_eq!(flaw("{\"a\":1,\"a\":2}").code(), "passing-field-twice");
    assert_eq!(flaw("[]").code(), "passing-type");
    assert_eq!(flaw("{").code(), "passing-cut-off");
}

/// How a line spells its JSON does not matter.
#[test]
fn spaces_and_order_do_not_matter() {
    let log = whole();
    let file = write(&log);
    let spelt: Vec<String> = file
        .lines()
        .map(|line| {
            let fields: Map<String, Value> = serde_json::from_str(line).expect("JSON");
            let fields: Vec<String> =
                fields.iter().rev().map(|(key, value)| format!("\"{key}\" : {value}")).collect();
            format!(" {{ {} }}\r", fields.join(" , "))
        })
        .collect();
    let opened = read(format!("\u{feff}{}\n\n", spelt.join("\n"))).expect("it opens");
    assert_eq!((opened.flaws.len(), opened.verify(), opened.log()), (0, Ok(()), log));
}

#[test]
fn another_kind_of_file_is_refused() {
    let codes = [
        ("", "passing-cut-off"),
        ("{}", "passing-other-kind"),
        (r#"{"brimline":"site","schema":1,"site":{}}"#, "passing-other-kind"),
        (r#"{"brimline":"log","schema":3,"heads":[]}"#, "passing-later"),
        (r#"{"brimline":"log","schema":0,"heads":[]}"#, "passing-other-kind"),
        (r#"{"brimline":"log","heads":[]}"#, "passing-missing"),
        (r#"{"brimline":"log","schema":1}"#, "passing-missing"),
        (r#"{"brimline":"log","schema":1,"heads":{}}"#, "passing-type"),
        (r#"{"brimline":"log","schema":1,"heads":[],"more":1}"#, "passing-unknown-field"),
    ];
    for (file, code) in codes {
        assert_eq!(read(file).expect_err("it is no log of this version").code(), code, "{file}");
    }
}

#[test]
fn what_is_added_is_held_to_the_same() {
    let mut log = Log::default();
    let words = Words::default;
    let code = |result: Result<Id, Flaw>| result.expect_err("it is refused").code();
    let other = |device, when| Stamp { device, when, random: [7; 32] };
    assert_eq!(code(log.fill(&other("", "2026-03-07T18:30Z"), Fill::default(), words())), "log-device");
    assert_eq!(code(log.fill(&other("d", "now"), Fill::default(), words())), "log-when");
    let named = Fill { product: Named::new("p", "x".repeat(20_001)), ..Fill::default() };
    assert_eq!(code(log.fill(&stamp(), named, words())), "passing-long-text");
    let areas = (0..10_000).map(|at| Named::new(format!("area-{at}"), "Corridor")).collect();
    assert_eq!(code(log.fill(&stamp(), Fill { areas, ..Fill::default() }, words())), "log-long-line");
    assert_eq!(
        code(log.fill(&stamp(), Fill::default(), words().with(Part::Notes, "a\0b"))),
        "passing-hidden"
    );
    assert_eq!(log, Log::default(), "nothing of it was taken");
    let id = log.fill(&stamp(), Fill::default(), words()).expect("it is right");
    let struck = json!({"struck": true});
    let changes = struck.as_object().expect("fields");
    let correction = log.correct(&stamp(), &id, changes, words()).expect("it is right");
    assert_eq!(code(log.correct(&stamp(), &correction, changes, words())), "log-not-a-fill");
    assert_eq!(code(log.correct(&stamp(), &Id::new("d", 1), changes, words())), "log-unknown");
    assert_eq!(
        code(log.correct(&stamp(), &id, &Map::new(), words().with(Part::Why, "So"))),
        "log-nothing-changed"
    );
    assert_eq!(
        code(log.correct(&stamp(), &id, json!({"x": 1}).as_object().expect("fields"), words())),
        "passing-unknown-field"
    );
    assert_eq!(log.records().len(), 2);
    assert!(log.records().iter().all(|record| line(record).len() <= MOST_LINE));
}
