//! What may clean the floor with its new finish: every product in use at the low, the middle and the high end
//! of its label, what speaks for and against each, and which comes first.

mod judge;
mod strengths;

use crate::answer::Remark;
use crate::chemistry::floor::PhRange;
use crate::form::Typed;
use crate::form::site::asked::in_use;
use crate::number::Marks;
use crate::site::{Dispenser, Entry, Measure, Record};
use crate::trade::governing::Aim;
use crate::units::{AreaPrice, ArealMass, Duration, VolumeFraction};
use std::cmp::Ordering;

pub(super) use judge::judge;
pub(super) use strengths::Asked;

/// Whether a use solution suits a floor, its finish and the machines in use, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Suits {
    /// Every rule listed here is met.
    Fits,
    /// No rule forbids it, but something is not known.
    Unknown,
    /// It does not.
    DoesNotFit,
}

impl Suits {
    /// Every one.
    pub const ALL: [Self; 3] = [Self::Fits, Self::Unknown, Self::DoesNotFit];

    /// The word key, that of a floor's verdict in a table.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Fits => "floor-verdict-fits-short",
            Self::Unknown => "floor-verdict-unknown-short",
            Self::DoesNotFit => "floor-verdict-does-not-fit-short",
        }
    }
}

/// A product at one dilution.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// The id of the product.
    pub product: String,
    /// Its name.
    pub name: String,
    /// Where in the label's range, where the label gives one.
    pub aim: Option<Aim>,
    /// The dilution, written as labels are.
    pub dilution: String,
    /// Concentrate in the use solution, where it is a liquid that works out.
    pub strength: Option<VolumeFraction>,
    /// Whether it suits.
    pub suits: Suits,
    /// Why not, what is not known, and what else to mind.
    pub reasons: Vec<Remark>,
    /// The pH of the use solution, printed or estimated.
    pub ph: Option<PhRange>,
    /// Whether that pH is an estimate.
    pub ph_estimated: bool,
    /// What one cleaning leaves with the machine asked about, where it is known.
    pub residue: Option<ArealMass>,
    /// What its concentrate costs for an area, where it is priced.
    pub cost: Option<AreaPrice>,
    /// How long its label wants the floor wet.
    pub contact: Option<Duration>,
}

/// Every product in use, at every dilution looked at, on the floor asked about with the finish asked about: what
/// fits first, then what is not known, then what does not fit. Among equals what leaves the least, then what
/// costs the least, then the weakest; what is not known comes behind what is.
///
/// ```
/// use brimline::form::Typed;
/// use brimline::form::site::finish::candidates::{Suits, work};
/// use brimline::number::Marks;
/// let ranked = work(&Typed::default(), Marks::POINT);
/// assert!(ranked.is_sorted_by_key(|one| one.suits));
/// assert!(ranked.iter().all(|one| one.suits != Suits::Fits || one.ph.is_some()));
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Vec<Candidate> {
    let Some(floor) = typed.floor() else { return Vec::new() };
    let finish = typed.finish().map(|finish| finish.id.clone());
    let own = on(typed, &floor.id, finish.as_deref());
    let mut all: Vec<Candidate> = in_use(&typed.site.products)
        .flat_map(|product| {
            let asked = strengths::of(&own, product, marks);
            asked.into_iter().map(|asked| judge(&own, product, &asked, marks)).collect::<Vec<_>>()
        })
        .collect();
    all.sort_by(better);
    all
}

/// What was typed, asked about a floor with this finish on it, a full tank, and a measure that gives every amount:
/// no other rule of the question plays a part.
pub(super) fn on(typed: &Typed, floor: &str, finish: Option<&str>) -> Typed {
    let mut own = typed.without_areas();
    // What is in force now is not what might be.
    own.site.standards.clear();
    floor.clone_into(&mut own.ask.floor);
    if let Some(finish) = finish {
        for one in own.site.floors.iter_mut().filter(|one| one.id() == floor) {
            finish.clone_into(&mut one.finish);
        }
    }
    let measure = Measure {
        // No id begins so.
        id: "?".to_owned(),
        dispenser: Dispenser::Cup,
        step: Entry::new("1", "ml"),
        ..Measure::default()
    };
    own.ask.measure.clone_from(&measure.id);
    own.site.measures.push(measure);
    own.ask.level = Entry::new("100", "percent");
    own.ask.filling = crate::form::Filling::MadeUp;
    own.ask.before.clear();
    own
}

/// What comes first.
fn better(one: &Candidate, other: &Candidate) -> Ordering {
    fn least<T: PartialOrd>(one: Option<T>, other: Option<T>) -> Ordering {
        match (one, other) {
            (Some(one), Some(other)) => one.partial_cmp(&other).unwrap_or(Ordering::Equal),
            (one, other) => other.is_some().cmp(&one.is_some()),
        }
    }
    one.suits
        .cmp(&other.suits)
        .then_with(|| least(one.residue, other.residue))
        .then_with(|| least(one.cost, other.cost))
        .then_with(|| least(one.strength, other.strength))
}
