//! The folder that is written: nothing of anybody else's is lost in it.

use crate::desk::digest;
use crate::desk::fault::Fault;
use crate::desk::fingerprint::files;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// The list of what this tool wrote, as `sha256sum` writes and checks it.
pub const SUMS: &str = "SHA256SUMS";

/// The list of these files, without itself.
pub fn sums(files: &BTreeMap<String, Vec<u8>>) -> String {
    let line = |(name, bytes): (&String, &Vec<u8>)| format!("{}  {name}", digest::hex(bytes));
    files.iter().map(line).collect::<Vec<_>>().join("\n") + "\n"
}

/// Writes the files into a folder that is new, empty, or as this tool left it.
///
/// # Errors
/// When there is anything else in it, or it cannot be written.
pub fn write(folder: &Path, files: &BTreeMap<String, Vec<u8>>) -> Result<(), Fault> {
    for path in ours(folder)? {
        fs::remove_file(&path).map_err(|error| Fault::file(&path, &error))?;
        // What still has something in it stays.
        path.ancestors()
            .skip(1)
            .take_while(|above| *above != folder)
            .all(|above| fs::remove_dir(above).is_ok());
    }
    // The list comes first: where a run is cut short, the next one knows what is its own.
    let list = [(SUMS.to_owned(), sums(files).into_bytes())];
    for (name, bytes) in list.iter().map(|(name, bytes)| (name, bytes)).chain(files) {
        let path = folder.join(name);
        let inside = path.parent().unwrap_or(folder);
        fs::create_dir_all(inside).map_err(|error| Fault::file(inside, &error))?;
        fs::write(&path, bytes).map_err(|error| Fault::file(&path, &error))?;
    }
    Ok(())
}

/// The files of an earlier run.
///
/// # Errors
/// When the folder holds anything else, or something was changed since.
pub fn ours(folder: &Path) -> Result<Vec<PathBuf>, Fault> {
    if folder.exists() && !folder.is_dir() {
        return Err(Fault::new(format!("{} is a file: name a folder.", folder.display())));
    }
    let found = files(folder, folder)?;
    if found.is_empty() {
        return Ok(Vec::new());
    }
    let advice = "Choose an empty folder, or save elsewhere what you want to keep.";
    let Ok(list) = fs::read_to_string(folder.join(SUMS)) else {
        return Err(Fault::new(format!(
            "{} is not empty, and this tool did not write what is in it. {advice}",
            folder.display()
        )));
    };
    let lines = list.lines().filter_map(|line| line.split_once("  "));
    let listed: BTreeMap<&str, &str> = lines.map(|(sum, name)| (name, sum)).collect();
    for (name, path) in &found {
        if name == SUMS {
            continue;
        }
        let bytes = fs::read(path).map_err(|error| Fault::file(path, &error))?;
        let what = match listed.get(name.as_str()) {
            Some(sum) if *sum == digest::hex(&bytes) => continue,
            Some(_) => "was changed since this tool wrote it",
            None => "was not written by this tool",
        };
        return Err(Fault::new(format!("{} {what}. {advice}", path.display())));
    }
    Ok(found.into_iter().map(|(_, path)| path).collect())
}
