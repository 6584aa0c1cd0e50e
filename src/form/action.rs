//! What a person can do, and the one function that changes what was typed.

use super::{Field, Filling, Typed};
use crate::chemistry::family::Family;
use crate::chemistry::floor::Surface;
use crate::chemistry::foam::Foam;
use crate::chemistry::ghs::SignalWord;
use crate::site::{Area, Dispenser, Entry, Floor, Machine, Measure, Product, Record};
use crate::trade::governing::Aim;
use crate::trade::porosity::Porosity;
use crate::units::System;

/// A kind of record that can be chosen, added and removed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shelf {
    /// Machines.
    Machine,
    /// Products.
    Product,
    /// Floors.
    Floor,
    /// Measures.
    Measure,
    /// Areas.
    Area,
}

/// A line of text, as opposed to a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Line {
    /// The name of the machine asked about.
    MachineName,
    /// The name of the product asked about.
    ProductName,
    /// Its label.
    Label,
    /// Its H and P codes.
    Codes,
    /// The pH its maker prints.
    Ph,
    /// What its safety data sheet adds.
    Notes,
    /// The name of the floor asked about.
    FloorName,
    /// The name of the measure asked about.
    MeasureName,
    /// The name of an area, from 0.
    AreaName(usize),
}

impl Line {
    /// The place of its text.
    pub fn text_mut(self, typed: &mut Typed) -> Option<&mut String> {
        Some(match self {
            Self::MachineName => &mut typed.machine_mut()?.name,
            Self::ProductName => &mut typed.product_mut()?.name,
            Self::Label => &mut typed.product_mut()?.label,
            Self::Codes => &mut typed.product_mut()?.codes,
            Self::Ph => &mut typed.product_mut()?.ph,
            Self::Notes => &mut typed.product_mut()?.notes,
            Self::FloorName => &mut typed.floor_mut()?.name,
            Self::MeasureName => &mut typed.measure_mut()?.name,
            Self::AreaName(index) => &mut typed.site.areas.get_mut(index)?.name,
        })
    }
}

/// One thing that a person did.
#[derive(Clone, Debug, PartialEq)]
pub enum Action {
    /// Typed into a number field.
    Write(Field, String),
    /// Chose the unit of a number field, by its code.
    Unit(Field, String),
    /// Typed a line of text.
    Text(Line, String),
    /// Chose a record, by its id.
    Pick(Shelf, String),
    /// Added a blank record.
    Add(Shelf),
    /// Removed a record, from 0 for areas, the chosen one elsewhere.
    Remove(Shelf, usize),
    /// Moved an area one place up.
    MoveUp(usize),
    /// Chose the units.
    System(System),
    /// Chose how the tank is filled.
    Filling(Filling),
    /// Chose where in the label's range to aim.
    Aim(Aim),
    /// Chose a product's foam class.
    Foam(Foam),
    /// Chose a product's signal word.
    Signal(SignalWord),
    /// Said that a product is, or is not, of a family.
    Family(Family, bool),
    /// Said that a machine has, or has not, a vacuum.
    Vacuum(bool),
    /// Added a flow setting.
    AddSetting,
    /// Removed the last flow setting.
    DropSetting,
    /// Chose what a floor is made of.
    Surface(Surface),
    /// Chose a floor's porosity class, which brings its usual target.
    Porosity(Porosity),
    /// Chose how a measure is counted.
    Dispenser(Dispenser),
    /// Chose the floor of an area, by its id.
    AreaFloor(usize, String),
    /// Took an area into the shift, or out of it.
    Include(usize, bool),
    /// Read the foam warning.
    FoamRead,
    /// Put a whole state in place: the demo, an opened file, one step back.
    Replace(Box<Typed>),
}

/// What was typed, after one action. Nothing else changes it.
///
/// ```
/// use brimline::form::{Action, Typed, action::{Line, reduce}};
/// let typed = reduce(Typed::default(), Action::Text(Line::Label, "1:128".into()));
/// assert_eq!(typed.product().unwrap().label, "1:128");
/// ```
#[must_use]
pub fn reduce(mut typed: Typed, action: Action) -> Typed {
    // A warning that was read holds for one machine and one product, and for one person: a file that
    // is opened does not bring it along.
    let unread = matches!(
        action,
        Action::Pick(Shelf::Machine | Shelf::Product, _)
            | Action::Add(_)
            | Action::Remove(..)
            | Action::Foam(_)
            | Action::Vacuum(_)
            | Action::Replace(_)
    );
    change(&mut typed, action);
    typed.ask.foam_read &= !unread;
    typed
}

/// Carries an action out; where the record it is about does not exist, nothing changes.
fn change(typed: &mut Typed, action: Action) -> Option<()> {
    match action {
        Action::Write(field, text) => field.entry_mut(typed)?.text = text,
        Action::Unit(field, code) => field.entry_mut(typed)?.unit = code,
        Action::Text(line, text) => *line.text_mut(typed)? = text,
        Action::Pick(shelf, id) => *chosen(typed, shelf)? = id,
        Action::Add(shelf) => add(typed, shelf),
        Action::Remove(shelf, index) => remove(typed, shelf, index),
        Action::MoveUp(index) => {
            if index > 0 && index < typed.site.areas.len() {
                typed.site.areas.swap(index - 1, index);
            }
        }
        Action::System(system) => typed.system = system,
        Action::Filling(filling) => typed.ask.filling = filling,
        Action::Aim(aim) => typed.ask.aim = aim,
        Action::Foam(foam) => typed.product_mut()?.foam = foam,
        Action::Signal(signal) => typed.product_mut()?.signal = signal,
        Action::Family(family, is) => {
            let families = &mut typed.product_mut()?.families;
            families.retain(|one| *one != family);
            if is {
                families.push(family);
            }
        }
        Action::Vacuum(vacuum) => typed.machine_mut()?.vacuum = vacuum,
        Action::AddSetting => {
            let settings = &mut typed.machine_mut()?.settings;
            let unit = settings.last().map_or("gal_us_per_min", |last| last.unit.as_str()).to_owned();
            settings.push(Entry::new("", &unit));
        }
        Action::DropSetting => drop(typed.machine_mut()?.settings.pop()),
        Action::Surface(surface) => typed.floor_mut()?.surface = surface,
        Action::Porosity(porosity) => {
            let (low, high) = porosity.usual_target();
            let floor = typed.floor_mut()?;
            floor.porosity = porosity;
            floor.target_low = Entry::new(low.to_string(), "gal_us_per_1000ft2");
            floor.target_high = Entry::new(high.to_string(), "gal_us_per_1000ft2");
        }
        Action::Dispenser(dispenser) => typed.measure_mut()?.dispenser = dispenser,
        Action::AreaFloor(index, id) => typed.site.areas.get_mut(index)?.floor = id,
        Action::Include(index, included) => typed.site.areas.get_mut(index)?.included = included,
        Action::FoamRead => typed.ask.foam_read = true,
        Action::Replace(whole) => *typed = *whole,
    }
    Some(())
}

fn chosen(typed: &mut Typed, shelf: Shelf) -> Option<&mut String> {
    match shelf {
        Shelf::Machine => Some(&mut typed.ask.machine),
        Shelf::Product => Some(&mut typed.ask.product),
        Shelf::Floor => Some(&mut typed.ask.floor),
        Shelf::Measure => Some(&mut typed.ask.measure),
        Shelf::Area => None,
    }
}

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
fn add(typed: &mut Typed, shelf: Shelf) {
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
            let floor = Floor {
                id: fresh_id(ids(&site.floors).chain(site.areas.iter().map(|area| area.floor.as_str()))),
                name: String::new(),
                surface: Surface::FinishedVinyl,
                porosity: Porosity::Sealed,
                target_low: blank(Field::TargetLow),
                target_high: blank(Field::TargetHigh),
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
                floor: typed.floor().map(|floor| floor.id.clone()).unwrap_or_default(),
                included: true,
                ..Area::default()
            };
            typed.site.areas.push(area);
        }
    }
}

/// Removes a record. The last one of a shelf stays, since a question needs one; areas may all go.
fn remove(typed: &mut Typed, shelf: Shelf, index: usize) {
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
