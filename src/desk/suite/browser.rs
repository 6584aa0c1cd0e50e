//! `tests/browser`: the finished page, served by this tool, in a headless browser.

use super::apt;
use super::tally::Tally;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use crate::desk::{build, child};
use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::{env, fs, io};

/// The oldest Node that serves.
const OLDEST_NODE: u32 = 20;
/// Node's list of exact package versions.
const LOCK: &str = "package-lock.json";

/// Builds the page and runs every `*.test.mjs`.
///
/// # Errors
/// When the page cannot be built, or Node's packages or the browser cannot be installed.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let browser = apt::browser()?;
    recent_node()?;
    build::page(places)?;
    let folder = places.browser();
    let tests = copy_tests(&places.root().join("tests/browser"), &folder)?;
    install_packages(&folder)?;
    let mut node = Command::new("node");
    node
        // One file at a time: they measure, and share two cores with the browser.
        .args(["--test", "--test-reporter=spec", "--test-concurrency=1"])
        .args(tests)
        .current_dir(&folder)
        .env("BRIMLINE_ROOT", places.root())
        .env("BRIMLINE_PAGE", places.page())
        .env("BRIMLINE_DESK", desk(places))
        .env("BRIMLINE_CHROMIUM", browser)
        // Colours would hide the counts.
        .env_remove("FORCE_COLOR");
    Tally::of(&mut node)
}

/// Keeps a copy of this program for the tests: other parts of the suite may compile it anew, and
/// its own file is then gone.
///
/// # Errors
/// When it cannot be copied.
pub fn keep_desk(places: &Places) -> Result<(), Fault> {
    let copy = desk(places);
    let kept = || -> io::Result<()> {
        fs::create_dir_all(places.browser())?;
        if copy.exists() {
            fs::remove_file(&copy)?;
        }
        fs::copy(env::current_exe()?, &copy).map(drop)
    };
    kept().map_err(|error| Fault::file(&copy, &error))
}

fn desk(places: &Places) -> PathBuf {
    places.browser().join(format!("brimline{}", env::consts::EXE_SUFFIX))
}

/// Playwright runs on no older Node; said first, because its own complaint is hard to read.
fn recent_node() -> Result<(), Fault> {
    let version = child::answer(Command::new("node").arg("--version")).unwrap_or_else(|| "none".to_owned());
    let major = version.trim_start_matches('v').split('.').next().and_then(|major| major.parse::<u32>().ok());
    if major.is_some_and(|major| major >= OLDEST_NODE) {
        return Ok(());
    }
    Err(Fault::new(format!("The browser tests need Node {OLDEST_NODE} or newer; on PATH is {version}.")))
}

/// Copies the files (not folders) of `from` to where Node finds its packages, and gives the names
/// of the tests. Earlier copies go, so that a test deleted there does not run on.
fn copy_tests(from: &Path, to: &Path) -> Result<Vec<PathBuf>, Fault> {
    let copied = || -> io::Result<Vec<PathBuf>> {
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
                names.push(PathBuf::from(entry.file_name()));
            }
        }
        Ok(names)
    };
    let mut names = copied().map_err(|error| Fault::file(from, &error))?;
    names.retain(|name| name.to_string_lossy().ends_with(".test.mjs"));
    names.sort();
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
