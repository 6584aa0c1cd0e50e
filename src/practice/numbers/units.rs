//! One set of units: what comes from a record, or stood there before the reader chose other units.

use super::{Input, Numbers};
use crate::number::{self, Marks};
use crate::site::{Entry, Site};
use crate::units::{System, Unit, unit};

/// As many digits as a scale in another unit is read to.
const DIGITS: i32 = 4;

impl Numbers {
    /// Brings fields into the units of a reader, to four digits. A field that stands in them already is left to its last
    /// digit, and so is one that cannot be read.
    ///
    /// * `marks`: how the texts are read and written.
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::practice::{Input, Numbers};
    /// use brimline::site::demo;
    /// use brimline::units::System;
    /// let mut numbers = Numbers::begin(&demo(), "walk-behind", "jug", System::Metric);
    /// numbers.put_into(System::Metric, &Input::ALL, Marks::POINT);
    /// assert_eq!((&*numbers.tank.text, &*numbers.tank.unit), ("37.85", "l")); // 10 gal
    /// assert_eq!((&*numbers.step.text, &*numbers.step.unit), ("29.57", "ml")); // 1 fl oz
    /// ```
    pub fn put_into(&mut self, system: System, inputs: &[Input], marks: Marks) {
        let usual = Self::begin(&Site::default(), "", "", system);
        self.system = system;
        for input in inputs {
            // A level is usually a share of the tank, which is everybody's; a volume is one in the tank's unit.
            let to = if *input == Input::Level { &usual.tank } else { input.of(&usual) };
            let entry = input.of_mut(self);
            if !fits(entry, *input, system) {
                *entry = unit(&to.unit).and_then(|to| put(entry, to, marks)).unwrap_or_else(|| entry.clone());
            }
        }
    }
}

/// Whether a field stands in a unit of a system, or in one that all use. What a system has no unit of its own for it
/// shares with the US one: feet, inches, miles.
fn fits(entry: &Entry, input: Input, system: System) -> bool {
    let Some(of) = unit(&entry.unit).and_then(|unit| unit.system) else { return true };
    let units = || input.field().units().iter().filter_map(|code| unit(code)).filter_map(|one| one.system);
    of == system || system == System::Imperial && of == System::Us && !units().any(|one| one == system)
}

/// The same amount in another unit; none where it cannot be read.
fn put(entry: &Entry, to: &Unit, marks: Marks) -> Option<Entry> {
    if entry.text.trim().is_empty() {
        return Some(Entry::new("", to.code));
    }
    let (value, from) = entry.value(marks).ok()?;
    let same = from.dimension == to.dimension;
    same.then(|| Entry::new(number::write(to.from_si(from.to_si(value)), DIGITS, marks), to.code))
}
