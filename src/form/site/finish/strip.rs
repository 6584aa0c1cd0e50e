//! The strip solution: how much, of what, in how many tanks, and what must be known before it is laid down.

use super::{laid, stripper};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::drying::drying_time;
use crate::chemistry::family::Family;
use crate::chemistry::floor::{Cover, FloorVerdict, Ground, Surface};
use crate::form::cautions::on_floor;
use crate::form::flow::drying::room;
use crate::form::rules::{Extent, Liquid, liquid};
use crate::form::{Field, Filling, Outcome, Typed, What, names};
use crate::number::Marks;
use crate::site::Product;
use crate::trade::finish::tanks;
use crate::trade::formula;
use crate::trade::label::{self, Window};
use crate::units::{ApplicationRate, Area, Duration, Kind, Quantity, Volume};

/// The name of the list of strippers.
pub const STRIPPER: &str = "stripper";
/// The name of the field with the stripper's dilution.
pub const DILUTION: &str = "strip-dilution";

/// What dissolves a finish.
const STRIPS: [Family; 4] = [Family::StrongAlkali, Family::Ammonia, Family::Solvent, Family::Alcohol];

/// Notes the strip solution and its cautions.
pub(super) fn note(out: &mut Outcome, typed: &Typed, area: Option<Area>, marks: Marks) {
    let rate = out.need::<ApplicationRate>(typed, Field::StripRate, marks);
    let dwell = out.may::<Duration>(typed, Field::StripDwell, marks).flatten();
    let Some(product) = stripper(typed) else {
        out.trouble(STRIPPER, What::NoRecord);
        return;
    };
    let asked = asked(out, typed, product, marks);
    cautions(out, typed, product, marks);
    if let (Some(rate), Some(dwell)) = (rate, dwell) {
        stays_wet(out, typed, rate, dwell, marks);
    }
    let (Some(rate), Some(area)) = (rate, area) else { return };
    let solution = laid(out, rate, area);
    out.answer.figure(names::STRIP_SOLUTION, solution);
    if let Some(asked) = asked {
        amounts(out, typed, Volume::from_si(solution.si), asked, marks);
    }
}

/// What the dilution asks: the one typed, else the stripper's label.
fn asked(out: &mut Outcome, typed: &Typed, product: &Product, marks: Marks) -> Option<Liquid> {
    let own = typed.ask.site.strip_dilution.as_str();
    let text = if own.trim().is_empty() { product.label.as_str() } else { own };
    let label = match label::read(text, typed.system) {
        Ok(label) => label,
        Err(mistake) => {
            out.trouble(DILUTION, What::Label(mistake));
            return None;
        }
    };
    for note in &label.notes {
        out.answer.remark(Remark::new(note.code(), Weight::Assumed));
    }
    let mut of_stripper = typed.without_areas();
    of_stripper.ask.product.clone_from(&product.id);
    // What its label needs beside its own text is told on Fill; here it is one thing to mend.
    let mut aside = Outcome::default();
    let liquid = liquid(&mut aside, &of_stripper, &label, DILUTION, marks);
    if liquid.is_none() {
        let what = aside.at(DILUTION).cloned().unwrap_or(What::ProductUnsound);
        out.trouble(DILUTION, what);
    }
    liquid
}

/// Concentrate and water, in the machine's own tanks.
fn amounts(out: &mut Outcome, typed: &Typed, solution: Volume, asked: Liquid, marks: Marks) {
    let tank =
        Field::Tank.entry(typed).and_then(|entry| entry.read::<Volume>(Field::Tank.limit(), marks).ok());
    let per_tank = matches!(asked, Liquid::PerTank(_));
    // Without a tank an amount for a tank says nothing; the tank is told on Fill.
    let Some(whole) = tank.or((!per_tank).then_some(solution)) else { return };
    let window = asked.window(Extent { tank: whole, level: solution, filling: Filling::MadeUp });
    let dose = typed.ask.aim.within(window);
    if dose > solution {
        out.trouble(DILUTION, What::NoRoom);
        return;
    }
    let share = dose.fraction_of(solution);
    let shown = |volume| Value::new(volume, Kind::Dose);
    let answer = &mut out.answer;
    let given = [("r", Value::new(share, Kind::Percent)), ("V", Value::new(solution, Kind::Fill))];
    answer.step(&formula::DOSE, &given, shown(dose));
    answer.figure(names::STRIP_CONCENTRATE, shown(dose));
    if !window.is_point() {
        let Window { low, high } = window;
        answer.figure(names::STRIP_LOW, shown(low));
        answer.figure(names::STRIP_HIGH, shown(high));
    }
    answer.figure(names::STRIP_WATER, Value::new(solution - dose, Kind::Fill));
    let Some(tank) = tank else { return };
    let (full, last) = tanks(solution, tank);
    answer.figure(names::STRIP_TANKS, Value::plain(full, Kind::Count));
    if full > 0.0 {
        answer.figure(names::STRIP_TANK_DOSE, shown(share * tank));
    }
    if last > Volume::ZERO {
        answer.figure(names::STRIP_LAST, Value::new(last, Kind::Fill));
        answer.figure(names::STRIP_LAST_DOSE, shown(share * last));
    }
}

/// Whether it strips at all, and what it does to the floor under the finish.
fn cautions(out: &mut Outcome, typed: &Typed, product: &Product, marks: Marks) {
    let named = |code, weight| Remark::new(code, weight).with("product", Fact::Text(product.name.clone()));
    if !product.kinds().iter().any(|family| STRIPS.iter().any(|one| family.is_a(*one))) {
        out.answer.remark(named("remark-strip-no-stripper", Weight::Warn));
    }
    let Some(floor) = typed.floor() else { return };
    let told = |remark: Remark| remark.with("floor", Fact::Text(floor.name.clone()));
    // What the rules know of finished vinyl is its finish, which is to come off.
    if floor.surface == Surface::FinishedVinyl {
        out.answer.remark(told(named("remark-strip-floor-ask", Weight::Assumed)));
        return;
    }
    let bare = Ground { surface: floor.surface, cover: Cover::Bare };
    match on_floor(product, bare, marks) {
        FloorVerdict::Fits => {}
        FloorVerdict::DoesNotFit { reasons } => {
            for reason in reasons {
                let remark = told(named("remark-strip-floor", Weight::Warn));
                out.answer.remark(super::machines::because(remark, &reason));
            }
        }
        FloorVerdict::Unknown { .. } => {
            out.answer.remark(told(named("remark-strip-floor-unknown", Weight::Warn)));
        }
    }
}

/// A strip solution that dries holds what it dissolved.
fn stays_wet(out: &mut Outcome, typed: &Typed, rate: ApplicationRate, dwell: Duration, marks: Marks) {
    let mut aside = Outcome::default();
    // What is wrong with the air is told where the coats need it.
    let Some(air) = room(&mut aside, typed, marks) else { return };
    let dry = drying_time(rate, air).low;
    if dry < dwell {
        out.answer.remark(
            Remark::new("remark-strip-dries", Weight::Warn)
                .value("dry", Value::new(dry, Kind::Time))
                .value("dwell", Value::new(dwell, Kind::Time)),
        );
    }
}
