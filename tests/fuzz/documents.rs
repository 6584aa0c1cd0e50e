//! Saved answers, with the checksum of what was changed in them.

use super::changed::changed;
use super::fuzz;
use brimline::document;
use brimline::form::saved::{View, open, recompute, save};
use brimline::number::Marks;
use serde_json::Value;
use std::fs;
use std::path::Path;

/// The saved answers of `tests/saved`, of every version.
fn saved() -> Vec<Vec<u8>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/saved");
    let mut files: Vec<_> =
        fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("a file").path()).collect();
    files.sort();
    assert!(files.len() >= 33);
    files.into_iter().map(|file| fs::read(file).expect("text")).collect()
}

/// What is taken is saved again, opens the same, and stands.
fn feed(text: &str) -> bool {
    let _ = recompute(text);
    let Ok((view, typed)) = open(text) else { return false };
    let again = save(view, &typed, Marks::POINT);
    assert_eq!(open(&again), Ok((view, typed)));
    assert_eq!(recompute(&again).map(|agreement| agreement.view), Ok(view));
    true
}

/// The file with the checksum that its view, its mark and its input ask for (`form/saved.rs`).
fn sealed(mut file: Value) -> Option<String> {
    let view = View::from_code(file["view"].as_str()?)?;
    let decimal = file["decimal"].as_str()?.chars().next()?;
    let text = format!("{}{decimal}{}", view.code(), file["input"]);
    file["check"] = document::checksum(&text).into();
    Some(file.to_string())
}

#[test]
fn answers() {
    let files = saved();
    let draw = |rng: &mut fastrand::Rng| {
        let text = changed(&files, rng);
        let json = serde_json::from_slice(&text).ok().and_then(sealed);
        json.map_or(text, String::into_bytes)
    };
    fuzz("saved answers", 4, 2_000, draw, |bytes| feed(&String::from_utf8_lossy(bytes)));
}
