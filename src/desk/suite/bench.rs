//! `tests/bench`: how long the shift plan takes in the browser, compiled as the page is, and how long the
//! pH of a use solution takes beside the libraries that reckon it too; and the page with a large log.

use super::tally::Tally;
use super::{apt, browser, figures, node, python};
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use crate::desk::split::OPTIMIZE;
use crate::desk::tools::Tools;
use crate::desk::{build, child};
use std::fs;
use std::process::Command;

/// The example of Cargo.toml, and the script of `tests/browser` that measures it.
const NAME: &str = "bench";

/// The example that is the least a page weighs.
const FLOOR: &str = "floor";

/// The script that measures the page with a large log.
const LOG: &str = "bench-log.mjs";

/// The script that asks Lighthouse.
const LIGHTHOUSE: &str = "bench-lighthouse.mjs";

/// The script that measures how soon the page answers a hand.
const HAND: &str = "bench-hand.mjs";

/// The benchmarks of Cargo.toml that need no browser.
const NATIVE: [&str; 2] = ["acid_base", "core"];

/// Builds the benchmarks and holds what they measure against the budgets.
///
/// # Errors
/// When one cannot be built, or the packages of Node or Python, a tool or the browser cannot be installed.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let mut sum = native(places)?;
    sum += shift(places)?;
    for script in [HAND, LIGHTHOUSE, LOG] {
        sum += finished(places, script)?;
    }
    Ok(sum)
}

/// Optimized as the page is, on this machine's own instructions.
fn native(places: &Places) -> Result<Tally, Fault> {
    let mut cargo = Command::new("cargo");
    cargo
        .arg("bench")
        .args(NATIVE.iter().flat_map(|name| ["--bench", name]))
        .current_dir(places.root())
        .env(figures::FILE, figures::file(places))
        .env("BRIMLINE_PYTHON", python::ready(places)?);
    Tally::of(&mut cargo)
}

fn shift(places: &Places) -> Result<Tally, Fault> {
    let browser = apt::browser()?;
    node::recent()?;
    build_shift(places)?;
    node::scripts(places)?;
    let mut runner = node::runner(places, &browser);
    Tally::of(runner.arg(format!("{NAME}.mjs")).env("BRIMLINE_BENCH", places.bench()))
}

/// The finished page under one of the scripts.
fn finished(places: &Places, script: &str) -> Result<Tally, Fault> {
    let found = apt::browser()?;
    node::recent()?;
    build::page(places)?;
    node::scripts(places)?;
    Tally::of(browser::page(places, &found).arg(script))
}

/// As the page is built, but in one piece.
fn build_shift(places: &Places) -> Result<(), Fault> {
    let tools = Tools::of(places)?;
    tools.install()?;
    let mut cargo = Command::new("cargo");
    build::same_everywhere(&mut cargo);
    cargo.args(["build", "--release", "--target", "wasm32-unknown-unknown"]);
    cargo.args(["--example", NAME, "--example", FLOOR]);
    child::step("Compiling the benchmarks", cargo.current_dir(places.root()))?;
    let compiled = places.compiled().join("wasm32-unknown-unknown/release/examples");
    let folder = places.bench();
    fs::create_dir_all(&folder).map_err(|error| Fault::file(&folder, &error))?;
    for name in [NAME, FLOOR] {
        let mut bindgen = tools.program("wasm-bindgen");
        bindgen.args(["--target", "web", "--no-typescript", "--out-dir"]).arg(&folder);
        bindgen.arg(compiled.join(name).with_extension("wasm"));
        child::step(&format!("Binding {name}"), &mut bindgen)?;
        let bound = folder.join(format!("{name}_bg.wasm"));
        let mut optimize = tools.program("wasm-opt");
        optimize.args(OPTIMIZE).arg(&bound).arg("-o").arg(&bound);
        child::step(&format!("Optimizing {name}"), &mut optimize)?;
    }
    Ok(())
}
