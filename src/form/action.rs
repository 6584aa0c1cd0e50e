//! What a person can do, and the one function that changes what was typed.

mod line;
pub(crate) mod records;
mod shelf;

pub use line::{Line, StandardLine};
pub use shelf::Shelf;

use super::cautions::container::Holds;
use super::site::Deed;
use super::station::{Job, Method, Mishap, Rest};
use super::{Field, Filling, Typed};
use crate::chemistry::family::Family;
use crate::chemistry::floor::Surface;
use crate::chemistry::floor::thirst::{Joints, Texture};
use crate::chemistry::foam::Foam;
use crate::chemistry::ghs::SignalWord;
use crate::chemistry::ghs::mixture::Reserve;
use crate::site::{Area, Catch, Dispenser, Entry, Ingredient};
use crate::trade::alone::Around;
use crate::trade::governing::Aim;
use crate::trade::order::Place;
use crate::trade::porosity::Porosity;
use crate::trade::soil::Soil;
use crate::units::System;

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
    /// Chose the job at the fill station.
    Job(Job),
    /// Said how strong what is left in the tank is.
    Rest(Rest),
    /// Said what went wrong.
    Mishap(Mishap),
    /// Chose how the strength is read.
    Method(Method),
    /// Chose the product that was put in by mistake, by its id.
    Other(String),
    /// Chose where in the label's range to aim.
    Aim(Aim),
    /// Chose a product's foam class.
    Foam(Foam),
    /// Chose a product's signal word.
    Signal(SignalWord),
    /// Said what a product's sheet says of its acid or alkali reserve.
    Reserve(Reserve),
    /// Said that a product is, or is not, of a family.
    Family(Family, bool),
    /// Said that a machine has, or has not, a vacuum.
    Vacuum(bool),
    /// Added a flow setting.
    AddSetting,
    /// Removed the last flow setting.
    DropSetting,
    /// Said whether the sheet of the product lists every part with a hazard.
    Listed(bool),
    /// Added a part to the product asked about.
    AddPart,
    /// Removed a part, from 0.
    DropPart(usize),
    /// Added a catch test.
    AddCatch,
    /// Removed a catch test, from 0.
    DropCatch(usize),
    /// Put the flows of a calibration in the place of the machine's settings.
    TakeFlows(Vec<Entry>),
    /// Added a metering tip.
    AddTip,
    /// Removed the last metering tip.
    DropTip,
    /// Chose what a floor is made of.
    Surface(Surface),
    /// Said how a floor feels.
    Texture(Texture),
    /// Said what a floor's joints are.
    Joints(Joints),
    /// Chose a floor's porosity class, which brings its usual target.
    Porosity(Porosity),
    /// Chose how a measure is counted.
    Dispenser(Dispenser),
    /// Chose the floor of an area, by its id.
    AreaFloor(usize, String),
    /// Chose the product of an area, by its id; none for the one asked about.
    AreaProduct(usize, String),
    /// Chose the machine of an area, by its id; none for the one asked about.
    AreaMachine(usize, String),
    /// Said how dirty an area is.
    AreaSoil(usize, Soil),
    /// Said whether loose debris lies about in an area.
    AreaLoose(usize, bool),
    /// Said whether what a machine needs around it is there.
    AreaAround(usize, Around),
    /// Said that a machine works, or does not work, without anyone beside it.
    Unattended(bool),
    /// Said that a machine sweeps, or does not.
    Sweeps(bool),
    /// Chose the product that was in the tank before, by its id; none for an empty, rinsed tank.
    Before(String),
    /// Said what the container holds that a label is made for.
    Holds(Holds),
    /// Chose the product to compare with, by its id; none for no other.
    OtherProduct(String),
    /// Said where an area must stand.
    AreaPlace(usize, Place),
    /// Put the areas into another order, each by where it stands now.
    Order(Vec<usize>),
    /// Took an area into the shift, or out of it.
    Include(usize, bool),
    /// What a supervisor does.
    Site(Deed),
    /// Read what stands in the way of the amount.
    StopRead,
    /// Put a whole state in place: the demo, an opened file, one step back.
    Replace(Box<Typed>),
    /// Told the day, year-month-day: standards go by it.
    Today(String),
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
    // A warning that was read holds for one machine, product and floor, and for one person: a file that
    // is opened does not bring it along.
    let unread = matches!(
        action,
        Action::Pick(Shelf::Machine | Shelf::Product | Shelf::Floor | Shelf::Measure, _)
            | Action::Add(_)
            | Action::Remove(..)
            | Action::Foam(_)
            | Action::Vacuum(_)
            | Action::Family(..)
            | Action::Surface(_)
            | Action::AreaProduct(..)
            | Action::AreaMachine(..)
            | Action::Before(_)
            | Action::Text(
                Line::Codes | Line::Ph | Line::Label | Line::Standard | Line::Ratios | Line::PartCas(_),
                _
            )
            | Action::Dispenser(_)
            | Action::Write(
                Field::Minimum
                    | Field::MeasureTotal
                    | Field::Tip(_)
                    | Field::PartLow(_)
                    | Field::PartHigh(_)
                    | Field::FinishPhLow
                    | Field::FinishPhHigh,
                _
            )
            | Action::Site(_)
            | Action::Replace(_)
    );
    // What was in the tank was said of one machine; a file that is opened brings its own answer along.
    let machine = typed.ask.machine.clone();
    let opened = matches!(action, Action::Replace(_));
    let today = typed.ask.today.clone();
    change(&mut typed, action);
    if !opened && typed.ask.machine != machine {
        typed.ask.before.clear();
    }
    // Another day may have another standard.
    typed.ask.stop_read &= !unread && typed.ask.today == today;
    typed
}

/// Carries an action out; where the record it is about does not exist, nothing changes.
fn change(typed: &mut Typed, action: Action) -> Option<()> {
    match action {
        Action::Write(field, text) => field.entry_mut(typed)?.text = text,
        Action::Unit(field, code) => field.entry_mut(typed)?.unit = code,
        Action::Text(line, text) => *line.text_mut(typed)? = text,
        Action::Pick(shelf, id) => *chosen(typed, shelf) = id,
        Action::Add(shelf) => records::add(typed, shelf),
        Action::Remove(shelf, index) => records::remove(typed, shelf, index),
        Action::MoveUp(index) => {
            if index > 0 && index < typed.site.areas.len() {
                typed.site.areas.swap(index - 1, index);
            }
        }
        Action::System(system) => typed.system = system,
        Action::Filling(filling) => typed.ask.filling = filling,
        Action::Job(job) => typed.ask.station.job = job,
        Action::Rest(rest) => typed.ask.station.rest = rest,
        Action::Mishap(mishap) => typed.ask.station.mishap = mishap,
        Action::Method(method) => typed.ask.station.method = method,
        Action::Other(id) => typed.ask.station.other = id,
        Action::Aim(aim) => typed.ask.aim = aim,
        Action::Foam(foam) => typed.product_mut()?.foam = foam,
        Action::Reserve(reserve) => typed.product_mut()?.reserve = reserve,
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
        Action::Listed(listed) => typed.product_mut()?.listed = listed,
        Action::AddPart => typed.product_mut()?.parts.push(Ingredient::default()),
        Action::DropPart(index) => {
            let parts = &mut typed.product_mut()?.parts;
            if index < parts.len() {
                parts.remove(index);
            }
        }
        Action::AddCatch => {
            let tests = &mut typed.machine_mut()?.tests;
            let last = tests.last().cloned().unwrap_or_default();
            let caught = Entry::new("", &last.caught.unit);
            tests.push(Catch { caught, ..last });
        }
        Action::DropCatch(index) => {
            let tests = &mut typed.machine_mut()?.tests;
            if index < tests.len() {
                tests.remove(index);
            }
        }
        Action::TakeFlows(flows) => typed.machine_mut()?.settings = flows,
        Action::AddTip => {
            let tips = &mut typed.measure_mut()?.tips;
            let unit = tips.last().map_or("ml_per_min", |last| last.unit.as_str()).to_owned();
            tips.push(Entry::new("", &unit));
        }
        Action::DropTip => drop(typed.measure_mut()?.tips.pop()),
        Action::Surface(surface) => typed.floor_mut()?.surface = surface,
        Action::Texture(texture) => typed.floor_mut()?.texture = texture,
        Action::Joints(joints) => typed.floor_mut()?.joints = joints,
        Action::Porosity(porosity) => {
            let (low, high) = porosity.usual_target();
            let floor = typed.floor_mut()?;
            floor.porosity = porosity;
            floor.target_low = Entry::new(low.to_string(), "gal_us_per_1000ft2");
            floor.target_high = Entry::new(high.to_string(), "gal_us_per_1000ft2");
        }
        Action::Dispenser(dispenser) => typed.measure_mut()?.dispenser = dispenser,
        Action::AreaFloor(index, id) => typed.site.areas.get_mut(index)?.floor = id,
        Action::AreaProduct(index, id) => typed.site.areas.get_mut(index)?.product = id,
        Action::AreaMachine(index, id) => typed.site.areas.get_mut(index)?.machine = id,
        Action::AreaSoil(index, soil) => typed.site.areas.get_mut(index)?.soil = soil,
        Action::AreaLoose(index, loose) => typed.site.areas.get_mut(index)?.loose = loose,
        Action::AreaAround(index, around) => typed.site.areas.get_mut(index)?.around = around,
        Action::Unattended(unattended) => typed.machine_mut()?.unattended = unattended,
        Action::Sweeps(sweeps) => typed.machine_mut()?.sweeps = sweeps,
        Action::Before(id) => typed.ask.before = id,
        Action::Holds(holds) => typed.ask.holds = holds,
        Action::OtherProduct(id) => typed.ask.other_product = id,
        Action::AreaPlace(index, place) => typed.site.areas.get_mut(index)?.place = place,
        Action::Order(turns) => reorder(&mut typed.site.areas, turns),
        Action::Include(index, included) => typed.site.areas.get_mut(index)?.included = included,
        Action::Site(deed) => deed.carry_out(typed)?,
        Action::StopRead => typed.ask.stop_read = true,
        Action::Replace(whole) => {
            *typed = *whole;
            // Whether this device is set to its standards no file says.
            typed.ask.held = false;
        }
        Action::Today(today) => typed.ask.today = today,
    }
    Some(())
}

/// An order of something else changes nothing: no area is lost.
fn reorder(areas: &mut Vec<Area>, turns: Vec<usize>) {
    let ordered: Vec<Area> = turns.iter().filter_map(|turn| areas.get(*turn).cloned()).collect();
    let mut seen = turns;
    seen.sort_unstable();
    if seen.into_iter().eq(0..areas.len()) {
        *areas = ordered;
    }
}

fn chosen(typed: &mut Typed, shelf: Shelf) -> &mut String {
    match shelf {
        Shelf::Machine => &mut typed.ask.machine,
        Shelf::Product => &mut typed.ask.product,
        Shelf::Floor => &mut typed.ask.floor,
        Shelf::Measure => &mut typed.ask.measure,
        Shelf::Finish => &mut typed.ask.site.finish,
        Shelf::Trial => &mut typed.ask.site.trial,
        Shelf::Standard => &mut typed.ask.site.standard,
        Shelf::Area => &mut typed.ask.site.area,
    }
}
