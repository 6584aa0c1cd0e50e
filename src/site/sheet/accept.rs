//! From findings that a person accepted to a changed product.

use super::found::{Finding, Of, Part, Span, What};
use super::listed::Ingredient as Named;
use super::multiplier::Harm;
use super::toxicity::By;
use crate::chemistry::cas;
use crate::chemistry::ghs::{SignalWord, codes};
use crate::number::{self, Marks};
use crate::site::{Entry, Ingredient, Product};
use std::collections::BTreeMap;

/// The digits that are written of a number that was read.
const DIGITS: i32 = 12;

/// The product with what was accepted; whatever else was typed stays as it is.
///
/// Codes that are not there yet are put behind those that are. An ingredient takes the place of the one with
/// its CAS number, or with its name where the sheet gives no number. A pH fills the
/// field of the use solution if it is that of a solution, else that of the concentrate. What to wear and how it
/// is carried go into the notes, in the words of their lines. Toxicities and M factors fill the fields of their part, if the product has it then. Of a range
/// of pH the end farther from 7 is taken, of a range of density the middle.
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
    // A part before what is said of it.
    let (of_parts, others): (Vec<_>, Vec<_>) =
        accepted.iter().partition(|one| matches!(one.what, What::Toxicity { .. } | What::Multiplier { .. }));
    for finding in others {
        match &finding.what {
            What::Signal(_) | What::NotHazardous => (),
            What::Hazard(hazard) => add_code(&mut out, hazard.code),
            What::Precaution(precaution) => add_code(&mut out, precaution.code),
            What::UnknownCode(code) => add_code(&mut out, code),
            What::Part(part) => add_part(&mut out.parts, part, marks),
            What::Ph { span, of: Of::UseSolution | Of::Solution } => {
                out.ph = written(farther_from_neutral(*span), marks);
            }
            What::Ph { span, of: Of::Concentrate | Of::NotSaid } => {
                out.ph_neat = written(farther_from_neutral(*span), marks);
            }
            What::Density { span, unit } => {
                out.density = Entry::new(written(f64::midpoint(span.low, span.high), marks), unit);
            }
            What::NoPh
            | What::Protection(_)
            | What::Un(_)
            | What::NotRegulated
            | What::Toxicity { .. }
            | What::Multiplier { .. } => add_note(&mut out.notes, &finding.text),
        }
    }
    add_of_parts(&mut out, &of_parts, marks);
    out
}

/// Of several toxicities of one part the least is taken, of several M factors the greatest: the worse case.
/// What is said of no part of the product, or has no field, goes into the notes.
fn add_of_parts(out: &mut Product, accepted: &[&Finding], marks: Marks) {
    let mut fields: BTreeMap<(usize, u8), f64> = BTreeMap::new();
    for finding in accepted {
        let told = match &finding.what {
            What::Toxicity { of, by, span } if span.low > 0.0 => {
                Some((of, u8::from(*by == By::Skin), -span.low))
            }
            What::Multiplier { of, factor, harm } if *harm != Harm::NotSaid => {
                Some((of, 2 + u8::from(*harm == Harm::Chronic), *factor))
            }
            _ => None,
        };
        let place = |of: &Named| out.parts.iter().position(|one| is_same(one, &of.name, &of.cas));
        let Some((place, slot, value)) = told.and_then(|(of, slot, value)| Some((place(of)?, slot, value)))
        else {
            add_note(&mut out.notes, &finding.text);
            continue;
        };
        let worst = fields.entry((place, slot)).or_insert(value);
        *worst = worst.max(value);
    }
    for ((place, slot), value) in fields {
        let (one, text) = (&mut out.parts[place], written(value.abs(), marks));
        match slot {
            0 => one.oral = Entry::new(text, "mg_per_kg"),
            1 => one.dermal = Entry::new(text, "mg_per_kg"),
            2 => one.m_acute = Entry::new(text, "one"),
            _ => one.m_chronic = Entry::new(text, "one"),
        }
    }
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

/// Whether a part of the product is the one with this number, or with this name where the sheet gives no number.
fn is_same(one: &Ingredient, name: &str, number: &str) -> bool {
    let tidy = |name: &str| name.trim().to_lowercase();
    let checked = cas::check(number);
    match checked {
        Some(_) => cas::check(&one.cas) == checked,
        None if !number.is_empty() => one.cas.trim() == number,
        None => !name.is_empty() && tidy(&one.name) == tidy(name) && cas::check(&one.cas).is_none(),
    }
}

fn add_part(parts: &mut Vec<Ingredient>, part: &Part, marks: Marks) {
    let same = |one: &Ingredient| is_same(one, &part.name, &part.cas);
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
