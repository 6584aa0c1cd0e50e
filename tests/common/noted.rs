//! Notes a figure for the table that a run of the suite closes with.

use serde_json::json;
use std::fs::OpenOptions;
use std::io::Write;

/// Appends a line to the file that `BRIMLINE_FIGURES` names; without one nothing is noted.
pub fn figure(what: &str, target: &str, result: &str) {
    let Some(file) = std::env::var_os("BRIMLINE_FIGURES") else { return };
    let line = json!({ "what": what, "target": target, "result": result });
    let noted =
        OpenOptions::new().append(true).create(true).open(file).and_then(|mut file| writeln!(file, "{line}"));
    noted.expect("the figure is noted");
}
