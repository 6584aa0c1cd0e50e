//! Which records refer to which: what is referred to is taken out of use, never away.

use super::super::action::Shelf;
use crate::site::{Record, Site};

/// A record that refers to another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Referrer {
    /// Its shelf.
    pub shelf: Shelf,
    /// What people call it.
    pub name: String,
}

/// The records of a site that refer to the one of this shelf with this id, shelf by shelf.
///
/// ```
/// use brimline::form::action::Shelf;
/// use brimline::form::site::references::referrers;
/// use brimline::site::demo;
/// let site = demo();
/// let floor = &site.areas[0].floor;
/// assert!(referrers(&site, Shelf::Floor, floor).iter().any(|one| one.shelf == Shelf::Area));
/// assert!(referrers(&site, Shelf::Area, &site.areas[0].id).is_empty());
/// ```
pub fn referrers(site: &Site, shelf: Shelf, id: &str) -> Vec<Referrer> {
    let mut out = Vec::new();
    collect(&mut out, Shelf::Area, &site.areas, |area| match shelf {
        Shelf::Machine => area.machine == id,
        Shelf::Product => area.product == id,
        Shelf::Floor => area.floor == id,
        _ => false,
    });
    collect(&mut out, Shelf::Floor, &site.floors, |floor| shelf == Shelf::Finish && floor.finish == id);
    collect(&mut out, Shelf::Trial, &site.trials, |trial| match shelf {
        Shelf::Product => trial.product == id,
        Shelf::Floor => trial.floor == id,
        _ => false,
    });
    collect(&mut out, Shelf::Standard, &site.standards, |standard| match shelf {
        Shelf::Product => standard.product == id,
        Shelf::Floor => standard.floor == id,
        Shelf::Standard => standard.replaces == id,
        Shelf::Machine => standard.left_out(id).is_some(),
        _ => false,
    });
    out
}

fn collect<T: Record>(out: &mut Vec<Referrer>, shelf: Shelf, all: &[T], refers: impl Fn(&T) -> bool) {
    let named = |one: &T| Referrer { shelf, name: one.name().to_owned() };
    out.extend(all.iter().filter(|one| refers(one)).map(named));
}
