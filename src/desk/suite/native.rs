//! The tests that need no browser.

use super::python;
use super::tally::Tally;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use std::process::Command;

/// Every native test, with those that compare with Python libraries (marked `#[ignore]`, so that
/// a bare `cargo test` needs no Python), then the examples in the documentation.
///
/// # Errors
/// When Python's packages cannot be installed or cargo cannot be started.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let mut sum = cargo_test(places, &["--lib", "--bins", "--tests", "--", "--include-ignored"])?;
    sum += cargo_test(places, &["--doc"])?;
    Ok(sum)
}

/// Only the tests that compare with Python libraries.
///
/// # Errors
/// When Python's packages cannot be installed or cargo cannot be started.
pub fn reference(places: &Places) -> Result<Tally, Fault> {
    cargo_test(places, &["--lib", "--tests", "--", "--ignored"])
}

fn cargo_test(places: &Places, words: &[&str]) -> Result<Tally, Fault> {
    let mut cargo = Command::new("cargo");
    cargo
        .args(["test", "--no-fail-fast"])
        .args(words)
        .current_dir(places.root())
        .env("BRIMLINE_PYTHON", python::ready(places)?);
    Tally::of(&mut cargo)
}
