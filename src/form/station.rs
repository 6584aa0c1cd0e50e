//! The other jobs at the fill station: top up, put right, read the strength.

pub mod reading;
pub mod rescue;
pub mod top_up;

mod asked;

pub use asked::{Job, Method, Mishap, Rest, Station};

use super::rules::{Extent, Rules, read_label};
use super::site::proof::served;
use super::{Field, Outcome, Typed, What, cautions, names};
use crate::answer::{Remark, Value, Weight};
use crate::limits;
use crate::number::Marks;
use crate::site::{Machine, Product};
use crate::trade::label::Window;
use crate::trade::measure::Rounded;
use crate::trade::rounding::near;
use crate::trade::top_up::{Content, Work};
use crate::units::{Kind, Volume, VolumeFraction};

/// One thing to do, in order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Act {
    /// Step away, let air in, and follow the safety data sheets.
    KeepAway,
    /// Read the strength first.
    Read,
    /// Drain this much.
    Drain(Volume),
    /// Drain all of it.
    DrainAll,
    /// Rinse the tank.
    Rinse,
    /// Add this much water.
    Water(Volume),
    /// Add this much concentrate; rounded to the measure where that is near.
    Concentrate(Volume, Option<Rounded>),
    /// Nothing: it is right.
    Nothing,
    /// Take a machine that the standard is for, and empty and rinse this one.
    OtherMachine,
}

/// What a job ends in.
#[derive(Clone, Debug, Default)]
pub struct Done {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// What to do, in order.
    pub acts: Vec<Act>,
}

/// Whether nothing but standards is gone by, and the one that is in force is not for this machine.
fn barred(typed: &Typed) -> bool {
    typed.ask.held && typed.left_out().is_some()
}

/// What a job that makes a solution ends in there, whatever was typed: no amount, and one thing to do.
fn instead(typed: &Typed, marks: Marks) -> Option<Done> {
    let mut done = Done { acts: vec![Act::OtherMachine], ..Done::default() };
    done.outcome.answer.remarks = cautions::remarks(typed, marks);
    barred(typed).then_some(done)
}

/// The same remark beside what is no amount, where it stands in the way of nothing.
fn left_out(typed: &Typed) -> Option<Remark> {
    cautions::left_out(typed).map(|remark| Remark { weight: Weight::Warn, ..remark })
}

/// The machines in use that the standard in force is for, where it is not for the one asked about.
pub fn others(typed: &Typed) -> Vec<&Machine> {
    typed.left_out().map(|(standard, _)| served(typed, standard).collect()).unwrap_or_default()
}

/// The strength to have, and what governs it.
#[derive(Clone, Debug)]
struct Aimed {
    tank: Volume,
    strength: VolumeFraction,
    window: Window<VolumeFraction>,
    /// What rounding must stay in: open ends where a label gives one number, but never less than a
    /// minimum by law, nor less than a disinfectant's label asks.
    allowed: Window<VolumeFraction>,
    /// The most that the label allows.
    most: VolumeFraction,
    /// What is said of these rules beside Fill.
    rules: Rules,
}

/// Works out what a full tank should hold; mistakes are noted.
fn aimed(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Aimed> {
    let tank = out.need::<Volume>(typed, Field::Tank, marks);
    let rules = read_label(out, typed).and_then(|label| Rules::read(out, typed, &label, marks));
    let (tank, rules) = (tank?, rules?);
    let fill = Extent::full(tank);
    let (asked, governed) = (rules.asked(fill), rules.govern(fill));
    let share = |volume: Volume| volume.min(tank).fraction_of(tank);
    if governed.dose > tank {
        out.trouble(Field::Tank.name(), What::NoRoom);
        return None;
    }
    let window = Window { low: share(governed.window.low), high: share(governed.window.high) };
    let allowed = rules.allowed(tank, typed.product().is_some_and(Product::disinfects));
    let (strength, most) = (share(governed.dose), share(asked.high));
    Some(Aimed { tank, strength, window, allowed, most, rules })
}

/// What Fill says beside the same strength, for a tank that is full to `level` in the end.
fn beside(out: &mut Outcome, typed: &Typed, aimed: &Aimed, level: Volume, marks: Marks) {
    let fill = Extent { level, ..Extent::full(aimed.tank) };
    super::fill::beside(out, typed, &aimed.rules, fill, marks);
}

/// A volume in the tank, as a share of it or as it is; mistakes are noted.
fn volume_in(out: &mut Outcome, typed: &Typed, field: Field, tank: Volume, marks: Marks) -> Option<Volume> {
    let volume = out.share_or_volume(typed, field, &limits::READ_STRENGTH, tank, marks)?;
    if volume / tank > 1.0 + 1e-9 {
        out.trouble(field.name(), What::AboveTank);
        return None;
    }
    Some(volume)
}

/// The acts of a piece of work on what is in the tank, and its figures.
fn acts(
    out: &mut Outcome,
    typed: &Typed,
    work: Work,
    found: Content,
    aimed: &Aimed,
    marks: Marks,
) -> Vec<Act> {
    let mut acts = Vec::new();
    let crumb = Volume::new(1e-9);
    // A machine that meters wants plain water, and nobody pours half a packet.
    if work.concentrate > crumb && typed.measure().is_some_and(|measure| !measure.dispenser.steps()) {
        out.trouble("measure", What::NotByHand);
        return acts;
    }
    if work.drain > crumb {
        acts.push(Act::Drain(work.drain));
        out.answer.figure(names::STATION_DRAIN, Value::new(work.drain, Kind::Fill));
    }
    if work.water > crumb {
        acts.push(Act::Water(work.water));
        out.answer.figure(names::STATION_WATER, Value::new(work.water, Kind::Fill));
    }
    if work.concentrate > crumb {
        let rest = found.strength * (found.volume - work.drain);
        let ends = found.volume - work.drain + work.water + work.concentrate;
        let allowed = Window { low: aimed.allowed.low * ends - rest, high: aimed.allowed.high * ends - rest };
        let rounded = rounded(out, typed, work.concentrate, allowed, !aimed.window.is_point(), marks);
        acts.push(Act::Concentrate(work.concentrate, rounded));
        out.answer.figure(names::STATION_CONCENTRATE, Value::new(work.concentrate, Kind::Dose));
        if let Some(rounded) = rounded {
            out.answer.figure(names::STATION_COUNT, Value::plain(rounded.count, Kind::Count));
            out.answer.figure(names::STATION_ROUNDED, Value::new(rounded.dose, Kind::Dose));
        }
    }
    acts
}

/// An amount on the measure of Fill, where a mark is near it; a remark where none is.
fn rounded(
    out: &mut Outcome,
    typed: &Typed,
    dose: Volume,
    allowed: Window<Volume>,
    ranged: bool,
    marks: Marks,
) -> Option<Rounded> {
    let step = out.need::<Volume>(typed, Field::MeasureStep, marks)?;
    let rounded = near(dose, step, allowed, ranged);
    if let Err(coarse) = rounded {
        let remark = Remark::new("remark-measure-coarse", Weight::Warn);
        let remark = remark.value("rounded", Value::new(coarse.dose, Kind::Dose));
        out.answer.remark(remark.value("dose", Value::new(dose, Kind::Dose)));
    }
    rounded.ok()
}
