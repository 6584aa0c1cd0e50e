//! What a device of a fill station shows: the standards in force, and nothing else.

use super::super::action::{Action, Line, Shelf};
use super::super::{Field, Typed};
use super::Act;
use super::asked::read_in;
use crate::coded::coded;
use crate::site::{Standard, Standing};

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

/// What was typed, held to the standards in force: only their floors are there, each with its own product.
/// Without a standard no floor is left.
///
/// ```
/// use brimline::form::{Typed, site::in_force::held_to_standards};
/// use brimline::site::{Standard, Standing};
/// let mut typed = Typed::default();
/// assert!(held_to_standards(&typed).site.floors.is_empty());
/// let standing = Standing::InForce;
/// typed.site.standards.push(Standard { floor: "wood".into(), product: "quat".into(), standing, ..Standard::default() });
/// let held = held_to_standards(&typed);
/// assert_eq!(held.floor().unwrap().id, "wood");
/// assert_eq!(held.product().unwrap().id, "quat");
/// ```
#[must_use]
pub fn held_to_standards(typed: &Typed) -> Typed {
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
    out
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
            | Self::StopRead => true,
            // A site that is signed by the key that the device is pinned to: nothing else is offered there.
            Self::Site(deed) => matches!(deed.act, Act::TakeSite(_)),
            _ => false,
        }
    }
}
