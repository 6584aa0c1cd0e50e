//! The next record of a chain, made from the end of that chain alone: no log has to be in memory.

use super::hold::{hold, normal};
use super::{Fill, Flaw, Head, Kind, Lesson, Part, Record, Text, Words, digest, line};
use serde_json::{Map, Value};

/// Who writes, when, and what chance gives.
#[derive(Clone, Debug)]
pub struct Stamp<'a> {
    /// The id of this device; [`super::Id::is_device`] tells what it may be.
    pub device: &'a str,
    /// Now, as [`super::When::read`] takes it.
    pub when: &'a str,
    /// 32 bytes from the system's source of randomness, other ones for each record, and kept nowhere.
    pub random: [u8; 32],
}

/// A record that has no place in a chain yet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft(Record);

impl Draft {
    /// A fill.
    pub fn fill(fill: Fill) -> Self {
        Self(Record { kind: Kind::Fill, fill, ..Record::default() })
    }

    /// What somebody showed in a practice session; their initials come with the words.
    pub fn lesson(lesson: Lesson) -> Self {
        Self(Record { kind: Kind::Lesson, lesson, ..Record::default() })
    }

    /// The same with the name that people gave this device.
    #[must_use]
    pub fn at_station(self, name: &str) -> Self {
        Self(Record { station: name.trim().to_owned(), ..self.0 })
    }

    /// A correction of a fill, as [`super::Log::correct`] takes it.
    ///
    /// # Errors
    /// [`Flaw`]: the record is no fill, or the changes are none.
    pub fn correction(fill: &Record, changes: &Map<String, Value>) -> Result<Self, Flaw> {
        if fill.kind != Kind::Fill {
            return Err(Flaw::NotAFill(fill.id()));
        }
        let (of, changes) = (fill.id().to_string(), normal(changes)?);
        Ok(Self(Record { kind: Kind::Correction, of, changes, ..Record::default() }))
    }

    /// An erasure: that these texts of a record are blanked. [`Record::blank`] does it.
    ///
    /// # Errors
    /// [`Flaw`]: the record has none of these texts.
    pub fn erasure(record: &Record, parts: &[Part]) -> Result<Self, Flaw> {
        let is = |part: &Part| parts.contains(part) && !record.seals.get(*part).is_empty();
        let erased: Vec<Part> = Part::ALL.iter().copied().filter(is).collect();
        if erased.is_empty() {
            return Err(Flaw::NothingToErase(record.id()));
        }
        Ok(Self(Record { kind: Kind::Erasure, of: record.id().to_string(), erased, ..Record::default() }))
    }

    /// The record after the last one of this device's chain; the first where there is none.
    ///
    /// # Errors
    /// [`Flaw`]: a device or a time that is none, a text that no file takes, a record too long for a line.
    ///
    /// ```
    /// use brimline::site::log::{Draft, Fill, Part, Stamp, Words, digest};
    /// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00-05:00", random: [7; 32] };
    /// let first = Draft::fill(Fill::default()).after(None, &stamp, Words::default()).unwrap();
    /// let head = first.head();
    /// let next = Draft::fill(Fill::default()).after(Some(&head), &stamp, Words::default()).unwrap();
    /// assert_eq!((next.number, &next.before, digest(&next)), (2, &first.own, next.own.clone()));
    /// ```
    pub fn after(self, last: Option<&Head>, stamp: &Stamp, mut words: Words) -> Result<Record, Flaw> {
        let seals = words.seal(&stamp.random);
        let mut record = Record {
            device: stamp.device.to_owned(),
            number: last.map_or(1, |last| last.number.saturating_add(1)),
            when: stamp.when.to_owned(),
            before: last.map(|last| last.own.clone()).unwrap_or_default(),
            seals,
            words,
            ..self.0
        };
        record.own = digest(&record);
        hold(&mut record)?;
        // What a reader would refuse is not written.
        super::lines::record(line(&record).as_bytes())?;
        Ok(record)
    }
}

impl Record {
    /// It as the end of a chain.
    pub fn head(&self) -> Head {
        Head { device: self.device.clone(), number: self.number, own: self.own.clone() }
    }

    /// Blanks texts of it. The chain still holds where a record says so.
    pub fn blank(&mut self, parts: &[Part]) {
        for part in parts {
            *self.words.get_mut(*part) = Text::default();
        }
    }
}
