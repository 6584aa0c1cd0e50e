//! Judging an answer.

use super::exercise::{Amount, DIGITS, Exercise, Key};
use super::road::{Harm, Led, Way};
use crate::error::Mistake;
use crate::number::{self, Marks, NumberMistake};
use crate::trade::rescue::TOLERANCE;
use crate::units::unit;

/// What a person answered.
#[derive(Clone, Copy, Debug)]
pub enum Reply<'a> {
    /// A number as typed, and the code of the unit beside it.
    Number {
        /// What was typed.
        text: &'a str,
        /// The code of its unit; "one" for plain numbers.
        unit: &'a str,
    },
    /// What was chosen, in the order in which it was; from 0.
    Chosen(&'a [usize]),
}

/// What came of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Verdict {
    /// Right, to three digits.
    Right,
    /// Right for the measure: what rounds to it.
    Rounded,
    /// Wrong.
    Wrong {
        /// The road that leads there, where it is a usual one.
        way: Option<Way>,
        /// What it could do.
        harm: Option<Harm>,
    },
    /// Nothing that could be judged; it counts as no try.
    NotRead(Mistake),
    /// Nothing, or less: no amount that is asked for. It counts as no try.
    NotAbove,
}

impl Verdict {
    /// Whether it counts as right.
    pub fn is_right(self) -> bool {
        matches!(self, Self::Right | Self::Rounded)
    }
}

/// Judges an answer.
///
/// An amount is right where it is no further from the key than [`Amount::within`], and where it is what the measure
/// gives; where it is not, it is told as the nearest road no further from it than that. More product than the label
/// allows is told whatever the road.
///
/// * `marks`: the reader's decimal mark.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::practice::{Draw, Level, Ready, Reply, Stock, Topic, Verdict, judge, make};
/// let ready = Ready::of(&Stock::default());
/// let exercise = make(Topic::Units, Level::First, &ready, &mut Draw::new(3)).unwrap();
/// let reply = Reply::Number { text: "a lot", unit: "ml" };
/// assert!(matches!(judge(&exercise, reply, Marks::POINT), Verdict::NotRead(_)));
/// ```
pub fn judge(exercise: &Exercise, reply: Reply, marks: Marks) -> Verdict {
    match (&exercise.key, reply) {
        (Key::Amount(key), Reply::Number { text, unit }) => match read(key, text, unit, marks) {
            Ok(si) if si <= 0.0 => Verdict::NotAbove,
            Ok(si) => amount(exercise, key, si, unit),
            Err(mistake) => Verdict::NotRead(mistake),
        },
        (Key::Choice { right, options }, Reply::Chosen(&[chosen])) if chosen < options.len() => {
            chosen_one(exercise, chosen, *right)
        }
        (Key::Several { right, options }, Reply::Chosen(chosen)) if holds(chosen, options.len()) => {
            several(exercise, chosen, right)
        }
        (Key::Order { right, options }, Reply::Chosen(chosen))
            if chosen.len() == options.len() && holds(chosen, options.len()) =>
        {
            ordered(exercise, chosen, right)
        }
        _ => Verdict::NotRead(Mistake::Missing),
    }
}

/// Whether something was chosen, each at most once, and all of it is there to choose.
fn holds(chosen: &[usize], count: usize) -> bool {
    !chosen.is_empty()
        && chosen.iter().enumerate().all(|(at, one)| *one < count && !chosen[..at].contains(one))
}

fn read(key: &Amount, text: &str, code: &str, marks: Marks) -> Result<f64, Mistake> {
    let (asked, given) = (unit(key.unit).ok_or(Mistake::Unit)?, unit(code).ok_or(Mistake::Unit)?);
    if asked.dimension != given.dimension {
        return Err(Mistake::Unit);
    }
    // "12 gal" in a field of gallons says it twice.
    let text = text.trim();
    let bare = text.strip_suffix(given.symbol).filter(|bare| !bare.trim().is_empty()).unwrap_or(text);
    let value = number::read(bare, marks)?;
    if value.is_finite() { Ok(given.to_si(value)) } else { Err(Mistake::Number(NumberMistake::NotANumber)) }
}

/// What the conversion to SI units may round away.
const CRUMB: f64 = 1e-9;

fn amount(exercise: &Exercise, key: &Amount, si: f64, code: &str) -> Verdict {
    let off = (si - key.si).abs();
    let crumb = key.si.abs() * CRUMB;
    let given = exercise.roads.iter().find(|road| matches!(road.led, Led::In(unit) if unit == code));
    if let Some(road) = given.filter(|_| off <= key.within + crumb) {
        return Verdict::Wrong { way: Some(road.way), harm: road.harm };
    }
    if off <= (key.si * DIGITS).min(key.within) + crumb {
        return Verdict::Right;
    }
    if off <= key.within + crumb || key.poured.is_some_and(|poured| poured.is(si)) {
        return Verdict::Rounded;
    }
    let mut nearest: Option<(f64, Way)> = None;
    for road in &exercise.roads {
        let Led::To(there) = road.led else { continue };
        let off = (si - there).abs();
        // A road to a small amount is as narrow as the amount: what counts for the key is no measure of it.
        let near = key.within.min(there * TOLERANCE) + there * CRUMB;
        if off <= near && nearest.is_none_or(|(before, _)| off < before) {
            nearest = Some((off, road.way));
        }
    }
    let over = exercise.most.is_some_and(|most| si > most * (1.0 + CRUMB) + key.within);
    Verdict::Wrong { way: nearest.map(|(_, way)| way), harm: over.then_some(Harm::OverLabel) }
}

fn chosen_one(exercise: &Exercise, chosen: usize, right: usize) -> Verdict {
    if chosen == right {
        return Verdict::Right;
    }
    by(exercise, |led| *led == Led::Choice(chosen))
}

fn several(exercise: &Exercise, chosen: &[usize], right: &[usize]) -> Verdict {
    let same = chosen.len() == right.len() && right.iter().all(|one| chosen.contains(one));
    if same {
        return Verdict::Right;
    }
    by(exercise, |led| match led {
        Led::Lacks(one) => !chosen.contains(one),
        Led::Has(one) => chosen.contains(one),
        _ => false,
    })
}

fn ordered(exercise: &Exercise, chosen: &[usize], right: &[usize]) -> Verdict {
    if chosen == right {
        return Verdict::Right;
    }
    let place = |one: &usize| chosen.iter().position(|other| other == one);
    by(exercise, |led| matches!(led, Led::After(first, second) if place(first) > place(second)))
}

/// Wrong, by the first road that was taken: they stand with what hurts most first.
fn by(exercise: &Exercise, taken: impl Fn(&Led) -> bool) -> Verdict {
    let road = exercise.roads.iter().find(|road| taken(&road.led));
    Verdict::Wrong { way: road.map(|road| road.way), harm: road.and_then(|road| road.harm) }
}
