//! What was read, corrected by a person before it is taken.
//!
//! A corrected value is read by the same readers as the sheet itself and carries the same doubts.

use super::doubt::Doubt;
use super::found::{Finding, Of, Part, Span, What};
use super::lines::{self, Line};
use super::listed::Ingredient;
use super::multiplier::Harm;
use super::piece::Piece;
use super::toxicity::By;
use super::{Clash, Sheet, clash, composition, density, multiplier, ph, rows, signal, toxicity, transport};
use crate::chemistry::ghs::codes;
use crate::number::{self, Marks};
use crate::units::unit;
use std::collections::BTreeMap;

/// A sheet with what a person corrected.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Corrected {
    /// The findings, in the places of those that were read; one whose correction is not understood is as it
    /// was read.
    pub findings: Vec<Finding>,
    /// The value that is not understood, by the place of its finding: that finding is not to be taken.
    pub mistakes: BTreeMap<usize, Piece>,
    /// What disagrees now.
    pub clashes: Vec<Clash>,
}

impl Sheet {
    /// The sheet with corrections: for the place of a finding the text of each of its values, in the order of
    /// [`Finding::pieces`].
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::site::sheet::{Piece, Statements, What, read};
    /// let sheet = read("9. Physical and chemical properties\npH: 1.8", &Statements::default());
    /// let typed = |text: &str| [(0, vec![text.to_owned()])].into();
    /// let right = sheet.corrected(&typed("11.8 (use solution)"), Marks::POINT);
    /// let What::Ph { span, .. } = right.findings[0].what else { panic!("a pH") };
    /// assert_eq!(span.low, 11.8);
    /// let wrong = sheet.corrected(&typed("rather high"), Marks::POINT);
    /// assert_eq!(wrong.mistakes[&0], Piece::Ph);
    /// ```
    pub fn corrected(&self, texts: &BTreeMap<usize, Vec<String>>, marks: Marks) -> Corrected {
        let mut out = Corrected { findings: self.findings.clone(), ..Corrected::default() };
        for (place, texts) in texts {
            let Some(finding) = out.findings.get_mut(*place) else { continue };
            match finding.corrected(texts, marks) {
                Ok(corrected) => *finding = corrected,
                Err(piece) => drop(out.mistakes.insert(*place, piece)),
            }
        }
        out.clashes = clash::find(&out.findings);
        out
    }
}

impl Finding {
    /// The values that can be corrected, as texts that read back as they are; none where there is nothing to
    /// correct but the finding itself.
    pub fn pieces(&self, marks: Marks) -> Vec<(Piece, String)> {
        match &self.what {
            What::Signal(word) => vec![(Piece::Signal, word.code().to_owned())],
            What::Hazard(hazard) => vec![(Piece::Code, hazard.code.to_owned())],
            What::Precaution(precaution) => vec![(Piece::Code, precaution.code.to_owned())],
            What::UnknownCode(code) => vec![(Piece::Code, code.clone())],
            What::Part(part) => vec![
                (Piece::Name, part.name.clone()),
                (Piece::Cas, part.cas.clone()),
                (Piece::Share, part.share.map(|share| written(share, marks) + " %").unwrap_or_default()),
                (Piece::Codes, part.hazards.iter().map(|hazard| hazard.code).collect::<Vec<_>>().join(" ")),
            ],
            What::Protection(_) => vec![(Piece::Worn, self.text.clone())],
            What::Ph { span, of } => {
                let of = match of {
                    Of::NotSaid => "",
                    Of::Concentrate => " (concentrate)",
                    Of::UseSolution => " (use solution)",
                    Of::Solution => " (solution)",
                };
                vec![(Piece::Ph, written(*span, marks) + of)]
            }
            What::Density { span, unit: code } => {
                let symbol = unit(code).map_or("", |unit| unit.symbol);
                vec![(Piece::Density, format!("{} {symbol}", written(*span, marks)))]
            }
            What::Un(number) => vec![(Piece::Un, format!("UN{number:04}"))],
            What::Toxicity { span, .. } => vec![(Piece::Toxicity, written(*span, marks) + " mg/kg")],
            What::Multiplier { factor, harm, .. } => {
                let harm = match harm {
                    Harm::Acute => " (acute)",
                    Harm::Chronic => " (chronic)",
                    Harm::NotSaid => "",
                };
                vec![(Piece::Multiplier, number::plain(*factor, 12, marks.decimal) + harm)]
            }
            What::NotHazardous | What::NoPh | What::NotRegulated => Vec::new(),
        }
    }

    /// The finding with other values, in the order of [`Finding::pieces`]; as it was read where they are the
    /// same.
    ///
    /// # Errors
    /// The first value that is not understood.
    pub fn corrected(&self, texts: &[String], marks: Marks) -> Result<Self, Piece> {
        let read = self.pieces(marks);
        let same = |(at, (_, text)): (usize, &(Piece, String))| texts.get(at).is_none_or(|one| one == text);
        if read.iter().enumerate().all(same) {
            return Ok(self.clone());
        }
        let text = |at: usize| {
            let text = texts.get(at).map_or_else(|| read[at].1.clone(), Clone::clone);
            lines::clean(&text).trim().to_owned()
        };
        let mut found = self.read_again(&text, marks)?;
        // How the line was read is no matter any more; that nobody knows its section is.
        if self.doubts.contains(&Doubt::NoSection) {
            found = found.doubt(Doubt::NoSection);
        }
        Ok(Self { line: self.line, section: self.section, ..found })
    }

    fn read_again(&self, text: &dyn Fn(usize) -> String, marks: Marks) -> Result<Self, Piece> {
        let line = |text: String| Line { number: self.line, text, section: Some(0), heading: false };
        match &self.what {
            What::Signal(_) => {
                let word = signal::word(&text(0)).ok_or(Piece::Signal)?;
                Ok(Self::new(&line(text(0)), What::Signal(word)))
            }
            What::Hazard(_) | What::Precaution(_) | What::UnknownCode(_) => {
                let what = code(&text(0)).ok_or(Piece::Code)?;
                Ok(Self::new(&line(text(0)), what))
            }
            What::Part(_) => part(&line(self.text.clone()), &[text(0), text(1), text(2), text(3)]),
            What::Protection(gear) => {
                let worn = Some(text(0)).filter(|text| text.chars().any(char::is_alphabetic));
                Ok(Self::new(&line(worn.ok_or(Piece::Worn)?), What::Protection(*gear)))
            }
            What::Ph { .. } => {
                let line = line(format!("pH {}", text(0)));
                only(ph::readings(&line, &text(0)))
                    .filter(|one| matches!(one.what, What::Ph { .. }))
                    .ok_or(Piece::Ph)
            }
            What::Density { .. } => {
                only(density::values(&line(text(0)), "density", &text(0))).ok_or(Piece::Density)
            }
            What::Un(_) => {
                let text = text(0);
                let digits = text.trim_start_matches(['U', 'u', 'N', 'n', ' ']);
                let number = transport::four_digits(digits).filter(|_| digits.len() == 4).ok_or(Piece::Un)?;
                Ok(transport::of(&line(format!("UN{number:04}")), number))
            }
            What::Toxicity { of, by, .. } => {
                let way = if *by == By::Mouth { "by mouth" } else { "by skin" };
                let line = line(format!("{}: {way} {}", named(of), text(0)));
                toxicity::again(&line, of, *by, &text(0), marks).ok_or(Piece::Toxicity)
            }
            What::Multiplier { of, .. } => {
                let line = line(format!("{}: M = {}", named(of), text(0)));
                multiplier::again(&line, of, &text(0)).ok_or(Piece::Multiplier)
            }
            What::NotHazardous | What::NoPh | What::NotRegulated => Ok(self.clone()),
        }
    }
}

fn written(span: Span, marks: Marks) -> String {
    let number = |value: f64| number::plain(value, 12, marks.decimal);
    match (span.is_one(), span.high.is_finite()) {
        (true, _) => number(span.low),
        (false, true) => format!("{} - {}", number(span.low), number(span.high)),
        (false, false) => format!("≥ {}", number(span.low)),
    }
}

fn named(of: &Ingredient) -> &str {
    if of.name.is_empty() { &of.cas } else { &of.name }
}

fn only(found: Vec<Finding>) -> Option<Finding> {
    <[Finding; 1]>::try_from(found).ok().map(|[one]| one)
}

/// One code that a table has.
fn code(text: &str) -> Option<What> {
    let read = codes::read(text);
    match (&read.hazards[..], &read.precautions[..], &read.unknown[..]) {
        ([hazard], [], []) => Some(What::Hazard(hazard)),
        ([], [precaution], []) => Some(What::Precaution(precaution)),
        _ => None,
    }
}

fn part(line: &Line, [name, cas, share, own]: &[String; 4]) -> Result<Finding, Piece> {
    let filled = |text: &String| !text.is_empty();
    let nameless = !name.chars().any(char::is_alphabetic);
    // A row of neither says nothing.
    if nameless && (filled(name) || !filled(cas)) {
        return Err(Piece::Name);
    }
    let number = filled(cas).then(|| rows::number(cas).ok_or(Piece::Cas)).transpose()?;
    let share = filled(share).then(|| rows::only_share(share).ok_or(Piece::Share)).transpose()?;
    let read = codes::read(own);
    if filled(own) && (read.hazards.is_empty() || !read.precautions.is_empty() || !read.unknown.is_empty()) {
        return Err(Piece::Codes);
    }
    let part = Part {
        name: name.clone(),
        cas: number.as_ref().map(|number| number.text.clone()).unwrap_or_default(),
        share: share.map(|share| share.span),
        hazards: read.hazards,
    };
    let right = number.map(|number| number.right);
    // The field itself says that it is percent.
    Ok(composition::checked(Finding::new(line, What::Part(part)), share, right, true))
}
