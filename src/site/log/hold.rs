//! Whether a record is one that the log takes.

use super::fill::{self, Fill};
use super::id::is_number;
use super::{Flaw, Id, Kind, Lesson, Part, Record, When};
use crate::shape::{Shape, Shaped};
use crate::site::passing::blanks::strip_from;
use crate::site::passing::check::{Unknown, check};
use crate::site::passing::{Reason, Refusal};
use serde_json::{Map, Value};

/// Holds a record to all that does not need the others, and brings its changes to the one form in which they are
/// hashed.
pub(super) fn hold(record: &mut Record) -> Result<(), Flaw> {
    if !Id::is_device(&record.device) {
        return Err(Flaw::Device(record.device.clone()));
    }
    if !is_number(record.number) {
        return Err(Flaw::Number(record.number));
    }
    if When::read(&record.when).is_none() {
        return Err(Flaw::When(record.when.clone()));
    }
    if record.kind == Kind::Unsaid {
        return Err(Flaw::Kind);
    }
    hashes(record)?;
    record.changes = normal(&record.changes)?;
    let stray = |is: bool, field| if is { Err(Flaw::Stray(field)) } else { Ok(()) };
    let is_fill = record.kind == Kind::Fill;
    let stands_alone = is_fill || record.kind == Kind::Lesson;
    stray(stands_alone && !record.of.is_empty(), "of")?;
    stray(!is_fill && record.fill != Fill::default(), "fill")?;
    stray(record.kind != Kind::Lesson && record.lesson != Lesson::default(), "lesson")?;
    stray(record.kind != Kind::Correction && !record.changes.is_empty(), "changes")?;
    stray(record.kind != Kind::Erasure && !record.erased.is_empty(), "erased")?;
    time(&record.fill)?;
    if !stands_alone && Id::read(&record.of).is_none() {
        return Err(Flaw::Of(record.of.clone()));
    }
    let corrected = [Part::Who, Part::Reason, Part::Notes];
    match record.kind {
        Kind::Correction
            if record.changes.is_empty()
                && corrected.iter().all(|part| record.seals.get(*part).is_empty()) =>
        {
            Err(Flaw::NothingChanged)
        }
        Kind::Erasure if record.erased.is_empty() => Err(Flaw::NothingToErase(record.id())),
        Kind::Lesson if record.seals.who.is_empty() => Err(Flaw::Nobody),
        Kind::Lesson => record.lesson.hold(),
        _ => Ok(()),
    }
}

/// When a fill was done.
fn time(fill: &Fill) -> Result<(), Flaw> {
    if fill.at.is_empty() || When::read(&fill.at).is_some() {
        Ok(())
    } else {
        Err(Flaw::When(fill.at.to_string()))
    }
}

fn hashes(record: &Record) -> Result<(), Flaw> {
    let hex = |text: &str, digits| {
        text.is_empty()
            || text.len() == digits && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
    };
    let is = |right: bool, field| if right { Ok(()) } else { Err(Flaw::Hash(field)) };
    is(hex(&record.own, 64) && !record.own.is_empty(), "own")?;
    is(hex(&record.before, 64), "before")?;
    for part in Part::ALL {
        is(hex(record.seals.get(*part), 64), "seals")?;
        is(hex(&record.words.get(*part).salt, 32), "words")?;
    }
    Ok(())
}

/// The changes of a correction without what is blank in them, so that a later version may have more fields.
pub(super) fn normal(changes: &Map<String, Value>) -> Result<Map<String, Value>, Flaw> {
    if changes.is_empty() {
        return Ok(Map::new());
    }
    check(&Value::Object(changes.clone()), Fill::SHAPE, "changes", Unknown::Refused)?;
    let fill = fill::of_value(changes).map_err(|words| Refusal::at("changes", Reason::Unreadable(words)))?;
    time(&fill)?;
    let (mut whole, blank) = (fill::value(&fill), Fill::SHAPE.blank());
    let Shape::Object { fields, .. } = Fill::SHAPE else { return Ok(whole) };
    whole.retain(|field, _| changes.contains_key(field));
    for (field, shape) in *fields {
        if let Some(value) = whole.get_mut(*field) {
            *value = strip_from(value, &blank[*field], shape);
        }
    }
    Ok(whole)
}
