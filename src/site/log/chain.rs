//! The chain of hashes, and the first record that breaks it.

use super::lines::{canonical_of, stripped};
use super::words::{State, hashed};
use super::{Id, Kind, Part, Record};
use crate::document::shaped as document;
use std::collections::{HashMap, HashSet};

/// What stands before everything that is hashed as a record: no other hash of the same bytes can pass as one.
const PURPOSE: &str = "brimline log record 1";

document! {
    /// The last record of a device's chain: kept elsewhere, it finds what is missing at the end.
    Head {
        /// The device.
        device: String,
        /// The number of its last record.
        number: u64,
        /// The hash of that record.
        own: String,
    }
}

/// The hash of a record: SHA-256 over `brimline log record 1`, a zero byte, and its canonical JSON without blank
/// fields, without `own` and without `words`.
///
/// ```
/// use brimline::site::log::{Fill, Log, Stamp, Words, digest};
/// let mut log = Log::default();
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// log.fill(&stamp, Fill::default(), Words::default()).unwrap();
/// assert_eq!(digest(&log.records()[0]), log.records()[0].own);
/// ```
pub fn digest(record: &Record) -> String {
    let mut fields = stripped(record);
    fields.remove("own");
    fields.remove("words");
    hashed(&[PURPOSE.as_bytes(), canonical_of(fields).as_bytes()])
}

/// Why a chain does not hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// The record is not what was hashed.
    Altered,
    /// This text of it is not what was sealed.
    WordsAltered(Part),
    /// This text was blanked, and no record says so.
    WordsGone(Part),
    /// The record is not there, and those after it are.
    Missing,
    /// The record is there twice.
    Doubled,
    /// Another record has the same device and number.
    Forked,
    /// It stands before records that come before it.
    Moved,
    /// It does not name the hash of the record before it: that one was put in its place.
    Unlinked,
    /// It was the last record once, with another hash.
    Replaced,
}

impl Why {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Altered => "log-altered",
            Self::WordsAltered(_) => "log-words-altered",
            Self::WordsGone(_) => "log-words-gone",
            Self::Missing => "log-missing",
            Self::Doubled => "log-doubled",
            Self::Forked => "log-forked",
            Self::Moved => "log-moved",
            Self::Unlinked => "log-unlinked",
            Self::Replaced => "log-replaced",
        }
    }
}

/// The first record at which a log does not hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Broken {
    /// Its place among the records, from 0; of a missing one, where it should stand.
    pub place: usize,
    /// Which record.
    pub id: Id,
    /// Why.
    pub why: Why,
}

/// Holds records to their chains. Those of one device stand in the order of their numbers, from 1; those of
/// several devices may stand in any order among each other.
///
/// # Errors
/// [`Broken`]: the first that was altered, left out, doubled or moved.
///
/// ```
/// use brimline::site::log::{Fill, Log, Stamp, Words, verify, Why};
/// let mut log = Log::default();
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// for _ in 0..3 {
///     log.fill(&stamp, Fill::default(), Words::default()).unwrap();
/// }
/// assert_eq!(verify(log.records()), Ok(()));
/// let mut records = log.records().to_vec();
/// records.remove(1);
/// let broken = verify(&records).unwrap_err();
/// assert_eq!((broken.place, broken.id.to_string().as_str(), broken.why), (1, "station-1/2", Why::Missing));
/// ```
pub fn verify(records: &[Record]) -> Result<(), Broken> {
    let erased = erased(records);
    // What comes where, so that a record out of its place is told from one that is missing.
    let mut places: HashMap<(&str, u64), usize> = HashMap::new();
    for (place, record) in records.iter().enumerate() {
        places.entry((&record.device, record.number)).or_insert(place);
    }
    let mut last: HashMap<&str, &Record> = HashMap::new();
    for (place, record) in records.iter().enumerate() {
        let broken = |id, why| Err(Broken { place, id, why });
        let before = last.get(record.device.as_str()).copied();
        let expected = before.map_or(1, |before| before.number.saturating_add(1));
        let first = places.get(&(record.device.as_str(), record.number)).map(|first| &records[*first]);
        if record.number < expected {
            return broken(record.id(), if first == Some(record) { Why::Doubled } else { Why::Forked });
        }
        if record.number > expected {
            let comes_later = places.contains_key(&(record.device.as_str(), expected));
            return if comes_later {
                broken(record.id(), Why::Moved)
            } else {
                broken(Id::new(record.device.clone(), expected), Why::Missing)
            };
        }
        if digest(record) != record.own {
            return broken(record.id(), Why::Altered);
        }
        if record.before != before.map_or("", |before| before.own.as_str()) {
            return broken(record.id(), Why::Unlinked);
        }
        for part in Part::ALL {
            let asked = || erased.contains(&(record.id().to_string(), *part));
            match record.words.state(*part, &record.seals) {
                State::Altered => return broken(record.id(), Why::WordsAltered(*part)),
                State::Blanked if !asked() => return broken(record.id(), Why::WordsGone(*part)),
                _ => {}
            }
        }
        last.insert(&record.device, record);
    }
    Ok(())
}

/// The texts that records say were blanked: of which record, and which.
pub(super) fn erased(records: &[Record]) -> HashSet<(String, Part)> {
    let erasures = records.iter().filter(|record| record.kind == Kind::Erasure);
    erasures.flat_map(|record| record.erased.iter().map(|part| (record.of.clone(), *part))).collect()
}

/// Holds records to their chains and these to the heads that were kept: each of them must still be there, as it
/// was. More records may have come since.
///
/// # Errors
/// [`Broken`]: as [`verify`]; then the first head that is missing or another one.
pub fn verify_to(records: &[Record], heads: &[Head]) -> Result<(), Broken> {
    verify(records)?;
    let owns: HashMap<(&str, u64), (usize, &str)> = records
        .iter()
        .enumerate()
        .map(|(place, record)| ((record.device.as_str(), record.number), (place, record.own.as_str())))
        .collect();
    for head in heads {
        let id = Id::new(head.device.clone(), head.number);
        match owns.get(&(head.device.as_str(), head.number)) {
            Some((_, own)) if *own == head.own => {}
            Some((place, _)) => return Err(Broken { place: *place, id, why: Why::Replaced }),
            None => {
                // The first of those that are missing.
                let there =
                    records.iter().filter(|record| record.device == head.device).map(|one| one.number);
                let id = Id::new(head.device.clone(), there.max().unwrap_or(0) + 1);
                return Err(Broken { place: records.len(), id, why: Why::Missing });
            }
        }
    }
    Ok(())
}
