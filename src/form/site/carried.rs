//! One fill to carry to another device: what a code on the wall opens.

use super::super::typed::{Ask, SCHEMA};
use super::super::{Filling, Typed};
use super::asked::asked;
use crate::document::shaped as document;
use crate::site::{Entry, Product, Record, Site, Standard};
use crate::trade::governing::Aim;
use crate::units::System;

document! {
    /// One fill by a standard: as much of a site as its dose and its cautions rest on.
    Carried {
        /// [`SCHEMA`] when it was written.
        schema: u32,
        /// The units that figures are shown in.
        system: System,
        /// The site, with the one machine, product, floor, measure and standard of the fill, and the floor's finish.
        site: Site,
        /// Where in a range to aim.
        aim: Aim,
        /// How full.
        level: Entry = Entry::new("", "percent"),
    }
}

/// The fill that [`asked`] asks about, and nothing else of the site. What neither the dose nor the cautions rest on,
/// prices, catch tests and the reasons of the standard, stays behind: a code on paper has little room.
///
/// ```
/// use brimline::form::{Typed, fill, names, site::carried::{carry, open}};
/// use brimline::number::Marks;
/// use brimline::site::Standard;
/// let standard = Standard { floor: "vinyl".into(), product: "neutral".into(), dilution: "1:64".into(), ..Standard::default() };
/// let there = open(carry(&Typed::default(), &standard, "walk-behind", "jug", 50));
/// assert_eq!(there.site.machines.len(), 1);
/// let dose = fill::work(&there, Marks::POINT).outcome.answer.get(names::FILL_DOSE).unwrap();
/// assert!((dose.si - 0.018_927_058_92 / 65.0).abs() < 1e-15); // 5 gal at 1 to 64
/// ```
pub fn carry(typed: &Typed, standard: &Standard, machine: &str, measure: &str, percent: u32) -> Carried {
    let whole = asked(typed, standard, machine, measure, percent);
    let floors = only(&whole.site.floors, &standard.floor);
    let finish = floors.first().map(|floor| floor.finish.clone()).unwrap_or_default();
    let mut site = Site {
        machines: only(&whole.site.machines, machine),
        products: only(&whole.site.products, &standard.product),
        measures: only(&whole.site.measures, measure),
        finishes: only(&whole.site.finishes, &finish),
        standards: whole.site.standards.iter().filter(|one| one.floor == standard.floor).cloned().collect(),
        floors,
        name: whole.site.name,
        emergency: whole.site.emergency,
        currency: whole.site.currency,
        ..Site::default()
    };
    for machine in &mut site.machines {
        machine.tests.clear();
    }
    for product in &mut site.products {
        let Product { container, price, lead, .. } = Product::default();
        (product.container, product.price, product.lead) = (container, price, lead);
    }
    for standard in &mut site.standards {
        standard.reason.clear();
        standard.overrides.clear();
        standard.leaves_out.retain(|one| one.machine == machine);
    }
    Carried { schema: SCHEMA, system: whole.system, site, aim: whole.ask.aim, level: whole.ask.level }
}

fn only<T: Record + Clone>(all: &[T], id: &str) -> Vec<T> {
    all.iter().filter(|one| one.id() == id).cloned().collect()
}

/// What was carried, as it is asked on the device that opens it; a warning has to be read there anew.
pub fn open(carried: Carried) -> Typed {
    let Carried { schema, system, site, aim, level } = carried;
    let first = |id: Option<&str>| id.unwrap_or_default().to_owned();
    let ask = Ask {
        machine: first(site.machines.first().map(Record::id)),
        product: first(site.products.first().map(Record::id)),
        floor: first(site.floors.first().map(Record::id)),
        measure: first(site.measures.first().map(Record::id)),
        level,
        filling: Filling::MadeUp,
        aim,
        refill: Entry::new("10", "min"),
        ..Ask::default()
    };
    Typed { schema, system, site, ask }.up_to_date()
}

/// The standard of the device's own site that is in force in place of the one that a link carries: a later version for
/// the same floor, or by the same name for a floor of the same name. None where the link is not out of date, or the
/// device knows nothing of it. What waits aside does not know the day, `today`.
///
/// ```
/// use brimline::form::{Typed, site::carried::{carry, open, outdated}};
/// use brimline::site::{Standard, Standing};
/// let of = |version| Standard {
///     floor: "vinyl".into(), product: "neutral".into(), dilution: "1:64".into(), standing: Standing::InForce, version,
///     ..Standard::default()
/// };
/// let there = open(carry(&Typed::default(), &of(1), "walk-behind", "jug", 100));
/// let mut here = Typed::default();
/// assert!(outdated(&here, &there, "2026-12-01").is_none());
/// here.site.standards.push(of(2));
/// assert_eq!(outdated(&here, &there, "2026-12-01").unwrap().version, 2);
/// ```
pub fn outdated<'a>(here: &'a Typed, carried: &Typed, today: &str) -> Option<&'a Standard> {
    let floor = carried.floor()?;
    // Its first day may be still to come where it is read.
    let theirs = carried.in_force_on(&floor.id, "")?;
    let same = |one: &str, other: &str| {
        let (one, other) = (one.trim().to_lowercase(), other.trim().to_lowercase());
        !one.is_empty() && one == other
    };
    let later =
        |id: &str| here.in_force_on(id, today).filter(|ours| ours.version.max(1) > theirs.version.max(1));
    later(&floor.id).or_else(|| {
        let floors = here.site.floors.iter().filter(|own| same(&own.name, &floor.name));
        let mut all = floors.filter_map(|own| later(&own.id));
        all.find(|ours| same(&ours.name, &theirs.name))
    })
}
