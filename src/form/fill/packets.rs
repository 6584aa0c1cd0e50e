//! Packets and tablets: whole ones, so that the water follows them.

use crate::answer::{Remark, Value, Weight};
use crate::form::rules::{Extent, Rules};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::portion::{Makes, Whole, whole_units};
use crate::units::{Kind, Volume};

/// A label with one number is itself rounded: two statements of one label agree within this share.
const CLOSE: f64 = 0.02;

/// A label that counts packets.
pub(super) fn work(out: &mut Outcome, typed: &Typed, extent: Option<Extent>, makes: Window<Volume>) {
    let Some(fill) = extent else { return };
    // The weakest is what one packet makes the most of.
    let aim = typed.ask.aim.within(Window { low: makes.high, high: makes.low });
    out.answer.remark(Remark::new("basis-packets", Weight::Assumed).window(
        "one",
        makes.low,
        makes.high,
        Kind::Fill,
    ));
    whole(out, Makes { aim, window: makes }, fill);
}

/// How many of what `makes` says, and the level for them; the figures and remarks of both.
pub(super) fn whole(out: &mut Outcome, makes: Makes, fill: Extent) -> Option<Whole> {
    let (chosen, level) = choose(out, makes, fill)?;
    let given = [("k", Value::plain(chosen.count, Kind::Count)), ("Vᵤ", Value::new(makes.aim, Kind::Fill))];
    out.answer.step(&formula::PORTION, &given, Value::new(chosen.level, Kind::Fill));
    out.answer.figure(names::FILL_COUNT, Value::plain(chosen.count, Kind::Count));
    out.answer.figure(names::FILL_TOTAL, Value::new(level, Kind::Fill));
    out.answer.figure(names::FILL_WATER, Value::new(level, Kind::Fill));
    Some(chosen)
}

/// The level to fill to, for packets of a liquid.
pub(super) fn level_for(out: &mut Outcome, rules: &Rules, fill: Extent, unit: Volume) -> Volume {
    let governed = rules.govern(fill);
    let share = |dose: Volume| dose.min(fill.level).fraction_of(fill.total(dose).max(dose));
    let window = Window { low: share(governed.window.low), high: share(governed.window.high) };
    let makes = Makes::of_liquid(unit, share(governed.dose), window);
    choose(out, makes, fill).map_or(fill.level, |(_, level)| level)
}

/// The whole number at the wanted level, where the label allows what it makes there; else the nearest
/// number that the tank holds, with the level that it makes exactly.
fn choose(out: &mut Outcome, makes: Makes, fill: Extent) -> Option<(Whole, Volume)> {
    let window = makes.window;
    let makes = if window.is_point() {
        Makes {
            window: Window { low: window.low * (1.0 - CLOSE), high: window.high * (1.0 + CLOSE) },
            ..makes
        }
    } else {
        makes
    };
    let sides = whole_units(makes, fill.level, fill.tank);
    if sides.best.inside {
        return Some((sides.best, fill.level));
    }
    let fitting = |whole: &Whole| whole.fits;
    let near = Some(sides.best)
        .filter(fitting)
        .or(sides.below.filter(fitting))
        .or(Some(sides.above).filter(fitting));
    let Some(whole) = near else {
        out.trouble(Field::Level.name(), What::PacketTooBig);
        return None;
    };
    out.answer.remark(
        Remark::new("remark-packets-level", Weight::Warn)
            .value("level", Value::new(whole.level, Kind::Fill))
            .value("asked", Value::new(fill.level, Kind::Fill))
            .value("n", Value::plain(whole.count, Kind::Count)),
    );
    Some((whole, whole.level))
}
