//! Adding and removing records of the site.

use super::Shelf;
use crate::form::{Field, Typed};
use crate::site::{Area, Entry, Floor, Machine, Measure, Product, Record};
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
pub(super) fn add(typed: &mut Typed, shelf: Shelf) {
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
            typed.site.areas.push(area);
        }
    }
}

/// Removes a record. The last one of a shelf stays, since a question needs one; areas may all go.
pub(super) fn remove(typed: &mut Typed, shelf: Shelf, index: usize) {
    fn take<T: Record>(all: &mut Vec<T>, chosen: &str) {
        if all.len() > 1 {
            let index = all.iter().position(|record| record.id() == chosen).unwrap_or(0);
            all.remove(index);
        }
    }
    match shelf {
        Shelf::Machine => take(&mut typed.site.machines, &typed.ask.machine),
        Shelf::Product => take(&mut typed.site.products, &typed.ask.product),
        Shelf::Floor => take(&mut typed.site.floors, &typed.ask.floor),
        Shelf::Measure => take(&mut typed.site.measures, &typed.ask.measure),
        Shelf::Area => {
            if index < typed.site.areas.len() {
                typed.site.areas.remove(index);
            }
        }
    }
}
