//! Adding and removing records of the site.

use super::Shelf;
use crate::form::site::references::referrers;
use crate::form::{Field, Typed};
use crate::site::{Area, Entry, Floor, Machine, Measure, Product, Record, Standard, Standing};
use crate::trade::porosity::Porosity;

/// An id that no record has and none refers to: an area whose floor was removed must not take up
/// with the next new one.
pub(in crate::form) fn fresh_id<'a>(used: impl Iterator<Item = &'a str>) -> String {
    let numbers = used.filter_map(|id| id.strip_prefix('n')?.parse::<u32>().ok());
    format!("n{}", u64::from(numbers.max().unwrap_or(0)) + 1)
}

pub(in crate::form) fn ids<T: Record>(all: &[T]) -> impl Iterator<Item = &str> {
    all.iter().map(Record::id)
}

/// An empty number in the units that the site is shown in.
pub(in crate::form) fn blank(typed: &Typed, field: Field) -> Entry {
    let fits = |code: &&&str| crate::units::unit(code).is_some_and(|unit| unit.system == Some(typed.system));
    let code = field.units().iter().find(fits).or_else(|| field.units().first());
    Entry::new("", code.copied().unwrap_or_default())
}

/// Adds a blank record in the site's units and chooses it.
pub(super) fn add(typed: &mut Typed, shelf: Shelf) {
    let blank = |field: Field| blank(typed, field);
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
        // Site adds these.
        Shelf::Finish | Shelf::Trial | Shelf::Standard => {}
    }
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

/// Removes a record: the one at `index` for areas, the chosen one elsewhere.
pub(super) fn remove(typed: &mut Typed, shelf: Shelf, index: usize) {
    let chosen = match shelf {
        Shelf::Area => typed.site.areas.get(index).map(Record::id),
        _ => shelf.chosen(typed),
    };
    let Some(id) = chosen.map(str::to_owned).filter(|id| may_go(typed, shelf, id)) else { return };
    let site = &mut typed.site;
    match shelf {
        Shelf::Machine => site.machines.retain(|one| one.id != id),
        Shelf::Product => site.products.retain(|one| one.id != id),
        Shelf::Floor => site.floors.retain(|one| one.id != id),
        Shelf::Measure => site.measures.retain(|one| one.id != id),
        Shelf::Area => site.areas.retain(|one| one.id != id),
        Shelf::Finish | Shelf::Trial | Shelf::Standard => {}
    }
}
