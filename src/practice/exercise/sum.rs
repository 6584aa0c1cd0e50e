//! What a fill comes to: by the label and the other rules, and by the usual wrong roads.

use super::super::ready::{Asks, Jug, Liquid, Machine};
use super::super::road::Way;
use super::factor;
use crate::form::Filling;
use crate::trade::dilution::{made_up_to, on_top_of, scaled_to_level};
use crate::trade::governing::{Aim, Bound, Governs, govern};
use crate::trade::label::{Basis, Window};
use crate::trade::rounding::Ruled;
use crate::units::{Quantity, Volume, VolumeFraction, unit};

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

    pub(super) fn with(self, asks: Asks) -> Self {
        Self { asks, ..self }
    }
}

/// What the rules beside the label allow, as Fill holds them: a minimum by law and, where they count, the standard and
/// the machine.
pub(super) fn bounds(
    machine: &Machine,
    liquid: &Liquid,
    sum: Sum,
    (by_standard, by_machine): (bool, bool),
) -> Vec<Bound> {
    let scaled = |amount| scaled_to_level(amount, sum.level, sum.tank);
    let least = liquid.least.map(|least| {
        let low = sum.with(Asks::Strength(Window { low: least, high: least })).window().low;
        Bound { by: Governs::Minimum, window: Window { low, high: Volume::new(f64::INFINITY) } }
    });
    let standard = liquid
        .standard
        .as_ref()
        .filter(|_| by_standard)
        .map(|rule| Bound { by: Governs::Standard, window: sum.with(rule.asks).window() });
    let machine = machine.window.filter(|_| by_machine).map(|window| {
        let window = Window { low: scaled(window.low), high: scaled(window.high) };
        Bound { by: Governs::Machine, window }
    });
    least.into_iter().chain(standard).chain(machine).collect()
}

/// The rules for a fill, as rounding asks for them.
pub(super) fn by_all<'a>(liquid: &Liquid, sum: Sum, bounds: &'a [Bound], aim: Aim) -> Ruled<'a> {
    let asked = sum.window();
    Ruled { asked, bounds, governed: govern(asked, bounds, aim), disinfects: liquid.disinfects }
}

/// Product by the label and, where they count, by the standard and the machine.
pub(super) fn ruled(machine: &Machine, liquid: &Liquid, sum: Sum, aim: Aim, which: (bool, bool)) -> Volume {
    govern(sum.window(), &bounds(machine, liquid, sum, which), aim).dose
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
