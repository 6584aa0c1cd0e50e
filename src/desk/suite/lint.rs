//! Formatting, clippy and documentation, on this machine's target and on the browser's; and what Cargo brings in.

use super::packages;
use super::tally::Tally;
use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use crate::desk::tools;
use std::process::Command;

/// Each counts as one check.
const CHECKS: [&[&str]; 6] = [
    &["fmt", "--check"],
    &["clippy", "--all-targets", "--", "-D", "warnings"],
    &["clippy", "--target", "wasm32-unknown-unknown", "--all-targets", "--", "-D", "warnings"],
    &["clippy", "--target", "wasm32-unknown-unknown", "--features", "split", "--", "-D", "warnings"],
    &["doc", "--no-deps"],
    &["doc", "--no-deps", "--target", "wasm32-unknown-unknown"],
];

/// Runs every check, also after one has failed.
///
/// # Errors
/// When the browser's target or cargo itself is missing.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    tools::wasm_target()?;
    let mut sum = Tally::default();
    for check in CHECKS {
        let mut cargo = Command::new("cargo");
        cargo.args(check).current_dir(places.root());
        if check[0] == "doc" {
            cargo.env("RUSTDOCFLAGS", "-D warnings");
        }
        let well = child::stream(&mut cargo, |_| ())?;
        println!("{}", if well { "    passed" } else { "    FAILED" });
        sum += Tally::one(well);
    }
    sum += packages::run(places)?;
    Ok(sum)
}
