//! One cell of a quantity.

use super::{marks, spelling};
use crate::error::Mistake;
use crate::number::{self, Marks, NumberMistake};
use crate::site::Entry;
use crate::units::Unit;

/// Digits of a number that was converted: more than any list is exact to, and few enough to come back the same.
pub(super) const DIGITS: i32 = 12;

/// What stands behind a number that has two readings: it is no number to the page until somebody mended it.
const ASKED: &str = " ?";

/// How the numbers of a column are read.
#[derive(Clone, Copy)]
pub(super) struct Reader<'a> {
    /// The unit of the column.
    pub unit: &'static Unit,
    /// The codes of the units that the page offers there; the first takes what has another.
    pub offered: &'a [&'a str],
    /// The marks of the file, where they are known.
    pub file: Option<Marks>,
    /// The marks of the page.
    pub page: Marks,
}

impl Reader<'_> {
    /// What is to stand in the field, and what keeps it from being a number. A unit behind the number counts
    /// more than the column's; a unit that the page does not offer is converted.
    pub(super) fn read(self, text: &str) -> (Entry, Result<(), Mistake>) {
        let (bare, own) = spelling::cell(text, self.unit);
        let unit = own.unwrap_or(self.unit);
        let offered = self.offered(unit);
        match marks::read(bare, self.file) {
            Ok(value) if offered == unit => {
                (Entry::new(marks::rewritten(bare, value, self.page), unit.code), Ok(()))
            }
            Ok(value) => {
                let value = offered.from_si(unit.to_si(value));
                (Entry::new(number::plain(value, DIGITS, self.page.decimal), offered.code), Ok(()))
            }
            // Whether it may be empty is the column's business.
            Err(NumberMistake::Empty) => (Entry::new("", offered.code), Ok(())),
            Err(mistake @ NumberMistake::TwoReadings { .. }) => {
                (Entry::new(format!("{text}{ASKED}"), offered.code), Err(mistake.into()))
            }
            Err(mistake) => (Entry::new(text, offered.code), Err(mistake.into())),
        }
    }

    /// The unit itself where the page offers it, else the first that it does.
    fn offered(self, unit: &'static Unit) -> &'static Unit {
        if self.offered.contains(&unit.code) {
            return unit;
        }
        self.offered.first().and_then(|code| crate::units::unit(code)).unwrap_or(unit)
    }
}
