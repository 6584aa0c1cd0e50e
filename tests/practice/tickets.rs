//! Doses by every way, right and wrong, in exact fractions.

use super::exact::{Q, fact, q, said, size, text, typed};
use super::labels::{Asks, read};
use brimline::practice::{Exercise, Way};
use brimline::units::System;
use num_traits::One;

/// A fill as an exercise tells it.
#[derive(Clone)]
pub struct Ticket {
    pub asks: Asks,
    pub standard: Option<Asks>,
    pub tank: Q,
    pub level: Q,
    pub on_top: bool,
    pub high: bool,
    /// Whether the task says which end of the label's range it asks for.
    pub end_told: bool,
    pub least: Option<Q>,
    pub most: Option<Q>,
    pub step: Q,
    pub step_unit: String,
}

impl Ticket {
    /// From what is told.
    pub fn of(exercise: &Exercise, system: System) -> Self {
        let label = said(exercise, "practice-label").expect("a label");
        let (_, asks) = read(text(label, "label"), system);
        let tank = said(exercise, "practice-tank").expect("a tank");
        let part = said(exercise, "practice-fill-part");
        let on_top = said(exercise, "practice-fill-on-top");
        let level = part.or(on_top).map_or_else(|| fact(tank, "tank"), |said| fact(said, "fill"));
        let jug = said(exercise, "practice-jug").expect("a measure");
        let amount = |key| said(exercise, key).map(|said| fact(said, "amount"));
        Self {
            asks: asks.expect("a liquid"),
            standard: said(exercise, "practice-standard").and_then(|said| read(text(said, "rule"), system).1),
            tank: fact(tank, "tank"),
            level,
            on_top: on_top.is_some(),
            high: said(exercise, "practice-aim-high").is_some(),
            end_told: ["practice-aim-high", "practice-aim-low"]
                .iter()
                .any(|key| said(exercise, key).is_some()),
            least: amount("practice-machine-least"),
            most: amount("practice-machine-most"),
            step: fact(jug, "step"),
            step_unit: typed(jug, "step").unit.clone(),
        }
    }

    /// Product from the least to the most by a rule.
    pub fn window(&self, asks: &Asks) -> (Q, Q) {
        let of = |share: &Q| {
            if self.on_top { &self.level * share / (Q::one() - share) } else { &self.level * share }
        };
        match asks {
            Asks::Strength(low, high) => (of(low), of(high)),
            Asks::PerTank(low, high) => (low * &self.level / &self.tank, high * &self.level / &self.tank),
        }
    }

    fn aimed(&self, (low, high): &(Q, Q)) -> Q {
        if self.high { high.clone() } else { low.clone() }
    }

    /// The same from either end of the label's range, where the task does not say from which; once where both are one.
    fn both_ends(&self, work: impl Fn(&Self) -> Q) -> Vec<Q> {
        let from = |high| work(&Self { high, end_told: true, ..self.clone() });
        if self.end_told {
            return vec![work(self)];
        }
        let mut found = vec![from(false), from(true)];
        found.dedup();
        found
    }

    /// Where a wrong way leads: to two places where it can start from either end.
    pub fn all_by(&self, way: Way) -> Vec<Q> {
        self.both_ends(|ticket| ticket.by(way))
    }

    /// By the label, narrowed by the standard where it can be, and by the machine, whose limit is the last word.
    /// Where no end is asked for it is the same from both.
    pub fn dose(&self) -> Q {
        let mut found = self.both_ends(Self::dose_from);
        let dose = found.swap_remove(0);
        assert!(found.is_empty(), "the task leaves open which end of the range is meant");
        dose
    }

    fn dose_from(&self) -> Q {
        let label = self.window(&self.asks);
        let wanted = self.aimed(&label);
        let (mut low, mut high) = label;
        if let Some(standard) = &self.standard {
            let (least, most) = self.window(standard);
            if least <= high && most >= low {
                (low, high) = (low.max(least), high.min(most));
            }
        }
        let scaled = |full: &Q| full * &self.level / &self.tank;
        if let Some(most) = self.most.as_ref().map(scaled) {
            if most < low {
                return most;
            }
            high = high.min(most);
        }
        if let Some(least) = self.least.as_ref().map(scaled) {
            if least > high {
                return high;
            }
            low = low.max(least);
        }
        wanted.max(low).min(high)
    }

    fn scaled(&self, by: &Q) -> Self {
        Self { tank: &self.tank * by, level: &self.level * by, ..self.clone() }
    }

    /// Whether the rule that a way names does not allow what was poured, by whatever slip it came to that: the limits
    /// of the machine to the drop, a rule with one number to half a step.
    pub fn passes_over(&self, way: Way, poured: &Q) -> bool {
        let full = |amount: &Q| amount * &self.level / &self.tank;
        match way {
            Way::MachineIgnored => {
                self.least.as_ref().is_some_and(|least| *poured < full(least))
                    || self.most.as_ref().is_some_and(|most| *poured > full(most))
            }
            Way::StandardIgnored => self.standard.as_ref().is_some_and(|standard| {
                let (low, high) = self.window(standard);
                let slack = if low == high { self.half_step() } else { q(0, 1) };
                *poured < low - &slack || *poured > high + &slack
            }),
            _ => false,
        }
    }

    /// The same by a wrong way.
    fn by(&self, way: Way) -> Q {
        let own = self.clone();
        let turned = |up: bool| {
            let Asks::Strength(low, high) = &self.asks else { panic!("a share") };
            let turn = |r: &Q| if up { r / (Q::one() - r) } else { r / (Q::one() + r) };
            Ticket { asks: Asks::Strength(turn(low), turn(high)), ..self.clone() }.dose()
        };
        let (ml, us, imperial) = (size("ml"), size("gal_us"), size("gal_imp"));
        match way {
            Way::MachineIgnored => Ticket { least: None, most: None, ..own }.dose(),
            Way::StandardIgnored => Ticket { standard: None, ..own }.dose(),
            Way::FullForPart => Ticket { level: self.tank.clone(), ..own }.dose(),
            Way::WaterForMix if self.on_top => Ticket { on_top: false, ..own }.dose(),
            Way::PartsForTotal | Way::WaterForMix => turned(true),
            Way::TotalForParts | Way::MixForWater => turned(false),
            Way::OtherEnd => {
                let window = self.window(&self.asks);
                Ticket { high: !self.high, ..own }.aimed(&window)
            }
            Way::OuncesForMillilitres => self.dose() / size("floz_us") * ml,
            Way::MillilitresForOunces => self.dose() / ml * size(&self.step_unit),
            // Tank and mark in the other gallon; a limit in ounces stays what it is.
            Way::UsForImperial => self.scaled(&(us / imperial)).dose(),
            Way::ImperialForUs => self.scaled(&(imperial / us)).dose(),
            other => panic!("no dose by {other:?}"),
        }
    }

    /// What the measure cannot tell apart.
    pub fn half_step(&self) -> Q {
        &self.step * q(1, 2)
    }
}
