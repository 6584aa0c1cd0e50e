//! A digest of everything the page is made from: whether a build is still the latest.

use super::digest::Pieces;
use super::fault::Fault;
use std::fs;
use std::path::{Path, PathBuf};

/// All that a build reads, relative to the checkout.
const INPUTS: [&str; 6] = ["Cargo.lock", "Cargo.toml", "Trunk.toml", "index.html", "src", "style"];

/// The fingerprint of the page's sources under `root`.
///
/// # Errors
/// When a file cannot be read.
pub fn of(root: &Path) -> Result<String, Fault> {
    let mut pieces = Pieces::default();
    for input in INPUTS {
        for (name, path) in files(root, &root.join(input))? {
            pieces.add(&name, &fs::read(&path).map_err(|error| Fault::file(&path, &error))?);
        }
    }
    Ok(pieces.hex())
}

/// Every file in `start` (a file or a folder) with its name relative to `root`, in a fixed order.
/// A `start` that does not exist holds nothing.
///
/// # Errors
/// When a folder cannot be read.
pub fn files(root: &Path, start: &Path) -> Result<Vec<(String, PathBuf)>, Fault> {
    let mut found = Vec::new();
    let mut open = vec![start.to_path_buf()];
    while let Some(path) = open.pop() {
        if path.is_dir() {
            for entry in fs::read_dir(&path).map_err(|error| Fault::file(&path, &error))? {
                open.push(entry.map_err(|error| Fault::file(&path, &error))?.path());
            }
        } else if path.is_file() {
            found.push((relative(root, &path), path));
        }
    }
    found.sort();
    Ok(found)
}

/// The path from `root`, with `/` on every system.
fn relative(root: &Path, path: &Path) -> String {
    let inside = path.strip_prefix(root).unwrap_or(path);
    inside.iter().map(|part| part.to_string_lossy()).collect::<Vec<_>>().join("/")
}
