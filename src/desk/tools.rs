//! The build tools: found on PATH or in the user's cache, installed there otherwise.

mod find;
mod install;

pub use find::on_path;
pub use install::wasm_target;

use super::fault::Fault;
use super::lock;
use super::places::Places;
use std::env;
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A build tool and the versions of it that serve.
#[derive(Debug)]
struct Tool {
    name: &'static str,
    fits: Fits,
}

/// Which versions serve.
#[derive(Debug)]
enum Fits {
    /// Any of this series, as `0.21`.
    Series(&'static str),
    /// This one only, as `0.2.100`.
    Exactly(String),
    /// A plain number that is at least this.
    AtLeast(u32),
}

impl Fits {
    fn accepts(&self, version: &str) -> bool {
        match self {
            Self::Series(series) => version.strip_prefix(series).is_some_and(|rest| rest.starts_with('.')),
            Self::Exactly(wanted) => version == wanted,
            Self::AtLeast(least) => version.parse::<u32>().is_ok_and(|number| number >= *least),
        }
    }
}

/// The tools, ready to use.
#[derive(Debug)]
pub struct Tools {
    folders: Vec<PathBuf>,
    test_runner: PathBuf,
}

impl Tools {
    /// Finds every tool, and installs those that are missing.
    ///
    /// # Errors
    /// When a tool can be neither found nor installed.
    pub fn ready(places: &Places) -> Result<Self, Fault> {
        wasm_target()?;
        let bindgen = lock::version_of(places.root(), "wasm-bindgen")?;
        let mut folders = Vec::new();
        let mut place = |name, fits| -> Result<PathBuf, Fault> {
            let tool = Tool { name, fits };
            let found = find_or_install(&tool, places, &bindgen)?;
            folders.extend(found.parent().map(Path::to_path_buf));
            Ok(found)
        };
        place("trunk", Fits::Series("0.21"))?;
        place("wasm-bindgen", Fits::Exactly(bindgen.clone()))?;
        let test_runner = place("wasm-bindgen-test-runner", Fits::Exactly(bindgen.clone()))?;
        place("wasm-opt", Fits::AtLeast(116))?;
        install::tidy(places);
        folders.dedup();
        Ok(Self { folders, test_runner })
    }

    /// PATH with these tools before any other of the same name: Trunk would otherwise try to
    /// download its own.
    pub fn path(&self) -> OsString {
        let usual = env::var_os("PATH").unwrap_or_default();
        let all = self.folders.iter().cloned().chain(env::split_paths(&usual));
        // A folder name with the separator in it cannot stand in PATH; it did not come from there.
        env::join_paths(all).unwrap_or(usual)
    }

    /// What runs a compiled WebAssembly test in a browser.
    pub fn test_runner(&self) -> &Path {
        &self.test_runner
    }
}

fn find_or_install(tool: &Tool, places: &Places, bindgen: &str) -> Result<PathBuf, Fault> {
    if let Some(found) = find::fitting(tool, places) {
        return Ok(found);
    }
    match tool.name {
        "trunk" => install::trunk(places)?,
        "wasm-opt" => install::wasm_opt(places)?,
        _ => install::wasm_bindgen(places, bindgen)?,
    }
    find::fitting(tool, places).ok_or_else(|| {
        let folder = places.tools();
        Fault::new(format!(
            "{} was installed into {} but does not run from there.",
            tool.name,
            folder.display()
        ))
    })
}

/// Runs `program --version` and gives the first word of its answer that starts with a digit.
fn version_of(program: &Path) -> Option<String> {
    let text = super::child::answer(Command::new(program).arg("--version"))?;
    text.split_whitespace().find(|word| word.starts_with(|c: char| c.is_ascii_digit())).map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use super::Fits;

    #[test]
    fn a_series_ends_at_a_dot() {
        assert!(Fits::Series("0.21").accepts("0.21.14"));
        assert!(!Fits::Series("0.21").accepts("0.210.0"));
        assert!(!Fits::Series("0.21").accepts("0.20.3"));
    }

    #[test]
    fn a_least_number_and_an_exact_version() {
        assert!(Fits::AtLeast(116).accepts("132"));
        assert!(!Fits::AtLeast(116).accepts("108"));
        assert!(Fits::Exactly("0.2.9".to_owned()).accepts("0.2.9"));
        assert!(!Fits::Exactly("0.2.9".to_owned()).accepts("0.2.90"));
    }
}
