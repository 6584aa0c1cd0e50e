//! Mistakes in what was typed, as data: the words stand in the language files.

use crate::limits::OutOfRange;
use crate::number::NumberMistake;

/// What is wrong with one number and its unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mistake {
    /// Nothing is written where an answer needs a value.
    Missing,
    /// It does not read as a number.
    Number(NumberMistake),
    /// The unit is not known or measures something else.
    Unit,
    /// Outside the limits.
    Range(OutOfRange),
}

impl From<NumberMistake> for Mistake {
    fn from(mistake: NumberMistake) -> Self {
        match mistake {
            NumberMistake::Empty => Self::Missing,
            other => Self::Number(other),
        }
    }
}

impl From<OutOfRange> for Mistake {
    fn from(mistake: OutOfRange) -> Self {
        Self::Range(mistake)
    }
}
