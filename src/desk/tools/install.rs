//! Installing what is missing, into the user's cache only.

use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use std::fs;
use std::path::PathBuf;
use std::process::Command;

/// The release of Trunk that this page is built with.
const TRUNK: &str = "0.21.14";
/// The release of Binaryen (wasm-opt) that this page is built with.
const BINARYEN: &str = "132.0.0";
/// The release of cargo-deny that reads our rules.
const DENY: &str = "0.20.2";

/// The compiler's part for the browser.
pub fn wasm_target() -> Result<(), Fault> {
    let mut ask = Command::new("rustc");
    ask.args(["--print", "target-libdir", "--target", "wasm32-unknown-unknown"]);
    if child::answer(&mut ask).is_some_and(|folder| PathBuf::from(folder).is_dir()) {
        return Ok(());
    }
    let mut add = Command::new("rustup");
    add.args(["target", "add", "wasm32-unknown-unknown"]);
    child::step("Adding the compiler's part for the browser", &mut add)
}

pub fn trunk(places: &Places) -> Result<(), Fault> {
    let mut install = cargo_install(places, "trunk", TRUNK);
    install.arg("--locked");
    child::step("Installing trunk (once; about three minutes)", &mut install)
}

pub fn wasm_bindgen(places: &Places, version: &str) -> Result<(), Fault> {
    // Not --locked: its lock file asks for packages that a registry's mirror may not hold yet.
    let mut install = cargo_install(places, "wasm-bindgen-cli", version);
    child::step("Installing wasm-bindgen (once; about a minute)", &mut install)
}

pub fn wasm_opt(places: &Places) -> Result<(), Fault> {
    let folder = places.tools().join("binaryen");
    fs::create_dir_all(&folder).map_err(|error| Fault::file(&folder, &error))?;
    let mut install = Command::new("npm");
    install
        .args(["install", "--no-audit", "--no-fund", "--prefix"])
        .arg(&folder)
        .arg(format!("binaryen@{BINARYEN}"));
    child::step("Installing wasm-opt", &mut install)
}

pub fn deny(places: &Places) -> Result<(), Fault> {
    let mut install = cargo_install(places, "cargo-deny", DENY);
    install.arg("--locked");
    child::step("Installing cargo-deny (once; about two minutes)", &mut install)
}

/// Deletes what compiling the tools left: it is of no more use once they are there.
pub fn tidy(places: &Places) {
    // Left lying it costs disk space, nothing else: no reason to stop.
    let _ = fs::remove_dir_all(scratch(places));
}

/// Compiles fast rather than well: these tools run for seconds, and the first start must not take long.
fn cargo_install(places: &Places, package: &str, version: &str) -> Command {
    let mut install = Command::new("cargo");
    install
        .args(["install", package, "--version", version, "--no-default-features", "--force", "--root"])
        .arg(places.tools())
        // Shared by the tools, which have packages in common.
        .env("CARGO_TARGET_DIR", scratch(places))
        .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "0")
        .env("CARGO_PROFILE_RELEASE_LTO", "off")
        .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
        .env("CARGO_PROFILE_RELEASE_DEBUG", "0");
    install
}

fn scratch(places: &Places) -> PathBuf {
    places.tools().join("build")
}
