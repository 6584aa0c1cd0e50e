//! The sentences and steps that several topics share.

use super::super::Level;
use super::super::ready::{Asks, Jug, Liquid, Machine, is_open};
use super::{Reason, Said};
use crate::answer::{Step, Value};
use crate::chemistry::foam::{FoamVerdict, verdict};
use crate::source::Source;
use crate::trade::formula;
use crate::trade::governing::Aim;
use crate::trade::label::{Basis, Note};
use crate::trade::measure::Rounded;
use crate::units::{Dimension, Kind, Quantity, Volume, VolumeFraction, unit};

/// One step of the workings.
pub(super) fn step(
    formula: &'static crate::answer::Formula,
    given: &[(&'static str, Value)],
    result: Value,
) -> Step {
    Step { formula, given: given.to_vec(), result, about: String::new() }
}

/// From the label to a share of the mix.
pub(super) fn strength_step(basis: Basis, strength: VolumeFraction) -> Option<Step> {
    let r = Value::new(strength, Kind::Percent);
    let parts = Value::plain(strength.parts_of_water(), Kind::Ratio);
    let all = Value::plain(1.0 / strength.si(), Kind::Ratio);
    let beside = Value::new(VolumeFraction::new(1.0 / strength.parts_of_water()), Kind::Percent);
    Some(match basis {
        Basis::PlusWater => step(&formula::PLUS_WATER, &[("n", parts)], r),
        Basis::OfTotal => step(&formula::OF_TOTAL, &[("n", all)], r),
        Basis::PerWater => step(&formula::PER_WATER, &[("x", beside)], r),
        Basis::MadeUp => step(&formula::MADE_UP, &[("x", r)], r),
        Basis::Percent => step(&formula::PERCENT, &[("p", Value::plain(strength.percent(), Kind::Ratio))], r),
        Basis::PerTank | Basis::Powder | Basis::Active | Basis::Packets => return None,
    })
}

/// From a dose to whole steps of a measure.
pub(super) fn round_step(dose: Volume, jug: &Jug, rounded: Rounded) -> Step {
    let given = [("c", Value::new(dose, Kind::Dose)), ("s", Value::new(jug.step.value, Kind::Dose))];
    step(&formula::ROUND, &given, Value::plain(rounded.count, Kind::Count))
}

/// Whether whole steps are the nearest to a dose: a rule can ask for the next one.
pub(super) fn is_nearest(dose: Volume, jug: &Jug, rounded: Rounded) -> bool {
    (dose / jug.step.value - rounded.count).abs() <= 0.5 + 1e-9
}

/// Why another step than the nearest is poured, where it is.
pub(super) fn other_step(dose: Volume, jug: &Jug, rounded: Rounded) -> Option<Reason> {
    let said = || Said::new("practice-because-other-step");
    (!is_nearest(dose, jug, rounded)).then(|| Reason { said: said(), source: Source::COMMON_PRACTICE })
}

/// The key of what a convention says.
pub(super) fn means(basis: Basis) -> &'static str {
    match basis {
        Basis::PlusWater => "practice-means-plus-water",
        Basis::OfTotal => "practice-means-of-total",
        Basis::PerWater => "practice-means-per-water",
        Basis::MadeUp => "practice-means-made-up",
        Basis::Percent => "practice-means-percent",
        Basis::PerTank => "practice-means-per-tank",
        Basis::Powder => "practice-means-powder",
        Basis::Active => "practice-means-active",
        Basis::Packets => "practice-means-packets",
    }
}

/// The sentences that ask for an end of a label's range: the least and the most.
pub(super) const AIMS: [&str; 2] = ["practice-aim-low", "practice-aim-high"];

/// A label: on the first level with its convention, and in any case where it leaves that open; with the gallon that it
/// means.
pub(super) fn label_told(level: Level, liquid: &Liquid, aim: Aim) -> Vec<Said> {
    let mut out = vec![Said::new("practice-label").text("product", &liquid.name).text("label", &liquid.text)];
    if level == Level::First || is_open(liquid.label.basis, &liquid.text) {
        out.push(Said::new(means(liquid.label.basis)));
    }
    let notes = &liquid.label.notes;
    if notes.contains(&Note::UsMeasure) && level != Level::Third {
        out.push(Said::new("practice-measure-us"));
    }
    if notes.contains(&Note::ImperialMeasure) {
        out.push(Said::new("practice-measure-imperial"));
    }
    if is_range(liquid.asks) {
        out.push(Said::new(AIMS[usize::from(aim != Aim::Low)]));
    }
    out
}

/// Whether a label leaves a choice.
pub(super) fn is_range(asks: Asks) -> bool {
    match asks {
        Asks::Strength(window) => !window.is_point(),
        Asks::PerTank(window) => !window.is_point(),
    }
}

/// Whether a product goes into a machine: no exercise doses one that foams into a vacuum's tank.
pub(super) fn may_go_in(machine: &Machine, liquid: &Liquid) -> bool {
    verdict(liquid.foam, machine.vacuum) != FoamVerdict::Refuse
}

/// The machine and its tank; and, of a product that nobody has tested for foam, that somebody has by now.
pub(super) fn tank_told(machine: &Machine, liquid: Option<&Liquid>) -> Vec<Said> {
    let tank = Said::new("practice-tank").text("machine", &machine.name).entry("tank", &machine.tank.entry);
    let untested = liquid.is_some_and(|one| verdict(one.foam, machine.vacuum) == FoamVerdict::TestFirst);
    let tested = untested.then(|| Said::new("practice-tested"));
    std::iter::once(tank).chain(tested).collect()
}

/// The measure and its step.
pub(super) fn jug_told(jug: &Jug) -> Said {
    Said::new("practice-jug").text("measure", &jug.name).entry("step", &jug.step.entry)
}

/// The unit that a measure's amounts are asked in.
pub(super) fn asked_in(jug: &Jug) -> &'static str {
    unit(&jug.step.entry.unit).filter(|one| one.dimension == Dimension::Volume).map_or("ml", |one| one.code)
}

/// That water goes in first.
pub(super) fn water_first() -> Reason {
    Reason { said: Said::new("caution-order"), source: Source::COMMON_PRACTICE }
}
