//! Hazard and precautionary statements in section 2.

use super::MOST_EACH;
use super::doubt::Doubt;
use super::found::{Finding, What};
use super::lines::Line;
use super::scan::squeezed;
use crate::chemistry::ghs::{Hazard, codes, hazard};
use std::collections::BTreeSet;

/// The words of hazard statements, by which they are found where a sheet prints no codes.
#[derive(Clone, Debug, Default)]
pub struct Statements(Vec<(String, &'static Hazard)>);

impl Statements {
    /// From the words of a language: the text that belongs to each word key.
    ///
    /// ```
    /// use brimline::site::sheet::{Statements, What, read};
    /// use brimline::words::Words;
    /// let words = Words::english();
    /// let sheet = read("2. Hazards identification\nCauses skin irritation.", &Statements::of(|key| words.find(key)));
    /// assert!(matches!(sheet.findings[0].what, What::Hazard(hazard) if hazard.code == "H315"));
    /// ```
    pub fn of(words: impl Fn(&str) -> Option<String>) -> Self {
        let row = |hazard: &'static Hazard| Some((squeezed(&words(&hazard.key())?, LONGEST), hazard));
        let mut rows: Vec<_> =
            hazard::all().filter_map(row).filter(|(letters, _)| letters.len() > 9).collect();
        // The longest first: "toxic to aquatic life with long lasting effects" before "toxic to aquatic life".
        rows.sort_by_key(|(letters, _)| std::cmp::Reverse(letters.len()));
        Self(rows)
    }

    /// The statement that a clause opens with.
    fn opening(&self, clause: &str) -> Option<&'static Hazard> {
        let letters = squeezed(clause, LONGEST);
        let starts = |(words, _): &&(String, _)| letters.starts_with(words.as_str());
        self.0.iter().find(starts).map(|(_, hazard)| *hazard)
    }
}

/// The letters of a statement that are compared.
const LONGEST: usize = 120;

/// Every code once, and every statement that stands there by its words alone.
pub(super) fn find(lines: &[Line], statements: &Statements) -> Vec<Finding> {
    let own: Vec<&Line> = lines.iter().filter(|line| line.belongs_to(2)).collect();
    let mut out = Vec::new();
    let mut seen: BTreeSet<String> = BTreeSet::new();
    let mut at = 0;
    while at < own.len() && out.len() < MOST_EACH {
        let line = own[at];
        let mut text = line.text.clone();
        at += 1;
        // A combination goes on where a plus ends the line or begins the next one, a code where its digits do.
        let mut more = Vec::new();
        let mut torn = None;
        if let Some(begun) = begun(&text) {
            match own.get(at).filter(|next| !next.heading && finishes(begun, &next.text)) {
                Some(next) => {
                    text.push_str(next.text.trim_start());
                    more.push(*next);
                    at += 1;
                }
                None if line.section == Some(2) && begun.len() > 1 => torn = Some(begun.to_owned()),
                None => (),
            }
        }
        while more.len() < 3
            && let Some(next) = own.get(at).filter(|next| goes_on(&text, &next.text))
        {
            text.push(' ');
            text.push_str(&next.text);
            more.push(*next);
            at += 1;
        }
        if let Some(code) = torn.filter(|code| seen.insert(code.clone())) {
            out.push(Finding::new(line, What::UnknownCode(code)).doubt(Doubt::CutOff));
        }
        let read = codes::read(&text);
        let whats = (read.hazards.iter().map(|one| (one.code.to_owned(), What::Hazard(one))))
            .chain(read.precautions.iter().map(|one| (one.code.to_owned(), What::Precaution(one))))
            .chain(read.unknown.iter().map(|one| (one.clone(), What::UnknownCode(one.clone()))));
        for (code, what) in whats {
            if seen.insert(code) {
                // What is all in the first line was not put together.
                let whole = more.is_empty() || holds(&line.text, &what);
                let finding = Finding::new(line, what);
                out.push(if whole { finding } else { more.iter().fold(finding, |one, next| one.and(next)) });
            }
        }
    }
    out.extend(by_words(&own, statements, &mut seen));
    out
}

/// Statements by their words, where their code stands nowhere.
fn by_words(own: &[&Line], statements: &Statements, seen: &mut BTreeSet<String>) -> Vec<Finding> {
    let mut out = Vec::new();
    for line in own {
        let clauses = line.text.split(['.', '\t', ':', '•', '*', '!']);
        for clause in clauses.filter(|clause| clause.len() > 9) {
            let found = statements.opening(clause).filter(|hazard| seen.insert(hazard.code.to_owned()));
            out.extend(found.map(|hazard| Finding::new(line, What::Hazard(hazard)).doubt(Doubt::ByWords)));
        }
        if out.len() >= MOST_EACH {
            break;
        }
    }
    out
}

/// The beginning of a code that ends a line: a letter and fewer than three digits.
fn begun(text: &str) -> Option<&str> {
    let text = text.trim_end();
    let from = text.rfind(|one: char| !one.is_ascii_digit())?;
    let (before, code) = text.split_at(from);
    let whole = before.chars().next_back().is_none_or(|one| !one.is_alphanumeric());
    (whole && code.starts_with(['H', 'P']) && code.len() < 4).then_some(code)
}

/// Whether a line opens with the digits that a code lacks, and no more of them.
fn finishes(begun: &str, next: &str) -> bool {
    let next = next.trim_start();
    let digits = next.chars().take_while(char::is_ascii_digit).count();
    digits > 0 && begun.len() + digits == 4 && !next[digits..].starts_with(char::is_alphanumeric)
}

fn goes_on(text: &str, next: &str) -> bool {
    let code = |text: &str| text.trim_start().starts_with(['P', 'H', '3', '2', '4']);
    (text.trim_end().ends_with('+') && code(next)) || (next.trim_start().starts_with('+') && !text.is_empty())
}

fn holds(text: &str, what: &What) -> bool {
    let read = codes::read(text);
    match what {
        What::Hazard(one) => read.hazards.contains(one),
        What::Precaution(one) => read.precautions.contains(one),
        What::UnknownCode(one) => read.unknown.contains(one),
        _ => true,
    }
}
