//! Pairs of products that must never meet in a tank, a drain or a bucket.
//!
//! What the last product left behind counts as meeting: a tank is rinsed in between.

use super::family::Family;
use crate::source::Source;

/// How bad a meeting is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// One product spoils the other; nobody is hurt at once.
    Spoils,
    /// Heat, spatter, fire or a harmful product.
    Harms,
    /// A gas that can kill.
    Gas,
}

impl Severity {
    /// From least to most serious.
    pub const ALL: [Self; 3] = [Self::Spoils, Self::Harms, Self::Gas];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Spoils => "pair-severity-spoils",
            Self::Harms => "pair-severity-harms",
            Self::Gas => "pair-severity-gas",
        }
    }
}

/// Two families that must never meet.
#[derive(Debug, PartialEq, Eq)]
pub struct Pair {
    /// One family.
    pub a: Family,
    /// The other.
    pub b: Family,
    /// How bad it is.
    pub severity: Severity,
    /// The word key of what happens.
    pub happens: &'static str,
    /// The word key of what to do.
    pub act: &'static str,
    /// Where it comes from.
    pub source: Source,
}

const CDC_POISONING: Source =
    Source::published("CDC, MMWR 40(36):619, 1991 (mop bucket and floor, chlorine)");
const OSHA_POSTER: Source =
    Source::published("OSHA 3511 / NIOSH 2012-125 (cleaning chemicals and your health)");
const NFPA: Source = Source::published("NFPA, 13 April 2020, on mixing household cleaners");
const EPA_WASTE: Source = Source::published("40 CFR 265, Appendix V, groups 1-A and 1-B");
const EPA_WASTE_MILD: Source = Source::unverified(
    "40 CFR 265, Appendix V, groups 1-A and 1-B, which part no strong from weak acids and alkalis; from memory",
);
const EPA_OXIDIZERS: Source = Source::unverified("40 CFR 265, Appendix V, groups 6-A and 6-B; from memory");
const IOWA: Source = Source::published("University of Iowa, Environmental Health and Safety, 8.2.9");
const PEROXIDE: Source =
    Source::unverified("from memory; check against a bleach maker's safety data sheet, section 10");

/// The table, most serious first.
#[rustfmt::skip]
pub static ALL: &[Pair] = &[
    Pair { a: Family::HypochloriteBleach, b: Family::Acid, severity: Severity::Gas, happens: "pair-bleach-acid-happens", act: "pair-bleach-acid-do", source: CDC_POISONING },
    Pair { a: Family::HypochloriteBleach, b: Family::Ammonia, severity: Severity::Gas, happens: "pair-bleach-ammonia-happens", act: "pair-bleach-ammonia-do", source: OSHA_POSTER },
    Pair { a: Family::HypochloriteBleach, b: Family::Alcohol, severity: Severity::Harms, happens: "pair-bleach-alcohol-happens", act: "pair-bleach-alcohol-do", source: NFPA },
    Pair { a: Family::HypochloriteBleach, b: Family::Peroxide, severity: Severity::Harms, happens: "pair-bleach-peroxide-happens", act: "pair-bleach-peroxide-do", source: PEROXIDE },
    Pair { a: Family::Peroxide, b: Family::Acid, severity: Severity::Harms, happens: "pair-peroxide-acid-happens", act: "pair-peroxide-acid-do", source: NFPA },
    Pair { a: Family::StrongAcid, b: Family::StrongAlkali, severity: Severity::Harms, happens: "pair-acid-alkali-happens", act: "pair-acid-alkali-do", source: EPA_WASTE },
    Pair { a: Family::Acid, b: Family::StrongAlkali, severity: Severity::Harms, happens: "pair-acid-alkali-happens", act: "pair-acid-alkali-do", source: EPA_WASTE_MILD },
    Pair { a: Family::StrongAcid, b: Family::Alkali, severity: Severity::Harms, happens: "pair-acid-alkali-happens", act: "pair-acid-alkali-do", source: EPA_WASTE_MILD },
    Pair { a: Family::Oxidiser, b: Family::Solvent, severity: Severity::Harms, happens: "pair-oxidiser-solvent-happens", act: "pair-oxidiser-solvent-do", source: EPA_OXIDIZERS },
    Pair { a: Family::Oxidiser, b: Family::Alcohol, severity: Severity::Harms, happens: "pair-oxidiser-solvent-happens", act: "pair-oxidiser-solvent-do", source: EPA_OXIDIZERS },
    Pair { a: Family::Quat, b: Family::Soap, severity: Severity::Spoils, happens: "pair-quat-soap-happens", act: "pair-quat-soap-do", source: IOWA },
];

impl Pair {
    /// Whether one product holds one side and the other product the other.
    fn joins(&self, left: &[Family], right: &[Family]) -> bool {
        let has = |families: &[Family], side: Family| families.iter().any(|one| one.is_a(side));
        (has(left, self.a) && has(right, self.b)) || (has(left, self.b) && has(right, self.a))
    }

    /// The family that a product of these families must be kept from, seen from its side.
    ///
    /// ```
    /// use brimline::chemistry::{family::Family, pairs::never_with};
    /// let pairs = never_with(&[Family::Quat]);
    /// assert_eq!(pairs[0].other_than(&[Family::Quat]), Family::Soap);
    /// ```
    pub fn other_than(&self, families: &[Family]) -> Family {
        if families.iter().any(|one| one.is_a(self.a)) { self.b } else { self.a }
    }
}

/// Every pair a product of these families is one side of: what to keep it away from.
///
/// Empty for no families: that nothing is known is for the caller to say, or use [`meet`].
pub fn never_with(families: &[Family]) -> Vec<&'static Pair> {
    let sides = |pair: &&Pair| families.iter().any(|one| one.is_a(pair.a) || one.is_a(pair.b));
    let mut found: Vec<&'static Pair> = Vec::new();
    for pair in ALL.iter().filter(sides) {
        let told =
            |one: &Pair| (one.other_than(families), one.happens) == (pair.other_than(families), pair.happens);
        if !found.iter().any(|one| told(one)) {
            found.push(pair);
        }
    }
    found
}

/// The pairs that two products, or the last and the next in one tank, would bring together.
///
/// ```
/// use brimline::chemistry::{family::Family, pairs::{Severity, clashes}};
/// let found = clashes(&[Family::HypochloriteBleach], &[Family::StrongAcid]);
/// assert_eq!(found[0].severity, Severity::Gas);
/// ```
pub fn clashes(a: &[Family], b: &[Family]) -> Vec<&'static Pair> {
    ALL.iter().filter(|pair| pair.joins(a, b)).collect()
}

/// What is known about two products meeting.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Meeting {
    /// They must never meet, for these reasons.
    Never(Vec<&'static Pair>),
    /// The families of at least one are not known: keep them apart and rinse.
    Unknown,
    /// No pair in the table joins them. Still no reason to mix them on purpose.
    NoPairListed,
}

/// What is known about two products meeting. A product with no family listed is never cleared.
///
/// ```
/// use brimline::chemistry::{family::Family, pairs::{Meeting, meet}};
/// assert_eq!(meet(&[Family::Neutral], &[]), Meeting::Unknown);
/// ```
pub fn meet(a: &[Family], b: &[Family]) -> Meeting {
    let found = clashes(a, b);
    if !found.is_empty() {
        Meeting::Never(found)
    } else if a.is_empty() || b.is_empty() {
        Meeting::Unknown
    } else {
        Meeting::NoPairListed
    }
}

/// The word keys of pairs.
pub fn word_keys() -> impl Iterator<Item = String> {
    ALL.iter()
        .flat_map(|pair| [pair.happens, pair.act])
        .chain(Severity::ALL.iter().map(|one| one.key()))
        .chain(["pair-meeting-unknown", "pair-meeting-none-listed"])
        .map(str::to_owned)
}
