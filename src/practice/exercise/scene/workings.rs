//! The workings of a fill: from the rule that decides to what is poured.

use super::super::super::ready::Asks;
use super::super::telling::{step, strength_step};
use super::super::{Reason, Said};
use super::{Scene, same};
use crate::answer::{Step, Value};
use crate::form::Filling;
use crate::source::Source;
use crate::trade::formula;
use crate::trade::governing::Governs;
use crate::trade::label::Window;
use crate::units::{Kind, Volume};

impl Scene<'_> {
    /// That the site's rule decides, where it does: what the label allows, what the rule asks for, and so what to pour.
    pub(in crate::practice::exercise) fn rule(&self) -> Vec<Reason> {
        let Some(dose) = self.decided().filter(|dose| same(*dose, self.dose())) else { return Vec::new() };
        let value = |volume| Value::new(volume, Kind::Dose);
        let Window { low, high } = self.sum().window();
        let held = Said::new("remark-standard-narrows")
            .window("label", value(low), value(high))
            .window("rule", value(dose), value(dose))
            .window("dose", value(dose), value(dose));
        [held, Said::new("practice-because-standard")]
            .map(|said| Reason { said, source: Source::COMMON_PRACTICE })
            .into()
    }

    /// The workings: by the site's rule where it decides, else by the label.
    pub(in crate::practice::exercise) fn steps(&self) -> Vec<Step> {
        let mut out = Vec::new();
        let value = |volume: Volume| Value::new(volume, Kind::Dose);
        let rule = self.liquid.standard.as_ref().filter(|_| self.decided().is_some());
        let (basis, asks) =
            rule.map_or((self.liquid.label.basis, self.liquid.asks), |rule| (rule.basis, rule.asks));
        let asked = self.aim.within(self.sum().with(asks).window());
        let (fill, dose) = (Value::new(self.fill.value, Kind::Fill), value(asked));
        match asks {
            Asks::Strength(window) => {
                let strength = self.aim.within(window);
                out.extend(strength_step(basis, strength));
                let r = ("r", Value::new(strength, Kind::Percent));
                match self.filling {
                    Filling::MadeUp => out.push(step(&formula::DOSE, &[r, ("V", fill)], dose)),
                    Filling::OnTop => out.push(step(&formula::DOSE_ON_TOP, &[("W", fill), r], dose)),
                }
            }
            Asks::PerTank(window) => {
                let tank = Value::new(self.machine.tank.value, Kind::Fill);
                let given = [("x", value(self.aim.within(window))), ("V", fill), ("T", tank)];
                out.push(step(&formula::PER_TANK, &given, dose));
            }
        }
        out.extend(self.by_machine(asked));
        out
    }

    /// From what the other rules ask for to what the machine leaves of it; nothing where it does not matter.
    fn by_machine(&self, asked: Volume) -> Vec<Step> {
        let right = self.dose();
        let mut bounds = self.bounds().into_iter();
        let Some(bound) = bounds.find(|one| one.by == Governs::Machine) else { return Vec::new() };
        if same(self.by(self.sum(), true, false), right) {
            return Vec::new();
        }
        let value = |volume| Value::new(volume, Kind::Dose);
        let (tank, level) = (self.machine.tank.value, self.fill.value);
        let limit = if same(bound.window.high, right) { right } else { bound.window.low };
        let fill = |volume| Value::new(volume, Kind::Fill);
        let given = [("M", value(limit * (tank / level))), ("V", fill(level)), ("T", fill(tank))];
        let mut out = vec![step(&formula::MACHINE_WINDOW, &given, value(limit))];
        // The least of a machine raises a dose within the label. Where even the most of the label is less, that governs.
        let raised = same(limit, right) && right > asked;
        if !raised {
            let label = if same(limit, right) { asked } else { right };
            let given = [("label", value(label)), ("machine", value(limit))];
            out.push(step(&formula::GOVERN, &given, value(right)));
        }
        out
    }
}
