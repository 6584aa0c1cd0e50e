//! A tank that is to be filled: which machine, product and measure, how far, and what the rules ask.

mod workings;

use super::super::picture::Fill;
use super::super::ready::{Asks, Jug, Liquid, Machine, Written, is_open};
use super::super::road::Way;
use super::super::round::{count_in, step_for};
use super::super::{Draw, Level, Ready};
use super::Said;
use super::sum::{Sum, bounds, by_all, gallon_road, measure_roads, ruled, turned};
use super::telling::{AIMS, asked_in, is_range, jug_told, label_told, may_go_in, means, tank_told};
use crate::form::Filling;
use crate::limits;
use crate::number::Marks;
use crate::trade::governing::{Aim, Bound, Governs};
use crate::trade::label::Basis;
use crate::trade::measure::Rounded;
use crate::units::{Quantity, Volume, unit};

/// A tank that is to be filled.
#[derive(Clone)]
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

    /// What the rules beside the label allow.
    pub(super) fn bounds(&self) -> Vec<Bound> {
        bounds(self.machine, self.liquid, self.sum(), (true, true))
    }

    /// Product by all rules on the measure, as Fill would have it poured; none where it is too coarse.
    pub(super) fn whole(&self) -> Option<Rounded> {
        let (sum, dose, bounds) = (self.sum(), self.dose(), self.bounds());
        let whole = by_all(self.liquid, sum, &bounds, self.aim).whole(self.jug.step.value);
        let rounded = whole.rounded;
        let room = self.total(rounded.dose) / self.machine.tank.value <= 1.0 + 1e-9;
        (room && !whole.is_coarse(dose)).then_some(rounded)
    }

    /// What the site's own rule asks for, where it is one amount within the label's range: then it decides, and no end
    /// of the range is asked for beside it.
    fn decided(&self) -> Option<Volume> {
        let rule = self.liquid.standard.as_ref().filter(|_| self.level == Level::Third)?;
        let (label, window) = (self.sum().window(), self.sum().with(rule.asks).window());
        let within = Bound { by: Governs::Standard, window }.meets(label);
        (is_range(self.liquid.asks) && window.is_point() && within).then_some(window.low)
    }

    /// Whether a ticket would ask for an end of the label's range and tell a rule of the site beside it: one of the
    /// two would have to be broken, or read as less than it says.
    pub(super) fn contradicts(&self) -> bool {
        let both = self.liquid.standard.is_some() && is_range(self.liquid.asks);
        self.level == Level::Third && both && self.decided().is_none()
    }

    /// Product by some of the rules.
    fn by(&self, sum: Sum, standard: bool, machine: bool) -> Volume {
        ruled(self.machine, self.liquid, sum, self.aim, (standard, machine))
    }

    /// The most that the label allows.
    pub(super) fn most(&self) -> f64 {
        self.sum().window().high.si()
    }

    /// The cup and the tank.
    pub(super) fn drawn(&self) -> Option<Fill> {
        let dose = self.dose();
        let water = (self.filling == Filling::OnTop).then(|| self.fill.value.si());
        let numbers =
            [self.machine.tank.value, self.total(dose), dose, self.jug.step.value].map(Quantity::si);
        Fill::of(numbers, asked_in(self.jug), water)
    }

    /// Where the usual wrong roads lead. Where no end of the label's range is asked for, those count that lead to one
    /// place from either end, and both ends for whoever passes the site's rule over.
    pub(super) fn roads(&self) -> Vec<(Way, f64)> {
        if self.decided().is_none() {
            return self.roads_by_aim();
        }
        let from = |aim| Self { aim, ..self.clone() }.roads_by_aim();
        let one_place = |a: f64, b: f64| (a / b - 1.0).abs() < 1e-9;
        let pairs = from(Aim::Low).into_iter().zip(from(Aim::High));
        pairs
            .filter(|((way, low), (_, high))| *way == Way::StandardIgnored || one_place(*low, *high))
            .flat_map(|(low, high)| [low, high])
            .collect()
    }

    fn roads_by_aim(&self) -> Vec<(Way, f64)> {
        let (sum, right) = (self.sum(), self.dose());
        // Below the third level no other rule is told.
        let told = self.level == Level::Third;
        let by = |sum: Sum| self.by(sum, told, told).si();
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
        // The other gallon makes another tank; what a machine or a full tank takes stays what it is.
        out.extend(
            gallon_road(&self.fill.entry.unit).filter(|_| share).map(|(way, times)| {
                (way, by(Sum { tank: sum.tank * times, level: sum.level * times, ..sum }))
            }),
        );
        out
    }

    /// What is told of it.
    pub(super) fn told(&self) -> Vec<Said> {
        let mut out = label_told(self.level, self.liquid, self.aim);
        if self.decided().is_some() {
            out.retain(|said| !AIMS.contains(&said.key.as_str()));
        }
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
            if let Some(rule) = &self.liquid.standard {
                out.push(Said::new("practice-standard").text("rule", &rule.text));
                // Beside a label that is read the same way it would be said twice.
                let own = self.liquid.label.basis != rule.basis;
                out.extend((own && is_open(rule.basis, &rule.text)).then(|| Said::new(means(rule.basis))));
            }
        }
        out.push(jug_told(self.jug));
        out
    }
}

/// Whether two amounts are one, but for the rounding of `f64`.
fn same(a: Volume, b: Volume) -> bool {
    (a / b - 1.0).abs() < 1e-9
}
