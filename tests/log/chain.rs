//! Whatever is done to a chain from outside is found and named.

use super::made::{several, whole};
use brimline::site::log::{Broken, Kind, Record, Why, digest, read, verify, verify_to, write};
use proptest::prelude::*;
use serde_json::{Value, json};

fn broken(records: &[Record]) -> Broken {
    verify(records).expect_err("it does not hold")
}

/// The places of everything that has no parts, in JSON Pointer (RFC 6901).
fn leaves(value: &Value, path: &str, out: &mut Vec<String>) {
    match value {
        Value::Object(fields) if !fields.is_empty() => {
            fields.iter().for_each(|(key, value)| leaves(value, &format!("{path}/{key}"), out));
        }
        Value::Array(list) if !list.is_empty() => {
            list.iter().enumerate().for_each(|(at, value)| leaves(value, &format!("{path}/{at}"), out));
        }
        _ => out.push(path.to_owned()),
    }
}

/// Other values that may stand in the place of one.
fn others(value: &Value) -> Vec<Value> {
    match value {
        Value::Bool(flag) => vec![json!(!flag)],
        Value::Number(number) if number.is_f64() => {
            vec![json!(number.as_f64().unwrap_or_default() * (1.0 + 1e-9))]
        }
        Value::Number(number) => vec![json!(number.as_u64().unwrap_or_default() + 1), json!(0)],
        Value::Null => vec![json!(0.5)],
        Value::Array(_) => vec![json!(["by"]), json!([{"id": "x"}])],
        Value::Object(_) => vec![json!({"struck": true})],
        Value::String(text) => {
            let codes =
                ["more", "less", "done", "not_done", "ratio", "active", "fill", "erasure", "by", "why"];
            let mut all = vec![json!(format!("{text}x")), json!("")];
            all.extend(codes.iter().filter(|code| *code != text).map(|code| json!(code)));
            all
        }
    }
}

/// Every field of every record, one after the other.
#[test]
fn every_altered_field_is_named() {
    let log = whole();
    assert_eq!(verify(log.records()), Ok(()));
    let mut count = 0;
    for (place, record) in log.records().iter().enumerate() {
        let value = serde_json::to_value(record).expect("JSON");
        let mut paths = Vec::new();
        leaves(&value, "", &mut paths);
        for path in paths {
            let mut tried = 0;
            for other in others(value.pointer(&path).expect("a leaf")) {
                let mut changed = value.clone();
                *changed.pointer_mut(&path).expect("a leaf") = other;
                let Ok(changed) = serde_json::from_value::<Record>(changed) else { continue };
                if changed == *record {
                    continue;
                }
                tried += 1;
                count += 1;
                let mut records = log.records().to_vec();
                let (id, moved) = (changed.id(), changed.id() != record.id());
                records[place] = changed;
                let found = broken(&records);
                if moved {
                    continue;
                }
                // A kind or a list of erased texts that changed may leave a blank text unexplained before it.
                let unexplained = record.kind == Kind::Erasure && matches!(found.why, Why::WordsGone(_));
                assert!(unexplained || (found.place, &found.id) == (place, &id), "{path}: {found:?}");
            }
            assert!(tried > 0, "nothing else can stand at {path}");
        }
    }
    println!("{count} alterations, each found");
    assert!(count > 300, "{count}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_log_holds(log in several()) {
        prop_assert_eq!(verify_to(log.records(), &log.heads()), Ok(()));
        prop_assert!(log.records().iter().all(|record| digest(record) == record.own));
    }

    #[test]
    fn what_is_missing_is_named(log in several(), at in any::<usize>()) {
        prop_assume!(!log.records().is_empty());
        let mut records = log.records().to_vec();
        let gone = records.remove(at % records.len());
        let found = verify_to(&records, &log.heads()).expect_err("one is missing");
        if gone.kind == Kind::Erasure && matches!(found.why, Why::WordsGone(_)) {
            prop_assert_eq!(gone.of, found.id.to_string());
        } else {
            prop_assert_eq!((&found.id, &found.why), (&gone.id(), &Why::Missing));
        }
    }

    #[test]
    fn what_is_moved_is_named(log in several(), a in any::<usize>(), b in any::<usize>()) {
        prop_assume!(!log.records().is_empty());
        let mut records = log.records().to_vec();
        let (a, b) = (a % records.len(), b % records.len());
        let (a, b) = (a.min(b), a.max(b));
        prop_assume!(records[a].device == records[b].device && a != b);
        records.swap(a, b);
        let found = broken(&records);
        prop_assert_eq!((found.place, found.id, found.why), (a, records[a].id(), Why::Moved));
    }

    /// Devices may take turns in any way.
    #[test]
    fn chains_may_be_woven(log in several(), turns in prop::collection::vec(any::<bool>(), 0..24)) {
        let (mut first, mut second): (Vec<Record>, Vec<Record>) =
            log.records().iter().cloned().partition(|record| record.device == "d1");
        let mut woven = Vec::new();
        for turn in turns {
            let from = if turn { &mut first } else { &mut second };
            if !from.is_empty() {
                woven.push(from.remove(0));
            }
        }
        woven.extend(first);
        woven.extend(second);
        prop_assert_eq!(verify(&woven), Ok(()));
    }

    #[test]
    fn what_is_doubled_is_named(log in several(), at in any::<usize>(), to in any::<usize>()) {
        prop_assume!(!log.records().is_empty());
        let mut records = log.records().to_vec();
        let at = at % records.len();
        let to = at + 1 + to % (records.len() - at);
        let twin = records[at].clone();
        records.insert(to, twin.clone());
        let found = broken(&records);
        // Before those of its device that come after it, or behind them.
        prop_assert_eq!((found.place, found.id, found.why), (to, twin.id(), Why::Doubled));
    }

    /// Whoever puts another record in the place of one and hashes it as it should be breaks the link to it.
    #[test]
    fn what_is_put_in_its_place_is_named(log in several(), at in any::<usize>()) {
        prop_assume!(!log.records().is_empty());
        let mut records = log.records().to_vec();
        let at = at % records.len();
        records[at].when = "2020-01-01T00:00:00Z".to_owned();
        records[at].own = digest(&records[at]);
        let found = verify_to(&records, &log.heads()).expect_err("it is another");
        let next = records.get(at + 1).filter(|next| next.device == records[at].device);
        let expected = match next {
            Some(next) => (at + 1, next.id(), Why::Unlinked),
            None => (at, records[at].id(), Why::Replaced),
        };
        prop_assert_eq!((found.place, found.id, found.why), expected);
    }

    /// A byte of the file that changes either makes a line that is named, or a record that is, or it changes nothing
    /// of what the file says.
    #[test]
    fn no_altered_byte_goes_unseen(log in several(), at in any::<usize>(), byte in any::<u8>()) {
        let mut file = write(&log).into_bytes();
        let at = at % file.len();
        prop_assume!(file[at] != byte);
        file[at] = byte;
        let Ok(opened) = read(&file) else { return Ok(()) };
        let is_seen = !opened.flaws.is_empty() || opened.verify().is_err();
        prop_assert!(is_seen || opened.records == log.records(), "byte {at} of {}", String::from_utf8_lossy(&file));
    }
}

/// Every byte of a file, one after the other, in two ways.
#[test]
fn every_altered_byte_is_seen() {
    let log = whole();
    let file = write(&log).into_bytes();
    let (mut seen, mut same) = (0, 0);
    for at in 0..file.len() {
        for byte in [file[at] ^ 1, b' '] {
            let mut altered = file.clone();
            altered[at] = byte;
            let Ok(opened) = read(&altered) else {
                seen += 1;
                continue;
            };
            if !opened.flaws.is_empty() || opened.verify().is_err() {
                seen += 1;
            } else {
                // A space for a space.
                assert_eq!((&opened.records[..], &opened.heads), (log.records(), &log.heads()), "byte {at}");
                same += 1;
            }
        }
    }
    println!("{seen} altered bytes seen, {same} that changed nothing");
    assert!(same < 100 && seen + same == 2 * file.len());
}

/// Two records of one device and number.
#[test]
fn a_fork_is_named() {
    let log = whole();
    let mut other = log.records()[1].clone();
    other.when = "2026-03-07T18:31:00-05:00".to_owned();
    other.own = digest(&other);
    let mut records = log.records().to_vec();
    records.insert(2, other);
    let found = broken(&records);
    assert_eq!((found.place, found.id.to_string().as_str(), found.why), (2, "station-1/2", Why::Forked));
}

/// What is hashed, and how, is checked from outside in `tests/reference/log.py`.
#[test]
fn every_reason_has_a_code_of_its_own() {
    use brimline::site::log::Part;
    let all = [
        Why::Altered,
        Why::WordsAltered(Part::By),
        Why::WordsGone(Part::By),
        Why::Missing,
        Why::Doubled,
        Why::Forked,
        Why::Moved,
        Why::Unlinked,
        Why::Replaced,
    ];
    let codes: std::collections::BTreeSet<&str> = all.iter().map(Why::code).collect();
    assert_eq!(codes.len(), all.len());
    assert!(codes.iter().all(|code| code.starts_with("log-")));
}
