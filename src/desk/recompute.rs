//! Works a saved answer out again, natively, with the same core as the page.

use crate::form::names;
use crate::form::saved::{Agreement, Doubt, recompute};
use crate::words::{Argument, Words};
use std::path::Path;
use std::process::ExitCode;

/// Reads the answer in `path`, works it out again and tells whether it stands: exit code 0 if so,
/// 1 with the reason if not.
pub fn run(path: &Path) -> ExitCode {
    let words = Words::english();
    let file = ("file", Argument::text(path.display().to_string()));
    let text = match std::fs::read_to_string(path) {
        Ok(text) => text,
        Err(error) => {
            let reason = ("reason", Argument::text(error.to_string()));
            eprintln!("{}", words.tell("recompute-no-file", &[file, reason]));
            return ExitCode::FAILURE;
        }
    };
    match recompute(&text) {
        Ok(Agreement { view, figures }) => {
            let view = ("view", Argument::text(words.say(&format!("view-{}", view.code()))));
            let figures = ("n", Argument::number(figures as f64, figures.to_string()));
            println!("{}", words.tell("recompute-agrees", &[file, view, figures]));
            ExitCode::SUCCESS
        }
        Err(doubt) => {
            eprintln!("{}", reason(&words, file, &doubt));
            ExitCode::FAILURE
        }
    }
}

fn reason(words: &Words, file: (&str, Argument), doubt: &Doubt) -> String {
    let si = |value: &Option<f64>| Argument::text(value.map_or_else(|| "–".to_owned(), |si| si.to_string()));
    match doubt {
        Doubt::Unreadable(reason) => {
            words.tell("recompute-unreadable", &[file, ("reason", Argument::text(reason.clone()))])
        }
        Doubt::Later(schema) => {
            words.tell("recompute-later", &[file, ("schema", Argument::text(schema.to_string()))])
        }
        Doubt::InputChanged => words.tell("recompute-input", &[file]),
        Doubt::Differs { name, saved, now } => {
            let known = names::ALL.contains(&name.as_str());
            let key = if known { "recompute-differs" } else { "recompute-unknown-figure" };
            let name = ("name", Argument::text(name.clone()));
            words.tell(key, &[file, name, ("saved", si(saved)), ("now", si(now))])
        }
        Doubt::Remarks => words.tell("recompute-remarks", &[file]),
    }
}
