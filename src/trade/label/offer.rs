//! What a label text that is offered says, as data: the words of every language are made of it, while
//! the text itself is what goes into the label.

use crate::number::{Marks, decimal};

/// How the two sides of an offered text belong together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Joint {
    /// From the one to the other.
    Range,
    /// Parts of concentrate, and parts of water beside them.
    PlusWater,
    /// Parts of concentrate, and the parts of finished solution that they are in.
    OfTotal,
    /// An amount, and the volume that it is for, as the label says it.
    Per,
    /// An amount, and the volume of water that it is added to.
    PerWater,
    /// An amount, and the volume of finished solution that it is in.
    MadeUp,
    /// An amount for a full tank.
    PerTank,
}

impl Joint {
    /// The stable name and word key.
    pub fn code(self) -> &'static str {
        match self {
            Self::Range => "window",
            Self::PlusWater => "meant-plus-water",
            Self::OfTotal => "meant-of-total",
            Self::Per => "meant-per",
            Self::PerWater => "meant-per-water",
            Self::MadeUp => "meant-made-up",
            Self::PerTank => "meant-per-tank",
        }
    }
}

/// Takes a text of [`Label::others`](super::Label::others) or of
/// [`LabelMistake::readings`](super::LabelMistake::readings) apart: how its sides belong together, and both.
/// A side can be taken apart again, down to numbers, which have a decimal point, and symbols of units.
/// Nothing where it is such a side, or in words of the label's own, which are told as they stand.
///
/// ```
/// use brimline::trade::label::{Joint, apart};
/// assert_eq!(apart("4 US fl oz per US gal made up"), Some((Joint::MadeUp, "4 US fl oz", "US gal")));
/// assert_eq!(apart("1 in 32 to 1 in 64"), Some((Joint::Range, "1 in 32", "1 in 64")));
/// assert_eq!(apart("5+2"), Some((Joint::PlusWater, "5", "2")));
/// assert_eq!(apart("2 US fl oz"), None);
/// // Not a range: 1 part to 64.
/// assert_eq!(apart("1 to 64"), None);
/// ```
pub fn apart(text: &str) -> Option<(Joint, &str, &str)> {
    let number = |text: &str| decimal(text, Some(Marks::POINT)).ok();
    if let Some((low, high)) = text.split_once(" to ") {
        let range = high.ends_with(" %") || high.ends_with(" ppm") || apart(high).is_some();
        return range.then_some((Joint::Range, low, high));
    }
    if let Some((amount, volume)) = text.split_once(" per ") {
        return Some(if volume == "tank" {
            (Joint::PerTank, amount, volume)
        } else if let Some(water) = volume.strip_suffix(" water") {
            (Joint::PerWater, amount, water)
        } else if let Some(solution) = volume.strip_suffix(" made up") {
            (Joint::MadeUp, amount, solution)
        } else {
            (Joint::Per, amount, volume)
        });
    }
    let (joint, sides) = match text.split_once(" in ") {
        Some(sides) => (Joint::OfTotal, sides),
        None => (Joint::PlusWater, text.split_once('+')?),
    };
    let (part, other) = (number(sides.0)?, number(sides.1)?);
    // "64+1" is a maker's order for 1 to 64, and never offered.
    (joint == Joint::OfTotal || other > 1.0 || part <= 1.0).then_some((joint, sides.0, sides.1))
}
