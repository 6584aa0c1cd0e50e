//! The Python libraries that some tests compare with, in an environment of their own.

use super::apt;
use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use std::fs;
use std::path::PathBuf;
use std::process::Command;

/// What to install, relative to the checkout.
const REQUIREMENTS: &str = "tests/reference/requirements.txt";

/// The Python that has the libraries; made on first use, and anew when the list changed.
///
/// # Errors
/// When it cannot be made.
pub fn ready(places: &Places) -> Result<PathBuf, Fault> {
    let list = places.root().join(REQUIREMENTS);
    let wanted = fs::read_to_string(&list).map_err(|error| Fault::file(&list, &error))?;
    let folder = places.python();
    let python = folder.join(if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" });
    let stamp = folder.join("installed.txt");
    if python.is_file() && fs::read_to_string(&stamp).is_ok_and(|installed| installed == wanted) {
        return Ok(python);
    }
    let mut make = Command::new("python3");
    make.args(["-m", "venv", "--clear"]).arg(&folder);
    let title = "Making a Python environment for the comparisons";
    if child::step(title, &mut make).is_err() {
        // Debian's Python comes without this part.
        apt::install(&["python3-venv"])?;
        child::step(title, &mut make)?;
    }
    let mut install = Command::new(&python);
    install.args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "-r"]).arg(&list);
    child::step("Installing the Python libraries", &mut install)?;
    fs::write(&stamp, wanted).map_err(|error| Fault::file(&stamp, &error))?;
    Ok(python)
}
