//! Several logs as one.

use super::chain::erased;
use super::words::State;
use super::{Id, Log, Part, Record, Words, line};
use std::collections::BTreeMap;

/// Records that say different things under one device and number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// The device and number that they share.
    pub id: Id,
    /// All of them.
    pub records: Vec<Record>,
}

/// What came of a merge. Nothing is kept by it: whoever does not want it goes on with the log that was.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Merged {
    /// Both logs as one.
    pub log: Log,
    /// How many records are new to ours.
    pub added: usize,
    /// Texts of ours that the other log says were erased.
    pub erased: Vec<(Id, Part)>,
    /// Records of which there are two.
    pub conflicts: Vec<Conflict>,
}

impl Log {
    /// Records as a log: each once, in order, and what was erased anywhere blank everywhere.
    pub fn of(records: impl IntoIterator<Item = Record>) -> Self {
        let mut log = Self { records: records.into_iter().collect() };
        log.blank();
        let mut apart: BTreeMap<(String, u64), Vec<Record>> = BTreeMap::new();
        for record in log.records {
            apart.entry((record.device.clone(), record.number)).or_default().push(record);
        }
        Self { records: apart.into_values().flat_map(distinct).collect() }
    }

    /// Both logs as one. It is the same whoever merges, in whatever order and however often.
    ///
    /// ```
    /// use brimline::site::log::{Fill, Log, Stamp, Words};
    /// let mut ours = Log::default();
    /// let stamp = |device| Stamp { device, when: "2026-03-07T18:30:00Z", random: [7; 32] };
    /// ours.fill(&stamp("station-1"), Fill::default(), Words::default()).unwrap();
    /// let mut theirs = Log::default();
    /// theirs.fill(&stamp("station-2"), Fill::default(), Words::default()).unwrap();
    /// let merged = ours.merge(&theirs);
    /// assert_eq!((merged.log.records().len(), merged.added), (2, 1));
    /// assert_eq!(merged.log, theirs.merge(&ours).log);
    /// ```
    #[must_use]
    pub fn merge(&self, other: &Self) -> Merged {
        let log = Self::of(self.records.iter().chain(&other.records).cloned());
        let gone = erased(&log.records);
        let erased = self.records.iter().flat_map(|record| {
            let id = record.id();
            let named = id.to_string();
            let was =
                |part: &Part| !record.words.get(*part).is_blank() && gone.contains(&(named.clone(), *part));
            Part::ALL.iter().copied().filter(was).map(|part| (id.clone(), part)).collect::<Vec<_>>()
        });
        Merged {
            added: log.records.len().saturating_sub(self.records.len()),
            erased: erased.collect(),
            conflicts: log.conflicts(),
            log,
        }
    }

    /// Records that say different things under one device and number: a device whose log was restored from an old
    /// copy goes on to count from there. All of them stay in the log; [`super::current()`] counts the first whose
    /// hash is right.
    pub fn conflicts(&self) -> Vec<Conflict> {
        let same = self.records.chunk_by(same);
        let conflict = |records: &[Record]| Conflict { id: records[0].id(), records: records.to_vec() };
        same.filter(|records| records.len() > 1).map(conflict).collect()
    }

    /// Blanks what its records say was erased.
    pub(super) fn blank(&mut self) {
        let gone = erased(&self.records);
        if gone.is_empty() {
            return;
        }
        for record in &mut self.records {
            let id = record.id().to_string();
            let parts: Vec<Part> =
                Part::ALL.iter().copied().filter(|part| gone.contains(&(id.clone(), *part))).collect();
            record.blank(&parts);
        }
    }
}

/// Whether two records share their device and number.
pub(super) fn same(one: &Record, other: &Record) -> bool {
    one.device == other.device && one.number == other.number
}

/// Each record once. Copies that differ only in which sealed texts they still have become the one that has them all.
fn distinct(records: Vec<Record>) -> Vec<Record> {
    if records.len() == 1 {
        return records;
    }
    let mut whole: Vec<Record> = Vec::new();
    for record in records {
        let sealed = is_sealed(&record);
        let twin = whole
            .iter_mut()
            .find(|one| **one == record || sealed && is_sealed(one) && unsaid(one) == unsaid(&record));
        match twin {
            Some(twin) => fill_in(&mut twin.words, &record.words),
            None => whole.push(record),
        }
    }
    whole.sort_by_cached_key(|record| (!record.holds(), line(record)));
    whole
}

fn is_sealed(record: &Record) -> bool {
    Part::ALL.iter().all(|part| record.words.state(*part, &record.seals) != State::Altered)
}

/// A record without its words.
fn unsaid(record: &Record) -> Record {
    Record { words: Words::default(), ..record.clone() }
}

fn fill_in(words: &mut Words, other: &Words) {
    for part in Part::ALL.iter().filter(|part| !other.get(**part).is_blank()) {
        words.get_mut(*part).clone_from(other.get(*part));
    }
}
