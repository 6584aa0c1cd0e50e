//! Builds the page, if its sources changed since the last build.

use super::child::{self, Background};
use super::fault::Fault;
use super::fingerprint;
use super::places::Places;
use super::tools::{self, Tools};
use std::path::Path;
use std::process::Command;
use std::{env, fs};

/// Where Cargo takes flags for the page alone: those for this machine's own programs stay as they are.
const FLAGS: &str = "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS";

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
    same_everywhere(&mut trunk)
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
    same_everywhere(&mut cargo)
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

/// Has `compiler` make the same bytes wherever it runs: what a panic would say of its place begins with the name of
/// a package, not with the folder of whoever built it. That is shorter, too.
pub fn same_everywhere(compiler: &mut Command) -> &mut Command {
    // Either would take the place of our own flags.
    compiler
        .env_remove("RUSTFLAGS")
        .env_remove("CARGO_ENCODED_RUSTFLAGS")
        .env(FLAGS, flags(&package_folders()))
}

/// The folders in which Cargo unpacks the packages that it fetched, one a registry.
fn package_folders() -> Vec<String> {
    let home = env::var_os("CARGO_HOME").map(Into::into).or_else(|| Some(env::home_dir()?.join(".cargo")));
    let entries = home.and_then(|home| fs::read_dir(home.join("registry/src")).ok());
    let mut folders: Vec<String> = entries
        .into_iter()
        .flatten()
        .filter_map(|entry| Some(entry.ok()?.path().to_str()?.to_owned()))
        // Cargo parts flags at spaces.
        .filter(|folder| !folder.contains(char::is_whitespace) && Path::new(folder).is_absolute())
        .collect();
    folders.sort();
    folders
}

fn flags(folders: &[String]) -> String {
    folders.iter().map(|folder| format!("--remap-path-prefix={folder}/=")).collect::<Vec<_>>().join(" ")
}
