//! The log as a file, one record a line: NDJSON, UTF-8.

use super::hold::hold;
use super::{Broken, Flaw, Head, Log, Record, verify_to};
use crate::shape::Shaped;
use crate::site::passing::blanks::strip_from;
use crate::site::passing::check::{Unknown, check};
use crate::site::passing::file::Envelope;
use crate::site::passing::strict;
use crate::site::passing::{Place, Reason, Refusal, canonical};
use serde::de::DeserializeOwned;
use serde_json::{Map, Value, json};
use std::sync::OnceLock;

/// The version of the file as it is written now.
pub const SCHEMA: u32 = 2;

/// What the field `brimline` of the first line says.
const KIND: &str = "log";

/// The most bytes of a file: a hundred thousand fills have half of that.
pub const MOST_BYTES: usize = 256 << 20;

/// The most bytes of a line.
pub const MOST_LINE: usize = 64 << 10;

/// The most lines that are named one by one for what is wrong with them.
pub const MOST_FLAWS: usize = 100;

/// A record as JSON, without its blank fields.
pub(super) fn stripped(record: &Record) -> Map<String, Value> {
    static BLANK: OnceLock<Value> = OnceLock::new();
    let blank = BLANK.get_or_init(|| Record::SHAPE.blank());
    // By way of text, as documents are read: writing them to values as well would double the code for it.
    let whole =
        serde_json::to_string(record).and_then(|text| serde_json::from_str(&text)).unwrap_or_default();
    match strip_from(&whole, blank, Record::SHAPE) {
        Value::Object(fields) => fields,
        _ => Map::new(),
    }
}

pub(super) fn canonical_of(fields: Map<String, Value>) -> String {
    canonical(&Value::Object(fields))
}

/// A record as its line, without the end of the line: canonical JSON without blank fields.
pub fn line(record: &Record) -> String {
    canonical_of(stripped(record))
}

/// The log as a file: a first line that says what it is and where each chain ends, then one record a line.
///
/// ```
/// use brimline::site::log::{Fill, Log, Stamp, Words, read, write};
/// let mut log = Log::default();
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// log.fill(&stamp, Fill::default(), Words::default()).unwrap();
/// let file = write(&log);
/// assert!(file.starts_with(r#"{"brimline":"log","heads":[{"device":"station-1","number":1,"own":""#));
/// assert_eq!(file.lines().count(), 2);
/// let opened = read(file).unwrap();
/// assert_eq!((opened.verify(), opened.log()), (Ok(()), log));
/// ```
pub fn write(log: &Log) -> String {
    let heads = serde_json::to_value(log.heads()).unwrap_or_default();
    let mut file = canonical(&json!({"brimline": KIND, "schema": SCHEMA, "heads": heads}));
    file.push('\n');
    for record in log.records() {
        file.push_str(&line(record));
        file.push('\n');
    }
    file
}

/// A line that is not taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LineFlaw {
    /// The line, from 1.
    pub line: usize,
    /// Why.
    pub flaw: Flaw,
}

/// A file that was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Opened {
    /// The version that it states.
    pub schema: u32,
    /// Where it says that each chain ends.
    pub heads: Vec<Head>,
    /// The records, in the order of the file.
    pub records: Vec<Record>,
    /// The first [`MOST_FLAWS`] lines that are not taken.
    pub flaws: Vec<LineFlaw>,
    /// How many more there are.
    pub more: usize,
}

impl Opened {
    /// Its records as a log.
    pub fn log(&self) -> Log {
        Log::of(self.records.iter().cloned())
    }

    /// Whether its chains hold and go on as far as its first line says.
    ///
    /// # Errors
    /// [`Broken`]: the first record at which they do not.
    pub fn verify(&self) -> Result<(), Broken> {
        verify_to(&self.records, &self.heads)
    }
}

/// Reads a file. Every line that is a record is kept, and every other one is named with its number: a file that
/// was cut off gives all of its full lines.
///
/// Each line is held to the shape of a record, and a field that nobody knows is refused, since it would stand
/// outside the hash. How a line spells its JSON, spaces and the order of fields, does not matter. Whether a record
/// is what was hashed is asked by [`Opened::verify`].
///
/// # Errors
/// What is wrong with the first line, or the file as a whole: `passing-other-kind`, `passing-later`, and the other
/// codes of [`Refusal`].
///
/// ```
/// use brimline::site::log::read;
/// let later = read(r#"{"brimline":"log","schema":3,"heads":[]}"#).unwrap_err();
/// assert_eq!(later.code(), "passing-later");
/// let cut = read("{\"brimline\":\"log\",\"schema\":1,\"heads\":[]}\n{\"device\":\"stat").unwrap();
/// assert_eq!((cut.flaws[0].line, cut.flaws[0].flaw.code()), (2, "log-cut-off"));
/// ```
pub fn read(file: impl AsRef<[u8]>) -> Result<Opened, Refusal> {
    let mut lines = Lines::of(file.as_ref())?;
    let mut records = Vec::new();
    for read in lines.by_ref() {
        records.extend(read.map(|(record, _)| record));
    }
    let Lines { schema, heads, flaws, more, .. } = lines;
    Ok(Opened { schema, heads, records, flaws, more })
}

/// [`read()`] line by line, for whoever has other things to do in between.
#[derive(Clone, Debug)]
pub struct Lines<'a> {
    /// The version that the file states.
    pub schema: u32,
    /// Where it says that each chain ends.
    pub heads: Vec<Head>,
    /// The first [`MOST_FLAWS`] lines that are not taken.
    pub flaws: Vec<LineFlaw>,
    /// How many more there are.
    pub more: usize,
    file: &'a [u8],
    at: usize,
    line: usize,
}

impl<'a> Lines<'a> {
    /// Reads the first line.
    ///
    /// # Errors
    /// As [`read()`].
    pub fn of(file: &'a [u8]) -> Result<Self, Refusal> {
        if file.len() > MOST_BYTES {
            return Err(Refusal { place: Place::Bytes(file.len()), reason: Reason::TooLarge(MOST_BYTES) });
        }
        let mut lines =
            Self { schema: 0, heads: Vec::new(), flaws: Vec::new(), more: 0, file, at: 0, line: 0 };
        let first = lines.bytes().unwrap_or_default();
        let mut envelope = Envelope::open(first, KIND, SCHEMA, &["heads"])?;
        lines.heads = document(&envelope.take("heads")?, "heads")?;
        lines.schema = envelope.schema;
        Ok(lines)
    }

    /// The bytes that are read.
    pub fn at(&self) -> usize {
        self.at.min(self.file.len())
    }

    /// The next line without its end; none at the end of the file.
    fn bytes(&mut self) -> Option<&'a [u8]> {
        let left = self.file.get(self.at..)?;
        let length = left.iter().position(|byte| *byte == b'\n').unwrap_or(left.len());
        // Past the end once the last line is read, whether it had an end of its own or not.
        self.at += length + 1;
        self.line += 1;
        left.get(..length)
    }
}

impl<'a> Iterator for Lines<'a> {
    /// The record of a line and its bytes; none for a line that is blank, or has a flaw.
    type Item = Option<(Record, &'a [u8])>;

    fn next(&mut self) -> Option<Self::Item> {
        let bytes = self.bytes()?.trim_ascii();
        if bytes.is_empty() {
            return Some(None);
        }
        match record(bytes) {
            Ok(record) => return Some(Some((record, bytes))),
            Err(_) if self.flaws.len() == MOST_FLAWS => self.more += 1,
            Err(flaw) => {
                // The last line has an end of its own unless the file was cut off, in a character perhaps.
                let is_part =
                    matches!(&flaw, Flaw::Json(Refusal { reason: Reason::CutOff | Reason::NotText, .. }));
                let flaw = if is_part && self.at > self.file.len() { Flaw::CutOff } else { flaw };
                self.flaws.push(LineFlaw { line: self.line, flaw: at_line(flaw, self.line) });
            }
        }
        Some(None)
    }
}

pub(super) fn record(bytes: &[u8]) -> Result<Record, Flaw> {
    Flaw::length(bytes.len())?;
    let mut record: Record = document(&strict::parse(bytes)?, "record")?;
    hold(&mut record)?;
    Ok(record)
}

/// A document out of JSON that was held to its shape.
fn document<T: Shaped + DeserializeOwned>(value: &Value, path: &str) -> Result<T, Refusal> {
    check(value, T::SHAPE, path, Unknown::Refused)?;
    let read = serde_json::from_str(&value.to_string());
    read.map_err(|error| Refusal::at(path, Reason::Unreadable(error.to_string())))
}

/// A flaw of a line by itself, as one of that line in the file.
fn at_line(flaw: Flaw, line: usize) -> Flaw {
    match flaw {
        Flaw::Json(Refusal { place: Place::Line { column, .. }, reason }) => {
            Flaw::Json(Refusal { place: Place::Line { line, column }, reason })
        }
        other => other,
    }
}
