//! The same seed makes the same exercises, on every device and in every later version. `tests/wasm.rs` holds the same
//! file in a browser.
//!
//! `sessions.txt` is written anew only where exercises change on purpose: `BRIMLINE_WRITE=1`. Links that were passed
//! on before then make other exercises than they did, and `DRAWN` of `session.rs` rises, so that no result of the one
//! is counted for the other.

use super::stocks;
use brimline::practice::{Exercise, Fact, Key, Level, Said, Session, Topic};
use std::fmt::Write;

fn fact(fact: &Fact) -> String {
    match fact {
        Fact::Entry(entry) => format!("{} {}", entry.text, entry.unit),
        Fact::Text(text) | Fact::Key(text) => text.clone(),
        Fact::Count(count) => count.to_string(),
        Fact::Window(low, high) => format!("{:016x} {:016x}", low.si.to_bits(), high.si.to_bits()),
    }
}

fn line(said: &Said) -> String {
    let facts: Vec<String> = said.facts.iter().map(|(name, one)| format!("{name}={}", fact(one))).collect();
    format!("{} {}", said.key, facts.join(" | ")).trim_end().to_owned()
}

/// All that is asked, right and wrong of an exercise. Bits of a number: the last one counts too.
fn told(exercise: &Exercise) -> String {
    let mut out = String::new();
    for said in &exercise.asked {
        let _ = writeln!(out, "  {}", line(said));
    }
    let (options, right) = match &exercise.key {
        Key::Amount(key) => (&Vec::new(), format!("{:016x} {} {:e}", key.si.to_bits(), key.unit, key.within)),
        Key::Choice { options, right } => (options, right.to_string()),
        Key::Several { options, right } | Key::Order { options, right } => (options, format!("{right:?}")),
    };
    for said in options {
        let _ = writeln!(out, "  - {}", line(said));
    }
    let ways: Vec<String> =
        exercise.roads.iter().map(|road| format!("{} {:?}", road.way.code(), road.led)).collect();
    let _ = writeln!(out, "  = {right}\n  ~ {}", ways.join(", "));
    out
}

/// Sessions of every stock and level, as text.
pub fn written() -> String {
    let mut out = String::new();
    for (index, stock) in stocks::all(2).into_iter().enumerate() {
        for (seed, level) in (7..).zip(Level::ALL) {
            let session =
                Session { seed, topics: Topic::ALL.to_vec(), level: *level, count: 22, stock: stock.clone() };
            let _ =
                writeln!(out, "# stock {index}, seed {seed}, {}, check {}", level.code(), session.check());
            for exercise in session.exercises() {
                let _ = write!(out, "{}\n{}", exercise.topic.code(), told(&exercise));
            }
        }
    }
    out
}

/// Holds them against those that are kept.
#[track_caller]
pub fn hold(kept: &str) {
    let out = written();
    let differs = kept.lines().zip(out.lines()).position(|(a, b)| a != b);
    assert!(kept == out, "line {:?} differs", differs.map(|line| line + 1));
}

#[cfg(not(target_arch = "wasm32"))]
#[test]
fn a_session_stays_what_it_was() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/practice/sessions.txt");
    if std::env::var_os("BRIMLINE_WRITE").is_some() {
        std::fs::write(path, written()).expect("the file is written");
    }
    hold(&std::fs::read_to_string(path).expect("the golden file"));
}
