//! Hazard (H) statements: what each code says about a product.

use super::pictogram::{Pictogram, SignalWord};
use super::{environment, health, physical};
use crate::source::Source;

/// What kind of hazard a statement is about; the first digit of its code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Part {
    /// Fire, explosion, pressure, corrosion of metals: H2xx.
    Physical,
    /// Harm to people: H3xx.
    Health,
    /// Harm to the environment: H4xx.
    Environment,
}

/// How a hazard reaches a person.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Route {
    /// In the eyes.
    Eye,
    /// On the skin.
    Skin,
    /// Breathed in.
    Breathe,
    /// Swallowed.
    Swallow,
    /// The statement names no route, or harm comes later.
    Exposed,
}

impl Route {
    /// Every route, in the order first aid is shown.
    pub const ALL: [Self; 5] = [Self::Eye, Self::Skin, Self::Breathe, Self::Swallow, Self::Exposed];
}

/// One row of the table of hazard statements.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hazard {
    /// The code as printed, a combined one joined by `+` without spaces.
    pub code: &'static str,
    /// The signal word of the most serious category that bears this code.
    pub signal: SignalWord,
    /// Whether a less serious category bears the same code with another signal word or pictogram:
    /// then the label itself decides.
    pub varies: bool,
    /// The pictograms of that category.
    pub pictograms: &'static [Pictogram],
    /// 1 is the most serious. Our own order for showing statements; the standard sets none.
    pub rank: u8,
    /// How it reaches a person; empty when it does not.
    pub routes: &'static [Route],
}

impl Hazard {
    /// The part of the standard the code belongs to.
    pub const fn part(&self) -> Part {
        match self.code.as_bytes()[1] {
            b'2' => Part::Physical,
            b'3' => Part::Health,
            _ => Part::Environment,
        }
    }

    /// Where the row comes from.
    pub fn source(&self) -> Source {
        let rows = [physical::CITED, health::CITED, environment::CITED];
        let row = rows.into_iter().flatten().find(|(hazard, _)| hazard.code == self.code);
        row.map_or(Source::COMMON_PRACTICE, |(_, source)| *source)
    }

    /// The single codes in it: one, or each part of a combined statement.
    ///
    /// ```
    /// use brimline::chemistry::ghs::hazard::find;
    /// let both = find("H302+H312").unwrap();
    /// assert!(both.parts().eq(["H302", "H312"]));
    /// ```
    pub fn parts(&self) -> impl Iterator<Item = &'static str> + use<> {
        self.code.split('+')
    }

    /// The word key of the statement's text: `ghs-h-h314`, combined `ghs-h-h302-h312`.
    pub fn key(&self) -> String {
        format!("ghs-h-{}", self.code.to_ascii_lowercase().replace('+', "-"))
    }
}

/// Every statement in the table, by part and code, combined ones after the single ones.
pub fn all() -> impl Iterator<Item = &'static Hazard> {
    physical::ALL.iter().chain(health::ALL).chain(environment::ALL)
}

/// The statement with this code (upper case, combined with `+` and no spaces).
pub fn find(code: &str) -> Option<&'static Hazard> {
    all().find(|hazard| hazard.code == code)
}

/// A row whose code carries one signal word in every category.
pub(super) const fn row(
    code: &'static str,
    signal: SignalWord,
    pictograms: &'static [Pictogram],
    rank: u8,
    routes: &'static [Route],
    source: Source,
) -> (Hazard, Source) {
    (Hazard { code, signal, varies: false, pictograms, rank, routes }, source)
}

/// A row whose code is shared by categories that differ; the elements are those of the worst.
pub(super) const fn worst(
    code: &'static str,
    signal: SignalWord,
    pictograms: &'static [Pictogram],
    rank: u8,
    source: Source,
) -> (Hazard, Source) {
    (Hazard { code, signal, varies: true, pictograms, rank, routes: &[] }, source)
}
