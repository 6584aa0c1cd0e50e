//! Reads the pasted text of a safety data sheet, so that a person need not type it.
//!
//! It looks into sections 1, 2, 3, 8, 9, 11 and 14 and into what stands before the first heading. Whatever it finds
//! carries the number and the text of its line, and what is doubtful about it; what contradicts stands beside
//! each other. Nothing is taken unseen: [`take`] changes a product by the findings that a person accepted.
//!
//! Sheets come out of other programs with torn columns, dashes and spaces of all kinds and hyphens that were
//! only meant for the end of a line. The text is read line by line and every line once, so that any text,
//! however long, is read in a time that grows with its length.

mod accept;
mod clash;
mod codes;
mod composition;
mod correct;
mod density;
mod doubt;
mod found;
mod heading;
mod lines;
mod listed;
mod multiplier;
mod named;
mod ph;
mod piece;
mod protection;
mod rows;
mod scan;
mod signal;
mod toxicity;
mod transport;

pub use accept::take;
pub use clash::{Clash, Disagreement};
pub use codes::Statements;
pub use correct::Corrected;
pub use doubt::Doubt;
pub use found::{Finding, Gear, Of, Part, Span, What};
pub use listed::Ingredient;
pub use multiplier::Harm;
pub use piece::Piece;
pub use toxicity::By;

/// The most findings of a kind that are kept; a sheet has some sixty codes and some twenty ingredients.
const MOST_EACH: usize = 300;

/// What was read of a sheet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sheet {
    /// What was found, by section and in the order of the lines.
    pub findings: Vec<Finding>,
    /// Findings that cannot all be right.
    pub clashes: Vec<Clash>,
    /// The headings that were found: number of the section and of the line.
    pub sections: Vec<(u8, usize)>,
    /// The name of the product that it is of, as its first section bears it; none where none was found. It is not taken: it
    /// only tells that a sheet is of another product than the chosen one.
    pub named: Option<String>,
    /// Whether there was more than is read of one sheet: more lines or more findings.
    pub cut: bool,
}

impl Sheet {
    /// The sections that a sheet should have and that are looked into, as far as no heading was found.
    ///
    /// ```
    /// use brimline::site::sheet::{Statements, read};
    /// let sheet = read("SECTION 2: Hazards identification\nH319", &Statements::default());
    /// assert_eq!(sheet.missing(), [3, 8, 9, 14]);
    /// ```
    pub fn missing(&self) -> Vec<u8> {
        [2, 3, 8, 9, 14]
            .into_iter()
            .filter(|one| self.sections.iter().all(|(found, _)| found != one))
            .collect()
    }

    /// The name that it bears, where a product of this name is another one. Case, spaces and signs do not count.
    ///
    /// ```
    /// use brimline::site::sheet::{Statements, read};
    /// let sheet = read("1. Identification\nProduct name: Neutral Cleaner", &Statements::default());
    /// assert_eq!(sheet.bears_other_than("neutral cleaner"), None);
    /// assert_eq!(sheet.bears_other_than("Descaler"), Some("Neutral Cleaner"));
    /// ```
    pub fn bears_other_than(&self, product: &str) -> Option<&str> {
        self.named.as_deref().filter(|named| !named::is_same(named, product))
    }

    /// What was looked for and not found: nobody should take its silence for a clean sheet.
    ///
    /// ```
    /// use brimline::site::sheet::{Lack, Statements, read};
    /// let sheet = read("2. Hazards identification\nSignal word: Danger\nH314", &Statements::default());
    /// assert_eq!(sheet.lacks(), [Lack::Parts, Lack::Ph, Lack::Density]);
    /// ```
    pub fn lacks(&self) -> Vec<Lack> {
        let met = |lack: &Lack| self.findings.iter().any(|one| lack.is_met(&one.what));
        Lack::ALL.into_iter().filter(|lack| !met(lack)).collect()
    }
}

/// What every sheet has and a product needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lack {
    /// A signal word, or that there is none.
    Signal,
    /// Hazard statements, or that there are none.
    Statements,
    /// What it is made of.
    Parts,
    /// A pH, or that there is none.
    Ph,
    /// A density.
    Density,
}

impl Lack {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Signal, Self::Statements, Self::Parts, Self::Ph, Self::Density];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Signal => "sheet-lack-signal",
            Self::Statements => "sheet-lack-statements",
            Self::Parts => "sheet-lack-parts",
            Self::Ph => "sheet-lack-ph",
            Self::Density => "sheet-lack-density",
        }
    }

    fn is_met(self, what: &What) -> bool {
        match self {
            Self::Signal => matches!(what, What::Signal(_) | What::NotHazardous),
            Self::Statements => matches!(what, What::Hazard(_) | What::NotHazardous),
            Self::Parts => matches!(what, What::Part(_)),
            Self::Ph => matches!(what, What::Ph { .. } | What::NoPh),
            Self::Density => matches!(what, What::Density { .. }),
        }
    }
}

/// Reads a pasted sheet. It never fails: what it does not understand it leaves out.
///
/// * `text`: any text, of any length; read in a time in proportion to it.
/// * `statements`: the words of hazard statements, for sheets that print them without their codes.
///
/// ```
/// use brimline::site::sheet::{Statements, What, read};
/// let text = "9. Physical and chemical properties\npH (1 % solution): 11.8";
/// let sheet = read(text, &Statements::default());
/// let What::Ph { span, .. } = &sheet.findings[0].what else { panic!("a pH") };
/// assert_eq!((span.low, span.high, sheet.findings[0].line), (11.8, 11.8, 2));
/// ```
pub fn read(text: &str, statements: &Statements) -> Sheet {
    let (lines, mut cut) = lines::read(text);
    let mut findings = Vec::new();
    let composition = composition::find(&lines);
    let (doses, factors) = (toxicity::find(&lines, &composition), multiplier::find(&lines, &composition));
    for mut of_a_kind in [
        codes::find(&lines, statements),
        signal::find(&lines),
        composition,
        doses,
        factors,
        protection::find(&lines),
        ph::find(&lines),
        density::find(&lines),
        transport::find(&lines),
    ] {
        cut |= of_a_kind.len() >= MOST_EACH;
        of_a_kind.truncate(MOST_EACH);
        findings.append(&mut of_a_kind);
    }
    found::sort(&mut findings);
    let sections =
        lines.iter().filter(|line| line.heading).map(|line| (line.section.unwrap_or(0), line.number));
    let (clashes, sections) = (clash::find(&findings), sections.collect());
    Sheet { clashes, sections, named: named::find(&lines), findings, cut }
}
