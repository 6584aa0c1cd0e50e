//! Cuts the compiled page into the chunk that opens Fill and the one that is loaded when first needed.
//!
//! Trunk cannot: the cut comes between Cargo and wasm-bindgen. What Trunk made of the uncut page is
//! overwritten.

use super::child;
use super::fault::Fault;
use super::places::Places;
use super::shorten::shorten;
use super::tools::Tools;
use std::path::{Path, PathBuf};
use std::{env, fs};

/// What wasm-opt is told, of the page and of the benchmark that speaks for it.
pub const OPTIMIZE: &[&str] = &[
    "--flatten",
    "--rereloop",
    // Twice: the first round leaves code that the second one finds to be the same.
    "-Oz",
    "-Oz",
    // The lowest kilobyte is the end of the stack: no address is made by wrapping around to it.
    "--low-memory-unused",
    "--enable-bulk-memory",
    "--enable-multivalue",
    "--enable-mutable-globals",
    "--enable-nontrapping-float-to-int",
    "--enable-reference-types",
    "--enable-sign-ext",
];

/// Cuts the page and puts the pieces into the folder of the build that Trunk is about to finish.
///
/// # Errors
/// When there is no compiled page, or one of the tools fails.
pub fn run() -> Result<(), Fault> {
    let build = env::var_os("TRUNK_STAGING_DIR").map(PathBuf::from).ok_or_else(|| {
        Fault::new("TRUNK_STAGING_DIR names no folder with a build in it.").by_hand("trunk build --release")
    })?;
    let places = Places::find()?;
    cut(&places, &build)
}

fn cut(places: &Places, build: &Path) -> Result<(), Fault> {
    let profile = env::var("TRUNK_PROFILE").unwrap_or_else(|_| "release".to_owned());
    let target = places.compiled();
    let compiled = target.join("wasm32-unknown-unknown").join(&profile).join("brimline.wasm");
    let bytes = fs::read(&compiled).map_err(|error| Fault::file(&compiled, &error))?;
    let pieces = target.join("pieces");
    if pieces.exists() {
        fs::remove_dir_all(&pieces).map_err(|error| Fault::file(&pieces, &error))?;
    }
    let main = pieces.join("brimline.wasm");
    let mut options = wasm_split_cli_support::Options::new(&bytes);
    options.output_dir = &pieces;
    options.main_out_path = &main;
    options.main_module = "./brimline.js";
    let cut = wasm_split_cli_support::transform(options)
        .map_err(|error| Fault::new(format!("The page could not be cut into chunks: {error:#}")))?;

    let tools = Tools::of(places)?;
    // The function table has to stay exported: the chunk puts its functions into it.
    let mut bindgen = tools.program("wasm-bindgen");
    bindgen.args([
        "--target",
        "web",
        "--no-typescript",
        "--keep-lld-exports",
        "--out-name",
        "brimline",
        "--out-dir",
    ]);
    child::step("Binding the page", bindgen.arg(build).arg(&main))?;
    let link = "__wasm_split.js";
    fs::copy(pieces.join(link), build.join(link)).map_err(|error| Fault::file(&pieces.join(link), &error))?;
    let whole = build.join("brimline_bg.wasm");
    shorten_both(&whole, &build.join("brimline.js"))?;
    let mut jobs = vec![(whole.clone(), whole)];
    for piece in cut.split_modules {
        let name = piece.file_name().map(|name| build.join(name)).unwrap_or_default();
        jobs.push((piece, name));
    }
    for (from, to) in jobs {
        if profile == "release" {
            child::step(
                "Optimizing a chunk",
                tools.program("wasm-opt").args(OPTIMIZE).arg(&from).arg("-o").arg(&to),
            )?;
        } else if from != to {
            fs::copy(&from, &to).map_err(|error| Fault::file(&from, &error))?;
        }
    }
    Ok(())
}

fn shorten_both(page: &Path, script: &Path) -> Result<(), Fault> {
    let bytes = fs::read(page).map_err(|error| Fault::file(page, &error))?;
    let text = fs::read_to_string(script).map_err(|error| Fault::file(script, &error))?;
    let (bytes, text) = shorten(&bytes, &text)
        .map_err(|error| Fault::new(format!("The page could not be read after it was bound: {error}")))?;
    fs::write(page, bytes).map_err(|error| Fault::file(page, &error))?;
    fs::write(script, text).map_err(|error| Fault::file(script, &error))
}
