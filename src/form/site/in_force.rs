//! What a device of a fill station shows: the standards in force, and nothing else.

use super::super::action::{Action, Line, Shelf};
use super::super::{Field, Typed};
use super::Act;
use super::asked::read_in;
use crate::site::Standing;

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
    out.site.standards.retain(|one| one.standing == Standing::InForce);
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
