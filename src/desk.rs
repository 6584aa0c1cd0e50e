//! The desk tool: builds and serves the page, seals a build for offline use, runs every check.
//!
//! Native only. It knows nothing of floors or labels but by the core's own functions: it is the workbench
//! around the page.

mod bom;
mod build;
mod child;
mod digest;
mod fault;
mod fingerprint;
mod headers;
pub mod languages;
mod lock;
mod one_file;
mod places;
mod precache;
mod recompute;
mod seal;
mod serve;
mod shorten;
mod split;
mod suite;
mod tools;

use fault::Fault;
use places::Places;
use std::path::Path;
use std::process::ExitCode;

/// What `help` prints.
const USAGE: &str = "\
Brimline's desk tool

  cargo run                              build the page if something changed, and serve it
  cargo run -- serve [PORT]              the same, at this port (8087 or the next free one otherwise)
      --no-build                         serve the last build as it is
      --page FOLDER                      serve this folder as it is
  cargo run -- test [--only PART ...]    install what the checks need and run them all, or these parts:
                                         lint, native, wasm, browser, bench, twice, reference
  cargo run -- seal FOLDER               write the page, ready for any server, into a new or empty folder
  cargo run -- recompute FILE            work an answer saved from the page out again, and compare
  cargo run -- pack                      cut a build into chunks, precache, and seal the page into
                                         target/brimline.html (Trunk calls this)
  cargo run -- precache                  list a build's files in its worker.js
  cargo run -- help                      this text
";

/// The exit code for a command line that says nothing this tool knows.
const MISUSED: u8 = 2;

/// Runs the command line `args` (without the program's own name) and gives the exit code:
/// 0 when it went well, 1 when it failed, 2 when the words are unknown.
pub fn run(args: impl Iterator<Item = String>) -> ExitCode {
    let args: Vec<String> = args.collect();
    let words: Vec<&str> = args.iter().map(String::as_str).collect();
    dispatch(&words).unwrap_or_else(|fault| {
        eprintln!("\n{fault}");
        if fault.is_misuse() {
            eprint!("\n{USAGE}");
            return ExitCode::from(MISUSED);
        }
        ExitCode::FAILURE
    })
}

fn dispatch(words: &[&str]) -> Result<ExitCode, Fault> {
    match words {
        [] => serve::run(&[])?,
        ["serve", rest @ ..] => serve::run(rest)?,
        ["test", rest @ ..] => return suite::run(rest),
        ["seal", folder] => seal::run(Path::new(folder))?,
        ["seal", ..] => return Err(Fault::misuse("seal takes one folder.".to_owned())),
        ["recompute", file] => return Ok(recompute::run(Path::new(file))),
        ["recompute", ..] => return Err(Fault::misuse("recompute takes one file.".to_owned())),
        ["precache"] => precache::run(&Places::find()?, &places::staging()?)?,
        // One command: Trunk runs the hooks of a stage side by side.
        ["pack"] => {
            let (places, build) = (Places::find()?, places::staging()?);
            split::run(&places, &build)?;
            languages::run(&places, &build)?;
            precache::run(&places, &build)?;
            one_file::run(&places, &build)?;
        }
        ["help" | "--help" | "-h"] => print!("{USAGE}"),
        [word, ..] => return Err(Fault::misuse(format!("This tool does not know \"{word}\"."))),
    }
    Ok(ExitCode::SUCCESS)
}
