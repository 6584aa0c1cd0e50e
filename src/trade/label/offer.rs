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
    /// In the order in which they are looked for: a range holds the others, and an amount for water or a
    /// tank is first of all an amount for something.
    const ALL: [Self; 7] =
        [Self::Range, Self::PerTank, Self::PerWater, Self::MadeUp, Self::Per, Self::OfTotal, Self::PlusWater];

    /// The stable name and word key.
    pub fn code(self) -> &'static str {
        match self {
            Self::Range => "meant-range",
            Self::PlusWater => "meant-plus-water",
            Self::OfTotal => "meant-of-total",
            Self::Per => "meant-per",
            Self::PerWater => "meant-per-water",
            Self::MadeUp => "meant-made-up",
            Self::PerTank => "meant-per-tank",
        }
    }

    /// What stands between its sides, and behind both.
    fn signs(self) -> (&'static str, &'static str) {
        match self {
            Self::Range => (" to ", ""),
            Self::PlusWater => ("+", ""),
            Self::OfTotal => (" in ", ""),
            Self::Per => (" per ", ""),
            Self::PerWater => (" per ", " water"),
            Self::MadeUp => (" per ", " made up"),
            Self::PerTank => (" per tank", ""),
        }
    }

    /// Whether it joins these two: a label's own words can hold the same signs.
    fn joins(self, one: &str, other: &str) -> bool {
        let number = |text| decimal(text, Some(Marks::POINT)).unwrap_or(0.0);
        match self {
            // "1 to 64" is a ratio.
            Self::Range => other.ends_with(" %") || other.ends_with(" ppm") || apart(other).is_some(),
            // "64+1" is a maker's order for 1 to 64, and never offered.
            Self::PlusWater => number(one) > 0.0 && (number(other) > 1.0 || number(one) <= number(other)),
            Self::OfTotal => number(one) > 0.0 && number(other) > 0.0,
            Self::PerTank => other.is_empty(),
            Self::Per | Self::PerWater | Self::MadeUp => true,
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
    Joint::ALL.into_iter().find_map(|joint| {
        let (between, behind) = joint.signs();
        let (one, other) = text.split_once(between)?;
        let other = other.strip_suffix(behind)?;
        joint.joins(one, other).then_some((joint, one, other))
    })
}
