//! Top up: what is left, and what to add.

use super::{Act, Aimed, Done, Rest, acts, aimed, beside, instead, reading, volume_in};
use crate::answer::{Remark, Value, Weight};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::Marks;
use crate::trade::formula;
use crate::trade::top_up::{Content, TopUp, Unfit, Wanted, fresh, top_up};
use crate::units::{Kind, Quantity, Volume, VolumeFraction};

/// Works a top-up out.
///
/// ```
/// use brimline::form::{Typed, names, station::top_up::work};
/// use brimline::number::Marks;
/// // A quarter of 10 gal is left as it was filled: three quarters of the dose are missing.
/// let done = work(&Typed::default(), Marks::POINT);
/// let dose = done.outcome.answer.get(names::STATION_CONCENTRATE).unwrap().si;
/// assert!((dose - 0.75 * 0.037_854_117_84 / 65.0).abs() < 1e-15);
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Done {
    if let Some(done) = instead(typed, marks) {
        return done;
    }
    let mut done = Done::default();
    let out = &mut done.outcome;
    let Some(aimed) = aimed(out, typed, marks) else { return done };
    let left = volume_in(out, typed, Field::Left, aimed.tank, marks);
    let level = volume_in(out, typed, Field::Level, aimed.tank, marks);
    let (Some(left), Some(level)) = (left, level) else { return done };
    if level <= Volume::ZERO {
        out.trouble(Field::Level.name(), What::AboveTank);
        return done;
    }
    let wanted = Wanted { level, strength: aimed.strength, tank: aimed.tank };
    let known = match typed.ask.station.rest {
        Rest::AsFilled => Some(aimed.strength),
        Rest::AsRead => reading::read(out, typed, marks).map(|reading| reading.strength),
        Rest::Unknown => None,
    };
    if known.is_none() && typed.ask.station.rest == Rest::AsRead {
        return done;
    }
    done.acts = match known {
        Some(strength) => known_rest(out, typed, Content { volume: left, strength }, &aimed, wanted, marks),
        None => unknown_rest(out, typed, left, &aimed, wanted, marks),
    };
    if !done.acts.is_empty() {
        beside(out, typed, &aimed, level, marks);
    }
    done
}

fn known_rest(
    out: &mut Outcome,
    typed: &Typed,
    left: Content,
    aimed: &Aimed,
    wanted: Wanted,
    marks: Marks,
) -> Vec<Act> {
    let plan = match top_up(left, wanted) {
        Ok(plan) => plan,
        Err(unfit) => return unfitting(out, unfit),
    };
    let work = plan.work();
    steps(out, left, wanted, plan);
    match plan {
        TopUp::Add(_) => {}
        TopUp::DrainStrong(_) => out.answer.remark(Remark::new("remark-drain-strong", Weight::Warn)),
        TopUp::DrainWeak(_) => out.answer.remark(Remark::new("remark-drain-weak", Weight::Warn)),
    }
    if typed.ask.station.rest == Rest::AsFilled {
        out.answer.remark(Remark::new("remark-rest-as-filled", Weight::Assumed));
    }
    let acts = acts(out, typed, work, left, aimed, marks);
    after(out, work.on(left));
    let nothing = acts.is_empty() && out.troubles.is_empty();
    if nothing { vec![Act::Nothing] } else { acts }
}

/// The safe choice and why: what it could be otherwise.
fn unknown_rest(
    out: &mut Outcome,
    typed: &Typed,
    left: Volume,
    aimed: &Aimed,
    wanted: Wanted,
    marks: Marks,
) -> Vec<Act> {
    let plan = match fresh(left, aimed.most, wanted) {
        Ok(plan) => plan,
        Err(unfit) => return unfitting(out, unfit),
    };
    let worst = plan.at_worst.strength;
    out.answer.remark(Remark::new("remark-rest-unknown", Weight::Warn).window(
        "strength",
        worst.low,
        worst.high,
        Kind::Percent,
    ));
    let mut acts =
        acts(out, typed, plan.work, Content { volume: left, strength: VolumeFraction::ZERO }, aimed, marks);
    after(out, Content { volume: wanted.level, strength: wanted.strength });
    acts.retain(|act| !matches!(act, Act::Drain(_)));
    acts.splice(0..0, [Act::DrainAll, Act::Rinse]);
    acts
}

fn unfitting(out: &mut Outcome, unfit: Unfit) -> Vec<Act> {
    let field = match unfit {
        Unfit::Level => Field::Level,
        Unfit::Residue => Field::Left,
    };
    out.trouble(field.name(), What::AboveTank);
    Vec::new()
}

/// What the tank holds in the end, with the concentrate as it was measured.
pub(super) fn after(out: &mut Outcome, content: Content) {
    let answer = &mut out.answer;
    let poured = |name| answer.get(name).map(|value| Volume::from_si(value.si));
    let (rounded, exact) = (poured(names::STATION_ROUNDED), poured(names::STATION_CONCENTRATE));
    let more = rounded.zip(exact).map_or(Volume::ZERO, |(rounded, exact)| rounded - exact);
    let volume = content.volume + more;
    let content =
        Content { volume, strength: (content.strength * content.volume + more).fraction_of(volume) };
    answer.figure(names::STATION_LEVEL, Value::new(content.volume, Kind::Fill));
    answer.figure(names::STATION_STRENGTH, Value::new(content.strength, Kind::Percent));
    if content.strength > VolumeFraction::ZERO {
        answer.figure(names::STATION_RATIO, Value::plain(content.strength.parts_of_water(), Kind::Ratio));
    }
}

fn steps(out: &mut Outcome, left: Content, wanted: Wanted, plan: TopUp) {
    let work = plan.work();
    let given = [
        ("r", Value::new(wanted.strength, Kind::Percent)),
        ("V", Value::new(wanted.level, Kind::Fill)),
        ("r₀", Value::new(left.strength, Kind::Percent)),
        ("V₀", Value::new(left.volume, Kind::Fill)),
    ];
    let answer = &mut out.answer;
    match plan {
        TopUp::Add(_) => {
            let dose = Value::new(work.concentrate, Kind::Dose);
            answer.step(&formula::TOP_UP, &given, dose);
            let given = [given[1], given[3], ("X", dose)];
            answer.step(&formula::TOP_UP_WATER, &given, Value::new(work.water, Kind::Fill));
        }
        TopUp::DrainStrong(_) => {
            answer.step(&formula::TOP_UP_DRAIN, &given, Value::new(work.drain, Kind::Fill));
        }
        TopUp::DrainWeak(_) => answer.step(&formula::TOP_UP_ROOM, &given, Value::new(work.drain, Kind::Fill)),
    }
}
