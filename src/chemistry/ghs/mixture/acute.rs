//! Acute toxicity: the estimate of a mixture from those of its ingredients.

use super::class::{Class, Endpoint};
use super::ingredient::Ingredient;
use super::rules::{self, Rule};
use super::{Mixture, Reached};
use crate::source::Source;
use crate::units::{MassFraction, Quantity};

/// One mg for each kg.
const MG_PER_KG: f64 = 1e-6;

/// More than this unknown, and the formula speaks of the known part only. "Greater than 10 %" also in the
/// correction of 29 CFR 1910.1200, A.1.3.6.2.4 of 2024.
pub const MOST_UNKNOWN: f64 = 0.10;

/// From this share on, mass in mass, unknown ingredients are looked at. Source: [`rules::COUNTS_FROM`].
const UNKNOWN_COUNTS: f64 = 0.01;

/// A category of acute toxicity: the highest estimate that it has, and the one that stands for it where only
/// the category is known, mg/kg.
struct Step {
    category: u8,
    up_to: f64,
    stands_for: f64,
}

/// Categories and the estimates that stand for them.
pub const SOURCE: Source = Source::published(
    "Hazardous Products Regulations (Canada), SOR/2015-17, as of March 2020, 8.1.1(3), tables 1 and 2, and 8.1.7",
);

const ORAL: [Step; 4] =
    [step(1, 5.0, 0.5), step(2, 50.0, 5.0), step(3, 300.0, 100.0), step(4, 2000.0, 500.0)];
const DERMAL: [Step; 4] =
    [step(1, 50.0, 5.0), step(2, 200.0, 50.0), step(3, 1000.0, 300.0), step(4, 2000.0, 1100.0)];

const fn step(category: u8, up_to: f64, stands_for: f64) -> Step {
    Step { category, up_to, stands_for }
}

fn steps(endpoint: Endpoint) -> &'static [Step; 4] {
    if endpoint == Endpoint::ThroughSkin { &DERMAL } else { &ORAL }
}

/// The acute toxicity estimate of a mixture.
///
/// `ATE = (1 − U) / Σ (cᵢ / ATEᵢ)`, U counted only where it is more than 0.10
///
/// * `parts`: share of each toxic ingredient and its estimate, all estimates in one unit and above 0.
/// * `unknown`: the share whose toxicity is not known, U, 0 to 1.
///
/// Returns the estimate in the unit of the parts; none where no part is toxic. What is known to be harmless
/// is left out of `parts`. Where shares overlap, being ranges, it is no worse than its most toxic part.
/// Source: Hazardous Products Regulations (Canada), SOR/2015-17, 8.1.5 and 8.1.6.
///
/// ```
/// use brimline::chemistry::ghs::mixture::estimate;
/// // UN GHS Sub-Committee, 2008, draft guidance 3-1d: 6.6 mg/L with 11 % unknown.
/// let ate = estimate(&[(0.26, 11.0), (0.23, 19.0), (0.40, 4.0)], 0.11).unwrap();
/// assert_eq!((ate * 10.0).round() / 10.0, 6.6);
/// ```
pub fn estimate(parts: &[(f64, f64)], unknown: f64) -> Option<f64> {
    let sum: f64 = parts.iter().map(|(share, ate)| share / ate).sum();
    let most_toxic = parts.iter().map(|(_, ate)| *ate).fold(f64::INFINITY, f64::min);
    let speaks_of = if unknown > MOST_UNKNOWN { 1.0 - unknown } else { 1.0 };
    (sum > 0.0).then(|| (speaks_of / sum).max(most_toxic))
}

/// What an ingredient does by one route.
enum Toxicity {
    /// Nobody knows.
    Unknown,
    /// Its hazards are known, and this is none of them.
    Harmless,
    /// Its estimate, mg/kg.
    Estimate(f64),
}

/// The estimate of one ingredient: the one given, but never a milder one than its category allows.
fn toxicity(ingredient: &Ingredient, endpoint: Endpoint) -> Toxicity {
    let given = if endpoint == Endpoint::ThroughSkin { ingredient.dermal } else { ingredient.oral };
    let given = given.map(|ate| ate.si() / MG_PER_KG).filter(|ate| *ate > 0.0 && ate.is_finite());
    let category = ingredient.category(endpoint);
    let row = steps(endpoint).iter().find(|row| Some(row.category) == category);
    match (given, row) {
        (Some(ate), Some(row)) if ate > worst_limit(endpoint, row) => Toxicity::Estimate(row.stands_for),
        (Some(ate), _) => Toxicity::Estimate(ate),
        (None, Some(row)) => Toxicity::Estimate(row.stands_for),
        (None, None) if is_mild(ingredient, endpoint) => Toxicity::Estimate(MILD),
        (None, None) if ingredient.known().is_some() => Toxicity::Harmless,
        (None, None) => Toxicity::Unknown,
    }
}

/// What category 5 of the UN GHS begins with, mg/kg: its end is 5000 (Hazardous Products Regulations, 8.1.5,
/// which count such ingredients without naming the category).
const MILD: f64 = 2000.0;

/// Whether it bears the statement of category 5.
fn is_mild(ingredient: &Ingredient, endpoint: Endpoint) -> bool {
    let code = if endpoint == Endpoint::ThroughSkin { "H313" } else { "H303" };
    ingredient.known().into_iter().flatten().flat_map(|hazard| hazard.parts()).any(|part| part == code)
}

/// The highest estimate of what bears the statement of this category: categories 1 and 2 share one.
fn worst_limit(endpoint: Endpoint, row: &Step) -> f64 {
    let top = &steps(endpoint)[1];
    if row.category == 1 { top.up_to } else { row.up_to }
}

/// The category of an estimate, mg/kg.
fn category(endpoint: Endpoint, ate: f64) -> Option<u8> {
    // One rounding either way: an estimate at the limit belongs to the worse category.
    steps(endpoint).iter().find(|row| ate <= row.up_to * (1.0 + 1e-9)).map(|row| row.category)
}

/// What the ingredients come to at a share of the concentrate, and how much of it is unknown.
pub(super) struct Judged {
    pub class: Option<Class>,
    pub rule: &'static Rule,
    pub reached: Reached,
    /// Whether enough is unknown to count.
    pub gap: bool,
}

/// The class by what is known alone, as if the unknown were harmless: nothing that is missing explains a label.
pub(super) fn firm(mixture: &Mixture, endpoint: Endpoint) -> Option<Class> {
    let (parts, _) = parts(mixture, endpoint, 1.0);
    let category = estimate(&parts, 0.0).and_then(|ate| category(endpoint, ate))?;
    Some(Class { endpoint, category })
}

/// Share and estimate of each toxic ingredient, and the share of which nobody knows.
fn parts(mixture: &Mixture, endpoint: Endpoint, share: f64) -> (Vec<(f64, f64)>, f64) {
    let mut parts = Vec::new();
    let mut unknown = mixture.rest();
    for ingredient in &mixture.ingredients {
        let (_, high) = ingredient.range();
        match toxicity(ingredient, endpoint) {
            Toxicity::Unknown => unknown += high,
            Toxicity::Harmless => (),
            Toxicity::Estimate(ate) => parts.push((high * share, ate)),
        }
    }
    (parts, unknown.min(1.0) * share)
}

/// Every ingredient counts, those below 1 % too: the rules let them be left out, but one of category 1 or 2
/// tells even then.
pub(super) fn judge(mixture: &Mixture, endpoint: Endpoint, share: f64) -> Judged {
    let (parts, unknown) = parts(mixture, endpoint, share);
    let ate = estimate(&parts, unknown);
    let category = ate.and_then(|ate| category(endpoint, ate));
    let class = category.map(|category| Class { endpoint, category });
    let rule = match class {
        None => &rules::BELOW,
        Some(_) if unknown > MOST_UNKNOWN => &rules::ESTIMATE_UNKNOWN,
        Some(_) => &rules::ESTIMATE,
    };
    let reached = ate.map_or(Reached::Nothing, |ate| Reached::Estimate(MassFraction::new(ate * MG_PER_KG)));
    Judged { class, rule, reached, gap: unknown >= UNKNOWN_COUNTS * (1.0 - 1e-9) }
}
