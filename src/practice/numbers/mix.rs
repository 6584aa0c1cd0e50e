//! What a ratio is in a tank and in a cup, and what half a step of the cup does to it.

use super::super::Fill;
use super::{Input, Numbers};
use crate::answer::{Remark, Value, Weight};
use crate::form::{Outcome, What, names};
use crate::limits;
use crate::number::Marks;
use crate::trade::dilution::made_up_to;
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::measure::round_to;
use crate::units::{Dimension, Kind, Length, Quantity, Volume, VolumeFraction, unit};

/// One way to pour, and what it makes of the ratio.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Way {
    /// Product, m³.
    pub product: f64,
    /// Parts of water to one part of it.
    pub ratio: f64,
    /// How much more product than asked for, a share of that; less than nothing where it is less.
    pub off: f64,
}

/// What is drawn of a tank and its product.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mix {
    /// The cup and the tank.
    pub picture: Fill,
    /// Whole steps of the cup that come nearest.
    pub steps: f64,
    /// Half a step less, as asked for, the nearest step, half a step more.
    pub ways: [Way; 4],
    /// The edge of a cube that holds the full tank, m.
    pub tank_edge: f64,
    /// The edge of a cube that holds the product, m.
    pub dose_edge: f64,
}

/// The edge of a cube: `s = V^(1/3)`.
fn edge(volume: f64) -> f64 {
    volume.cbrt()
}

/// Works it out. The mix reaches the level: `x = r V`, `r = 1/(1 + n)`; of a product y, `N = (V − y)/y`.
pub(super) fn work(numbers: &Numbers, out: &mut Outcome, marks: Marks) -> Option<Mix> {
    let tank = numbers.read::<Volume>(out, Input::Tank, marks);
    let level = tank.and_then(|tank| level(numbers, out, tank, marks));
    let parts = numbers.parts(marks).map_err(|mistake| out.trouble("numbers-parts", What::Number(mistake)));
    let step = numbers.read::<Volume>(out, Input::Step, marks);
    let (tank, total, parts, step) = (tank?, level?, parts.ok()?, step?);
    let strength = VolumeFraction::from_parts_of_water(parts);
    let dose = made_up_to(total, strength);
    let half = step / 2.0;
    figures(out, tank, total, strength, dose);
    if half >= dose {
        out.answer.remark(Remark::new("remark-numbers-coarse", Weight::Warn));
        return None;
    }
    let rounded = round_to(dose, step, Window { low: dose, high: dose });
    let way = |product: Volume| Way {
        product: product.si(),
        ratio: product.fraction_of(total).parts_of_water(),
        off: product / dose - 1.0,
    };
    let ways = [way(dose - half), way(dose), way(rounded.dose), way(dose + half)];
    let cup = unit(&numbers.step.unit).filter(|one| one.dimension == Dimension::Volume)?;
    let picture = Fill::of([tank, total, dose, step].map(Quantity::si), cup.code, None)?;
    let (tank_edge, dose_edge) = (edge(tank.si()), edge(dose.si()));
    Some(Mix { picture, steps: rounded.count, ways, tank_edge, dose_edge })
}

/// How much is in the tank, typed as a share of it or as a volume.
fn level(numbers: &Numbers, out: &mut Outcome, tank: Volume, marks: Marks) -> Option<Volume> {
    let level = if numbers.level.unit == "percent" {
        let share = &limits::LEVEL_SHARE;
        numbers.within::<VolumeFraction>(out, Input::Level, share, marks)? * tank
    } else {
        numbers.read::<Volume>(out, Input::Level, marks)?
    };
    if level > tank * (1.0 + 1e-9) {
        out.trouble(Input::Level.name(), What::AboveTank);
        return None;
    }
    Some(level)
}

fn figures(out: &mut Outcome, tank: Volume, total: Volume, strength: VolumeFraction, dose: Volume) {
    let fill = |volume| Value::new(volume, Kind::Fill);
    let width = |volume: Volume| Value::new(Length::new(edge(volume.si())), Kind::Width);
    let answer = &mut out.answer;
    let (dosed, r) = (Value::new(dose, Kind::Dose), Value::new(strength, Kind::Percent));
    answer.figure(names::NUMBERS_TOTAL, fill(total));
    answer.figure(names::NUMBERS_WATER, fill(total - dose));
    answer.figure(names::NUMBERS_DOSE, dosed);
    answer.figure(names::NUMBERS_TANK_EDGE, width(tank));
    answer.figure(names::NUMBERS_DOSE_EDGE, width(dose));
    let n = Value::plain(strength.parts_of_water(), Kind::Ratio);
    answer.step(&formula::PLUS_WATER, &[("n", n)], r);
    answer.step(&formula::DOSE, &[("r", r), ("V", fill(total))], dosed);
}
