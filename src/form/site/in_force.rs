//! What a device of a fill station shows: the standards in force, and nothing else.

use super::super::action::{Action, Line, Shelf};
use super::super::rules::active;
use super::super::station::Method;
use super::super::{Field, Outcome, Trouble, Typed, What, fill};
use super::Act;
use super::asked::{in_use, read_in};
use crate::coded::coded;
use crate::number::Marks;
use crate::site::{Measure, Standard, Standing};

coded! {
    /// Where a standard stands on the day of the question.
    #[derive(Default)]
    Phase {
        /// Being written; nobody goes by it.
        #[default]
        Draft = "draft",
        /// Published; its first day is still to come.
        Waits = "waits",
        /// What everybody goes by.
        InForce = "in_force",
        /// Another one took its place.
        Replaced = "replaced",
    }
}

/// Where a standard stands on the day of the question.
///
/// ```
/// use brimline::form::{Typed, site::in_force::{Phase, phase}};
/// use brimline::site::{Standard, Standing};
/// let mut typed = Typed::default();
/// let one = Standard { floor: "wood".into(), standing: Standing::InForce, effective: "2026-03-01".into(), ..Standard::default() };
/// typed.site.standards.push(one.clone());
/// typed.ask.today = "2026-02-28".into();
/// assert_eq!(phase(&typed, &one), Phase::Waits);
/// typed.ask.today = "2026-03-01".into();
/// assert_eq!(phase(&typed, &one), Phase::InForce);
/// ```
pub fn phase(typed: &Typed, standard: &Standard) -> Phase {
    match standard.standing {
        Standing::Draft => Phase::Draft,
        Standing::InForce if !standard.has_begun(&typed.ask.today) => Phase::Waits,
        Standing::InForce if typed.in_force(&standard.floor).is_some_and(|one| one.id == standard.id) => {
            Phase::InForce
        }
        Standing::InForce | Standing::Replaced => Phase::Replaced,
    }
}

/// The standard that takes the place of one that holds or waits, where it is published already and its first day is
/// still to come; of several the first.
///
/// ```
/// use brimline::form::{Typed, site::in_force::next};
/// use brimline::site::{Standard, Standing};
/// let of = |version, effective: &str| Standard {
///     id: format!("s{version}"), floor: "wood".into(), standing: Standing::InForce, version,
///     effective: effective.into(), ..Standard::default()
/// };
/// let mut typed = Typed::default();
/// typed.site.standards = vec![of(1, "2026-03-01"), of(2, "2026-12-02")];
/// typed.ask.today = "2026-11-30".into();
/// assert_eq!(next(&typed, &typed.site.standards[0]).unwrap().effective, "2026-12-02");
/// assert_eq!(next(&typed, &typed.site.standards[1]), None);
/// ```
pub fn next<'a>(typed: &'a Typed, standard: &Standard) -> Option<&'a Standard> {
    if !matches!(phase(typed, standard), Phase::InForce | Phase::Waits) {
        return None;
    }
    let waits = |one: &&Standard| {
        one.floor == standard.floor
            && one.id != standard.id
            && one.rank() > standard.rank()
            && phase(typed, one) == Phase::Waits
    };
    typed.site.standards.iter().filter(waits).min_by_key(|one| one.rank())
}

/// What was typed, held to the standards in force: only their floors are there, each with its own product.
/// Without a standard no floor is left. A measure whose figures are missing gives way to one that serves, and a reading
/// that nobody could count there to one that can be typed in.
///
/// ```
/// use brimline::form::{Typed, site::in_force::held_to_standards};
/// use brimline::number::Marks;
/// use brimline::site::{Standard, Standing};
/// let mut typed = Typed::default();
/// assert!(held_to_standards(&typed, Marks::POINT).site.floors.is_empty());
/// let standing = Standing::InForce;
/// typed.site.standards.push(Standard { floor: "wood".into(), product: "quat".into(), standing, ..Standard::default() });
/// let held = held_to_standards(&typed, Marks::POINT);
/// assert_eq!(held.floor().unwrap().id, "wood");
/// assert_eq!(held.product().unwrap().id, "quat");
/// ```
#[must_use]
pub fn held_to_standards(typed: &Typed, marks: Marks) -> Typed {
    let mut out = typed.clone();
    out.ask.held = true;
    out.site.standards.retain(|one| phase(typed, one) == Phase::InForce);
    let standards = &out.site.standards;
    out.site.floors.retain(|floor| standards.iter().any(|one| one.floor == floor.id));
    if let Some(floor) = out.floor().map(|floor| floor.id.clone()) {
        let product = out.in_force(&floor).map(|one| one.product.clone()).unwrap_or_default();
        // What "oz/gal" on a label means must not turn with a switch.
        out.system = out.in_force(&floor).map_or(out.system, |one| read_in(&out, one));
        out.ask.floor = floor;
        out.ask.product = product;
    }
    let lacking = lacking(&out, marks);
    let serves = |id: &str| lacking.iter().all(|one| one.measure != id);
    if out.measure().is_some_and(|one| !serves(&one.id)) {
        let other = in_use(&out.site.measures).find(|one| serves(&one.id)).map(|one| one.id.clone());
        out.ask.measure = other.unwrap_or(out.ask.measure);
    }
    if out.ask.station.method.counts_active() && uncounted(&out, marks).is_some() {
        let other = Method::ALL.iter().find(|method| !method.counts_active());
        out.ask.station.method = other.copied().unwrap_or(out.ask.station.method);
    }
    out
}

/// Why no reading can count the active substance of the product asked about: what is missing or wrong in its record.
///
/// ```
/// use brimline::form::{Action, Field, Typed, action::reduce, site::in_force::uncounted};
/// use brimline::number::Marks;
/// assert_eq!(uncounted(&Typed::default(), Marks::POINT).unwrap().name, "product-active");
/// let known = reduce(Typed::default(), Action::Write(Field::Active, "5".into()));
/// let known = reduce(known, Action::Unit(Field::Active, "percent_wv".into()));
/// assert!(uncounted(&known, Marks::POINT).is_none());
/// ```
pub fn uncounted(typed: &Typed, marks: Marks) -> Option<Trouble> {
    let mut out = Outcome::default();
    active(&mut out, typed, marks);
    out.troubles.into_iter().next()
}

/// A measure that cannot be used for the question before somebody fills in what it lacks.
#[derive(Clone, Debug, PartialEq)]
pub struct Lacking {
    /// The id of the measure.
    pub measure: String,
    /// What people call it.
    pub name: String,
    /// What is missing or wrong.
    pub trouble: Trouble,
}

/// The measures in use whose figures are missing or do not read, for the machine asked about.
///
/// ```
/// use brimline::form::{Typed, site::in_force::lacking};
/// use brimline::number::Marks;
/// let lacking = lacking(&Typed::default(), Marks::POINT); // its machine has no bottle of its own
/// let lacks: Vec<&str> = lacking.iter().map(|one| one.trouble.name.as_str()).collect();
/// assert_eq!(lacks, ["product-density", "machine-ratios"]); // the scale asks what a litre weighs
/// ```
pub fn lacking(typed: &Typed, marks: Marks) -> Vec<Lacking> {
    let mut own = typed.without_areas();
    let mut troubles = |measure: &Measure| {
        own.ask.measure.clone_from(&measure.id);
        fill::unsure(&own, marks).outcome.troubles
    };
    let all: Vec<(&Measure, Vec<Trouble>)> =
        in_use(&typed.site.measures).map(|measure| (measure, troubles(measure))).collect();
    // What every measure lacks is no reason to choose another one.
    let of_measure = |one: &Trouble| {
        matches!(one.what, What::Number(_) | What::Ratios | What::NoTip | What::AboveTotal)
            && (one.name.starts_with("measure-")
                || one.name == fill::RATIOS
                || all.iter().any(|(_, others)| !others.contains(one)))
    };
    let of = |(measure, troubles): &(&Measure, Vec<Trouble>)| {
        let trouble = troubles.iter().find(|one| of_measure(one))?.clone();
        Some(Lacking { measure: measure.id.clone(), name: measure.name.clone(), trouble })
    };
    all.iter().filter_map(of).collect()
}

/// What chooses a carried fill on a device, where that goes by the same version of the same standard and has the
/// machine and the measure; none elsewhere.
///
/// ```
/// use brimline::form::{Typed, site::in_force::choosing};
/// use brimline::site::{Standard, Standing};
/// let mut here = Typed::default();
/// assert!(choosing(&here, &here).is_none()); // no standard is in force
/// let standing = Standing::InForce;
/// let standard = Standard { floor: "vinyl".into(), product: "neutral".into(), dilution: "1:64".into(), standing, ..Standard::default() };
/// here.site.standards.push(standard);
/// let mut other = here.clone();
/// assert!(choosing(&here, &other).is_some());
/// other.site.standards[0].dilution = "1:20".into();
/// assert!(choosing(&here, &other).is_none());
/// ```
pub fn choosing(here: &Typed, carried: &Typed) -> Option<[Action; 3]> {
    let (floor, machine, measure) = (carried.floor()?, carried.machine()?, carried.measure()?);
    let (ours, theirs) = (here.in_force(&floor.id)?, carried.in_force(&floor.id)?);
    let same =
        ours.product == theirs.product && ours.dilution == theirs.dilution && ours.version == theirs.version;
    let has = here.site.machines.iter().any(|one| one.id == machine.id)
        && here.site.measures.iter().any(|one| one.id == measure.id);
    let pick = |shelf: Shelf, id: &str| Action::Pick(shelf, id.to_owned());
    (same && has).then(|| {
        [pick(Shelf::Floor, &floor.id), pick(Shelf::Machine, &machine.id), pick(Shelf::Measure, &measure.id)]
    })
}

impl Action {
    /// Whether an operator may do it on a device that is set to its standards: ask, read and measure, but change
    /// no record.
    pub fn is_asking(&self) -> bool {
        match self {
            Self::Write(field, _) | Self::Unit(field, _) => {
                *field == Field::Level || Field::STATION.iter().any(|(one, _)| one == field)
            }
            Self::Text(line, _) => *line == Line::Blocks,
            Self::Pick(kind, _) => matches!(kind, Shelf::Machine | Shelf::Floor | Shelf::Measure),
            Self::Filling(_)
            | Self::Job(_)
            | Self::Rest(_)
            | Self::Mishap(_)
            | Self::Method(_)
            | Self::Other(_)
            | Self::Aim(_)
            | Self::Before(_)
            | Self::StopRead
            | Self::Today(_) => true,
            // A site that is signed by the key that the device is pinned to: nothing else is offered there.
            Self::Site(deed) => matches!(deed.act, Act::TakeSite(_)),
            _ => false,
        }
    }
}
