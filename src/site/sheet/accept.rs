//! From findings that a person accepted to a changed product.

use super::found::{Finding, Of, Part, Span, What};
use crate::chemistry::cas;
use crate::chemistry::ghs::{SignalWord, codes};
use crate::number::{self, Marks};
use crate::site::{Entry, Ingredient, Product};

/// The digits that are written of a number that was read.
const DIGITS: i32 = 12;

/// The product with what was accepted; whatever else was typed stays as it is.
///
/// Codes that are not there yet are put behind those that are. An ingredient takes the place of the one with
/// its CAS number, or with its name where the sheet gives no number. A pH fills the field only if it is that
/// of a solution; that of the concentrate, what to wear and how it is carried go into the notes, in the words
/// of their lines. Of a range of pH the end farther from 7 is taken, of a range of density the middle.
///
/// * `accepted`: in any order; corrected, where a person corrected them.
/// * `marks`: with which the numbers are written.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::Product;
/// use brimline::site::sheet::{Statements, read, take};
/// let sheet = read("2. Hazards identification\nSignal word: Warning\nH319", &Statements::default());
/// let product = take(&Product::default(), &sheet.findings, Marks::POINT);
/// assert_eq!((product.codes.as_str(), product.signal.code()), ("H319", "warning"));
/// ```
#[must_use]
pub fn take(product: &Product, accepted: &[Finding], marks: Marks) -> Product {
    let mut out = product.clone();
    let signals = accepted.iter().filter_map(|one| match one.what {
        What::Signal(word) => Some(word),
        What::NotHazardous => Some(SignalWord::None),
        _ => None,
    });
    // Two of them: the more serious one.
    out.signal = signals.max().unwrap_or(out.signal);
    for finding in accepted {
        match &finding.what {
            What::Signal(_) | What::NotHazardous => (),
            What::Hazard(hazard) => add_code(&mut out, hazard.code),
            What::Precaution(precaution) => add_code(&mut out, precaution.code),
            What::UnknownCode(code) => add_code(&mut out, code),
            What::Part(part) => add_part(&mut out.parts, part, marks),
            What::Ph { span, of: Of::UseSolution | Of::Solution } => {
                out.ph = written(farther_from_neutral(*span), marks);
            }
            What::Density { span, unit } => {
                out.density = Entry::new(written(f64::midpoint(span.low, span.high), marks), unit);
            }
            What::Ph { .. } | What::NoPh | What::Protection(_) | What::Un(_) | What::NotRegulated => {
                add_note(&mut out.notes, &finding.text);
            }
        }
    }
    out
}

fn written(value: f64, marks: Marks) -> String {
    number::plain(value, DIGITS, marks.decimal)
}

fn farther_from_neutral(span: Span) -> f64 {
    if 7.0 - span.low > span.high - 7.0 { span.low } else { span.high }
}

fn add_code(product: &mut Product, code: &str) {
    let read = codes::read(&product.codes);
    let there = read.hazards.iter().any(|one| one.code == code)
        || read.precautions.iter().any(|one| one.code == code)
        || read.unknown.iter().any(|one| one == code);
    if !there {
        if !product.codes.is_empty() && !product.codes.ends_with(char::is_whitespace) {
            product.codes.push(' ');
        }
        product.codes.push_str(code);
    }
}

fn add_part(parts: &mut Vec<Ingredient>, part: &Part, marks: Marks) {
    let number = cas::check(&part.cas);
    let name = |name: &str| name.trim().to_lowercase();
    let same = |one: &Ingredient| match number {
        Some(_) => cas::check(&one.cas) == number,
        None if !part.cas.is_empty() => one.cas.trim() == part.cas,
        None => {
            !part.name.is_empty() && name(&one.name) == name(&part.name) && cas::check(&one.cas).is_none()
        }
    };
    let at = parts.iter().position(same).unwrap_or_else(|| {
        parts.push(Ingredient::default());
        parts.len() - 1
    });
    let one = &mut parts[at];
    if !part.name.is_empty() {
        one.name.clone_from(&part.name);
    }
    if !part.cas.is_empty() {
        one.cas.clone_from(&part.cas);
    }
    if let Some(share) = part.share {
        let most = if share.high.is_finite() { share.high } else { share.low.max(100.0) };
        let high = if share.is_one() { String::new() } else { written(most, marks) };
        one.low = Entry::new(written(share.low, marks), "percent_ww");
        one.high = Entry::new(high, "percent_ww");
    }
    if !part.hazards.is_empty() {
        let known = codes::read(&one.codes).hazards;
        let more = part.hazards.iter().filter(|hazard| !known.contains(hazard));
        let all = std::iter::once(one.codes.trim_end()).filter(|text| !text.is_empty());
        one.codes = all.chain(more.map(|hazard| hazard.code)).collect::<Vec<_>>().join(" ");
    }
}

fn add_note(notes: &mut String, line: &str) {
    if !notes.lines().any(|one| one.trim() == line) {
        if !notes.is_empty() && !notes.ends_with('\n') {
            notes.push('\n');
        }
        notes.push_str(line);
    }
}
