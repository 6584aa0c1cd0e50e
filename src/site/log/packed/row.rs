//! One fill of a block, field by field in the order of the record.

use super::super::{Amount, Checklist, Current, Fill, Id, Named, Reading, When};
use super::{Reader, Writer};
use crate::coded::Coded;

/// Writes a fill as a row.
pub fn write(out: &mut Writer, one: &Current) {
    id(out, &one.id);
    // The time is read off its text again, so that no two of them can differ.
    for text in [&one.said, &one.written, &one.station, &one.who, &one.reason, &one.notes] {
        out.text(text);
    }
    out.number(one.corrections.len() as u64);
    for one in &one.corrections {
        id(out, one);
    }
    out.number(one.ticks as u64);
    out.byte(u8::from(one.contested));
    let fill = &one.fill;
    out.text(&fill.at);
    named(out, &fill.machine);
    out.number(fill.areas.len() as u64);
    for area in &fill.areas {
        named(out, area);
    }
    for one in [&fill.product, &fill.floor, &fill.standard] {
        named(out, one);
    }
    out.number(u64::from(fill.version));
    for amount in [&fill.concentrate, &fill.water, &fill.level, &fill.measured] {
        out.value(amount.si);
        out.text(&amount.text);
    }
    choice(out, fill.reading.scale);
    out.value(fill.reading.si);
    out.text(&fill.reading.text);
    choice(out, fill.deviation);
    for (_, task) in fill.checklist.tasks() {
        choice(out, task);
    }
    out.byte(u8::from(fill.struck));
}

/// Reads a row.
pub fn read(from: &mut Reader) -> Option<Current> {
    let id = read_id(from)?;
    let [said, written, station] = [from.text()?, from.text()?, from.text()?];
    let [who, reason, notes] = [from.text()?, from.text()?, from.text()?];
    let corrections = (0..from.count()?).map(|_| read_id(from)).collect::<Option<_>>()?;
    let ticks = usize::try_from(from.number()?).ok()?;
    let contested = from.flag()?;
    let at = from.text()?;
    let machine = read_named(from)?;
    let areas = (0..from.count()?).map(|_| read_named(from)).collect::<Option<_>>()?;
    let [product, floor, standard] = [read_named(from)?, read_named(from)?, read_named(from)?];
    let version = u32::try_from(from.number()?).ok()?;
    let mut amount = || Some(Amount { si: from.value()?, text: from.text()? });
    let [concentrate, water, level, measured] = [amount()?, amount()?, amount()?, amount()?];
    let reading = Reading { scale: read_choice(from)?, si: from.value()?, text: from.text()? };
    let deviation = read_choice(from)?;
    let checklist = Checklist {
        drain: read_choice(from)?,
        rinse: read_choice(from)?,
        filters: read_choice(from)?,
        brush: read_choice(from)?,
        squeegee: read_choice(from)?,
    };
    let struck = from.flag()?;
    let fill = Fill {
        at,
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
        deviation,
        checklist,
        struck,
    };
    let when = When::read(&said)?;
    Some(Current {
        id,
        when,
        said,
        written,
        station,
        fill,
        who,
        reason,
        notes,
        corrections,
        ticks,
        contested,
    })
}

fn id(out: &mut Writer, id: &Id) {
    out.text(&id.device);
    out.number(id.number);
}

fn read_id(from: &mut Reader) -> Option<Id> {
    Some(Id { device: from.text()?, number: from.number()? })
}

fn named(out: &mut Writer, named: &Named) {
    out.text(&named.id);
    out.text(&named.name);
}

fn read_named(from: &mut Reader) -> Option<Named> {
    Some(Named { id: from.text()?, name: from.text()? })
}

/// A choice by its place in its list.
fn choice<T: Coded>(out: &mut Writer, chosen: T) {
    let place = T::ALL.iter().position(|one| *one == chosen).unwrap_or_default();
    out.number(place as u64);
}

fn read_choice<T: Coded>(from: &mut Reader) -> Option<T> {
    T::ALL.get(usize::try_from(from.number()?).ok()?).copied()
}
