//! What a unit is: a code, a dimension, an exact factor to SI, and how people write it.

use super::{System, table};
use crate::source::Source;

/// What a unit measures; named after the quantity, since two quantities can share SI base units.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs, reason = "each is the quantity of the same name")]
pub enum Dimension {
    Volume,
    Flow,
    Area,
    Length,
    Speed,
    Duration,
    ApplicationRate,
    Coverage,
    Productivity,
    VolumeFraction,
    Plain,
    Mass,
    Density,
    MassConcentration,
    MassFraction,
    Temperature,
    ArealMass,
    Money,
    VolumePrice,
    Wage,
    AreaPrice,
    Frequency,
    Pressure,
    SpecificEnergy,
}

/// An exact positive fraction, both parts below 2⁵³, so that [`Exact::value`] is correctly rounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Exact {
    /// Above the line.
    pub numerator: u64,
    /// Below the line.
    pub denominator: u64,
}

impl Exact {
    /// `numerator / denominator`, in lowest terms.
    pub const fn new(numerator: u64, denominator: u64) -> Self {
        Self::lowest(numerator as u128, denominator as u128)
    }

    /// The product.
    #[must_use]
    pub const fn times(self, by: Self) -> Self {
        Self::lowest(
            self.numerator as u128 * by.numerator as u128,
            self.denominator as u128 * by.denominator as u128,
        )
    }

    /// The quotient.
    #[must_use]
    pub const fn over(self, by: Self) -> Self {
        self.times(Self { numerator: by.denominator, denominator: by.numerator })
    }

    /// The nearest `f64`.
    pub const fn value(self) -> f64 {
        self.numerator as f64 / self.denominator as f64
    }

    #[allow(clippy::cast_possible_truncation, reason = "the assertion keeps both parts below 2^53")]
    const fn lowest(numerator: u128, denominator: u128) -> Self {
        assert!(numerator > 0 && denominator > 0, "a factor is positive");
        let (mut divisor, mut rest) = (numerator, denominator);
        while rest > 0 {
            (divisor, rest) = (rest, divisor % rest);
        }
        let (numerator, denominator) = (numerator / divisor, denominator / divisor);
        assert!(numerator < 1 << 53 && denominator < 1 << 53, "both parts are exact as f64");
        Self { numerator: numerator as u64, denominator: denominator as u64 }
    }
}

/// One row of the unit table.
#[derive(Clone, Copy, Debug)]
pub struct Unit {
    /// The stable name in files.
    pub code: &'static str,
    /// What it measures.
    pub dimension: Dimension,
    /// SI units in one of it.
    pub exact: Exact,
    /// Where its scale has its zero, in SI units; none where nothing of it is nothing.
    pub zero: Option<Exact>,
    /// What stands behind a number on the page.
    pub symbol: &'static str,
    /// Other ways in which labels write it, in lower case.
    pub aliases: &'static [&'static str],
    /// The customary system it belongs to; `None` for units that all use.
    pub system: Option<System>,
}

impl Unit {
    /// Whether its symbol is made of English words ("per gal", "a week"), which a reader has in another language.
    ///
    /// ```
    /// use brimline::units::unit;
    /// assert!(unit("per_week").unwrap().is_worded() && !unit("gal_us").unwrap().is_worded());
    /// ```
    pub const fn is_worded(&self) -> bool {
        use Dimension::{AreaPrice, Frequency, VolumePrice, Wage};
        matches!(self.dimension, VolumePrice | Wage | AreaPrice | Frequency)
    }

    /// A value in this unit as a value in SI units.
    pub fn to_si(&self, value: f64) -> f64 {
        value * self.exact.value() + self.zero.map_or(0.0, Exact::value)
    }

    /// A value in SI units as a value in this unit.
    pub fn from_si(&self, si: f64) -> f64 {
        (si - self.zero.map_or(0.0, Exact::value)) / self.exact.value()
    }

    /// Where the factor is defined.
    pub fn source(&self) -> Source {
        let row = table::CITED.iter().find(|(unit, _)| unit == self);
        row.map_or(Source::DEFINITION, |(_, source)| *source)
    }
}

/// Units are rows of one table: the code tells them apart.
impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.code == other.code
    }
}

impl Eq for Unit {}
