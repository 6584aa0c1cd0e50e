//! `tests/browser`: the finished page, served by this tool, in a headless browser.

use super::tally::Tally;
use super::{apt, node};
use crate::desk::build;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::{env, fs, io};

/// Builds the page and runs every `*.test.mjs`.
///
/// # Errors
/// When the page cannot be built, or Node's packages or the browser cannot be installed.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let browser = apt::browser()?;
    let second = apt::second_browser()?;
    node::recent()?;
    build::page(places)?;
    let tests = node::scripts(places)?.into_iter().filter(|name| name.ends_with(".test.mjs"));
    Tally::of(page(places, &browser).env("BRIMLINE_FIREFOX", second).args(tests))
}

/// Node's test runner for what opens the finished page; the files to run are for the caller to add.
pub fn page(places: &Places, browser: &Path) -> Command {
    let mut runner = node::runner(places, browser);
    runner
        .env("BRIMLINE_ROOT", places.root())
        .env("BRIMLINE_PAGE", places.page())
        .env("BRIMLINE_ONE_FILE", places.one_file())
        .env("BRIMLINE_DESK", desk(places));
    runner
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

/// That copy.
pub fn desk(places: &Places) -> PathBuf {
    places.browser().join(format!("brimline{}", env::consts::EXE_SUFFIX))
}
