//! CAS numbers: their check digits, and what a general library of chemical data says of those in the table.

use brimline::chemistry::cas::check;
use brimline::chemistry::ghs::mixture::KINDS;
use serde_json::Value;
use std::process::Command;

/// CAS, Check Digit Verification of CAS Registry Numbers: 107-07-3 is the example.
#[test]
fn check_digits() {
    for (text, tidy) in [
        ("107-07-3", "107-07-3"),
        ("71-23-8", "71-23-8"),
        (" 7732 – 18 – 5 ", "7732-18-5"),
        ("0001310-73-2", "1310-73-2"),
        ("64‑19‑7", "64-19-7"),
    ] {
        assert_eq!(check(text).map(|cas| cas.to_string()).as_deref(), Some(tidy), "{text}");
    }
    for text in [
        "",
        "-",
        "107-07-4",
        "107-7-3",
        "107073",
        "1-07-3",
        "12345678-07-3",
        "107-07-3-1",
        "١٠٧-07-3",
        "107-07-",
        "é07-07-3",
        "proprietary",
    ] {
        assert_eq!(check(text), None, "{text:?}");
    }
}

#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn numbers_belong_to_their_names() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with chemicals");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/cas.py");
    let table: Vec<[&str; 2]> = KINDS.iter().map(|(number, name, _)| [*number, *name]).collect();
    let table = serde_json::to_string(&table).expect("JSON");
    let run = Command::new(python).args([script, &table]).output().expect("Python starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    let mut named = 0;
    for ((number, name, _), theirs) in KINDS.iter().zip(theirs["table"].as_array().expect("a list")) {
        assert_eq!(theirs["digit"], Value::Bool(true), "{number}");
        if let Some(of_name) = theirs["number"].as_str() {
            assert_eq!(of_name, *number, "{name}");
            named += 1;
        }
    }
    // Mixtures and technical blends are not in the library.
    assert!(named >= 48, "only {named} of {} names were found", KINDS.len());
    for draw in theirs["draws"].as_array().expect("a list") {
        let text = draw["text"].as_str().expect("a text");
        assert_eq!(check(text).is_some(), draw["right"] == Value::Bool(true), "{text}");
    }
}
