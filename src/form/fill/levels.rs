//! The same fill at every level that a tank's marks show.

use super::unsure;
use crate::answer::{Answer, Value};
use crate::form::{Field, Typed, names};
use crate::number::{self, Marks};
use crate::site::Entry;
use crate::units::{Kind, Quantity, Volume};

/// The most rows after the quarters.
const MOST: f64 = 24.0;

/// One level.
#[derive(Clone, Debug, PartialEq)]
pub struct Level {
    /// The level as it is marked on the tank.
    pub entry: Entry,
    /// Concentrate before rounding.
    pub dose: Value,
    /// Concentrate in whole marks, strokes or caps.
    pub rounded: Option<Value>,
    /// How many of them.
    pub count: Option<Value>,
    /// Water.
    pub water: Value,
}

/// A quarter, a half, three quarters and the full tank, then every gallon or litre; every second,
/// fifth, tenth … one where there would be more than 24 rows. Levels at which the fill does not work
/// out are left out: Fill itself tells why.
pub fn levels(typed: &Typed, marks: Marks) -> Vec<Level> {
    let quarters = ["25", "50", "75", "100"].map(|share| Entry::new(share, "percent"));
    quarters.into_iter().chain(marked(typed, marks)).filter_map(|entry| at(typed, entry, marks)).collect()
}

/// Whole gallons or litres up to the tank.
fn marked(typed: &Typed, marks: Marks) -> Vec<Entry> {
    let tank = Field::Tank.entry(typed).and_then(|tank| tank.read::<Volume>(Field::Tank.limit(), marks).ok());
    let (Some(tank), Some(unit)) = (tank, Kind::Fill.unit(typed.system)) else { return Vec::new() };
    let full = unit.from_si(tank.si()) * (1.0 + 1e-9);
    let steps = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0];
    let Some(step) = steps.into_iter().find(|step| full / step <= MOST) else { return Vec::new() };
    let plain = |value: f64| number::write(value, 6, Marks { group: '\u{0}', ..marks }).replace('\u{0}', "");
    (1..=24)
        .map(|index| f64::from(index) * step)
        .take_while(|level| *level <= full)
        .map(|level| Entry::new(plain(level), unit.code))
        .collect()
}

fn at(typed: &Typed, entry: Entry, marks: Marks) -> Option<Level> {
    let mut asked = typed.clone();
    asked.ask.level = entry.clone();
    let answer: Answer = unsure(&asked, marks).outcome.answer;
    // A liquid, a powder by weight, or whole packets.
    let first = |names: &[&str]| names.iter().find_map(|name| answer.get(name));
    // Whole packets may ask for another level: the row would not be what it says.
    if answer.remarks.iter().any(|remark| remark.code == "remark-packets-level") {
        return None;
    }
    let missed = ["remark-rounded-outside", "remark-rounded-below-minimum"];
    let keeps = answer.remarks.iter().all(|remark| !missed.contains(&remark.code));
    Some(Level {
        entry,
        dose: first(&[names::FILL_DOSE, names::FILL_MASS, names::FILL_COUNT])?,
        rounded: first(&[names::FILL_ROUNDED, names::FILL_MASS_ROUNDED, names::FILL_COUNT]).filter(|_| keeps),
        count: answer.get(names::FILL_COUNT),
        water: answer.get(names::FILL_WATER)?,
    })
}
