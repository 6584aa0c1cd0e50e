//! The class of a use solution, from the ingredients of its concentrate: a screening estimate.
//!
//! It follows the mixture rules of the Globally Harmonized System: sums against limits, the extreme pH, the
//! acute toxicity estimate, and what dilution with water leaves of the concentrate's own class. The maker's
//! classification and the label of the concentrate govern. Composition ranges count by their worse end, and
//! whatever is not known is never answered with "not classified".

mod acute;
mod class;
mod diluted;
mod finding;
mod ingredient;
mod kind;
mod ph;
mod rules;
mod sums;

pub use acute::{MOST_UNKNOWN, SOURCE as ACUTE_SOURCE, estimate};
pub use class::{Class, Endpoint};
pub use diluted::{HEAVIEST, SOURCE as DILUTED_SOURCE, WATER, concentrate_share};
pub use finding::{Doubt, Finding, Reached, Verdict};
pub use ingredient::Ingredient;
pub use kind::{Kind, TABLE as KINDS};
pub use ph::{EXTREME as EXTREME_PH, Reserve};
pub use rules::{COUNTS_FROM, COUNTS_FROM_WATER, Rule, all as rules};

use super::elements::{LabelElements, elements};
use super::{Hazard, Knowledge};
use crate::chemistry::floor::PhRange;
use crate::units::{MassFraction, Quantity};

/// What the rest of the concentrate is, where its ingredients do not add up to the whole.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Rest {
    /// Nobody knows.
    #[default]
    Unknown,
    /// Somebody read the sheet and found that it lists all that it must: the rest has no hazard.
    Harmless,
}

/// A use solution: the concentrate, how much of it, and what is known beside.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mixture {
    /// The ingredients of the concentrate, in any order.
    pub ingredients: Vec<Ingredient>,
    /// What the rest of it is.
    pub rest: Rest,
    /// The concentrate in the use solution, mass in mass, 0 to 1; see [`concentrate_share`].
    pub share: MassFraction,
    /// The statements on the label of the concentrate.
    pub label: Vec<&'static Hazard>,
    /// Whether that label was read in full.
    pub label_read: bool,
    /// Whether label and sheet speak of harm to water at all: those of some countries need not. A statement
    /// about water anywhere says so too.
    pub covers_water: bool,
    /// The pH of the use solution, where it is known.
    pub ph: Option<PhRange>,
    /// The pH of the concentrate, where it is known.
    pub ph_of_concentrate: Option<PhRange>,
    /// Whether somebody qualified assessed the acid or alkali reserve of the use solution and found that it
    /// does not burn by its pH.
    pub reserve_is_small: bool,
}

impl Mixture {
    /// The part of the concentrate that no ingredient accounts for, at most.
    fn rest(&self) -> f64 {
        if self.rest == Rest::Harmless {
            return 0.0;
        }
        let rest = 1.0 - self.ingredients.iter().map(|one| one.range().0).sum::<f64>();
        // What is left by rounding is nothing.
        if rest > 1e-9 { rest } else { 0.0 }
    }

    /// The share of the concentrate; a wrong one is no dilution.
    fn diluted(&self) -> f64 {
        if (0.0..=1.0).contains(&self.share.si()) { self.share.si() } else { 1.0 }
    }

    fn speaks_of_water(&self) -> bool {
        let about_water = |hazard: &&Hazard| hazard.code.starts_with("H4");
        self.covers_water
            || self.label.iter().any(about_water)
            || self.ingredients.iter().filter_map(Ingredient::known).flatten().any(about_water)
    }
}

/// What a screening finds.
#[derive(Clone, Debug, PartialEq)]
pub struct Screening {
    /// One for each endpoint, in the order of [`Endpoint::ALL`].
    pub findings: Vec<Finding>,
    /// Statements of the concentrate's label that nothing here judges: the use solution keeps them.
    pub kept: Vec<&'static Hazard>,
    /// Statements of ingredients that nothing here judges and the concentrate's label does not bear.
    pub not_covered: Vec<&'static Hazard>,
    /// How much of the use solution nobody knows, at most.
    pub unknown: MassFraction,
    /// Full only if the label of the concentrate was read and every finding about people is certain.
    pub knowledge: Knowledge,
    /// Pictograms, signal word and statements that follow.
    pub label: LabelElements,
}

impl Screening {
    /// The finding for an endpoint.
    pub fn of(&self, endpoint: Endpoint) -> Option<&Finding> {
        self.findings.iter().find(|finding| finding.endpoint == endpoint)
    }
}

/// Screens a use solution.
///
/// For each [`Endpoint`] the ingredients are judged twice, by what is known of them and as if all that is not
/// known were of the worst category. Where both agree the class is certain. Where they do not, or where the
/// ingredients do not explain the concentrate's own class, the use solution keeps the concentrate's class as
/// far as it may be so bad, and the verdict is no better than [`Verdict::Unknown`].
///
/// Not covered: harm by breathing, sensitization, cancer, mutation, reproduction, single organs, aspiration,
/// fire and other physical hazards, limits of their own that some substances have. Statements about these
/// stay as the concentrate's label has them. Source: each rule has its own, [`rules()`].
///
/// ```
/// use brimline::chemistry::ghs::codes;
/// use brimline::chemistry::ghs::mixture::{Endpoint, Ingredient, Kind, Mixture, Rest, Verdict, screen};
/// use brimline::units::MassFraction;
/// let lye = Ingredient {
///     low: MassFraction::new(0.20),
///     high: MassFraction::new(0.20),
///     hazards: Some(codes::read("H314").hazards),
///     kind: Kind::Additive,
///     ..Ingredient::default()
/// };
/// let mixture = Mixture {
///     ingredients: vec![lye],
///     rest: Rest::Harmless,
///     share: MassFraction::new(0.2),
///     ..Mixture::default()
/// };
/// let screening = screen(&mixture);
/// assert!(matches!(screening.of(Endpoint::Skin).unwrap().verdict(), Verdict::Class(class) if class.category == 2));
/// ```
pub fn screen(mixture: &Mixture) -> Screening {
    let findings: Vec<Finding> =
        Endpoint::ALL.iter().map(|endpoint| finding::judge(mixture, *endpoint)).collect();
    let kept: Vec<_> = mixture.label.iter().copied().filter(|one| !Class::judges(one)).collect();
    let mut not_covered: Vec<&'static Hazard> = Vec::new();
    for hazard in mixture.ingredients.iter().filter_map(|one| one.hazards.as_deref()).flatten().copied() {
        let told = kept.contains(&hazard) || not_covered.contains(&hazard);
        if !Class::judges(hazard) && !told {
            not_covered.push(hazard);
        }
    }
    not_covered.sort_unstable_by_key(|hazard| hazard.code);
    let certain = findings.iter().all(|one| one.is_certain() || !one.endpoint.is_health());
    let knowledge = if certain && mixture.label_read { Knowledge::Full } else { Knowledge::Partial };
    let classes = findings.iter().filter_map(|one| one.treated_as?.hazard());
    let statements: Vec<_> = classes.chain(kept.iter().copied()).collect();
    let label = elements(&statements, knowledge);
    let unknown: f64 =
        mixture.ingredients.iter().filter(|one| one.known().is_none()).map(|one| one.range().1).sum();
    let unknown = MassFraction::new((unknown + mixture.rest()).min(1.0) * mixture.diluted());
    Screening { findings, kept, not_covered, unknown, knowledge, label }
}
