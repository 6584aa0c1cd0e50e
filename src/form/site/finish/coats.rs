//! The coats: how much finish, when each goes on, and when a machine may first come.

use super::{Coat, FIRST_COAT, FIRST_COAT_AT, Finishing, When};
use crate::answer::{Remark, Value, Weight};
use crate::chemistry::drying::{drying_time, wet_bulb};
use crate::form::flow::drying::{NEVER, room, step};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::Marks;
use crate::trade::calendar::{Date, Moment, minutes};
use crate::trade::finish::{coat_start, coat_water, finish_volume, first_scrub};
use crate::trade::formula;
use crate::trade::label::Window;
use crate::units::{Area, Coverage, Duration, Kind, Plain, Quantity, VolumeFraction};

/// More coats than this in a day are not usual: seen second-hand.
const A_DAY: usize = 4;
const DAY: Duration = Duration::new(86_400.0);

/// Notes the finish, the coats and the wait after them.
pub(super) fn note(found: &mut Finishing, typed: &Typed, area: Option<Area>, marks: Marks) {
    let out = &mut found.outcome;
    let Some(finish) = typed.finish() else { return };
    let coats = coats(out, typed, marks);
    let coverage = out.may::<Coverage>(typed, Field::FinishCoverage, marks).flatten();
    if let (Some(coats), Some(coverage), Some(area)) = (coats, coverage, area) {
        volume(out, coats, coverage, area);
    }
    let dry = dry(out, typed, coverage, marks);
    let cure = out.may::<Duration>(typed, Field::FinishCure, marks);
    let start = start(out, typed);
    found.estimated = finish.dry.text.trim().is_empty();
    let (Some(coats), Some(dry)) = (coats, dry) else { return };
    let when = |after: Duration| When { after, at: start.and_then(|start| start.after(after)) };
    let mut number = 1.0;
    while number <= coats {
        let (from, to) = (when(coat_start(number, dry.low)), when(coat_start(number, dry.high)));
        found.coats.push(Coat { from, to });
        number += 1.0;
    }
    let (n, d) = (Value::plain(coats, Kind::Count), Value::new(dry.high, Kind::Time));
    let last = Value::new(coat_start(coats, dry.high), Kind::Time);
    let out = &mut found.outcome;
    out.answer.step(&formula::COAT_START, &[("n", n), ("d", d)], last);
    if found.coats.iter().filter(|coat| coat.to.after < DAY).count() > A_DAY {
        out.answer.remark(Remark::new("remark-coats-many", Weight::Assumed));
    }
    match cure {
        Some(Some(cure)) => {
            // The later end: who comes too early tears the finish open.
            let ready = first_scrub(coats, dry.high, cure);
            let given = [("n", n), ("d", d), ("u", Value::new(cure, Kind::Time))];
            out.answer.step(&formula::FIRST_SCRUB, &given, Value::new(ready, Kind::Time));
            out.answer.figure(names::FINISH_READY, Value::new(ready, Kind::Time));
            found.scrub = Some(when(ready));
        }
        Some(None) => out.answer.remark(Remark::new("remark-cure-unknown", Weight::Warn)),
        None => {}
    }
}

/// How many, a whole number.
fn coats(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<f64> {
    let coats = out.may::<Plain>(typed, Field::FinishCoats, marks).flatten()?.si();
    if coats.fract() > 0.0 {
        out.trouble(Field::FinishCoats.name(), What::Whole);
        return None;
    }
    Some(coats)
}

fn volume(out: &mut Outcome, coats: f64, coverage: Coverage, area: Area) {
    let all = Value::new(finish_volume(coats, area, coverage), Kind::Fill);
    let given = [
        ("n", Value::plain(coats, Kind::Count)),
        ("A", Value::new(area, Kind::Area)),
        ("c", Value::new(coverage, Kind::Coverage)),
    ];
    out.answer.step(&formula::FINISH_VOLUME, &given, all);
    out.answer.figure(names::FINISH_VOLUME, all);
    out.answer.figure(names::FINISH_COAT, Value::new(finish_volume(1.0, area, coverage), Kind::Fill));
}

/// How long a coat dries: what its label says, else an estimate from the room's air.
fn dry(
    out: &mut Outcome,
    typed: &Typed,
    coverage: Option<Coverage>,
    marks: Marks,
) -> Option<Window<Duration>> {
    let label = out.may::<Duration>(typed, Field::FinishDry, marks)?;
    let solids = out.may::<VolumeFraction>(typed, Field::FinishSolids, marks)?;
    if let Some(label) = label {
        out.answer.figure(names::COAT_DRY_TO, Value::new(label, Kind::Time));
        return Some(Window { low: label, high: label });
    }
    let air = room(out, typed, marks)?;
    let coverage = coverage?;
    if solids.is_none() {
        out.answer.remark(Remark::new("remark-coat-solids", Weight::Assumed));
    }
    let share = solids.unwrap_or(VolumeFraction::ZERO);
    let water = coat_water(share, coverage);
    let time = drying_time(water, air);
    if time.high >= NEVER {
        out.answer.remark(Remark::new("remark-never-dries", Weight::Warn));
        return None;
    }
    let given = [("s", Value::new(share, Kind::Percent)), ("c", Value::new(coverage, Kind::Coverage))];
    out.answer.step(&formula::COAT_WATER, &given, Value::new(water, Kind::Rate));
    step(&mut out.answer, water, air, air.temperature, time.low);
    step(&mut out.answer, water, air, wet_bulb(air), time.high);
    out.answer.figure(names::COAT_DRY_FROM, Value::new(time.low, Kind::Time));
    out.answer.figure(names::COAT_DRY_TO, Value::new(time.high, Kind::Time));
    out.answer.remark(Remark::new("remark-coat-estimate", Weight::Assumed));
    Some(time)
}

/// The first coat by the clock on the wall, where both the day and the time were typed.
fn start(out: &mut Outcome, typed: &Typed) -> Option<Moment> {
    let (day, time) = (typed.ask.site.first_coat.trim(), typed.ask.site.first_coat_at.trim());
    if day.is_empty() && time.is_empty() {
        return None;
    }
    let (date, minute) = (Date::read(day), minutes(time));
    if date.is_none() {
        out.trouble(FIRST_COAT, What::Date);
    }
    if minute.is_none() {
        out.trouble(FIRST_COAT_AT, What::Time);
    }
    let start = Moment { date: date?, minute: minute? };
    out.answer.remark(Remark::new("remark-coat-clock", Weight::Assumed));
    Some(start)
}
