//! The build tools: found in the user's cache or on PATH, installed into the cache otherwise.

mod fits;
mod install;

pub use install::wasm_target;

use super::child;
use super::fault::Fault;
use super::lock;
use super::places::Places;
use fits::Fits;
use std::env;
use std::ffi::{OsStr, OsString};
use std::path::{Path, PathBuf};
use std::process::Command;

/// A build tool.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Tool {
    Trunk,
    WasmBindgen,
    TestRunner,
    WasmOpt,
    Deny,
}

impl Tool {
    /// What builds the page, and runs its code in a browser.
    const PAGE: [Self; 4] = [Self::Trunk, Self::WasmBindgen, Self::TestRunner, Self::WasmOpt];

    fn name(self) -> &'static str {
        match self {
            Self::Trunk => "trunk",
            Self::WasmBindgen => "wasm-bindgen",
            Self::TestRunner => "wasm-bindgen-test-runner",
            Self::WasmOpt => "wasm-opt",
            Self::Deny => "cargo-deny",
        }
    }
}

/// Where the checkout's tools are, or will be.
#[derive(Debug)]
pub struct Tools<'a> {
    places: &'a Places,
    /// The exact wasm-bindgen that the page's code needs.
    bindgen: String,
    path: OsString,
}

impl<'a> Tools<'a> {
    /// The tools that the checkout at `places` needs; nothing is looked for yet.
    ///
    /// # Errors
    /// When Cargo.lock does not say which versions are needed.
    pub fn of(places: &'a Places) -> Result<Self, Fault> {
        let bindgen = lock::version_of(places.root(), "wasm-bindgen")?;
        let cache = places.tools();
        // The cache comes first: Trunk takes the first of each name, and downloads its own if that
        // has the wrong version.
        let cached = [cache.join("bin"), cache.join("binaryen/node_modules/.bin")];
        let usual = env::var_os("PATH").unwrap_or_default();
        let path = env::join_paths(cached.into_iter().chain(env::split_paths(&usual)))
            .map_err(|error| Fault::new(format!("{} cannot stand in PATH: {error}.", cache.display())))?;
        Ok(Self { places, bindgen, path })
    }

    /// Whether every tool that builds the page is here already.
    pub fn are_here(&self) -> bool {
        Tool::PAGE.into_iter().all(|tool| self.find(tool).is_some())
    }

    /// Installs what is missing of the tools that build the page.
    ///
    /// # Errors
    /// When one cannot be installed.
    pub fn install(&self) -> Result<(), Fault> {
        wasm_target()?;
        self.get(&Tool::PAGE)
    }

    /// Installs what tells which packages may come in, if it is missing.
    ///
    /// # Errors
    /// When it cannot be installed.
    pub fn install_deny(&self) -> Result<(), Fault> {
        self.get(&[Tool::Deny])
    }

    /// It, to be given its words.
    pub fn deny(&self) -> Command {
        self.program(Tool::Deny.name())
    }

    fn get(&self, tools: &[Tool]) -> Result<(), Fault> {
        for &tool in tools {
            if self.find(tool).is_some() {
                continue;
            }
            match tool {
                Tool::Trunk => install::trunk(self.places)?,
                Tool::WasmBindgen | Tool::TestRunner => install::wasm_bindgen(self.places, &self.bindgen)?,
                Tool::WasmOpt => install::wasm_opt(self.places)?,
                Tool::Deny => install::deny(self.places)?,
            }
            if self.find(tool).is_none() {
                let folder = self.places.tools();
                let name = tool.name();
                return Err(Fault::new(format!(
                    "{name} was installed in {} but does not run.",
                    folder.display()
                )));
            }
        }
        install::tidy(self.places);
        Ok(())
    }

    /// One of the tools, to be given its words.
    pub fn program(&self, name: &str) -> Command {
        let mut program = Command::new(name);
        program.env("PATH", &self.path);
        program
    }

    /// PATH with the tools in it.
    pub fn path(&self) -> &OsStr {
        &self.path
    }

    /// What runs a compiled WebAssembly test in a browser, once it is installed.
    pub fn test_runner(&self) -> Option<PathBuf> {
        self.find(Tool::TestRunner)
    }

    /// The first program of the tool's name, if its version serves.
    fn find(&self, tool: Tool) -> Option<PathBuf> {
        let fits = match tool {
            Tool::Trunk => Fits::Series("0.21"),
            Tool::WasmBindgen | Tool::TestRunner => Fits::Exactly(&self.bindgen),
            Tool::WasmOpt => Fits::AtLeast(116),
            Tool::Deny => Fits::Series("0.20"),
        };
        let program = first(&[tool.name()], &self.path)?;
        fits.accepts(&version_of(&program)?).then_some(program)
    }
}

/// The first program on PATH that has one of these names; earlier names are preferred.
pub fn on_path(names: &[&str]) -> Option<PathBuf> {
    first(names, &env::var_os("PATH")?)
}

fn first(names: &[&str], path: &OsStr) -> Option<PathBuf> {
    let files = names.iter().map(|name| format!("{name}{}", env::consts::EXE_SUFFIX));
    files
        .flat_map(|file| env::split_paths(path).map(move |folder| folder.join(&file)))
        .find(|program| program.is_file())
}

/// Runs `program --version` and gives the first word of its answer that starts with a digit.
fn version_of(program: &Path) -> Option<String> {
    let text = child::answer(Command::new(program).arg("--version"))?;
    text.split_whitespace().find(|word| word.starts_with(|c: char| c.is_ascii_digit())).map(str::to_owned)
}
