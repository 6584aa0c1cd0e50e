//! The limits, row by row.
//!
//! The health rows were read in the Hazardous Products Regulations of Canada, which write the mixture rules of
//! the UN GHS out; 29 CFR 1910.1200, Appendix A and CLP, Annex I carry the same figures (from memory, except
//! for what CLP says of pH and its 5 % and 3 %). The rows for water were read in ADR, which writes the same
//! chapter of the UN GHS out for categories 1 and 2. Both are read in the editions that the rows name; whether
//! later ones changed a figure was not looked up.

use super::class::Endpoint;
use crate::source::Source;

/// A rule that can decide a class.
#[derive(Debug, PartialEq, Eq)]
pub struct Rule {
    /// The stable code, and the key of its words.
    pub code: &'static str,
    /// Where it comes from.
    pub source: Source,
}

/// How the ingredients of a row count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Counts {
    /// Their shares are added up.
    Together,
    /// Each by itself, of those that do not add up.
    Alone,
}

/// A limit: what counts how often, from how much on, and the category that it gives.
#[derive(Debug)]
pub(super) struct Limit {
    /// The rule.
    pub rule: Rule,
    /// What it is about.
    pub endpoint: Endpoint,
    /// The category that it gives.
    pub gives: u8,
    /// How ingredients count.
    pub counts: Counts,
    /// Categories of ingredients, and how many times each counts.
    pub terms: &'static [(u8, f64)],
    /// Whether the M factor of an ingredient of category 1 multiplies it.
    pub multiplies: bool,
    /// The least that gives the category, mass in mass, included.
    pub least: f64,
}

macro_rules! hpr {
    ($place:literal) => {
        Source::published(concat!(
            "Hazardous Products Regulations (Canada), SOR/2015-17, as of March 2020, ",
            $place
        ))
    };
}

/// Which families the rules name as those that may not add up.
pub(super) const HPR_NAMED: Source = hpr!("8.2.11(3) and 8.3.11(3)");
/// Names and numbers as a general library of chemical data gives them; the families are chemistry.
pub(super) const FAMILIES: Source = Source::unverified(
    "names and CAS numbers checked with the Python library chemicals 1.5.2, as far as it has them",
);

const fn limit(
    rule: Rule,
    (endpoint, gives): (Endpoint, u8),
    counts: Counts,
    terms: &'static [(u8, f64)],
    least: f64,
) -> Limit {
    Limit { rule, endpoint, gives, counts, terms, multiplies: false, least }
}

const fn rule(code: &'static str, source: Source) -> Rule {
    Rule { code, source }
}

const fn times_m(mut row: Limit) -> Limit {
    row.multiplies = true;
    row
}

/// ADR 2.2.9.1.10.4.6, editions 2017 and 2019.
const ADR: Source = Source::published("ADR 2019, 2.2.9.1.10.4.6.2.2 and 2.2.9.1.10.4.6.3.3");
const CLP_WATER: Source = Source::unverified("CLP, Annex I, Table 4.1.2; from memory");

use Counts::{Alone, Together};
use Endpoint::{Eye, Skin, WaterAcute, WaterChronic};

/// The limits, the worst category of each endpoint first.
#[rustfmt::skip]
pub(super) static LIMITS: &[Limit] = &[
    limit(rule("mixture-skin-burns", hpr!("8.2.11(2)(a)")), (Skin, 1), Together, &[(1, 1.0)], 0.05),
    limit(rule("mixture-skin-burns-alone", hpr!("8.2.11(3), items 1 to 3")), (Skin, 1), Alone, &[(1, 1.0)], 0.01),
    limit(rule("mixture-skin-burns-little", hpr!("8.2.11(2)(b)")), (Skin, 2), Together, &[(1, 1.0)], 0.01),
    limit(rule("mixture-skin-irritates", hpr!("8.2.11(2)(c)")), (Skin, 2), Together, &[(2, 1.0)], 0.10),
    limit(rule("mixture-skin-irritates-alone", hpr!("8.2.11(3), item 4")), (Skin, 2), Alone, &[(2, 1.0)], 0.03),
    limit(rule("mixture-skin-both", hpr!("8.2.11(2)(d)")), (Skin, 2), Together, &[(1, 10.0), (2, 1.0)], 0.10),

    limit(rule("mixture-eye-damages", hpr!("8.3.11(2)(a)")), (Eye, 1), Together, &[(1, 1.0)], 0.03),
    limit(rule("mixture-eye-damages-alone", hpr!("8.3.11(3), items 1 to 3")), (Eye, 1), Alone, &[(1, 1.0)], 0.01),
    limit(rule("mixture-eye-damages-little", hpr!("8.3.11(2)(b)")), (Eye, 2), Together, &[(1, 1.0)], 0.01),
    limit(rule("mixture-eye-irritates", hpr!("8.3.11(2)(c)")), (Eye, 2), Together, &[(2, 1.0)], 0.10),
    limit(rule("mixture-eye-irritates-alone", hpr!("8.3.11(3), item 4")), (Eye, 2), Alone, &[(2, 1.0)], 0.03),
    limit(rule("mixture-eye-both", hpr!("8.3.11(2)(d)")), (Eye, 2), Together, &[(1, 10.0), (2, 1.0)], 0.10),

    times_m(limit(rule("mixture-water-acute", ADR), (WaterAcute, 1), Together, &[(1, 1.0)], 0.25)),
    times_m(limit(rule("mixture-water-chronic-1", ADR), (WaterChronic, 1), Together, &[(1, 1.0)], 0.25)),
    times_m(limit(rule("mixture-water-chronic-2", ADR), (WaterChronic, 2), Together, &[(1, 10.0), (2, 1.0)], 0.25)),
    times_m(limit(rule("mixture-water-chronic-3", CLP_WATER), (WaterChronic, 3), Together, &[(1, 100.0), (2, 10.0), (3, 1.0)], 0.25)),
    limit(rule("mixture-water-chronic-4", CLP_WATER), (WaterChronic, 4), Together, &[(1, 1.0), (2, 1.0), (3, 1.0), (4, 1.0)], 0.25),
];

/// The least share, mass in mass, from which an ingredient of a category counts: less only with evidence.
pub(super) fn counts_from(endpoint: Endpoint, category: u8) -> f64 {
    let in_water = !endpoint.is_health() && category == 1;
    if in_water { 0.001 } else { 0.01 }
}

/// From which share on an ingredient counts, for people.
pub const COUNTS_FROM: Source = hpr!("8.1.2(2), 8.2.11(1) and 8.3.11(1)");
/// The same for water; the M factor divides the limit (CLP, Annex I, 4.1.3.1).
pub const COUNTS_FROM_WATER: Source = Source::published("ADR 2019, 2.2.9.1.10.4.1; CLP, Annex I, 4.1.3.1");

/// No limit is reached.
pub static BELOW: Rule = rule("mixture-below", hpr!("8.1.1, 8.2.11 and 8.3.11"));
/// An extreme pH burns, unless somebody qualified found its reserve small.
pub static PH: Rule =
    rule("mixture-ph", hpr!("8.2.5 and 8.3.5, by 8.2.9 and 8.3.9; CLP, Annex I, 3.2.3.1.2"));
/// The acute toxicity estimate of the mixture, data for all that counts.
pub static ESTIMATE: Rule = rule("mixture-estimate", hpr!("8.1.5 and 8.1.7"));
/// The same, more than a tenth of it unknown.
pub static ESTIMATE_UNKNOWN: Rule = rule("mixture-estimate-unknown", hpr!("8.1.6(b)(ii)"));
/// Diluted with water it keeps the class of the concentrate.
pub static DILUTED: Rule = rule("mixture-diluted", hpr!("2.3(3)"));
/// Not classified as a concentrate, so not diluted with water either.
pub static LABEL: Rule = rule("mixture-label", hpr!("2.3(3), read the other way; the maker’s label governs"));

/// Every rule.
pub fn all() -> impl Iterator<Item = &'static Rule> {
    let others = [&BELOW, &PH, &ESTIMATE, &ESTIMATE_UNKNOWN, &DILUTED, &LABEL];
    LIMITS.iter().map(|row| &row.rule).chain(others)
}
