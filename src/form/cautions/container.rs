//! What the label of a workplace container bears.

use super::screening;
use super::worse::{beyond_label, panel_by_parts};
use crate::chemistry::advice::Advice;
use crate::chemistry::ghs::mixture::{Finding, Rule, Screening};
use crate::chemistry::ghs::{Knowledge, LabelElements};
use crate::coded::coded;
use crate::form::{Typed, fill, names};
use crate::number::Marks;
use crate::units::MassFraction;

coded! {
    /// What a bottle, bucket or jug is filled with.
    #[derive(Default)]
    Holds {
        /// Use solution, at the dilution of Fill.
        #[default]
        UseSolution = "use_solution",
        /// The concentrate.
        Concentrate = "concentrate",
    }
}

/// Whose hazards a label bears.
#[derive(Clone, Debug, PartialEq)]
pub enum Bears {
    /// Those of the concentrate, which is what the container holds.
    Concentrate,
    /// Those of the concentrate though it holds use solution: not enough is known of that, and the worse counts.
    ConcentrateInstead,
    /// Those that the screening of the use solution finds: an estimate, by these rules.
    Screened(Vec<&'static Rule>),
}

/// A label.
#[derive(Clone, Debug)]
pub struct Label {
    /// What the container holds.
    pub holds: Holds,
    /// Whose hazards it bears.
    pub bears: Bears,
    /// Signal word, pictograms and statements.
    pub elements: LabelElements,
    /// Whether those are known in full.
    pub knowledge: Knowledge,
    /// Whether the strength is known: a bottle of use solution says how strong it is, or is not filled.
    pub strength: bool,
    /// Whether it bears more than the product's own label, since the parts ask for it.
    pub worse: bool,
    /// What to wear and to do: as the concentrate asks, since an estimate takes nobody's gloves off.
    pub advice: Advice,
}

/// The label of a container with the product asked about; none where there is no product.
///
/// A use solution bears what its screening finds only where everything is known: the label of the concentrate
/// was read, the hazards of every part are known and all are listed, every finding about people is certain, and no
/// part bears a statement that no rule judges.
///
/// ```
/// use brimline::form::{Typed, cautions::container::{Bears, label}};
/// use brimline::number::Marks;
/// // Nobody said what the product is made of.
/// assert_eq!(label(&Typed::default(), Marks::POINT).unwrap().bears, Bears::ConcentrateInstead);
/// ```
pub fn label(typed: &Typed, marks: Marks) -> Option<Label> {
    let panel = panel_by_parts(typed, marks)?;
    let holds = typed.ask.holds;
    let screened =
        screening::work(typed, marks).filter(|found| holds == Holds::UseSolution && is_known(found));
    let (bears, elements, knowledge) = match screened {
        Some(found) => (Bears::Screened(rules(&found)), found.label, found.knowledge),
        None if holds == Holds::UseSolution => (Bears::ConcentrateInstead, panel.elements, panel.knowledge),
        None => (Bears::Concentrate, panel.elements, panel.knowledge),
    };
    let worse = !matches!(bears, Bears::Screened(_)) && !beyond_label(typed, marks).is_empty();
    let filled = fill::work(typed, marks).outcome.answer.get(names::FILL_RATIO).is_some();
    let strength = holds == Holds::Concentrate || filled;
    Some(Label { holds, bears, elements, knowledge, strength, worse, advice: panel.advice })
}

fn is_known(found: &Screening) -> bool {
    let all_known = found.unknown == MassFraction::ZERO && found.not_covered.is_empty();
    found.knowledge == Knowledge::Full && all_known
}

/// The rules that decided, each once: those that found a class, or those that found none.
fn rules(found: &Screening) -> Vec<&'static Rule> {
    let about_people = || found.findings.iter().filter(|one| one.endpoint.is_health());
    let classified = |one: &&Finding| one.treated_as.is_some();
    let any = found.findings.iter().any(|one| classified(&one));
    let mut out: Vec<&'static Rule> = Vec::new();
    let all: Vec<&Finding> =
        if any { found.findings.iter().filter(classified).collect() } else { about_people().collect() };
    for rule in all.into_iter().map(|one| one.rule) {
        if !out.contains(&rule) {
            out.push(rule);
        }
    }
    out
}
