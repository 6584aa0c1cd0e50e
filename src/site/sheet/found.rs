//! What can be found.

use super::MOST_EACH;
use super::doubt::Doubt;
use super::lines::Line;
use super::listed::Ingredient;
use super::multiplier::Harm;
use super::toxicity::By;
use crate::chemistry::ghs::{Hazard, Precaution, SignalWord};

/// A number, or a range, as it was read: percent, pH or in the unit beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The least; 0 where the sheet gives only the most.
    pub low: f64,
    /// The greatest; infinite where the sheet gives only the least.
    pub high: f64,
}

impl Span {
    /// Whether it is one number.
    pub fn is_one(&self) -> bool {
        self.low.total_cmp(&self.high).is_eq()
    }
}

/// What a pH was measured on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Of {
    /// The sheet does not say: then it is the product as it is sold.
    NotSaid,
    /// The product as it is sold.
    Concentrate,
    /// The solution that it is used in.
    UseSolution,
    /// Some solution of it, whose strength stands in the line.
    Solution,
}

/// One row of section 3.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Part {
    /// The name, as printed; empty where none was found.
    pub name: String,
    /// The CAS number; empty where none was found.
    pub cas: String,
    /// The share, percent of the mass; none where none was found.
    pub share: Option<Span>,
    /// The statements of the substance itself.
    pub hazards: Vec<&'static Hazard>,
}

/// What section 8 asks to wear.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Gear {
    /// For the hands.
    Hands,
    /// For eyes and face.
    Eyes,
    /// For skin and body.
    Body,
    /// For breathing.
    Breathing,
}

/// One thing that a sheet says.
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// The signal word.
    Signal(SignalWord),
    /// That the product is not classified as hazardous.
    NotHazardous,
    /// A hazard statement.
    Hazard(&'static Hazard),
    /// A precautionary statement, alone or combined.
    Precaution(&'static Precaution),
    /// What looks like a code and stands in no table.
    UnknownCode(String),
    /// An ingredient.
    Part(Part),
    /// How poisonous an ingredient is: LD50 or acute toxicity estimate.
    Toxicity {
        /// Which ingredient.
        of: Ingredient,
        /// By which way.
        by: By,
        /// mg for each kg of body; the least counts.
        span: Span,
    },
    /// An M factor of an ingredient.
    Multiplier {
        /// Which ingredient.
        of: Ingredient,
        /// The factor.
        factor: f64,
        /// For which harm.
        harm: Harm,
    },
    /// What to wear, in the words of the line.
    Protection(Gear),
    /// A pH.
    Ph {
        /// The pH.
        span: Span,
        /// Of what.
        of: Of,
    },
    /// That it has no pH.
    NoPh,
    /// A density, or the density relative to water.
    Density {
        /// The number.
        span: Span,
        /// The code of its unit.
        unit: &'static str,
    },
    /// A UN number.
    Un(u16),
    /// That it is no dangerous good.
    NotRegulated,
}

/// What stands between the texts of several lines.
const BETWEEN: &str = " / ";

/// One thing that was found, where, and what is doubtful about it.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The number of the line, from 1 on, as the text was pasted.
    pub line: usize,
    /// The line or the piece of it, without what does not print; several lines with ` / ` between.
    pub text: String,
    /// The section, where a heading stood above.
    pub section: Option<u8>,
    /// What was found.
    pub what: What,
    /// What is doubtful; empty where nothing is.
    pub doubts: Vec<Doubt>,
}

impl Finding {
    /// Something in a line, with the doubt that goes with a line under no heading.
    pub(super) fn new(line: &Line, what: What) -> Self {
        let doubts = if line.section.is_none() { vec![Doubt::NoSection] } else { Vec::new() };
        let text = line.text.split_whitespace().collect::<Vec<_>>().join(" ");
        Self { line: line.number, text, section: line.section, what, doubts }
    }

    /// With a doubt.
    pub(super) fn doubt(mut self, doubt: Doubt) -> Self {
        if !self.doubts.contains(&doubt) {
            self.doubts.push(doubt);
        }
        self
    }

    /// With a doubt if so.
    pub(super) fn doubt_if(self, so: bool, doubt: Doubt) -> Self {
        if so { self.doubt(doubt) } else { self }
    }

    /// With another line, or another piece of the line, that it was read from.
    pub(super) fn and(mut self, line: &Line) -> Self {
        let other = line.text.split_whitespace().collect::<Vec<_>>().join(" ");
        if !self.text.split(BETWEEN).any(|text| text == other) {
            self.text = [self.text.as_str(), other.as_str()].join(BETWEEN);
        }
        let several = line.number != self.line;
        self.doubt_if(several, Doubt::SeveralLines)
    }
}

/// By line; those of one line stay in the order in which they were found.
pub(super) fn sort(findings: &mut [Finding]) {
    findings.sort_by_key(|finding| finding.line);
}

/// What `of` finds in each line of a section and, where it asks for it, the line below; each thing once.
pub(super) fn in_section(
    lines: &[Line],
    section: u8,
    of: impl Fn(&Line, Option<&Line>) -> Vec<Finding>,
) -> Vec<Finding> {
    let own: Vec<&Line> = lines.iter().filter(|line| line.belongs_to(section)).collect();
    let mut out: Vec<Finding> = Vec::new();
    for (at, line) in own.iter().enumerate() {
        let below = own.get(at + 1).copied().filter(|below| !below.heading);
        for one in of(line, below) {
            if !out.iter().any(|other| other.what == one.what) {
                out.push(one);
            }
        }
        if out.len() >= MOST_EACH {
            break;
        }
    }
    out
}
