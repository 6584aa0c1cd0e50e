//! Programs from the system's packages, where apt-get can install them.

use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::tools;
use std::path::PathBuf;
use std::process::Command;

/// The names that a usable browser goes by.
const BROWSERS: [&str; 4] = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
/// The names that the second browser goes by, which opens the single file.
const SECOND_BROWSERS: [&str; 2] = ["firefox", "firefox-esr"];
/// What brings it.
const SECOND_PACKAGES: [&str; 1] = ["firefox-esr"];
/// The program that drives it for the WebAssembly tests.
const DRIVER: &str = "chromedriver";
/// What brings both, and letters to draw with.
const PACKAGES: [&str; 3] = ["chromium", "chromium-driver", "fonts-dejavu-core"];

/// A browser, installed if there is none.
///
/// # Errors
/// When there is none and it cannot be installed.
pub fn browser() -> Result<PathBuf, Fault> {
    found_or_installed(&BROWSERS, &PACKAGES)
}

/// A browser of another make, installed if there is none.
///
/// # Errors
/// When there is none and it cannot be installed.
pub fn second_browser() -> Result<PathBuf, Fault> {
    found_or_installed(&SECOND_BROWSERS, &SECOND_PACKAGES)
}

/// The browser's driver, installed with a browser if there is none.
///
/// # Errors
/// When there is none and it cannot be installed.
pub fn driver() -> Result<PathBuf, Fault> {
    found_or_installed(&[DRIVER], &PACKAGES)
}

fn found_or_installed(names: &[&str], packages: &[&str]) -> Result<PathBuf, Fault> {
    if let Some(found) = tools::on_path(names) {
        return Ok(found);
    }
    install(packages)?;
    tools::on_path(names).ok_or_else(|| Fault::new(format!("{} was installed but is not on PATH.", names[0])))
}

/// Installs system packages, as root or through sudo without a password.
///
/// # Errors
/// When this is not possible; the fault carries the command.
pub fn install(packages: &[&str]) -> Result<(), Fault> {
    let names = packages.join(" ");
    let by_hand = format!("sudo apt-get update && sudo apt-get install {names}");
    if tools::on_path(&["apt-get"]).is_none() {
        return Err(Fault::new(format!("{names} must be installed; how depends on this system.")));
    }
    let root = child::answer(Command::new("id").arg("-u")).as_deref() == Some("0");
    let apt = |words: &[&str]| {
        let mut command = Command::new(if root { "apt-get" } else { "sudo" });
        if !root {
            command.args(["-n", "apt-get"]);
        }
        command.args(words).env("DEBIAN_FRONTEND", "noninteractive");
        command
    };
    let failed = |_| Fault::new(format!("{names} could not be installed.")).by_hand(&*by_hand);
    child::step("Reading the list of system packages", &mut apt(&["update"])).map_err(failed)?;
    let mut install = apt(&["install", "-y", "--no-install-recommends"]);
    child::step(&format!("Installing {names}"), install.args(packages)).map_err(failed)
}
