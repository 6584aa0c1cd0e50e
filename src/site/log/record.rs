//! One record of the log.

use super::{Fill, Id, Lesson, Part, Seals, State, Words, digest};
use crate::coded::coded;
use crate::document::shaped as document;
use serde_json::{Map, Value};

coded! {
    /// What a record is.
    #[derive(Default)]
    Kind {
        /// It does not say; no such record is taken.
        #[default]
        Unsaid = "unsaid",
        /// A fill.
        Fill = "fill",
        /// New values for a fill.
        Correction = "correction",
        /// Texts of a record were blanked, because somebody asked for it.
        Erasure = "erasure",
        /// What somebody showed in a practice session.
        Lesson = "lesson",
    }
}

document! {
    /// A record. All fields but `own` and `words` are hashed.
    Record {
        /// The device that wrote it.
        device: String,
        /// What people called that device then; empty for no name.
        station: String,
        /// Its place in the chain of that device, from 1.
        number: u64,
        /// When it was written, ISO 8601 with an offset.
        when: String,
        /// What it is.
        kind: Kind,
        /// The fill; blank in other records.
        fill: Fill,
        /// What was shown; blank in other records.
        lesson: Lesson,
        /// The record that is corrected or erased from, `device/number`.
        of: String,
        /// The fields of the fill that a correction changes, with their new values.
        changes: Map<String, Value>,
        /// The texts that were blanked.
        erased: Vec<Part>,
        /// The seals of its words.
        seals: Seals,
        /// The hash of the record before it; empty in the first.
        before: String,
        /// Its hash.
        own: String,
        /// What a person wrote; outside the hash.
        words: Words,
    }
}

impl Record {
    /// Whether it is what was hashed, and each of its texts what was sealed or blank.
    ///
    /// ```
    /// use brimline::site::log::{Fill, Log, Part, Stamp, Words};
    /// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
    /// let mut log = Log::default();
    /// log.fill(&stamp, Fill::default(), Words::default().with(Part::Who, "AB")).unwrap();
    /// let mut record = log.records()[0].clone();
    /// assert!(record.holds());
    /// record.words.who.text = "CD".into();
    /// assert!(!record.holds());
    /// ```
    pub fn holds(&self) -> bool {
        digest(self) == self.own
            && Part::ALL.iter().all(|part| self.words.state(*part, &self.seals) != State::Altered)
    }

    /// The texts in which these initials stand by themselves, in capitals or not.
    pub fn naming(&self, initials: &str) -> Vec<Part> {
        let wanted = initials.trim().to_lowercase();
        let names = |part: &Part| self.words.get(*part).text.trim().to_lowercase() == wanted;
        [Part::By, Part::Who].into_iter().filter(|part| !wanted.is_empty() && names(part)).collect()
    }

    /// Which record it is.
    pub fn id(&self) -> Id {
        Id::new(self.device.clone(), self.number)
    }
}
