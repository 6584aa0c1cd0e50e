//! A number field as it was typed.

use crate::document::shaped as document;
use crate::error::Mistake;
use crate::limits::Limit;
use crate::number::{self, Marks, NumberMistake};
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

    /// Reads it as a quantity within a limit. Of two readings that of English counts where the other makes no
    /// sense.
    ///
    /// # Errors
    /// [`Mistake`]: nothing typed, not a number, a unit of something else, or outside the limit.
    ///
    /// ```
    /// use brimline::{limits, number::Marks, site::Entry, units::{Quantity, Volume}};
    /// let tank: Volume = Entry::new("10", "gal_us").read(&limits::TANK, Marks::POINT).unwrap();
    /// assert_eq!(tank.si(), 0.037_854_117_84);
    /// let french = Marks { decimal: ',', group: '\u{202f}' };
    /// assert!(Entry::new("1.006", "g_per_ml").check(&limits::DENSITY, &[], french).is_ok());
    /// assert!(Entry::new("1.200", "gal_us").check(&limits::TANK, &[], french).is_err());
    /// ```
    pub fn read<Q: Quantity>(&self, limit: &'static Limit, marks: Marks) -> Result<Q, Mistake> {
        let (value, unit) = self.sensible(limit, marks)?;
        let quantity = Q::of(value, unit).ok_or(Mistake::Unit)?;
        Ok(limit.check(quantity)?)
    }

    /// Holds it to a limit, whatever it measures; left empty it is held to nothing. A unit of another kind that
    /// the field offers, such as a share of the tank beside a volume, is not held to this limit.
    ///
    /// # Errors
    /// As [`Entry::read`].
    pub fn check(&self, limit: &'static Limit, units: &[&str], marks: Marks) -> Result<(), Mistake> {
        if self.text.trim().is_empty() {
            return Ok(());
        }
        let (value, unit) = self.sensible(limit, marks)?;
        if unit.dimension == limit.dimension {
            return Ok(limit.check_si(unit.to_si(value))?);
        }
        if units.contains(&unit.code) { Ok(()) } else { Err(Mistake::Unit) }
    }

    /// Its number and its unit. Of two readings that of English counts where the other one makes no sense, far
    /// beyond the limit: nobody means a density of 1.006 g/mL for a thousand, and somebody may mean 1.200 gal for one.
    /// Only that of English, so that a site says the same wherever it is passed.
    fn sensible(&self, limit: &Limit, marks: Marks) -> Result<(f64, &'static Unit), Mistake> {
        let found = self.value(marks);
        let Err(Mistake::Number(NumberMistake::TwoReadings { decimal, grouped })) = found else {
            return found;
        };
        let (point, unit) = self.value(Marks::POINT)?;
        let is_far = |value: f64| limit.is_far(unit.to_si(value));
        let other = if point.total_cmp(&decimal).is_eq() { grouped } else { decimal };
        if unit.dimension == limit.dimension && is_far(other) && !is_far(point) {
            Ok((point, unit))
        } else {
            found
        }
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
