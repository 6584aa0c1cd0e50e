//! An ordinary database reads the log as it is, and another language finds the same hashes.

use super::made::whole;
use super::speed::many;
use brimline::site::log::questions::{By, Filter, usage};
use brimline::site::log::{current, write};
use brimline::units::Quantity;
use serde_json::Value;
use std::process::Command;

/// Python's `sqlite3` with its JSON functions, `hashlib`, and the library `rfc8785`.
#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn a_database_finds_the_same() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with rfc8785");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/log.py");
    let log = many(999).merge(&whole()).log;
    let file = std::env::temp_dir().join(format!("brimline-log-{}.ndjson", std::process::id()));
    std::fs::write(&file, write(&log)).expect("a file");
    let run = Command::new(python).arg(script).arg(&file).output().expect("Python starts");
    std::fs::remove_file(&file).expect("it was there");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    let hashes: Vec<&str> = log.records().iter().map(|record| record.own.as_str()).collect();
    assert_eq!(theirs["hashes"], serde_json::json!(hashes));
    let fills = current(&log).fills;
    let ours = usage(Filter::default().of(&fills), By::Product);
    let theirs = theirs["products"].as_array().expect("a list");
    assert_eq!(theirs.len(), ours.len());
    for (ours, theirs) in ours.iter().zip(theirs) {
        assert_eq!(
            (theirs["id"].as_str(), theirs["fills"].as_u64()),
            (Some(ours.key.as_str()), u64::try_from(ours.fills).ok())
        );
        let sum = theirs["measured"].as_f64().expect("a number");
        assert!((sum - ours.measured.si()).abs() <= 1e-12 * sum, "{sum} {ours:?}");
    }
}
