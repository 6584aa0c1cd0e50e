//! Labels as the trade writes them, read into a strength or an amount a tank.
//!
//! | written | read as | r |
//! |---|---|---|
//! | `1:64`, `1 to 64`, `64:1`, `1+64` | 1 part plus 64 parts water | 1/65 |
//! | `1 in 65`, `1/65`, `1:65 total` | 1 part in 65 parts total | 1/65 |
//! | `1:32-64`, `1 in 32 to 1 in 64` | from the one to the other | |
//! | `2 oz/gal`, `15 mL/L` | added to that much water | x/(1+x) |
//! | `2 oz makes 1 gal` | in that much finished solution | x |
//! | `0.5 %` | of the finished solution | 0.005 |
//! | `3 to 6 oz per tank` | that much for a full tank | |
//! | `30 g/L`, `2 oz wt/gal` | powder in each volume of solution | |
//! | `200 ppm` | active substance in the finished solution | |
//! | `1 packet per 2 gal`, `1 tablet makes 10 L` | whole ones for that much solution | |
//! | `1:64 (2 oz/gal)`, `1:64, 2 oz/gal` | both, which must agree | 1/65 |
//! | `2 oz/gal (US)` | by the measure in the bracket | x/(1+x) |
//!
//! The convention that was read is kept in [`Label::basis`], and the other one that people mean by
//! the same words stands in [`Label::others`]. What has two readings of equal right is refused with
//! both: a guess here is an overdose there.

#![allow(clippy::float_cmp, reason = "a number on a label is 1, or it is not: nothing was computed yet")]

mod amounts;
mod counted;
mod grammar;
mod lexer;
mod offer;
mod ratio;
mod statements;
mod vocabulary;

pub use offer::{Joint, apart};

use crate::limits::OutOfRange;
use crate::units::{MassConcentration, System, Volume, VolumeFraction};

/// What the numbers of a label are parts of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Basis {
    /// 1 part concentrate plus n parts water.
    PlusWater,
    /// 1 part in n parts of finished solution.
    OfTotal,
    /// An amount added to each volume of water.
    PerWater,
    /// An amount in each volume of finished solution.
    MadeUp,
    /// A share of the finished solution.
    Percent,
    /// An amount for a full tank, whatever its size.
    PerTank,
    /// A weight of powder in each volume.
    Powder,
    /// Active substance in each volume of finished solution.
    Active,
    /// Whole packets or tablets for a volume.
    Packets,
}

impl Basis {
    /// The stable name and word key.
    pub fn code(self) -> &'static str {
        match self {
            Self::PlusWater => "basis-plus-water",
            Self::OfTotal => "basis-of-total",
            Self::PerWater => "basis-per-water",
            Self::MadeUp => "basis-made-up",
            Self::Percent => "basis-percent",
            Self::PerTank => "basis-per-tank",
            Self::Powder => "basis-powder",
            Self::Active => "basis-active",
            Self::Packets => "basis-packets",
        }
    }
}

/// The least and the greatest that a rule allows; both are the same where it gives one number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Window<T> {
    /// Least.
    pub low: T,
    /// Greatest.
    pub high: T,
}

impl<T: PartialEq> Window<T> {
    /// Whether it is one number.
    pub fn is_point(&self) -> bool {
        self.low == self.high
    }
}

/// What the label asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rule {
    /// Concentrate as a volume fraction of the use solution.
    Strength(Window<VolumeFraction>),
    /// Concentrate for a full tank.
    PerTank(Window<Volume>),
    /// Powder in the use solution.
    Powder(Window<MassConcentration>),
    /// Active substance in the use solution.
    Active(Window<MassConcentration>),
    /// What one packet or tablet makes, from the least, which is the strongest.
    Packets(Window<Volume>),
}

impl Rule {
    /// Whether it leaves a choice.
    pub fn is_range(&self) -> bool {
        match self {
            Self::Strength(window) => !window.is_point(),
            Self::PerTank(window) | Self::Packets(window) => !window.is_point(),
            Self::Powder(window) | Self::Active(window) => !window.is_point(),
        }
    }
}

/// What the reader took for granted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Note {
    /// `64:1` is the maker's order for 1 to 64.
    ReversedOrder,
    /// "oz" was read as fluid ounces, not as a weight.
    FluidOunce,
    /// Gallons or ounces were read as US.
    UsMeasure,
    /// Gallons or ounces were read as imperial.
    ImperialMeasure,
}

impl Note {
    /// The stable name and word key.
    pub fn code(self) -> &'static str {
        match self {
            Self::ReversedOrder => "note-reversed-order",
            Self::FluidOunce => "note-fluid-ounce",
            Self::UsMeasure => "note-us-measure",
            Self::ImperialMeasure => "note-imperial-measure",
        }
    }
}

/// A label that was read.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// The convention.
    pub basis: Basis,
    /// What it asks for.
    pub rule: Rule,
    /// What was taken for granted.
    pub notes: Vec<Note>,
    /// Label texts for the other things that people mean by the same words.
    pub others: Vec<String>,
}

/// Why a label was not read.
#[derive(Clone, Debug, PartialEq)]
pub enum LabelMistake {
    /// Nothing is written.
    Empty,
    /// Longer than a dilution can be.
    TooLong,
    /// A word or sign that no dilution uses.
    Unknown {
        /// It.
        word: String,
    },
    /// Two readings of equal right, each as a label text that has one reading.
    Ambiguous {
        /// The readings.
        readings: Vec<String>,
    },
    /// A number without "1 to", a unit or a percent sign.
    NoUnit,
    /// An amount, but not for how much water; the likely ways to go on.
    NoPer {
        /// The readings.
        readings: Vec<String>,
    },
    /// To be used undiluted, which nothing in a tank is.
    Neat,
    /// A share by weight, which needs more than a label says.
    Weight,
    /// A part of zero.
    Zero,
    /// A range that runs from more to less.
    Backwards {
        /// The range the right way round.
        reading: String,
    },
    /// More concentrate than solution.
    MoreThanWhole,
    /// Two statements on one label that do not agree.
    TwoRules {
        /// The statements.
        readings: Vec<String>,
    },
    /// Stronger or weaker than any label.
    Range(OutOfRange),
    /// The words are known and make no dilution.
    Shape,
}

impl LabelMistake {
    /// The stable name and word key.
    pub fn code(&self) -> &'static str {
        match self {
            Self::Empty => "label-empty",
            Self::TooLong => "label-too-long",
            Self::Unknown { .. } => "label-unknown",
            Self::Ambiguous { .. } => "label-ambiguous",
            Self::NoUnit => "label-no-unit",
            Self::NoPer { .. } => "label-no-per",
            Self::Neat => "label-neat",
            Self::Weight => "label-weight",
            Self::Zero => "label-zero",
            Self::Backwards { .. } => "label-backwards",
            Self::MoreThanWhole => "label-more-than-whole",
            Self::TwoRules { .. } => "label-two-rules",
            Self::Range(_) => "label-range",
            Self::Shape => "label-shape",
        }
    }

    /// Label texts that the user can choose from instead.
    pub fn readings(&self) -> &[String] {
        match self {
            Self::Ambiguous { readings } | Self::NoPer { readings } | Self::TwoRules { readings } => readings,
            Self::Backwards { reading } => std::slice::from_ref(reading),
            _ => &[],
        }
    }
}

/// The longest text that is read as a label.
pub const LONGEST: usize = 120;

/// Reads a label. `system` decides what a bare "gal" or "oz" is; in a metric site nothing does, and
/// both readings are offered.
///
/// # Errors
/// [`LabelMistake`], with the readings to choose from where there are any.
///
/// ```
/// use brimline::trade::label::{self, Basis, LabelMistake, Rule};
/// use brimline::units::{Quantity, System};
/// let label = label::read("1:64", System::Us).unwrap();
/// assert_eq!(label.basis, Basis::PlusWater);
/// let Rule::Strength(window) = label.rule else { unreachable!() };
/// assert_eq!(window.low.si(), 1.0 / 65.0);
/// let refused = label::read("2:5", System::Us).unwrap_err();
/// assert_eq!(refused, LabelMistake::Ambiguous { readings: vec!["2+5".into(), "5+2".into()] });
/// ```
pub fn read(text: &str, system: System) -> Result<Label, LabelMistake> {
    let mut label = read_once(text, system).map_err(|mistake| settled(mistake, system, 3))?;
    // At the edge of the limits the other reading can lie beyond them.
    label.others.retain(|other| read_once(other, system).is_ok());
    Ok(label)
}

/// A mistake whose readings each have one meaning: a reading that has two gives way to those, and
/// one that makes no dilution is not offered. Where none is left, what is wrong with the first is told.
fn settled(mistake: LabelMistake, system: System, depth: usize) -> LabelMistake {
    let mut standing: Vec<String> = Vec::new();
    let mut fallen = None;
    for reading in mistake.readings() {
        match read_once(reading, system) {
            Ok(_) => standing.push(reading.clone()),
            Err(inner) if depth > 0 => {
                let inner = settled(inner, system, depth - 1);
                standing.extend(inner.readings().iter().cloned());
                fallen = fallen.or(Some(inner));
            }
            Err(_) => {}
        }
    }
    if standing.is_empty() {
        return fallen.unwrap_or(mistake);
    }
    let mut seen = Vec::new();
    standing.retain(|reading| {
        !seen.contains(reading) && {
            seen.push(reading.clone());
            true
        }
    });
    match mistake {
        LabelMistake::NoPer { .. } => LabelMistake::NoPer { readings: standing },
        LabelMistake::TwoRules { .. } => LabelMistake::TwoRules { readings: standing },
        LabelMistake::Backwards { .. } => LabelMistake::Backwards { reading: standing.swap_remove(0) },
        _ => LabelMistake::Ambiguous { readings: standing },
    }
}

fn read_once(text: &str, system: System) -> Result<Label, LabelMistake> {
    // Spaces behind a full stop would begin another statement.
    let text = text.trim();
    if text.is_empty() {
        return Err(LabelMistake::Empty);
    }
    if text.chars().count() > LONGEST {
        return Err(LabelMistake::TooLong);
    }
    statements::read(text, system)
}
