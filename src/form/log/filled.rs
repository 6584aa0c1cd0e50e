//! The record that typed fields say, and what keeps it from being written.

use super::entered::{Base, Entered, scale_unit};
use crate::error::Mistake;
use crate::limits::{self, Limit};
use crate::number::Marks;
use crate::site::log::{Amount, Checklist, Deviation, Fill, Named, Reading, Scale, Si, When};
use crate::site::{Entry, Record, Site, Standing};
use crate::trade::calendar::{Date, minutes};
use std::sync::Arc;

/// What keeps a record from being written, each with its word key.
#[derive(Clone, Debug, PartialEq)]
pub enum Lack {
    /// A number, at the input of this name.
    Number(&'static str, Mistake),
    /// It was done otherwise, and nobody says why.
    Reason,
    /// A correction, and nobody says why.
    Why,
    /// A fill of nothing.
    Product,
    /// A reading that does not say of what.
    Scale,
    /// A day that is none.
    Day,
    /// A day without a time, or a time that is none.
    Time,
    /// A time that has not come yet.
    Later,
    /// A fill by hand of which nothing is written but what was chosen.
    Nothing,
}

/// How what was typed is read.
pub struct Reader<'a> {
    /// How numbers are written.
    pub marks: Marks,
    /// An entry with its unit, as people read it.
    pub write: &'a dyn Fn(&Entry) -> String,
    /// Now; none where nobody knows.
    pub now: Option<When>,
    /// How many minutes local time is ahead of UTC, on a day and so many minutes after its midnight.
    pub offset: &'a dyn Fn(Date, i64) -> i64,
}

impl Default for Reader<'_> {
    /// Numbers with a point, entries without their units, UTC.
    fn default() -> Self {
        Self { marks: Marks::POINT, write: &|entry| entry.text.clone(), now: None, offset: &|_, _| 0 }
    }
}

impl Lack {
    /// The input that it is about.
    pub const fn at(&self) -> &'static str {
        match self {
            Self::Number(name, _) => name,
            Self::Reason => "log-reason",
            Self::Why => "log-why",
            Self::Product => "log-product",
            Self::Scale => "log-scale",
            Self::Day => "log-day",
            Self::Time | Self::Later => "log-time",
            Self::Nothing => "log-measured",
        }
    }
}

/// The record that the fields say. What nobody changed stays as it was shown.
///
/// * `base`: the record before, and its fields.
///
/// # Errors
/// [`Lack`]: all that is in the way, in the order of the fields. An amount left empty is unknown.
///
/// ```
/// use brimline::form::log::{Base, Entered, Reader, filled};
/// use brimline::site::{Entry, Site};
/// let site = Site::default();
/// let entered = Entered { product: "p".into(), measured: Entry::new("600", "ml"), ..Entered::default() };
/// let fill = filled(&Base::default(), &entered, &site, &Reader::default()).unwrap();
/// assert_eq!(fill.measured.si.value(), Some(0.0006));
/// ```
pub fn filled(base: &Base, entered: &Entered, site: &Site, reader: &Reader) -> Result<Fill, Vec<Lack>> {
    let (was, marks, write) = (&base.entered, reader.marks, reader.write);
    let mut lacks = Vec::new();
    let mut amount = |name, was: &Entry, now: &Entry, before: &Amount, limit: &'static Limit| {
        if was == now {
            return before.clone();
        }
        read(now, limit, marks, write)
            .unwrap_or_else(|mistake| {
                lacks.push(Lack::Number(name, mistake));
                None
            })
            .unwrap_or_default()
    };
    let old = &base.fill;
    let dose = &limits::MACHINE_DOSE;
    let concentrate =
        amount("log-concentrate", &was.concentrate, &entered.concentrate, &old.concentrate, dose);
    let water = amount("log-water", &was.water, &entered.water, &old.water, &limits::RESIDUE);
    let level = amount("log-level", &was.level, &entered.level, &old.level, &limits::RESIDUE);
    // Nothing measured out is an amount, too.
    let measured = amount("log-measured", &was.measured, &entered.measured, &old.measured, &limits::RESIDUE);
    let reading = if (was.scale, &was.reading) == (entered.scale, &entered.reading) {
        old.reading.clone()
    } else {
        reading(entered, marks, write, &mut lacks)
    };
    let at = if (&was.day, &was.time) == (&entered.day, &entered.time) {
        old.at.clone()
    } else {
        at(entered, reader).unwrap_or_else(|lack| {
            lacks.push(lack);
            Arc::default()
        })
    };
    let machine = named(&site.machines, &was.machine, &entered.machine, &old.machine);
    let unlisted = entered.unlisted.trim();
    let product = match &*entered.product {
        // A name of its own is the id, too: what was recorded under it is counted together.
        "" if !unlisted.is_empty() => Named::new(unlisted, unlisted),
        id => named(&site.products, &was.product, id, &old.product),
    };
    let floor = named(&site.floors, &was.floor, &entered.floor, &old.floor);
    let areas = if was.areas == entered.areas {
        old.areas.clone()
    } else {
        let area = |id: &String| {
            let known = old.areas.iter().find(|one| *one.id == **id).cloned();
            known.unwrap_or_else(|| named(&site.areas, "", id, &Named::default()))
        };
        entered.areas.iter().map(area).collect()
    };
    let (standard, version) = if (&was.product, &was.floor) == (&entered.product, &entered.floor) {
        (old.standard.clone(), old.version)
    } else {
        standard(site, &entered.product, &entered.floor)
    };
    if product.id.is_empty() {
        lacks.push(Lack::Product);
    }
    let is_new = *old == Fill::default();
    let amounts = [&entered.concentrate, &entered.water, &entered.level, &entered.measured, &entered.reading];
    let says_nothing =
        amounts.iter().all(|entry| entry.text.trim().is_empty()) && entered.notes.trim().is_empty();
    if is_new && says_nothing {
        lacks.push(Lack::Nothing);
    }
    if entered.deviation != Deviation::None && entered.reason.trim().is_empty() {
        lacks.push(Lack::Reason);
    }
    if !lacks.is_empty() {
        return Err(lacks);
    }
    // What was ticked off was done to the other machine.
    let checklist = if machine.id == old.machine.id { old.checklist.clone() } else { Checklist::default() };
    Ok(Fill {
        at,
        checklist,
        machine,
        areas,
        product,
        floor,
        standard,
        version,
        concentrate,
        water,
        level,
        measured,
        reading,
        deviation: entered.deviation,
        ..old.clone()
    })
}

/// When it was done, ISO 8601 with an offset; empty where nothing is typed.
fn at(entered: &Entered, reader: &Reader) -> Result<Arc<str>, Lack> {
    let (day, time) = (entered.day.trim(), entered.time.trim());
    if day.is_empty() && time.is_empty() {
        return Ok(Arc::default());
    }
    let today = reader.now.map(|now| now.date);
    let date = if day.is_empty() { today } else { Date::read(day) }.ok_or(Lack::Day)?;
    let minute = minutes(time).ok_or(Lack::Time)?;
    let offset = (reader.offset)(date, minute);
    let when = When { date, second: minute * 60, offset };
    if reader.now.is_some_and(|now| when.instant() > now.instant()) {
        return Err(Lack::Later);
    }
    Ok(when.to_string().into())
}

/// What was typed as an amount; none where nothing was.
fn read(
    entry: &Entry,
    limit: &'static Limit,
    marks: Marks,
    write: &dyn Fn(&Entry) -> String,
) -> Result<Option<Amount>, Mistake> {
    let volume = entry.read_optional::<crate::units::Volume>(limit, marks)?;
    Ok(volume.map(|volume| Amount::new(crate::units::Quantity::si(volume), write(entry))))
}

fn reading(
    entered: &Entered,
    marks: Marks,
    write: &dyn Fn(&Entry) -> String,
    lacks: &mut Vec<Lack>,
) -> Reading {
    use crate::units::{MassConcentration, Quantity, VolumeFraction};
    let entry = Entry::new(entered.reading.text.clone(), scale_unit(entered.scale));
    if entry.text.trim().is_empty() {
        return Reading::default();
    }
    let si = match entered.scale {
        Scale::None => {
            lacks.push(Lack::Scale);
            return Reading::default();
        }
        Scale::Active => entry.read::<MassConcentration>(&limits::ACTIVE, marks).map(Quantity::si),
        Scale::Ratio => entry.read::<VolumeFraction>(&limits::READ_STRENGTH, marks).map(Quantity::si),
    };
    match si {
        Ok(si) => {
            Reading { scale: entered.scale, si: Si::new(si).unwrap_or_default(), text: write(&entry).into() }
        }
        Err(mistake) => {
            lacks.push(Lack::Number("log-reading", mistake));
            Reading::default()
        }
    }
}

/// A record of the site by its id, with the name that it has now.
fn named<T: Record>(all: &[T], was: &str, id: &str, old: &Named) -> Named {
    if was == id {
        return old.clone();
    }
    if id.is_empty() {
        return Named::default();
    }
    Named::new(id, all.iter().find(|one| one.id() == id).map_or(id, Record::name))
}

/// The standard in force for a product on a floor, and its version.
pub(super) fn standard(site: &Site, product: &str, floor: &str) -> (Named, u32) {
    let found = site
        .standards
        .iter()
        .find(|one| one.standing == Standing::InForce && one.floor == floor && one.product == product);
    found.map_or_else(Default::default, |one| (Named::new(one.id.clone(), one.name.clone()), one.version))
}
