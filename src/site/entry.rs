//! A number field as it was typed.

use crate::document::shaped as document;
use crate::error::Mistake;
use crate::limits::Limit;
use crate::number::{self, Marks};
use crate::units::{Quantity, Unit, unit};

document! {
    /// A text and the code of the unit that stands beside it.
    Entry {
        /// What was typed.
        text: String,
        /// The stable code of the unit.
        unit: String,
    }
}

impl Entry {
    /// A text in a unit.
    pub fn new(text: impl Into<String>, unit: &str) -> Self {
        Self { text: text.into(), unit: unit.to_owned() }
    }

    /// Reads it as a quantity within a limit.
    ///
    /// # Errors
    /// [`Mistake`]: nothing typed, not a number, a unit of something else, or outside the limit.
    ///
    /// ```
    /// use brimline::{limits, number::Marks, site::Entry, units::{Quantity, Volume}};
    /// let tank: Volume = Entry::new("10", "gal_us").read(&limits::TANK, Marks::POINT).unwrap();
    /// assert_eq!(tank.si(), 0.037_854_117_84);
    /// ```
    pub fn read<Q: Quantity>(&self, limit: &'static Limit, marks: Marks) -> Result<Q, Mistake> {
        let (value, unit) = self.value(marks)?;
        let quantity = Q::of(value, unit).ok_or(Mistake::Unit)?;
        Ok(limit.check(quantity)?)
    }

    /// Its number and its unit, whatever the number is.
    ///
    /// # Errors
    /// [`Mistake`]: nothing typed, not a number, or no unit.
    pub fn value(&self, marks: Marks) -> Result<(f64, &'static Unit), Mistake> {
        let unit = unit(&self.unit).ok_or(Mistake::Unit)?;
        // "12 gal" in a field of gallons says it twice, which does no harm.
        let text = self.text.trim_end();
        let bare = text.strip_suffix(unit.symbol).filter(|bare| !bare.trim().is_empty()).unwrap_or(text);
        Ok((number::read(bare, marks)?, unit))
    }

    /// Reads it where it may be left empty.
    ///
    /// # Errors
    /// As [`Entry::read`], but nothing typed is `None`.
    pub fn read_optional<Q: Quantity>(
        &self,
        limit: &'static Limit,
        marks: Marks,
    ) -> Result<Option<Q>, Mistake> {
        // Most of what may be empty is.
        if self.text.trim().is_empty() {
            return Ok(None);
        }
        match self.read(limit, marks) {
            Err(Mistake::Missing) => Ok(None),
            other => other.map(Some),
        }
    }
}
