//! What is found for one endpoint, and how.

use super::class::{Class, Endpoint};
use super::rules::{self, Rule};
use super::{Mixture, acute, ph, sums};
use crate::units::MassFraction;

/// How bad it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// This class.
    Class(Class),
    /// This class by what is known, and maybe a worse one.
    AtLeast(Class),
    /// None.
    NotClassified,
    /// Nobody can say.
    Unknown,
}

/// Why a finding is not certain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Doubt {
    /// Of too much of it nobody knows the hazards.
    UnknownPart,
    /// Its pH is not known and may be extreme.
    Ph,
    /// The ingredients do not explain the class on the concentrate's label.
    NotExplained,
    /// Label and sheet may not speak of harm to water.
    Water,
    /// By its ingredients it is worse than the concentrate's label says.
    LabelSaysLess,
}

impl Doubt {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::UnknownPart, Self::Ph, Self::NotExplained, Self::Water, Self::LabelSaysLess];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::UnknownPart => "mixture-doubt-unknown-part",
            Self::Ph => "mixture-doubt-ph",
            Self::NotExplained => "mixture-doubt-not-explained",
            Self::Water => "mixture-doubt-water",
            Self::LabelSaysLess => "mixture-doubt-label-says-less",
        }
    }
}

/// What a rule was held against.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reached {
    /// Nothing to show.
    Nothing,
    /// A sum of shares, weighted as its rule says, and the limit that it reaches.
    Share {
        /// What the ingredients come to.
        reached: MassFraction,
        /// The least that gives the class.
        least: MassFraction,
    },
    /// A pH.
    Ph(f64),
    /// An acute toxicity estimate, mass for each body mass.
    Estimate(MassFraction),
}

/// What is found for one endpoint.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// For what.
    pub endpoint: Endpoint,
    /// What the known ingredients and the pH come to.
    pub known: Option<Class>,
    /// What it is to be treated as: the known class, or the concentrate's where that is not certain.
    pub treated_as: Option<Class>,
    /// The rule that decided.
    pub rule: &'static Rule,
    /// What that rule was held against.
    pub reached: Reached,
    /// Why it is not certain, or what does not agree; empty where all is well.
    pub doubts: Vec<Doubt>,
}

impl Finding {
    /// Whether nothing that is missing could make it worse.
    pub fn is_certain(&self) -> bool {
        self.doubts.iter().all(|doubt| *doubt == Doubt::LabelSaysLess)
    }

    /// How bad it is.
    pub fn verdict(&self) -> Verdict {
        match (self.known, self.is_certain()) {
            (Some(class), true) => Verdict::Class(class),
            (Some(class), false) => Verdict::AtLeast(class),
            (None, true) => Verdict::NotClassified,
            (None, false) => Verdict::Unknown,
        }
    }
}

/// What ingredients and pH come to at one share of the concentrate.
struct Judged {
    class: Option<Class>,
    rule: &'static Rule,
    reached: Reached,
    /// The worst that it may be for all that is known.
    worst: Option<Class>,
    doubts: Vec<Doubt>,
}

/// Judges one endpoint.
pub(super) fn judge(mixture: &Mixture, endpoint: Endpoint) -> Finding {
    let use_solution = at(mixture, endpoint, mixture.diluted(), ph::judge(mixture, mixture.ph));
    let stated = Class::among(&mixture.label, endpoint);
    let by_parts = explained(mixture, endpoint);
    let is_explained = by_parts >= stated;
    // A label that its own parts contradict, or a part of which nobody knows what it does, clears nothing.
    let unknown_part = mixture.ingredients.iter().any(|one| one.known().is_none() && one.range().1 > 0.0);
    let trusted = by_parts <= stated && !unknown_part;
    let silent = !endpoint.is_health() && !mixture.speaks_of_water();
    // No dilution is worse than its concentrate, whose label the maker answers for.
    let bound = mixture.label_read && !silent;
    let Judged { class: known, rule, reached, worst, mut doubts } = use_solution;
    if !is_explained {
        doubts.push(Doubt::NotExplained);
    }
    if silent {
        doubts.push(Doubt::Water);
    }
    if bound && stated <= known {
        let open = !doubts.is_empty();
        let rule = if known.is_none() && open && trusted { &rules::LABEL } else { rule };
        if trusted || !open {
            doubts.clear();
        }
        if stated < known.max(by_parts) {
            doubts.push(Doubt::LabelSaysLess);
        }
        let kept = if open && !trusted { stated.max(by_parts).min(worst) } else { None };
        return Finding { endpoint, known, treated_as: known.max(kept), rule, reached, doubts };
    }
    let kept = if is_explained { stated.min(worst) } else { stated };
    let treated_as = known.max(if doubts.is_empty() { None } else { kept });
    let rule = if treated_as > known { &rules::DILUTED } else { rule };
    let reached = if treated_as > known { Reached::Nothing } else { reached };
    Finding { endpoint, known, treated_as, rule, reached, doubts }
}

/// The class of the concentrate that its ingredients and its pH explain.
fn explained(mixture: &Mixture, endpoint: Endpoint) -> Option<Class> {
    if is_acute(endpoint) {
        return acute::firm(mixture, endpoint);
    }
    at(mixture, endpoint, 1.0, ph::judge(mixture, mixture.ph_of_concentrate)).class
}

fn is_acute(endpoint: Endpoint) -> bool {
    matches!(endpoint, Endpoint::Swallowed | Endpoint::ThroughSkin)
}

fn at(mixture: &Mixture, endpoint: Endpoint, share: f64, ph: ph::Verdict) -> Judged {
    if is_acute(endpoint) {
        let acute::Judged { class, rule, reached, gap } = acute::judge(mixture, endpoint, share);
        let top = Class { endpoint, category: 1 };
        let worst = if gap { Some(top) } else { class };
        let doubts = if worst == class { Vec::new() } else { vec![Doubt::UnknownPart] };
        return Judged { class, rule, reached, worst, doubts };
    }
    let (mut class, mut rule, mut reached) = sums::known(mixture, endpoint, share);
    let mut worst = sums::worst(mixture, endpoint, share);
    let mut doubts = Vec::new();
    let top = Class { endpoint, category: 1 };
    if endpoint.is_health() {
        match ph {
            ph::Verdict::Extreme(value) if class != Some(top) => {
                (class, rule, reached) = (Some(top), &rules::PH, Reached::Ph(value));
            }
            ph::Verdict::Unknown if class != Some(top) => {
                doubts.push(Doubt::Ph);
            }
            _ => (),
        }
    }
    worst = worst.max(class);
    if worst > class {
        doubts.insert(0, Doubt::UnknownPart);
    }
    if doubts.contains(&Doubt::Ph) {
        worst = Some(top);
    }
    Judged { class, rule, reached, worst, doubts }
}
