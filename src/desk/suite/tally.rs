//! Counting what a test runner says it ran.

use crate::desk::child;
use crate::desk::fault::Fault;
use std::fmt;
use std::ops::AddAssign;
use std::process::Command;

/// How many checks passed and failed.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Tally {
    /// How many passed.
    pub passed: u32,
    /// How many failed.
    pub failed: u32,
}

impl Tally {
    /// A single check.
    pub fn one(well: bool) -> Self {
        Self { passed: u32::from(well), failed: u32::from(!well) }
    }

    /// Runs a test runner and counts what it reports. One that fails without reporting a failed
    /// test (it did not compile, it crashed) counts as one failed.
    ///
    /// # Errors
    /// When the runner cannot be started.
    pub fn of(runner: &mut Command) -> Result<Self, Fault> {
        let mut tally = Self::default();
        let well = child::stream(runner, |line| tally += counts(line))?;
        if !well && tally.failed == 0 {
            tally.failed = 1;
        }
        Ok(tally)
    }
}

impl AddAssign for Tally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
    }
}

impl fmt::Display for Tally {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} passed, {} failed", self.passed, self.failed)
    }
}

/// What one line of a runner's output counts: `test result: …` of Rust's runners (also in the
/// browser), `# pass 3` or `ℹ pass 3` of Node's.
fn counts(line: &str) -> Tally {
    let mut tally = Tally::default();
    if let Some(result) = line.trim_start().strip_prefix("test result: ") {
        // "ok. 3 passed; 0 failed; …": each number stands before what it counts.
        let words: Vec<&str> = result.split([' ', ';', '.']).filter(|word| !word.is_empty()).collect();
        for pair in words.windows(2) {
            match pair[1] {
                "passed" => tally.passed = pair[0].parse().unwrap_or(0),
                "failed" => tally.failed = pair[0].parse().unwrap_or(0),
                _ => {}
            }
        }
    } else if let Some(result) = line.strip_prefix("# ").or_else(|| line.strip_prefix("ℹ ")) {
        match result.split_once(' ') {
            Some(("pass", number)) => tally.passed = number.parse().unwrap_or(0),
            Some(("fail" | "cancelled", number)) => tally.failed = number.parse().unwrap_or(0),
            _ => {}
        }
    }
    tally
}

#[cfg(test)]
mod tests {
    use super::{Tally, counts};
    use std::process::Command;

    #[test]
    fn reads_each_runner() {
        for (line, passed, failed) in [
            ("test result: ok. 20 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out", 20, 0),
            ("test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 filtered out", 3, 2),
            ("# pass 7", 7, 0),
            ("ℹ pass 7", 7, 0),
            ("ℹ fail 2", 0, 2),
            ("# cancelled 1", 0, 1),
            ("# skipped 4", 0, 0),
            ("test clock::passed ... ok", 0, 0),
            ("", 0, 0),
        ] {
            assert_eq!(counts(line), Tally { passed, failed }, "{line}");
        }
    }

    #[test]
    fn a_runner_that_breaks_down_counts_as_one_failed() {
        let tally = Tally::of(Command::new("cargo").arg("no-such-command-at-all"));
        assert_eq!(tally.expect("cargo can be started"), Tally { passed: 0, failed: 1 });
    }

    #[test]
    fn closes_in_the_agreed_words() {
        assert_eq!(Tally { passed: 12, failed: 0 }.to_string(), "12 passed, 0 failed");
    }
}
