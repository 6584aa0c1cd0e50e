//! Node with the packages of `tests/browser`, and its test runner.

use super::figures;
use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use std::ffi::OsStr;
use std::path::Path;
use std::process::Command;
use std::{fs, io};

/// The oldest Node that serves.
const OLDEST: u32 = 20;
/// Node's list of exact package versions.
const LOCK: &str = "package-lock.json";

/// Playwright runs on no older Node; said first, because its own complaint is hard to read.
///
/// # Errors
/// When Node is too old, or not there.
pub fn recent() -> Result<(), Fault> {
    let version = child::answer(Command::new("node").arg("--version")).unwrap_or_else(|| "none".to_owned());
    let major = version.trim_start_matches('v').split('.').next().and_then(|major| major.parse::<u32>().ok());
    if major.is_some_and(|major| major >= OLDEST) {
        return Ok(());
    }
    Err(Fault::new(format!("The browser tests need Node {OLDEST} or newer; on PATH is {version}.")))
}

/// Copies `tests/browser` to where Node finds its packages, installs these, and gives the names of the
/// files.
///
/// # Errors
/// When a file cannot be copied or the packages cannot be installed.
pub fn scripts(places: &Places) -> Result<Vec<String>, Fault> {
    let folder = places.browser();
    let from = places.root().join("tests/browser");
    let mut names = copy(&from, &folder).map_err(|error| Fault::file(&from, &error))?;
    names.sort();
    install_packages(&folder)?;
    Ok(names)
}

/// Node's test runner beside the copied files; the files to run are for the caller to add.
pub fn runner(places: &Places, browser: &Path) -> Command {
    let mut node = Command::new("node");
    node
        // One file at a time: they measure, and share two cores with the browser.
        .args(["--test", "--test-reporter=spec", "--test-concurrency=1"])
        .current_dir(places.browser())
        .env("BRIMLINE_CHROMIUM", browser)
        .env(figures::FILE, figures::file(places))
        // Colours would hide the counts.
        .env_remove("FORCE_COLOR");
    node
}

/// Copies files, not folders. Earlier copies go, so that a test deleted there does not run on.
fn copy(from: &Path, to: &Path) -> io::Result<Vec<String>> {
    fs::create_dir_all(to)?;
    for old in fs::read_dir(to)? {
        let old = old?.path();
        if old.extension() == Some(OsStr::new("mjs")) {
            fs::remove_file(old)?;
        }
    }
    let mut names = Vec::new();
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        if entry.file_type()?.is_file() {
            fs::copy(entry.path(), to.join(entry.file_name()))?;
            names.push(entry.file_name().to_string_lossy().into_owned());
        }
    }
    Ok(names)
}

/// Installs Node's packages unless the same list is installed already.
fn install_packages(folder: &Path) -> Result<(), Fault> {
    let lock = folder.join(LOCK);
    let wanted = fs::read(&lock).map_err(|error| Fault::file(&lock, &error))?;
    let stamp = folder.join("node_modules/installed-from.json");
    if fs::read(&stamp).is_ok_and(|installed| installed == wanted) {
        return Ok(());
    }
    let mut npm = Command::new("npm");
    npm.args(["ci", "--no-audit", "--no-fund"]).current_dir(folder);
    child::step("Installing the browser tests' Node packages", &mut npm)?;
    fs::write(&stamp, wanted).map_err(|error| Fault::file(&stamp, &error))
}
