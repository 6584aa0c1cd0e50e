//! Which plural form a number takes, by language.
//!
//! The cardinal rules of Unicode CLDR 45 (`supplemental/plurals.xml`), as far as the messages use them: the category
//! "many" of Spanish, French and Portuguese, for whole millions, is read as "other", since no message has a form for
//! it. A test holds the rules against the crate `intl_pluralrules`.

/// A rule. Haitian Creole has none in CLDR: its nouns do not change with their number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Plural {
    /// `one`: n = 1. English, Spanish.
    One,
    /// `one`: the whole part is 0 or 1. French, Portuguese.
    ZeroOrOne,
    /// `one`: n = 1. `few`: a whole number that ends in 2 to 4 and not in 12 to 14. `many`: other whole numbers.
    Polish,
    /// One form for all numbers.
    Same,
}

impl Plural {
    /// The category of a number, as it is written without trailing zeros.
    ///
    /// ```
    /// use brimline::words::Plural;
    /// assert_eq!(Plural::One.category(1.0), "one");
    /// assert_eq!(Plural::ZeroOrOne.category(1.5), "one");
    /// assert_eq!(Plural::Polish.category(22.0), "few");
    /// assert_eq!(Plural::Polish.category(1.5), "other");
    /// ```
    pub fn category(self, number: f64) -> &'static str {
        let is = |one: f64| (number - one).abs() < f64::EPSILON;
        let ends = |from: f64, to: f64, of: f64| (from..=to).contains(&(number % of));
        match self {
            Self::One | Self::Polish if is(1.0) => "one",
            Self::ZeroOrOne if (0.0..2.0).contains(&number.abs()) => "one",
            Self::Polish if !is(number.trunc()) => "other",
            Self::Polish if ends(2.0, 4.0, 10.0) && !ends(12.0, 14.0, 100.0) => "few",
            Self::Polish => "many",
            _ => "other",
        }
    }
}
