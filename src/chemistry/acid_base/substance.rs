//! Substances that a safety data sheet lists, by CAS number: what each brings into water.

mod acids;
mod neutral;
mod salts;

use super::Weak;
use crate::chemistry::cas;
use crate::source::Source;

/// What a mole of a substance brings into water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Makeup {
    /// Its mass, g/mol; of what the sheet's per cent counts.
    pub molar_mass: f64,
    /// Strong positive ions of charge 1: sodium, potassium.
    pub plus: f64,
    /// Strong negative ions of charge 1: chloride, nitrate, a sulfonate.
    pub minus: f64,
    /// Weak acids and bases, how many of each.
    pub weak: &'static [(&'static Weak, f64)],
}

/// How much is known of what a substance brings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Brings {
    /// Neither acid nor base, nor ions that count.
    Nothing,
    /// This.
    Just(Makeup),
    /// Something between the two: the name does not tell. The more acid one stands first.
    Between(Makeup, Makeup),
}

/// One row.
#[derive(Debug)]
pub struct Substance {
    /// CAS number.
    pub cas: &'static str,
    /// What a chemist calls it.
    pub name: &'static str,
    /// What it brings.
    pub brings: Brings,
    /// Where that comes from.
    pub source: Source,
}

/// Rows of one table: the number tells them apart.
impl PartialEq for Substance {
    fn eq(&self, other: &Self) -> bool {
        self.cas == other.cas
    }
}

impl Substance {
    /// The ways in which it can be: one, or the two ends.
    pub fn makeups(&self) -> impl Iterator<Item = &Makeup> {
        let (one, other) = match &self.brings {
            Brings::Nothing => (None, None),
            Brings::Just(makeup) => (Some(makeup), None),
            Brings::Between(acid, base) => (Some(acid), Some(base)),
        };
        one.into_iter().chain(other)
    }
}

/// What follows from the formula: what it brings is the definition of the substance, its molar mass the sum
/// of the standard atomic masses, held against a library of chemicals in the tests.
const FORMULA: Source = Source::DEFINITION;

type Parts = &'static [(&'static Weak, f64)];

/// A row whose formula tells all.
const fn just(
    cas: &'static str,
    name: &'static str,
    molar_mass: f64,
    plus: f64,
    minus: f64,
    weak: Parts,
) -> Substance {
    Substance { cas, name, brings: Brings::Just(Makeup { molar_mass, plus, minus, weak }), source: FORMULA }
}

/// All rows.
///
/// ```
/// use brimline::chemistry::{acid_base::substance, cas};
/// assert!(substance::all().all(|row| cas::check(row.cas).is_some()));
/// ```
pub fn all() -> impl Iterator<Item = &'static Substance> {
    acids::ALL.iter().chain(salts::ALL).chain(neutral::ALL)
}

/// The row of a CAS number as a person types it; none where no row knows it.
///
/// ```
/// use brimline::chemistry::acid_base::substance;
/// assert_eq!(substance::find(" 77-92-9 ").map(|row| row.name), Some("citric acid"));
/// assert!(substance::find("50-00-0").is_none());
/// ```
pub fn find(number: &str) -> Option<&'static Substance> {
    let number = cas::check(number)?.to_string();
    all().find(|row| row.cas == number)
}
