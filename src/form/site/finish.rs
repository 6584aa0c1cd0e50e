//! A new finish, step by step: strip, rinse and coat, what may clean it, and trial patches of that.

pub mod candidates;
mod coats;
pub mod dilution;
mod machines;
mod strip;
pub mod trial;

use super::super::{Field, Outcome, Typed, What, names};
use crate::answer::{Remark, Value, Weight};
use crate::chemistry::rinse::{Rinsed, rinsed};
use crate::number::Marks;
use crate::site::{Product, Record};
use crate::trade::calendar::Moment;
use crate::trade::finish::laid_on;
use crate::trade::formula;
use crate::trade::governing::Aim;
use crate::units::{ApplicationRate, Area, Duration, Kind, Plain, Quantity};

pub use strip::{DILUTION as STRIP_DILUTION, STRIPPER};

/// The name of the field with the day of the first coat.
pub const FIRST_COAT: &str = "first-coat";
/// The name of the field with its time.
pub const FIRST_COAT_AT: &str = "first-coat-at";

/// A time of the work: counted from the first coat, and by the clock on the wall where that was typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct When {
    /// After the first coat.
    pub after: Duration,
    /// By the clock.
    pub at: Option<Moment>,
}

/// One coat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coat {
    /// The soonest that it may go on.
    pub from: When,
    /// When to count on it.
    pub to: When,
}

/// What the first three steps show.
#[derive(Clone, Debug)]
pub struct Finishing {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// The coats, in order.
    pub coats: Vec<Coat>,
    /// Whether the drying is an estimate, and not what the label says.
    pub estimated: bool,
    /// The first wet scrub, where the wait before it is known.
    pub scrub: Option<When>,
    /// What the last rinse says.
    pub rinsed: Rinsed,
}

/// What a place in a label's range is called, as a word key.
pub const fn end_key(aim: Aim) -> &'static str {
    match aim {
        Aim::Low => "range-low",
        Aim::Middle => "range-middle",
        Aim::High => "range-high",
    }
}

/// The stripper: the one chosen, else the product asked about; none where the chosen one is gone.
pub fn stripper(typed: &Typed) -> Option<&Product> {
    match typed.ask.site.stripper.as_str() {
        "" => typed.product(),
        id => typed.site.products.iter().find(|product| product.id() == id),
    }
}

/// Works out what the finish, the stripping, the rinse and the coats take.
///
/// Figures: [`names`] with `finish.`; each as far as what it needs is typed.
///
/// ```
/// use brimline::form::{Action, Field, Typed, action::{Shelf, reduce}, names, site::{Act, finish::work}};
/// use brimline::number::Marks;
/// let typed = [
///     Act::Add(Shelf::Finish).action(),
///     Action::Write(Field::FinishCoats, "4".into()),
///     Action::Write(Field::FinishCoverage, "2000".into()),
///     Action::Write(Field::CoatArea, "6000".into()),
/// ];
/// let typed = typed.into_iter().fold(Typed::default(), reduce);
/// let volume = work(&typed, Marks::POINT).outcome.answer.get(names::FINISH_VOLUME).unwrap().si;
/// assert!((volume - 12.0 * 0.003_785_411_784).abs() < 1e-12); // 12 gal
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Finishing {
    let mut found = Finishing {
        outcome: Outcome::default(),
        coats: Vec::new(),
        estimated: false,
        scrub: None,
        rinsed: Rinsed::Unknown,
    };
    let out = &mut found.outcome;
    window(out, typed, marks);
    let area = out.may::<Area>(typed, Field::CoatArea, marks).flatten();
    strip::note(out, typed, area, marks);
    found.rinsed = rinse(out, typed, area, marks);
    coats::note(&mut found, typed, area, marks);
    found
}

/// The finish's own pH window, where it is typed.
fn window(out: &mut Outcome, typed: &Typed, marks: Marks) {
    let low = out.may::<Plain>(typed, Field::FinishPhLow, marks);
    let high = out.may::<Plain>(typed, Field::FinishPhHigh, marks);
    match (low, high) {
        (Some(Some(low)), Some(Some(high))) if low > high => {
            out.trouble(Field::FinishPhLow.name(), What::LeastAboveMost);
        }
        (Some(None), Some(None)) => {
            out.answer.remark(Remark::new("remark-finish-ph-unknown", Weight::Warn));
        }
        (Some(None), Some(Some(_))) | (Some(Some(_)), Some(None)) => {
            out.answer.remark(Remark::new("remark-finish-ph-half", Weight::Assumed));
        }
        _ => {}
    }
}

/// The water of a rinse, and what its pH says.
fn rinse(out: &mut Outcome, typed: &Typed, area: Option<Area>, marks: Marks) -> Rinsed {
    // The rate is read and told where the floor is stripped.
    let rate = Field::StripRate
        .entry(typed)
        .and_then(|entry| entry.read::<ApplicationRate>(Field::StripRate.limit(), marks).ok());
    if let (Some(rate), Some(area)) = (rate, area) {
        let water = Value::new(laid_on(rate, area), Kind::Fill);
        out.answer.figure(names::FINISH_RINSE, water);
        out.answer.remark(Remark::new("remark-rinse-rate", Weight::Assumed));
    }
    let reading = out.may::<Plain>(typed, Field::RinsePh, marks).flatten();
    match out.need::<Plain>(typed, Field::TapPh, marks) {
        Some(tap) => rinsed(reading.map(Plain::si), tap.si()),
        None => Rinsed::Unknown,
    }
}

/// A formula with a floor area in it, noted with its result.
fn laid(out: &mut Outcome, rate: ApplicationRate, area: Area) -> Value {
    let solution = Value::new(laid_on(rate, area), Kind::Fill);
    let given = [("a", Value::new(rate, Kind::Rate)), ("A", Value::new(area, Kind::Area))];
    out.answer.step(&formula::LAID_ON, &given, solution);
    solution
}
