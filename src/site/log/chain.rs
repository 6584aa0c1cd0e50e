//! The chain of hashes, and the first record that breaks it.

use super::lines::{canonical_of, stripped};
use super::words::hashed;
use super::{Id, Kind, Part, Record, Verifier};
use crate::document::shaped as document;
use std::collections::HashSet;

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
    verify_to(records, &[])
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
    let mut verifier = Verifier::to(heads);
    for record in records {
        verifier.next(record);
    }
    verifier.finish()
}
