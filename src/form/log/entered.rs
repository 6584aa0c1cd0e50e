//! What a person types into a record: beside Fill's answer, by hand, or to correct one.

use crate::document::document;
use crate::number::{Marks, plain};
use crate::site::Entry;
use crate::site::log::{Amount, Current, Deviation, Fill, Named, Part, Scale, Words};
use crate::units::{Kind, System, unit};

/// The units of a dose on the log.
pub const DOSES: &[&str] = &["floz_us", "ml", "l", "gal_us", "floz_imp", "gal_imp"];
/// The units of what a tank takes.
pub const TANKS: &[&str] = &["gal_us", "l", "gal_imp"];

/// Digits of an amount in a field. One that nobody touches keeps all that it has.
const SHOWN: i32 = 5;

document! {
    /// The fields of a record as they were typed.
    Entered {
        /// The day on which it was done, year-month-day; empty for today.
        day: String,
        /// The time of that day, hh:mm; empty where it is written down as it is done.
        time: String,
        /// The id of the machine; empty for none.
        machine: String,
        /// The id of the product.
        product: String,
        /// The name of a product that the site does not list, where `product` is empty.
        unlisted: String,
        /// The id of the floor.
        floor: String,
        /// The ids of the areas.
        areas: Vec<String>,
        /// Concentrate as planned.
        concentrate: Entry = Entry::new("", "floz_us"),
        /// Water as planned.
        water: Entry = Entry::new("", "gal_us"),
        /// How far the tank was filled.
        level: Entry = Entry::new("", "gal_us"),
        /// Concentrate as it was measured out.
        measured: Entry = Entry::new("", "floz_us"),
        /// What the reading tells.
        scale: Scale,
        /// The reading.
        reading: Entry = Entry::new("", "one"),
        /// What was done otherwise.
        deviation: Deviation,
        /// Initials of who did it.
        who: String,
        /// Why it was done otherwise.
        reason: String,
        /// Notes.
        notes: String,
        /// Why it is corrected.
        why: String,
    }
}

impl Entered {
    /// What is added to a planned fill, as the record and its fields before and after.
    ///
    /// Where another product went in, its record is of that product: the planned amount was not for it and is not
    /// known for it, so that no figure of either product counts it. What was planned goes with the reason.
    ///
    /// * `written`: what was planned, in words, for the reason.
    ///
    /// ```
    /// use brimline::form::log::{Entered, Reader, filled};
    /// use brimline::site::log::{Deviation, Fill, Named};
    /// use brimline::site::Site;
    /// let planned = Fill { product: Named::new("p", "Planned"), ..Fill::default() };
    /// let added = Entered {
    ///     deviation: Deviation::OtherProduct,
    ///     unlisted: "Blue can".into(),
    ///     reason: "None left".into(),
    ///     ..Entered::default()
    /// };
    /// let (base, entered) = added.beside(&planned, "Planned: 20 fl oz");
    /// let fill = filled(&base, &entered, &Site::default(), &Reader::default()).unwrap();
    /// assert_eq!(&*fill.product.name, "Blue can");
    /// assert_eq!(entered.reason, "None left (Planned: 20 fl oz)");
    /// ```
    pub fn beside(&self, planned: &Fill, written: &str) -> (Base, Self) {
        let ids = |entered: Self| Self {
            machine: planned.machine.id.to_string(),
            floor: planned.floor.id.to_string(),
            ..entered
        };
        let mut base = Base { fill: planned.clone(), entered: ids(Self::default()) };
        base.entered.product = planned.product.id.to_string();
        let mut entered = ids(self.clone());
        if entered.deviation != Deviation::OtherProduct {
            entered.product.clone_from(&base.entered.product);
            entered.unlisted.clear();
            return (base, entered);
        }
        base.fill.concentrate = Amount::default();
        if entered.product == base.entered.product {
            entered.product.clear();
        }
        let reason = entered.reason.trim();
        // Without a reason of the person's own the record is not written.
        if !reason.is_empty() {
            entered.reason = format!("{reason} ({written})");
        }
        (base, entered)
    }
}

/// What a record is before a person changes it, and how that reads in the fields.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Base {
    /// The record.
    pub fill: Fill,
    /// Its fields.
    pub entered: Entered,
}

impl Base {
    /// A record as it stands, in the reader's units.
    pub fn of(one: &Current, system: System, marks: Marks) -> Self {
        let fill = &one.fill;
        let ids = |all: &[Named]| all.iter().map(|area| area.id.to_string()).collect();
        let amount = |amount: &Amount, kind: Kind| {
            let shown = kind.unit(system);
            let code = shown.map_or("", |unit| unit.code);
            let text = amount.si.value().zip(shown);
            Entry::new(
                text.map_or(String::new(), |(si, unit)| plain(unit.from_si(si), SHOWN, marks.decimal)),
                code,
            )
        };
        let scale = fill.reading.scale;
        let read = fill.reading.si.value().zip(unit(scale_unit(scale)));
        let read = read.map_or(String::new(), |(si, unit)| plain(unit.from_si(si), SHOWN, marks.decimal));
        let entered = Entered {
            day: one.when.date.to_string(),
            time: one.said.get(11..16).unwrap_or_default().to_owned(),
            machine: fill.machine.id.to_string(),
            product: fill.product.id.to_string(),
            unlisted: String::new(),
            floor: fill.floor.id.to_string(),
            areas: ids(&fill.areas),
            concentrate: amount(&fill.concentrate, Kind::Dose),
            water: amount(&fill.water, Kind::Fill),
            level: amount(&fill.level, Kind::Fill),
            measured: amount(&fill.measured, Kind::Dose),
            scale,
            reading: Entry::new(read, scale_unit(scale)),
            deviation: fill.deviation,
            who: one.who.to_string(),
            reason: one.reason.to_string(),
            notes: one.notes.to_string(),
            why: String::new(),
        };
        Self { fill: fill.clone(), entered }
    }
}

/// The unit in which a scale is typed.
pub const fn scale_unit(scale: Scale) -> &'static str {
    match scale {
        Scale::None => "one",
        Scale::Active => "mg_per_l",
        Scale::Ratio => "percent",
    }
}

/// The texts of a record: those that differ from what stands, since an empty one in a correction leaves it as it was.
///
/// * `by`: initials of who writes it down; they are left out where the same record names them as who did it.
///
/// ```
/// use brimline::form::log::{Entered, words};
/// let was = Entered { who: "AB".into(), notes: "cold".into(), ..Entered::default() };
/// let is = Entered { who: "CD".into(), ..was.clone() };
/// let words = words(&was, &is, "EF");
/// assert_eq!((words.by.text.as_str(), words.who.text.as_str(), words.notes.text.as_str()), ("EF", "CD", ""));
/// ```
pub fn words(was: &Entered, is: &Entered, by: &str) -> Words {
    let mut words = Words::default();
    let by = by.trim();
    let names_who = was.who.trim() != is.who.trim();
    if !(names_who && by == is.who.trim()) {
        words = words.with(Part::By, by);
    }
    let parts = [
        (Part::Who, &was.who, &is.who),
        (Part::Reason, &was.reason, &is.reason),
        (Part::Notes, &was.notes, &is.notes),
        (Part::Why, &was.why, &is.why),
    ];
    for (part, was, is) in parts {
        if was.trim() != is.trim() {
            words = words.with(part, is.trim());
        }
    }
    words
}
