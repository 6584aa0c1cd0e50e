//! The log itself, and what is added to it.

use super::{Draft, Fill, Flaw, Head, Id, Lesson, Part, Record, Stamp, Words};
use serde_json::{Map, Value};

/// Records of one device or of several, each once, by device and number. Records that say different things under
/// one device and number all stay: see [`Log::conflicts`].
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Log {
    pub(super) records: Vec<Record>,
}

impl Log {
    /// The records, by device and number.
    pub fn records(&self) -> &[Record] {
        &self.records
    }

    /// The record of an id; of several that share it the first.
    pub fn record(&self, id: &Id) -> Option<&Record> {
        self.records.get(self.place(&id.device, id.number)).filter(|one| one.id() == *id)
    }

    /// The last record of every chain: kept elsewhere, it finds what goes missing at the end.
    pub fn heads(&self) -> Vec<Head> {
        let ends = self.records.chunk_by(|one, next| one.device == next.device);
        ends.filter_map(<[Record]>::last).map(Record::head).collect()
    }

    /// Writes a fill down.
    ///
    /// # Errors
    /// [`Flaw`]: a device or a time that is none, a text that no file takes, a record too long for a line.
    ///
    /// ```
    /// use brimline::site::log::{Fill, Log, Part, Stamp, Words};
    /// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00-05:00", random: [7; 32] };
    /// let mut log = Log::default();
    /// let id = log.fill(&stamp, Fill::default(), Words::default().with(Part::Who, "AB")).unwrap();
    /// assert_eq!(id.to_string(), "station-1/1");
    /// ```
    pub fn fill(&mut self, stamp: &Stamp, fill: Fill, words: Words) -> Result<Id, Flaw> {
        self.add(stamp, words, Draft::fill(fill))
    }

    /// Writes down what somebody showed in a practice session. Their initials stand in `words`.
    ///
    /// # Errors
    /// [`Flaw`]: as [`Log::fill`]; nobody took part, or it says nothing.
    ///
    /// ```
    /// use brimline::site::log::{Lesson, Log, Part, Stamp, Words};
    /// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00-05:00", random: [7; 32] };
    /// let (session, day) = ("0badcafe".to_owned(), "2026-03-07".to_owned());
    /// let lesson = Lesson { session, level: 1, day, shown: vec!["dose".into()], ..Lesson::default() };
    /// let mut log = Log::default();
    /// assert_eq!(log.lesson(&stamp, lesson.clone(), Words::default()).unwrap_err().code(), "log-nobody");
    /// let id = log.lesson(&stamp, lesson, Words::default().with(Part::Who, "AB")).unwrap();
    /// assert_eq!(id.to_string(), "station-1/1");
    /// ```
    pub fn lesson(&mut self, stamp: &Stamp, lesson: Lesson, words: Words) -> Result<Id, Flaw> {
        self.add(stamp, words, Draft::lesson(lesson))
    }

    /// Corrects a fill: nothing of it changes, and what it now says stands in a record of its own. In `words`, `who`,
    /// `reason` and `notes` are corrected ones, and `why` says why.
    ///
    /// * `changes`: fields of [`Fill`] with their new values, as [`super::changed()`] gives them.
    ///
    /// # Errors
    /// [`Flaw`]: as [`Log::fill`]; a record that is not there, is no fill, or is corrected to nothing new.
    pub fn correct(
        &mut self,
        stamp: &Stamp,
        of: &Id,
        changes: &Map<String, Value>,
        words: Words,
    ) -> Result<Id, Flaw> {
        let fill = self.record(of).ok_or_else(|| Flaw::Unknown(of.clone()))?;
        let draft = Draft::correction(fill, changes)?;
        self.add(stamp, words, draft)
    }

    /// Blanks texts of a record, and writes down which and that it was asked for. Nothing brings them back.
    ///
    /// # Errors
    /// [`Flaw`]: as [`Log::fill`]; a record that is not there or has none of these texts.
    ///
    /// ```
    /// use brimline::site::log::{Fill, Log, Part, Stamp, Words, verify};
    /// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00-05:00", random: [7; 32] };
    /// let mut log = Log::default();
    /// let id = log.fill(&stamp, Fill::default(), Words::default().with(Part::Who, "AB")).unwrap();
    /// log.erase(&stamp, &id, &[Part::Who], Words::default()).unwrap();
    /// assert_eq!(log.record(&id).unwrap().words, Words::default());
    /// assert_eq!(verify(log.records()), Ok(()));
    /// ```
    pub fn erase(&mut self, stamp: &Stamp, of: &Id, parts: &[Part], words: Words) -> Result<Id, Flaw> {
        let record = self.record(of).ok_or_else(|| Flaw::Unknown(of.clone()))?;
        let draft = Draft::erasure(record, parts)?;
        let id = self.add(stamp, words, draft)?;
        self.blank();
        Ok(id)
    }

    /// The texts in which these initials stand by themselves: what is erased when their owner asks for it. Notes and
    /// reasons may name somebody as well; only a person can tell.
    ///
    /// ```
    /// use brimline::site::log::{Fill, Log, Part, Stamp, Words};
    /// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00-05:00", random: [7; 32] };
    /// let mut log = Log::default();
    /// let id = log.fill(&stamp, Fill::default(), Words::default().with(Part::Who, "AB")).unwrap();
    /// assert_eq!(log.naming("ab"), [(id, vec![Part::Who])]);
    /// ```
    pub fn naming(&self, initials: &str) -> Vec<(Id, Vec<Part>)> {
        let found = self.records.iter().map(|record| (record.id(), record.naming(initials)));
        found.filter(|(_, parts)| !parts.is_empty()).collect()
    }

    fn add(&mut self, stamp: &Stamp, words: Words, draft: Draft) -> Result<Id, Flaw> {
        let end = self.place(stamp.device, u64::MAX);
        let last = self.records[..end].last().filter(|last| last.device == stamp.device);
        let record = draft.after(last.map(Record::head).as_ref(), stamp, words)?;
        let id = record.id();
        self.records.insert(end, record);
        Ok(id)
    }

    /// Where a record of this device and number stands, or would.
    fn place(&self, device: &str, number: u64) -> usize {
        self.records.partition_point(|one| (one.device.as_str(), one.number) < (device, number))
    }
}
