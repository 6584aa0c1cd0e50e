//! Classes that follow from how much there is of ingredients of each category.

use super::class::{Class, Endpoint};
use super::ingredient::Ingredient;
use super::rules::{self, Counts, LIMITS, Limit, Rule};
use super::{Mixture, Reached};
use crate::units::MassFraction;

/// A share at the limit reaches it, however it was rounded.
const SLACK: f64 = 1e-9;

fn reaches(share: f64, least: f64) -> bool {
    share >= least * (1.0 - SLACK)
}

/// An ingredient in the use solution, as the limits see it.
struct Counted {
    category: u8,
    share: f64,
    alone: bool,
    /// Infinite where it is not known and the worst is asked for.
    multiplier: f64,
}

impl Counted {
    /// What it adds to a row: nothing where there is too little of it.
    fn adds(&self, row: &Limit) -> f64 {
        let times = row.terms.iter().find(|term| term.0 == self.category).map_or(0.0, |term| term.1);
        let multiplier = if row.multiplies && self.category == 1 { self.multiplier } else { 1.0 };
        let least = rules::counts_from(row.endpoint, self.category) / multiplier;
        let counts = times > 0.0 && self.share > 0.0 && reaches(self.share, least);
        if counts { times * self.share * multiplier } else { 0.0 }
    }
}

/// The class at a share of the concentrate, the rule and what was reached.
pub(super) type Decided = (Option<Class>, &'static Rule, Reached);

/// What the ingredients whose hazards are known come to.
pub(super) fn known(mixture: &Mixture, endpoint: Endpoint, share: f64) -> Decided {
    decide(&counted(mixture, endpoint, share, false), endpoint)
}

/// What they would come to if all that is not known were of the worst category.
pub(super) fn worst(mixture: &Mixture, endpoint: Endpoint, share: f64) -> Option<Class> {
    let mut all = counted(mixture, endpoint, share, true);
    let unknown: f64 = mixture.ingredients.iter().filter(|one| one.known().is_none()).map(most).sum();
    let unknown = (unknown + mixture.rest()).min(1.0) * share;
    all.push(Counted { category: 1, share: unknown, alone: true, multiplier: f64::INFINITY });
    decide(&all, endpoint).0
}

fn most(ingredient: &Ingredient) -> f64 {
    ingredient.range().1
}

fn counted(mixture: &Mixture, endpoint: Endpoint, share: f64, worst: bool) -> Vec<Counted> {
    let unknown = if worst { f64::INFINITY } else { 1.0 };
    let count = |one: &Ingredient| {
        Some(Counted {
            category: one.category(endpoint)?,
            share: most(one) * share,
            alone: one.kind.counts_alone(),
            multiplier: one.multiplier(endpoint).unwrap_or(unknown),
        })
    };
    mixture.ingredients.iter().filter_map(count).collect()
}

/// The worst category whose limit is reached.
fn decide(all: &[Counted], endpoint: Endpoint) -> Decided {
    for row in LIMITS.iter().filter(|row| row.endpoint == endpoint) {
        let adds =
            all.iter().map(|one| if row.counts == Counts::Alone && !one.alone { 0.0 } else { one.adds(row) });
        let reached = match row.counts {
            Counts::Together => adds.sum(),
            Counts::Alone => adds.fold(0.0, f64::max),
        };
        if reaches(reached, row.least) {
            let class = Class { endpoint, category: row.gives };
            let share =
                Reached::Share { reached: MassFraction::new(reached), least: MassFraction::new(row.least) };
            return (Some(class), &row.rule, share);
        }
    }
    (None, &rules::BELOW, Reached::Nothing)
}
