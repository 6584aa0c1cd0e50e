//! Builds the page, if its sources changed since the last build.

use super::child::{self, Background};
use super::fault::Fault;
use super::fingerprint;
use super::places::Places;
use super::tools::{self, Tools};
use std::fs;
use std::process::Command;

/// Makes sure that the finished page is there and made from the sources as they are now.
///
/// # Errors
/// When a tool is missing and cannot be installed, or the build fails.
pub fn page(places: &Places) -> Result<(), Fault> {
    let sources = fingerprint::of(places.root())?;
    let stamp = places.stamp();
    let built = fs::read_to_string(&stamp).is_ok_and(|built| built == sources);
    if built && places.page().join("index.html").is_file() && places.one_file().is_file() {
        println!("The page is up to date.");
        return Ok(());
    }
    let tools = Tools::of(places)?;
    // Kept until Trunk is done: its own call of cargo waits for this one and finds the rest made.
    let _early = if tools.are_here() { None } else { Some(compile_early(places)?) };
    tools.install()?;
    let mut trunk = Command::new("trunk");
    trunk
        .args(["build", "--release"])
        .current_dir(places.root())
        .env("PATH", tools.path())
        // Trunk takes only "true" or "false" here, and stops at the "1" that others set.
        .env_remove("NO_COLOR")
        // Its own call stack would push what failed out of sight.
        .env("RUST_BACKTRACE", "0");
    child::step("Building the page", &mut trunk)?;
    // Written last: a build that was interrupted is done again.
    fs::write(&stamp, sources).map_err(|error| Fault::file(&stamp, &error))
}

/// Compiles the page while the tools are being installed, which leaves a core idle half of the
/// time. If this fails, Trunk meets the same error and says so.
fn compile_early(places: &Places) -> Result<Background, Fault> {
    tools::wasm_target()?;
    let mut cargo = Command::new("cargo");
    cargo
        .args([
            "build",
            "--release",
            "--target",
            "wasm32-unknown-unknown",
            "--bin",
            "brimline",
            "--features",
            "split",
        ])
        .current_dir(places.root());
    Background::start(&mut cargo)
}
