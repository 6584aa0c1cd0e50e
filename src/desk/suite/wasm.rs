//! `tests/wasm.rs`, compiled to WebAssembly and run in a headless browser.

use super::apt;
use super::tally::Tally;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use crate::desk::tools::Tools;
use std::process::Command;

/// Seconds for one test file: the runner's own limit is too short for a busy machine.
const PATIENCE: &str = "180";

/// Runs the file's tests.
///
/// # Errors
/// When the browser or a tool is missing and cannot be installed.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    apt::browser()?;
    let driver = apt::driver()?;
    let tools = Tools::of(places)?;
    tools.install()?;
    let runner = tools.test_runner().ok_or_else(|| Fault::new("The WebAssembly test runner is missing."))?;
    let mut cargo = Command::new("cargo");
    cargo
        .args(["test", "--target", "wasm32-unknown-unknown", "--test", "wasm"])
        .current_dir(places.root())
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", runner)
        .env("CHROMEDRIVER", driver)
        .env("WASM_BINDGEN_TEST_TIMEOUT", PATIENCE);
    Tally::of(&mut cargo)
}
