//! Whether the page comes out the same wherever it is built: sealed from this checkout and from a copy of it in another
//! folder, file by file.

use super::browser;
use super::figures;
use super::tally::Tally;
use crate::desk::child;
use crate::desk::digest;
use crate::desk::fault::Fault;
use crate::desk::fingerprint::files;
use crate::desk::places::Places;
use std::fs;
use std::path::Path;
use std::process::Command;

/// What a checkout has that a build reads, or that Cargo wants to see.
const COPIED: [&str; 7] = ["Cargo.lock", "Cargo.toml", "Trunk.toml", "index.html", "src", "style", "tests"];
/// The list of digests in a sealed folder.
const SUMS: &str = "SHA256SUMS";

/// Builds twice and compares.
///
/// # Errors
/// When the copy cannot be made or one of the builds fails.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let scratch = places.twice();
    if scratch.exists() {
        fs::remove_dir_all(&scratch).map_err(|error| Fault::file(&scratch, &error))?;
    }
    let other = scratch.join("another folder").join("checkout");
    copy(places.root(), &other)?;
    let (one, two) = (scratch.join("one"), scratch.join("two"));
    seal(places, places.root(), &one)?;
    seal(places, &other, &two)?;
    let read = |folder: &Path| {
        let path = folder.join(SUMS);
        fs::read_to_string(&path).map_err(|error| Fault::file(&path, &error))
    };
    let (one, two) = (read(&one)?, read(&two)?);
    let differing = || two.lines().filter(|line| !one.lines().any(|other| other == *line));
    for line in differing() {
        println!("    differs: {line}");
    }
    let told = format!("{} of {}", differing().count(), two.lines().count());
    figures::note(places, "files that differ between builds in two folders", "0", &told)?;
    println!("    {} files, SHA-256 of their list {}", one.lines().count(), digest::hex(one.as_bytes()));
    let tally = Tally::one(one == two);
    println!("    {}", if one == two { "the same twice" } else { "FAILED" });
    fs::remove_dir_all(&scratch).map_err(|error| Fault::file(&scratch, &error))?;
    Ok(tally)
}

fn copy(from: &Path, to: &Path) -> Result<(), Fault> {
    for start in COPIED {
        for (name, path) in files(from, &from.join(start))? {
            let target = to.join(name);
            let folder = target.parent().unwrap_or(to);
            fs::create_dir_all(folder).map_err(|error| Fault::file(folder, &error))?;
            fs::copy(&path, &target).map_err(|error| Fault::file(&path, &error))?;
        }
    }
    Ok(())
}

/// This tool, run as a person runs it in that checkout. What was compiled of other packages is shared: they lie in the
/// same place for both.
fn seal(places: &Places, checkout: &Path, out: &Path) -> Result<(), Fault> {
    let mut desk = Command::new(browser::desk(places));
    desk.arg("seal")
        .arg(out)
        .current_dir(checkout)
        .env("CARGO_MANIFEST_DIR", checkout)
        .env("CARGO_TARGET_DIR", places.compiled());
    child::step(&format!("Sealing the page of {}", checkout.display()), &mut desk)
}
