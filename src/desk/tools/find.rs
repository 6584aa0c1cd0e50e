//! Where a tool may already be.

use super::{Tool, version_of};
use crate::desk::places::Places;
use std::env;
use std::path::PathBuf;

/// The tool, if a version that serves is there: the one that PATH gives, else the one in the cache.
pub fn fitting(tool: &Tool, places: &Places) -> Option<PathBuf> {
    // Only PATH's first counts: a later one would need its whole folder moved to the front, and
    // with it whatever else is in there.
    let usual = on_path(&[tool.name]);
    let cache = places.tools();
    let cached = [cache.join("bin"), cache.join("binaryen/node_modules/.bin")];
    let cached = cached.into_iter().map(|folder| folder.join(file_name(tool.name)));
    usual
        .into_iter()
        .chain(cached)
        .filter(|program| program.is_file())
        .find(|program| version_of(program).is_some_and(|version| tool.fits.accepts(&version)))
}

/// The first program on PATH that has one of these names; earlier names are preferred.
pub fn on_path(names: &[&str]) -> Option<PathBuf> {
    let folders: Vec<PathBuf> = env::split_paths(&env::var_os("PATH")?).collect();
    names
        .iter()
        .flat_map(|name| folders.iter().map(move |folder| folder.join(file_name(name))))
        .find(|program| program.is_file())
}

fn file_name(name: &str) -> String {
    format!("{name}{}", env::consts::EXE_SUFFIX)
}
