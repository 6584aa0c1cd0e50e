//! Read the strength: from what an instrument shows to what it can decide.

use super::{Act, Done, Method, aimed, barred, left_out};
use crate::answer::{Formula, Remark, Value, Weight};
use crate::form::rules::{Extent, active, ppm};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::{self, Marks};
use crate::trade::actives::in_solution;
use crate::trade::certainty::{JUG_SHARE, Measured};
use crate::trade::formula;
use crate::trade::reading::{
    BRIX_ERROR, Calibration, Reading, ReadingMistake, Seen, Supports, Verdict, catch, conductivity, drops,
    refractometer, strip, with_tolerance,
};
use crate::trade::rescue::TOLERANCE;
use crate::units::{Kind, MassConcentration, Plain, Quantity, Volume, VolumeFraction, unit};

/// The name of the field with a strip's blocks.
pub const BLOCKS: &str = "reading-blocks";

/// How far a conductivity meter may be off, as a share of what it shows. Common practice, no source.
const METER: f64 = 0.01;

/// Reads a strength and holds it against the window.
///
/// ```
/// use brimline::form::station::{Method, reading::work};
/// use brimline::form::{Action, Field, Typed, action::reduce, names};
/// use brimline::number::Marks;
/// let typed = reduce(Typed::default(), Action::Method(Method::Refractometer));
/// let typed = reduce(typed, Action::Write(Field::Brix, "2".into()));
/// let typed = reduce(typed, Action::Write(Field::PerBrix, "0.5".into())); // per cent
/// let answer = work(&typed, Marks::POINT).outcome.answer;
/// assert!((answer.get(names::STATION_STRENGTH).unwrap().si - 0.01).abs() < 1e-15);
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Done {
    let mut done = Done::default();
    let out = &mut done.outcome;
    out.answer.remarks.extend(left_out(typed));
    // What it holds can be told in any machine; what to do about it cannot.
    let aimed = if barred(typed) {
        done.acts.push(Act::OtherMachine);
        None
    } else {
        aimed(out, typed, marks)
    };
    let Some(reading) = read(out, typed, marks) else { return done };
    let bounds = reading.bounds();
    let percent = |strength: VolumeFraction| Value::new(strength, Kind::Percent);
    out.answer.figure(names::STATION_STRENGTH, percent(reading.strength));
    out.answer.figure(names::STATION_STRENGTH_LOW, percent(bounds.low));
    // A strip beyond its last block has no upper end.
    let high =
        if bounds.high < VolumeFraction::new(1.0) { bounds.high } else { VolumeFraction::new(f64::INFINITY) };
    if high == bounds.high {
        out.answer.figure(names::STATION_STRENGTH_HIGH, percent(bounds.high));
    }
    if typed.ask.station.method.counts_active()
        && let Some(concentrate) = active(out, typed, marks)
    {
        out.answer.figure(names::STATION_ACTIVE, ppm(in_solution(reading.strength, concentrate)));
    }
    if reading.strength > VolumeFraction::ZERO {
        out.answer.figure(names::STATION_RATIO, Value::plain(reading.strength.parts_of_water(), Kind::Ratio));
    }
    let Some(aimed) = aimed else { return done };
    out.answer.remarks.extend(aimed.rules.partings(Extent::full(aimed.tank)));
    // A label with one number holds no reading: the tolerance of a rescue gives it room.
    let window = if aimed.window.is_point() { with_tolerance(aimed.window, TOLERANCE) } else { aimed.window };
    let code = match reading.supports(window) {
        Supports::CanDecide(Verdict::Inside) => "remark-reading-inside",
        Supports::CanDecide(Verdict::TooWeak) => "remark-reading-weak",
        Supports::CanDecide(Verdict::TooStrong) => "remark-reading-strong",
        Supports::CannotDecide => "remark-reading-undecided",
    };
    let weight = if code == "remark-reading-inside" { Weight::Assumed } else { Weight::Warn };
    out.answer.remark(Remark::new(code, weight).window("read", bounds.low, high, Kind::Percent).window(
        "window",
        window.low,
        window.high,
        Kind::Percent,
    ));
    done
}

/// What the chosen instrument says; mistakes are noted.
pub(super) fn read(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Reading> {
    let method = typed.ask.station.method;
    let (read, name) = match method {
        Method::Strip => by_strip(out, typed, marks)?,
        Method::Drops => by_drops(out, typed, marks)?,
        Method::Refractometer => by_refractometer(out, typed, marks)?,
        Method::Conductivity => by_conductivity(out, typed, marks)?,
        Method::Catch => by_catch(out, typed, marks)?,
    };
    match read {
        Ok(reading) => {
            let code = match method {
                Method::Strip => "reading-note-strip",
                Method::Drops => "reading-note-drops",
                Method::Refractometer => "reading-note-refractometer",
                Method::Conductivity => "reading-note-conductivity",
                Method::Catch => "reading-note-catch",
            };
            out.answer.remark(Remark::new(code, Weight::Assumed));
            Some(reading)
        }
        Err(mistake) => {
            out.trouble(name, What::Reading(mistake));
            None
        }
    }
}

type Read = Option<(Result<Reading, ReadingMistake>, String)>;

fn step(
    out: &mut Outcome,
    formula: &'static Formula,
    given: &[(&'static str, Value)],
    read: &Result<Reading, ReadingMistake>,
) {
    if let Ok(reading) = read {
        out.answer.step(formula, given, Value::new(reading.strength, Kind::Percent));
    }
}

fn by_strip(out: &mut Outcome, typed: &Typed, marks: Marks) -> Read {
    let concentrate = active(out, typed, marks);
    let shown = out.need::<MassConcentration>(typed, Field::Strip, marks);
    let texts = typed.ask.station.blocks.split([' ', ';', '/']).filter(|text| !text.is_empty());
    let printed = unit("mg_per_l")?;
    let block = |text: &str| MassConcentration::of(number::read(text, marks).ok()?, printed);
    let blocks: Option<Vec<MassConcentration>> = texts.map(block).collect();
    let Some(blocks) = blocks.filter(|blocks| blocks.len() > 1) else {
        out.trouble(BLOCKS, What::Blocks);
        return None;
    };
    let (concentrate, shown) = (concentrate?, shown?);
    let near = |block: &MassConcentration| (shown / *block - 1.0).abs() < 1e-9;
    let seen = match blocks.iter().position(near) {
        Some(index) => Seen::At(index),
        // Below the first block there is none to lie between; beyond the last one `strip` refuses.
        None => Seen::Between(blocks.iter().rposition(|block| *block < shown).unwrap_or(0)),
    };
    let read = strip(seen, &blocks, concentrate);
    let given = [("c", ppm(shown)), ("C", ppm(concentrate))];
    step(out, &formula::READ_ACTIVE, &given, &read);
    Some((read, BLOCKS.to_owned()))
}

fn by_drops(out: &mut Outcome, typed: &Typed, marks: Marks) -> Read {
    let concentrate = active(out, typed, marks);
    let count = out.need::<Plain>(typed, Field::Drops, marks);
    let each = out.need::<MassConcentration>(typed, Field::PerDrop, marks);
    let (concentrate, count, each) = (concentrate?, count?.si().round(), each?);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "the limit keeps it small")]
    let read = drops(count as u32, each, concentrate);
    let active = MassConcentration::from_si(each.si() * count);
    let given = [("d", Value::plain(count, Kind::Count)), ("k", ppm(each))];
    out.answer.step(&formula::READ_DROPS, &given, ppm(active));
    step(out, &formula::READ_ACTIVE, &[("c", ppm(active)), ("C", ppm(concentrate))], &read);
    Some((read, Field::Drops.name()))
}

fn by_refractometer(out: &mut Outcome, typed: &Typed, marks: Marks) -> Read {
    let brix = out.need::<Plain>(typed, Field::Brix, marks);
    let factor = out.need::<VolumeFraction>(typed, Field::PerBrix, marks);
    let (brix, factor) = (brix?.si(), factor?);
    let read = Ok(refractometer(brix, factor, BRIX_ERROR));
    let given = [("B", Value::plain(brix, Kind::Ratio)), ("f", Value::new(factor, Kind::Percent))];
    step(out, &formula::READ_BRIX, &given, &read);
    Some((read, Field::Brix.name()))
}

fn by_conductivity(out: &mut Outcome, typed: &Typed, marks: Marks) -> Read {
    let shown = out.need::<Plain>(typed, Field::Conductivity, marks);
    let water = out.need::<Plain>(typed, Field::ConductivityWater, marks);
    let known = out.need::<Plain>(typed, Field::ConductivityKnown, marks);
    let strength = out.need::<VolumeFraction>(typed, Field::KnownStrength, marks);
    let (shown, water, known, strength) = (shown?.si(), water?.si(), known?.si(), strength?);
    // The known solution was made with a jug.
    let measured = Measured::within_limits(strength, strength * JUG_SHARE);
    let calibration = Calibration { water, solution: known, strength: measured };
    let read = conductivity(shown, shown.max(known) * METER, &calibration);
    let plain = |value| Value::plain(value, Kind::Ratio);
    let given = [
        ("κ", plain(shown)),
        ("κ₀", plain(water)),
        ("κₛ", plain(known)),
        ("s", Value::new(strength, Kind::Percent)),
    ];
    step(out, &formula::READ_CONDUCTIVITY, &given, &read);
    Some((read, Field::Conductivity.name()))
}

fn by_catch(out: &mut Outcome, typed: &Typed, marks: Marks) -> Read {
    let drawn = out.need::<Volume>(typed, Field::Drawn, marks);
    let whole = out.need::<Volume>(typed, Field::Caught, marks);
    let (drawn, whole) = (drawn?, whole?);
    let in_jug = |volume: Volume| Measured::within_limits(volume, volume * JUG_SHARE);
    let read = catch(in_jug(drawn), in_jug(whole));
    let given = [("q", Value::new(drawn, Kind::Dose)), ("Q", Value::new(whole, Kind::Fill))];
    step(out, &formula::CATCH, &given, &read);
    Some((read, Field::Drawn.name()))
}
