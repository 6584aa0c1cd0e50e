//! Symbols in the reader's language: of units, and in formulas.

use super::Words;
use crate::number::{self, Marks};
use crate::units::{Unit, unit};
use std::borrow::Cow;

impl Words {
    /// The symbol of a unit as a person reads it. One that is made of words ("a week") is a message, `unit-` with the
    /// unit's code; what a program reads keeps [`Unit::symbol`].
    ///
    /// ```
    /// use brimline::units::unit;
    /// use brimline::words::{LANGUAGES, Words};
    /// let spanish = Words::of(&LANGUAGES[1], "unit-per_week = a la semana").unwrap();
    /// assert_eq!(spanish.symbol(unit("per_week").unwrap()), "a la semana");
    /// assert_eq!(spanish.symbol(unit("gal_us").unwrap()), "gal");
    /// ```
    pub fn symbol(&self, unit: &Unit) -> Cow<'static, str> {
        let own = unit.is_worded().then(|| self.find(&format!("unit-{}", unit.code))).flatten();
        own.map_or(Cow::Borrowed(unit.symbol), Cow::Owned)
    }

    /// The symbol of the unit with this code; empty where there is none.
    pub fn symbol_of(&self, code: &str) -> Cow<'static, str> {
        unit(code).map(|unit| self.symbol(unit)).unwrap_or_default()
    }

    /// An equation, or one symbol of it, as a person reads it: numbers as the language writes them, and the message
    /// `symbol-` with the word for each word that has one, as `2 packets` has too. Letters, signs and what else a formula has stay.
    ///
    /// ```
    /// use brimline::words::{LANGUAGES, Words};
    /// let french = Words::of(&LANGUAGES[2], "number-decimal = ,\nsymbol-alone = seule").unwrap();
    /// assert_eq!(french.equation("0.9 × R / d"), "0,9 × R / d");
    /// assert_eq!(french.equation("E − alone"), "E − seule");
    /// ```
    pub fn equation(&self, text: &str) -> String {
        let kind = |c: char| (matches!(c, '0'..='9' | '.'), c.is_ascii_lowercase());
        let (mut out, mut rest) = (String::new(), text);
        while let Some(first) = rest.chars().next().map(kind) {
            let (run, after) = rest.split_at(rest.find(|c| kind(c) != first).unwrap_or(rest.len()));
            let told = match first {
                // All of its digits.
                (true, _) => number::decimal(run, Some(Marks::POINT))
                    .ok()
                    .map(|value| number::write(value, 12, self.marks())),
                (_, true) => self.find(&format!("symbol-{run}")),
                _ => None,
            };
            out.push_str(told.as_deref().unwrap_or(run));
            rest = after;
        }
        out
    }
}
