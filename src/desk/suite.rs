//! `test`: installs what the checks need, runs them all, and closes with their counts.

mod apt;
mod bench;
mod browser;
mod figures;
mod lint;
mod native;
mod node;
mod packages;
mod python;
mod tally;
mod twice;
mod wasm;

use super::fault::Fault;
use super::places::Places;
use std::process::ExitCode;
use std::time::Instant;
use tally::Tally;

/// A part of the suite.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    /// Formatting, clippy and documentation.
    Lint,
    /// Everything that runs without a browser.
    Native,
    /// WebAssembly tests in a headless browser.
    Wasm,
    /// The finished page in a headless browser.
    Browser,
    /// The shift plan and pH against the clock, a spreadsheet and other libraries.
    Bench,
    /// The page built from two folders.
    Twice,
    /// Only the comparisons with Python libraries, which `Native` runs too.
    Reference,
}

impl Part {
    const ALL: [Self; 7] =
        [Self::Lint, Self::Native, Self::Wasm, Self::Browser, Self::Bench, Self::Twice, Self::Reference];
    /// What runs when nothing is chosen, in this order.
    const USUAL: [Self; 6] = [Self::Lint, Self::Native, Self::Wasm, Self::Browser, Self::Twice, Self::Bench];

    fn name(self) -> &'static str {
        match self {
            Self::Lint => "lint",
            Self::Native => "native",
            Self::Wasm => "wasm",
            Self::Browser => "browser",
            Self::Bench => "bench",
            Self::Twice => "twice",
            Self::Reference => "reference",
        }
    }

    fn run(self, places: &Places) -> Result<Tally, Fault> {
        match self {
            Self::Lint => lint::run(places),
            Self::Native => native::run(places),
            Self::Wasm => wasm::run(places),
            Self::Browser => browser::run(places),
            Self::Bench => bench::run(places),
            Self::Twice => twice::run(places),
            Self::Reference => native::reference(places),
        }
    }
}

/// Runs the parts that `words` choose (`--only lint wasm`), or all, and gives the exit code.
///
/// # Errors
/// When the words are unknown.
pub fn run(words: &[&str]) -> Result<ExitCode, Fault> {
    let parts = understand(words)?;
    let places = Places::find()?;
    if [Part::Browser, Part::Bench, Part::Twice].iter().any(|part| parts.contains(part)) {
        browser::keep_desk(&places)?;
    }
    figures::clear(&places)?;
    let mut sum = Tally::default();
    let mut lines = Vec::new();
    for part in parts {
        let name = part.name();
        println!("\n== {name} ==");
        let began = Instant::now();
        let tally = part.run(&places).unwrap_or_else(|fault| {
            eprintln!("\n{fault}");
            Tally::one(false)
        });
        sum += tally;
        lines.push(format!("{name:>9}: {tally} in {:.0} s", began.elapsed().as_secs_f64()));
        println!("== {} ==", lines[lines.len() - 1].trim_start());
    }
    print!("{}", figures::table(&places)?);
    // The sum stands alone on the last line, for whoever reads only that.
    println!("\n{}\n{sum}", lines.join("\n"));
    Ok(if sum.failed == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

fn understand(words: &[&str]) -> Result<Vec<Part>, Fault> {
    if words.is_empty() {
        return Ok(Part::USUAL.to_vec());
    }
    let chosen: Vec<&str> = words.iter().copied().filter(|word| *word != "--only").collect();
    if words[0] != "--only" || chosen.is_empty() {
        return Err(Fault::misuse("After \"test\" comes --only and the parts to run, or nothing."));
    }
    let known = |word: &str| {
        Part::ALL.into_iter().find(|part| part.name() == word).ok_or_else(|| {
            let names = Part::ALL.map(Part::name).join(", ");
            Fault::misuse(format!("The suite has no part \"{word}\"; it has {names}."))
        })
    };
    chosen.into_iter().map(known).collect()
}

#[cfg(test)]
mod tests {
    use super::{Part, understand};

    #[test]
    fn all_parts_unless_some_are_chosen() {
        assert_eq!(understand(&[]).expect("nothing to misread"), Part::USUAL);
        let parts = understand(&["--only", "wasm", "--only", "lint"]).expect("both are parts");
        assert_eq!(parts, [Part::Wasm, Part::Lint]);
    }

    #[test]
    fn unknown_parts_are_refused() {
        for words in [&["--only"][..], &["lint"], &["--only", "everything"]] {
            assert!(understand(words).is_err_and(|fault| fault.is_misuse()), "{words:?}");
        }
    }
}
