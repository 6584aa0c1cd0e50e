//! A tank that is to be filled: which machine, product and measure, how far, and what the rules ask.

use super::super::ready::{Asks, Jug, Liquid, Machine, Written};
use super::super::road::Way;
use super::super::round::{count_in, step_for};
use super::super::{Draw, Level, Ready};
use super::{Reason, Said, factor};
use crate::answer::{Step, Value};
use crate::chemistry::foam::{FoamVerdict, verdict};
use crate::form::Filling;
use crate::limits;
use crate::number::Marks;
use crate::source::Source;
use crate::trade::dilution::{made_up_to, on_top_of, scaled_to_level};
use crate::trade::formula;
use crate::trade::governing::{Aim, Bound, Governs, govern};
use crate::trade::label::{Basis, Note, Window};
use crate::units::{Dimension, Kind, Quantity, Volume, VolumeFraction, unit};

/// One way to work a dose out; a wrong road changes one of its parts.
#[derive(Clone, Copy)]
pub(super) struct Sum {
    pub asks: Asks,
    pub tank: Volume,
    pub level: Volume,
    pub filling: Filling,
}

impl Sum {
    /// From the least to the most product.
    pub(super) fn window(self) -> Window<Volume> {
        let of = |strength| match self.filling {
            Filling::MadeUp => made_up_to(self.level, strength),
            Filling::OnTop => on_top_of(self.level, strength),
        };
        let scaled = |amount| scaled_to_level(amount, self.level, self.tank);
        match self.asks {
            Asks::Strength(window) => Window { low: of(window.low), high: of(window.high) },
            Asks::PerTank(window) => Window { low: scaled(window.low), high: scaled(window.high) },
        }
    }

    fn with(self, asks: Asks) -> Self {
        Self { asks, ..self }
    }
}

/// Product by the label and, where they count, by the standard and the machine.
fn ruled(
    machine: &Machine,
    liquid: &Liquid,
    sum: Sum,
    aim: Aim,
    (by_standard, by_machine): (bool, bool),
) -> Volume {
    let mut bounds = Vec::new();
    if let Some((_, asks)) = liquid.standard.as_ref().filter(|_| by_standard) {
        bounds.push(Bound { by: Governs::Standard, window: sum.with(*asks).window() });
    }
    if let Some(window) = machine.window.filter(|_| by_machine) {
        let scaled = |amount| scaled_to_level(amount, sum.level, sum.tank);
        let window = Window { low: scaled(window.low), high: scaled(window.high) };
        bounds.push(Bound { by: Governs::Machine, window });
    }
    govern(sum.window(), &bounds, aim).dose
}

/// The strength that the label asks for, where no other rule asks for something else in this machine.
pub(super) fn undisturbed(machine: &Machine, liquid: &Liquid, aim: Aim) -> Option<VolumeFraction> {
    let tank = machine.tank.value;
    let sum = Sum { asks: liquid.asks, tank, level: tank, filling: Filling::MadeUp };
    let label = aim.within(sum.window());
    let same = (ruled(machine, liquid, sum, aim, (true, true)) / label - 1.0).abs() < 1e-9;
    same.then(|| label.fraction_of(tank))
}

/// The other convention: what a share of the water would be of the whole, or the other way.
pub(super) fn turned(basis: Basis, asks: Asks) -> Option<(Way, Asks)> {
    let Asks::Strength(window) = asks else { return None };
    let (way, of): (Way, fn(f64) -> f64) = match basis {
        Basis::PlusWater => (Way::PartsForTotal, |r| r / (1.0 - r)),
        Basis::PerWater => (Way::WaterForMix, |r| r / (1.0 - r)),
        Basis::OfTotal => (Way::TotalForParts, |r| r / (1.0 + r)),
        Basis::MadeUp | Basis::Percent => (Way::MixForWater, |r| r / (1.0 + r)),
        Basis::PerTank | Basis::Powder | Basis::Active | Basis::Packets => return None,
    };
    let of = |r: VolumeFraction| VolumeFraction::new(of(r.si()));
    Some((way, Asks::Strength(Window { low: of(window.low), high: of(window.high) })))
}

/// A tank that is to be filled.
pub(super) struct Scene<'a> {
    pub level: Level,
    pub machine: &'a Machine,
    pub liquid: &'a Liquid,
    pub jug: &'a Jug,
    pub fill: Written<Volume>,
    pub full: bool,
    pub filling: Filling,
    pub aim: Aim,
}

/// How far a tank may be filled in part: a mark of its own unit.
pub(super) fn part(machine: &Machine, draw: &mut Draw) -> Option<Written<Volume>> {
    let own = unit(&machine.tank.entry.unit)?;
    let whole = own.from_si(machine.tank.value.si());
    let (step, value) = step_for(whole, 8.0);
    let marks = count_in(whole, value);
    let mark = 1 + draw.below(marks.checked_sub(1)?);
    let entry = step.times(mark).entry(own.code);
    let found: Volume = entry.read(&limits::LEVEL, Marks::POINT).ok()?;
    (found < machine.tank.value * 0.999).then_some(Written { entry, value: found })
}

/// The marks of a tank.
pub(super) fn tank_mark(machine: &Machine) -> f64 {
    let Some(own) = unit(&machine.tank.entry.unit) else { return 0.0 };
    own.to_si(step_for(own.from_si(machine.tank.value.si()), 20.0).1)
}

/// Whether a tank and a measure are marked in two systems of units.
fn mixes(machine: &Machine, jug: &Jug) -> bool {
    let system = |code: &str| unit(code).and_then(|unit| unit.system);
    system(&machine.tank.entry.unit) != system(&jug.step.entry.unit)
}

/// Which end of a label's range is asked about.
pub(super) fn aim(draw: &mut Draw) -> Aim {
    if draw.one_in(2) { Aim::Low } else { Aim::High }
}

impl<'a> Scene<'a> {
    /// Draws one; none where its numbers do not go together.
    pub(super) fn draw(level: Level, ready: &'a Ready, draw: &mut Draw) -> Option<Self> {
        let machine = draw.pick(&ready.machines)?;
        let liquid = draw.pick(&ready.liquids)?;
        let jug = draw.pick(&ready.jugs)?;
        if level == Level::First && mixes(machine, jug) && ready.jugs.iter().any(|jug| !mixes(machine, jug)) {
            return None;
        }
        let to_top = level == Level::First || draw.one_in(4);
        let fill = if to_top { machine.tank.clone() } else { part(machine, draw)? };
        let on_top = !to_top && draw.one_in(3) && matches!(liquid.asks, Asks::Strength(_));
        let filling = if on_top { Filling::OnTop } else { Filling::MadeUp };
        let scene = Self { level, machine, liquid, jug, fill, full: to_top, filling, aim: aim(draw) };
        if !may_go_in(machine, liquid) {
            return None;
        }
        // A full tank by a label with one number, and no other rule: that is the first level.
        let other_rule = machine.window.is_some() || liquid.standard.is_some();
        if level == Level::Third && scene.full && !is_range(liquid.asks) && !other_rule {
            return None;
        }
        let (dose, alone) = (scene.dose(), scene.label_dose());
        let steps = dose / jug.step.value;
        // What the label alone asks is only taught where no other rule asks for something else.
        let plain = (dose / alone - 1.0).abs() < 1e-9;
        let room = scene.total(dose) <= machine.tank.value;
        let fits = (5.0..=jug.most).contains(&steps) && room && dose < scene.fill.value;
        (fits && (plain || level == Level::Third)).then_some(scene)
    }

    /// The way it is rightly worked out.
    pub(super) fn sum(&self) -> Sum {
        let (tank, level) = (self.machine.tank.value, self.fill.value);
        Sum { asks: self.liquid.asks, tank, level, filling: self.filling }
    }

    /// All the mix that a dose makes.
    fn total(&self, dose: Volume) -> Volume {
        match self.filling {
            Filling::MadeUp => self.fill.value,
            Filling::OnTop => self.fill.value + dose,
        }
    }

    /// Product by the label alone.
    pub(super) fn label_dose(&self) -> Volume {
        self.aim.within(self.sum().window())
    }

    /// Product by all rules.
    pub(super) fn dose(&self) -> Volume {
        self.by(self.sum(), true, true)
    }

    /// Product by some of the rules.
    fn by(&self, sum: Sum, standard: bool, machine: bool) -> Volume {
        ruled(self.machine, self.liquid, sum, self.aim, (standard, machine))
    }

    /// The most that the label allows.
    pub(super) fn most(&self) -> f64 {
        self.sum().window().high.si()
    }

    /// Where the usual wrong roads lead.
    pub(super) fn roads(&self) -> Vec<(Way, f64)> {
        let (sum, right) = (self.sum(), self.dose());
        let by = |sum: Sum| self.by(sum, true, true).si();
        let mut out = Vec::new();
        if self.level == Level::Third {
            out.push((Way::MachineIgnored, self.by(sum, true, false).si()));
            out.push((Way::StandardIgnored, self.by(sum, false, true).si()));
        }
        if !self.full {
            out.push((Way::FullForPart, by(Sum { level: sum.tank, ..sum })));
        }
        if self.filling == Filling::OnTop {
            out.push((Way::WaterForMix, by(Sum { filling: Filling::MadeUp, ..sum })));
        }
        // An amount for a volume of water, and the water is known: nothing is left to take for the mix.
        let clear = self.filling == Filling::OnTop && self.liquid.label.basis == Basis::PerWater;
        if let Some((way, asks)) = turned(self.liquid.label.basis, sum.asks).filter(|_| !clear) {
            out.push((way, by(sum.with(asks))));
        }
        let other = if self.aim == Aim::Low { Aim::High } else { Aim::Low };
        out.push((Way::OtherEnd, other.within(sum.window()).si()));
        out.extend(measure_roads(right, self.jug));
        let share = matches!(self.liquid.label.basis, Basis::PlusWater | Basis::OfTotal | Basis::Percent);
        out.extend(
            gallon_road(&self.fill.entry.unit).filter(|_| share).map(|(way, by)| (way, right.si() * by)),
        );
        out
    }

    /// What is told of it.
    pub(super) fn told(&self) -> Vec<Said> {
        let mut out = label_told(self.level, self.liquid, self.aim);
        let fill = if self.full {
            Said::new("practice-fill-full")
        } else if self.filling == Filling::OnTop {
            Said::new("practice-fill-on-top").entry("fill", &self.fill.entry)
        } else {
            Said::new("practice-fill-part").entry("fill", &self.fill.entry)
        };
        out.extend(tank_told(self.machine, Some(self.liquid)));
        out.push(fill);
        if self.level == Level::Third {
            out.extend(self.machine.limits.iter().map(|(key, entry)| Said::new(*key).entry("amount", entry)));
            let standard = self.liquid.standard.as_ref();
            out.extend(standard.map(|(text, _)| Said::new("practice-standard").text("rule", text)));
        }
        out.push(jug_told(self.jug));
        out
    }

    /// That the site's rule decides, where it does.
    pub(super) fn rule(&self) -> Option<Reason> {
        let without = self.by(self.sum(), false, true);
        let decides = (self.dose() / without - 1.0).abs() > 1e-9;
        let said = || Said::new("practice-because-standard");
        decides.then(|| Reason { said: said(), source: Source::COMMON_PRACTICE })
    }

    /// The workings.
    pub(super) fn steps(&self) -> Vec<Step> {
        let mut out = Vec::new();
        let dose = |volume: Volume| Value::new(volume, Kind::Dose);
        let (label, right) = (self.label_dose(), self.dose());
        let fill = Value::new(self.fill.value, Kind::Fill);
        match self.liquid.asks {
            Asks::Strength(window) => {
                let strength = self.aim.within(window);
                out.extend(strength_step(self.liquid.label.basis, strength));
                let r = ("r", Value::new(strength, Kind::Percent));
                match self.filling {
                    Filling::MadeUp => out.push(step(&formula::DOSE, &[r, ("V", fill)], dose(label))),
                    Filling::OnTop => out.push(step(&formula::DOSE_ON_TOP, &[("W", fill), r], dose(label))),
                }
            }
            Asks::PerTank(window) => {
                let tank = Value::new(self.machine.tank.value, Kind::Fill);
                let given = [("x", dose(self.aim.within(window))), ("V", fill), ("T", tank)];
                out.push(step(&formula::PER_TANK, &given, dose(label)));
            }
        }
        let by_machine = (self.by(self.sum(), true, false) / right - 1.0).abs() > 1e-9;
        if by_machine {
            let given = [("label", dose(label)), ("machine", dose(right))];
            out.push(step(&formula::GOVERN, &given, dose(right)));
        }
        out
    }
}

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

/// A label: on the first level with its convention, and in any case with the gallon that it means.
pub(super) fn label_told(level: Level, liquid: &Liquid, aim: Aim) -> Vec<Said> {
    let mut out = vec![Said::new("practice-label").text("product", &liquid.name).text("label", &liquid.text)];
    if level == Level::First {
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
        out.push(Said::new(if aim == Aim::Low { "practice-aim-low" } else { "practice-aim-high" }));
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

/// A number of ounces read as millilitres, or the other way, by the unit of the measure.
pub(super) fn measure_roads(right: Volume, jug: &Jug) -> Option<(Way, f64)> {
    let own = unit(&jug.step.entry.unit)?;
    let (ounce, millilitre) = (factor("floz_us"), factor("ml"));
    match own.code {
        "ml" => Some((Way::OuncesForMillilitres, right.si() / ounce * millilitre)),
        "floz_us" | "floz_imp" => Some((Way::MillilitresForOunces, right.si() / millilitre * own.to_si(1.0))),
        _ => None,
    }
}

/// The other gallon, and by how much that is off.
pub(super) fn gallon_road(code: &str) -> Option<(Way, f64)> {
    let (us, imperial) = (factor("gal_us"), factor("gal_imp"));
    match code {
        "gal_imp" => Some((Way::UsForImperial, us / imperial)),
        "gal_us" => Some((Way::ImperialForUs, imperial / us)),
        _ => None,
    }
}

/// The unit that a measure's amounts are asked in.
pub(super) fn asked_in(jug: &Jug) -> &'static str {
    unit(&jug.step.entry.unit).filter(|one| one.dimension == Dimension::Volume).map_or("ml", |one| one.code)
}

/// That water goes in first.
pub(super) fn water_first() -> Reason {
    Reason { said: Said::new("caution-order"), source: Source::COMMON_PRACTICE }
}
