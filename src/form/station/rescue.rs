//! Put right: too much, too little, forgotten, or the wrong product.

use super::top_up::after;
use super::{Act, Aimed, Done, Mishap, acts, aimed, barred, beside, instead, left_out, reading, volume_in};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::pairs::{self, Severity};
use crate::form::cautions::mixing::meet;
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::site::{Product, Record};
use crate::trade::formula;
use crate::trade::rescue::{
    Meeting, Remedy, Rescue, TOLERANCE, WrongProduct, forgotten, rescue, wrong_product,
};
use crate::trade::top_up::{Content, Work};
use crate::units::{Kind, Volume, VolumeFraction};

/// The name of the list of products.
pub const OTHER: &str = "station-other";

/// Works out how a tank is put right.
///
/// ```
/// use brimline::form::station::{Act, Mishap, rescue::work};
/// use brimline::form::Typed;
/// use brimline::number::Marks;
/// let mut typed = Typed::default();
/// typed.ask.station.mishap = Mishap::Forgotten;
/// assert_eq!(work(&typed, Marks::POINT).acts[0], Act::DrainAll);
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Done {
    let mut done = Done::default();
    let out = &mut done.outcome;
    let mishap = typed.ask.station.mishap;
    if mishap == Mishap::WrongProduct {
        // What two products do to each other stands before what a standard says of the machine.
        done.acts = other_product(out, typed);
        done.outcome.answer.remarks.extend(left_out(typed));
        if barred(typed) && done.acts.last() == Some(&Act::Rinse) {
            done.acts.push(Act::OtherMachine);
        }
        return done;
    }
    if let Some(done) = instead(typed, marks) {
        return done;
    }
    let Some(aimed) = aimed(out, typed, marks) else { return done };
    let Some(left) = volume_in(out, typed, Field::Left, aimed.tank, marks) else { return done };
    if left <= Volume::ZERO {
        out.trouble(Field::Left.name(), What::TankEmpty);
        return done;
    }
    done.acts = match mishap {
        Mishap::Amount => {
            let put_in = out.need::<Volume>(typed, Field::PutIn, marks);
            if put_in.is_some_and(|put_in| put_in > left) {
                out.trouble(Field::PutIn.name(), What::NoRoom);
                return done;
            }
            let Some(put_in) = put_in else { return done };
            mended(out, typed, Content { volume: left, strength: put_in.fraction_of(left) }, &aimed, marks)
        }
        Mishap::Reading => {
            let Some(reading) = reading::read(out, typed, marks) else { return done };
            mended(out, typed, Content { volume: left, strength: reading.strength }, &aimed, marks)
        }
        Mishap::Forgotten | Mishap::WrongProduct => forgotten_dose(out, typed, left, &aimed, marks),
    };
    done
}

fn mended(out: &mut Outcome, typed: &Typed, found: Content, aimed: &Aimed, marks: Marks) -> Vec<Act> {
    let plan = rescue(found, aimed.strength, aimed.tank, TOLERANCE);
    let work = plan.work();
    let given = [
        ("V", Value::new(found.volume, Kind::Fill)),
        ("r", Value::new(aimed.strength, Kind::Percent)),
        ("m", Value::new(found.strength, Kind::Percent)),
        ("T", Value::new(aimed.tank, Kind::Fill)),
    ];
    let drains = work.drain > Volume::ZERO;
    let (formula, result) = match plan {
        Rescue::Right => {
            out.answer.remark(
                Remark::new("remark-right-already", Weight::Assumed)
                    .value("strength", Value::new(found.strength, Kind::Percent)),
            );
            after(out, found);
            beside(out, typed, aimed, found.volume, marks);
            return vec![Act::Nothing];
        }
        Rescue::Weak(_) if drains => (&formula::RESCUE_ROOM, Value::new(work.drain, Kind::Fill)),
        Rescue::Weak(_) => (&formula::RESCUE_ADD, Value::new(work.concentrate, Kind::Dose)),
        Rescue::Strong(_) if drains => (&formula::RESCUE_DRAIN, Value::new(work.drain, Kind::Fill)),
        Rescue::Strong(_) => (&formula::RESCUE_WATER, Value::new(work.water, Kind::Fill)),
    };
    let given = if drains { &given[..] } else { &given[..3] };
    out.answer.step(formula, given, result);
    if drains {
        out.answer.remark(Remark::new("remark-drain-first", Weight::Warn));
    }
    let acts = acts(out, typed, work, found, aimed, marks);
    let ends = work.on(found);
    after(out, ends);
    beside(out, typed, aimed, ends.volume, marks);
    acts
}

/// Nobody remembers: read it, or drain it all.
fn forgotten_dose(out: &mut Outcome, typed: &Typed, left: Volume, aimed: &Aimed, marks: Marks) -> Vec<Act> {
    // A reading that is not typed yet is no mistake here: it only decides which way is offered.
    let can_read = reading::read(&mut Outcome::default(), typed, marks).is_some();
    let forgotten = forgotten(aimed.strength, can_read);
    let remark = Remark::new("remark-forgotten", Weight::Warn);
    let remark = remark.window("now", VolumeFraction::ZERO, forgotten.now.high, Kind::Percent);
    let twice = forgotten.if_dosed;
    out.answer.remark(remark.window("twice", twice.low, twice.high, Kind::Percent));
    beside(out, typed, aimed, left, marks);
    if forgotten.act == Remedy::ReadFirst {
        return vec![Act::Read];
    }
    let concentrate = aimed.strength * left;
    let work = Work { drain: Volume::ZERO, water: left - concentrate, concentrate };
    let empty = Content { volume: Volume::ZERO, strength: VolumeFraction::ZERO };
    let mut acts = acts(out, typed, work, empty, aimed, marks);
    after(out, Content { volume: left, strength: aimed.strength });
    acts.splice(0..0, [Act::DrainAll, Act::Rinse]);
    acts
}

/// The pairs that must never meet are asked first.
fn other_product(out: &mut Outcome, typed: &Typed) -> Vec<Act> {
    let products = &typed.site.products;
    let other = products.iter().find(|product| product.id() == typed.ask.station.other);
    let (Some(product), Some(other)) = (typed.product(), other) else {
        out.trouble(OTHER, What::NoOther);
        return Vec::new();
    };
    let meeting = meeting(out, product, other);
    let named = Remark::new("remark-wrong-product", Weight::Warn)
        .with("product", Fact::Text(product.name.clone()))
        .with("other", Fact::Text(other.name.clone()));
    out.answer.remark(named);
    match wrong_product(meeting) {
        WrongProduct::DrainAndRinse => vec![Act::DrainAll, Act::Rinse],
        WrongProduct::KeepAway => vec![Act::KeepAway],
    }
}

fn meeting(out: &mut Outcome, product: &Product, other: &Product) -> Meeting {
    match meet(product, other) {
        pairs::Meeting::NoPairListed => Meeting::NotListed,
        pairs::Meeting::Unknown => {
            out.answer.remark(Remark::new("remark-meeting-unknown", Weight::Warn));
            Meeting::Unknown
        }
        pairs::Meeting::Never(found) => {
            // Strong ones meet by the rows of mild ones as well, which say the same.
            let first = |at: usize| found[..at].iter().all(|one| one.happens != found[at].happens);
            for pair in (0..found.len()).filter(|at| first(*at)).map(|at| found[at]) {
                let remark = Remark::new("remark-meeting", Weight::Warn);
                let remark = remark.with("happens", Fact::Key(pair.happens.to_owned()));
                out.answer.remark(remark.with("act", Fact::Key(pair.act.to_owned())));
            }
            let worst = found.iter().map(|pair| pair.severity).max();
            if worst.is_some_and(|worst| worst > Severity::Spoils) { Meeting::Harms } else { Meeting::Spoils }
        }
    }
}
