//! Adding and removing records of the site.

use super::Shelf;
use crate::form::site::references::referrers;
use crate::form::{Field, Typed};
use crate::site::{Area, Entry, Finish, Floor, Machine, Measure, Product, Record, Standard, Standing, Trial};
use crate::trade::porosity::Porosity;

/// An id that no record has and none refers to: an area whose floor was removed must not take up
/// with the next new one.
fn fresh_id<'a>(used: impl Iterator<Item = &'a str>) -> String {
    let numbers = used.filter_map(|id| id.strip_prefix('n')?.parse::<u32>().ok());
    format!("n{}", u64::from(numbers.max().unwrap_or(0)) + 1)
}

fn ids<T: Record>(all: &[T]) -> impl Iterator<Item = &str> {
    all.iter().map(Record::id)
}

/// Adds a blank record in the site's units and chooses it.
pub(in crate::form) fn add(typed: &mut Typed, shelf: Shelf) {
    let blank = |field: Field| {
        let fits =
            |code: &&&str| crate::units::unit(code).is_some_and(|unit| unit.system == Some(typed.system));
        let code = field.units().iter().find(fits).or_else(|| field.units().first());
        Entry::new("", code.copied().unwrap_or_default())
    };
    let site = &typed.site;
    match shelf {
        Shelf::Machine => {
            let machine = Machine {
                id: fresh_id(ids(&site.machines)),
                tank: blank(Field::Tank),
                least: blank(Field::Least),
                most: blank(Field::Most),
                vacuum: true,
                reuse: blank(Field::Reuse),
                path: blank(Field::Path),
                overlap: blank(Field::Overlap),
                speed: blank(Field::Speed),
                efficiency: blank(Field::Efficiency),
                settings: vec![blank(Field::Setting(0)); 3],
                recovery: blank(Field::Recovery),
                lane_least: blank(Field::LaneLeast),
                lane_most: blank(Field::LaneMost),
                ..Machine::default()
            };
            typed.ask.machine.clone_from(&machine.id);
            typed.site.machines.push(machine);
        }
        Shelf::Product => {
            let product = Product { id: fresh_id(ids(&site.products)), ..Product::default() };
            typed.ask.product.clone_from(&product.id);
            typed.site.products.push(product);
        }
        Shelf::Floor => {
            let (low, high) = Porosity::Sealed.usual_target();
            let floor = Floor {
                id: fresh_id(ids(&site.floors).chain(site.areas.iter().map(|area| area.floor.as_str()))),
                target_low: Entry::new(low.to_string(), "gal_us_per_1000ft2"),
                target_high: Entry::new(high.to_string(), "gal_us_per_1000ft2"),
                ..Floor::default()
            };
            typed.ask.floor.clone_from(&floor.id);
            typed.site.floors.push(floor);
        }
        Shelf::Measure => {
            let measure = Measure {
                id: fresh_id(ids(&site.measures)),
                step: blank(Field::MeasureStep),
                ..Measure::default()
            };
            typed.ask.measure.clone_from(&measure.id);
            typed.site.measures.push(measure);
        }
        Shelf::Area => {
            let area = Area {
                id: fresh_id(ids(&site.areas)),
                size: blank(Field::AreaSize(0)),
                lane: blank(Field::AreaLane(0)),
                floor: typed.floor().map(|floor| floor.id.clone()).unwrap_or_default(),
                included: true,
                ..Area::default()
            };
            typed.ask.site.area.clone_from(&area.id);
            typed.site.areas.push(area);
        }
        Shelf::Finish => {
            let finish = Finish {
                id: fresh_id(
                    ids(&site.finishes).chain(site.floors.iter().map(|floor| floor.finish.as_str())),
                ),
                coverage: blank(Field::FinishCoverage),
                ..Finish::default()
            };
            typed.ask.site.finish.clone_from(&finish.id);
            typed.site.finishes.push(finish);
        }
        Shelf::Trial => {
            let trial = Trial {
                id: fresh_id(ids(&site.trials)),
                floor: typed.ask.floor.clone(),
                product: typed.ask.product.clone(),
                ..Trial::default()
            };
            typed.ask.site.trial.clone_from(&trial.id);
            typed.site.trials.push(trial);
        }
        Shelf::Standard => {
            let standard = Standard {
                id: fresh_id(ids(&site.standards)),
                floor: typed.ask.floor.clone(),
                product: typed.ask.product.clone(),
                ..Standard::default()
            };
            typed.ask.site.standard.clone_from(&standard.id);
            typed.site.standards.push(standard);
        }
    }
}

/// `Neutral cleaner` becomes `Neutral cleaner 2`, that becomes `Neutral cleaner 3`: the first that no other has.
fn next_name(name: &str, used: &[&str]) -> String {
    let stem = name.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end();
    let mut number = 2_u32;
    loop {
        let next = format!("{stem} {number}");
        if !used.contains(&next.as_str()) {
            return next;
        }
        number += 1;
    }
}

/// The list of a shelf, whatever it holds: what is done with it and with the id of the chosen one.
macro_rules! on_shelf {
    ($typed:ident, $shelf:ident, $all:ident, $chosen:ident => $do:expr) => {
        match $shelf {
            Shelf::Machine => on_shelf!(@ $typed.site.machines, $typed.ask.machine, $all, $chosen => $do),
            Shelf::Product => on_shelf!(@ $typed.site.products, $typed.ask.product, $all, $chosen => $do),
            Shelf::Floor => on_shelf!(@ $typed.site.floors, $typed.ask.floor, $all, $chosen => $do),
            Shelf::Measure => on_shelf!(@ $typed.site.measures, $typed.ask.measure, $all, $chosen => $do),
            Shelf::Area => on_shelf!(@ $typed.site.areas, $typed.ask.site.area, $all, $chosen => $do),
            Shelf::Finish => on_shelf!(@ $typed.site.finishes, $typed.ask.site.finish, $all, $chosen => $do),
            Shelf::Trial => on_shelf!(@ $typed.site.trials, $typed.ask.site.trial, $all, $chosen => $do),
            Shelf::Standard => on_shelf!(@ $typed.site.standards, $typed.ask.site.standard, $all, $chosen => $do),
        }
    };
    (@ $list:expr, $id:expr, $all:ident, $chosen:ident => $do:expr) => {{
        let ($all, $chosen) = (&mut $list, &mut $id);
        $do
    }};
}

/// Copies a record under a new id and the next name, and chooses the copy. A copied standard is a draft.
pub(in crate::form) fn copy(typed: &mut Typed, shelf: Shelf, id: &str) -> Option<()> {
    on_shelf!(typed, shelf, all, chosen => {
        let mut copied = all.iter().find(|one| one.id == id)?.clone();
        copied.id = fresh_id(ids(all));
        let names: Vec<&str> = all.iter().map(|one| one.name.as_str()).collect();
        copied.name = next_name(&copied.name, &names);
        chosen.clone_from(&copied.id);
        all.push(copied);
    });
    if shelf == Shelf::Standard {
        let standard = typed.site.standards.last_mut()?;
        standard.standing = Standing::Draft;
        standard.version = 0;
        for text in
            [&mut standard.effective, &mut standard.published, &mut standard.replaces, &mut standard.proved]
        {
            text.clear();
        }
        standard.overrides.clear();
    }
    Some(())
}

/// Takes a record away that nothing refers to. The last one that a question needs stays, and so does a standard
/// that was published.
pub(in crate::form) fn discard(typed: &mut Typed, shelf: Shelf, id: &str) -> Option<()> {
    if !may_go(typed, shelf, id) {
        return None;
    }
    on_shelf!(typed, shelf, all, chosen => {
        all.retain(|one| one.id != id);
        if chosen == id {
            *chosen = all.first().map(|one| one.id.clone()).unwrap_or_default();
        }
    });
    Some(())
}

/// Whether a record may be taken away.
pub fn may_go(typed: &Typed, shelf: Shelf, id: &str) -> bool {
    let site = &typed.site;
    let last = match shelf {
        Shelf::Machine => site.machines.len() == 1,
        Shelf::Product => site.products.len() == 1,
        Shelf::Floor => site.floors.len() == 1,
        Shelf::Measure => site.measures.len() == 1,
        Shelf::Area | Shelf::Finish | Shelf::Trial | Shelf::Standard => false,
    };
    let published = |one: &Standard| one.id == id && one.standing != Standing::Draft;
    let published = shelf == Shelf::Standard && site.standards.iter().any(published);
    !last && !published && referrers(site, shelf, id).is_empty()
}

/// Takes a record out of use or back into it. Trials and standards are never in use in that sense.
pub(in crate::form) fn retire(typed: &mut Typed, shelf: Shelf, id: &str, retired: bool) -> Option<()> {
    fn find<'a, T: Record>(all: &'a mut [T], id: &str) -> Option<&'a mut T> {
        all.iter_mut().find(|one| one.id() == id)
    }
    let site = &mut typed.site;
    *match shelf {
        Shelf::Machine => &mut find(&mut site.machines, id)?.retired,
        Shelf::Product => &mut find(&mut site.products, id)?.retired,
        Shelf::Floor => &mut find(&mut site.floors, id)?.retired,
        Shelf::Measure => &mut find(&mut site.measures, id)?.retired,
        Shelf::Area => &mut find(&mut site.areas, id)?.retired,
        Shelf::Finish => &mut find(&mut site.finishes, id)?.retired,
        Shelf::Trial | Shelf::Standard => return None,
    } = retired;
    Some(())
}

/// Removes a record: the one at `index` for areas, the chosen one elsewhere.
pub(super) fn remove(typed: &mut Typed, shelf: Shelf, index: usize) {
    let chosen = match shelf {
        Shelf::Area => typed.site.areas.get(index).map(Record::id),
        _ => shelf.chosen(typed),
    };
    if let Some(id) = chosen.map(str::to_owned) {
        discard(typed, shelf, &id);
    }
}
