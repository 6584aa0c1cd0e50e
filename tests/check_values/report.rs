//! The table itself.

use std::process::exit;

/// How far ours may be from theirs.
#[derive(Clone, Copy)]
pub enum Within {
    /// So much.
    Of(f64),
    /// So large a part of theirs.
    Part(f64),
}

/// Rows as they come, and how many agree.
#[derive(Default)]
pub struct Report {
    passed: u32,
    part: String,
    /// The rows that do not agree, told again at the end.
    wrong: Vec<String>,
}

impl Report {
    /// A heading over the rows that follow.
    pub fn part(&mut self, name: &str) {
        println!("\n{name}");
        name.clone_into(&mut self.part);
        let (what, ours, theirs) = ("value", "ours", "theirs");
        println!("  {what:<58} {ours:>13} {theirs:>13} {:>11} {:>9}  source", "difference", "may be");
    }

    /// A number.
    pub fn number(&mut self, what: &str, ours: f64, theirs: f64, within: Within, source: &str) {
        let most = match within {
            Within::Of(most) => most,
            Within::Part(part) => part * theirs.abs(),
        };
        let gap = ours - theirs;
        // Not `gap.abs() > most`: what is no number does not agree.
        let agrees = gap.abs() <= most * (1.0 + 1e-9);
        let (ours, theirs) = (digits(ours), digits(theirs));
        println!("{} {what:<58} {ours:>13} {theirs:>13} {gap:>11.1e} {most:>9.1e}  {source}", mark(agrees));
        self.count(what, agrees);
    }

    /// Words, which agree or do not.
    pub fn words(&mut self, what: &str, ours: &str, theirs: &str, source: &str) {
        let agrees = ours == theirs;
        let gap = if agrees { "none" } else { "differs" };
        println!("{} {what:<58} {ours:>13} {theirs:>13} {gap:>11} {:>9}  {source}", mark(agrees), "none");
        self.count(what, agrees);
    }

    fn count(&mut self, what: &str, agrees: bool) {
        if agrees {
            self.passed += 1;
        } else {
            self.wrong.push(format!("{}: {what}", self.part));
        }
    }

    /// Says how many agree, as the harness of Rust's tests does, and fails if one does not.
    pub fn close(self) {
        let Self { passed, wrong, .. } = self;
        for one in &wrong {
            println!("does not agree: {one}");
        }
        let all = if wrong.is_empty() { "ok" } else { "FAILED" };
        println!("\ntest result: {all}. {passed} passed; {} failed", wrong.len());
        if !wrong.is_empty() || passed == 0 {
            exit(1);
        }
    }
}

fn mark(agrees: bool) -> char {
    if agrees { ' ' } else { '✗' }
}

/// Seven digits and no trailing zeros.
fn digits(value: f64) -> String {
    let size = value.abs();
    let text = if size != 0.0 && size < 1e-3 { format!("{value:.6e}") } else { format!("{value:.6}") };
    if text.contains('e') { text } else { text.trim_end_matches('0').trim_end_matches('.').to_owned() }
}
