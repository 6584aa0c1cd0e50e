//! One record of the log.

use super::{Fill, Id, Part, Seals, Words};
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
    }
}

document! {
    /// A record. All fields but `own` and `words` are hashed.
    Record {
        /// The device that wrote it.
        device: String,
        /// Its place in the chain of that device, from 1.
        number: u64,
        /// When it was written, ISO 8601 with an offset.
        when: String,
        /// What it is.
        kind: Kind,
        /// The fill; blank in other records.
        fill: Fill,
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
    /// Which record it is.
    pub fn id(&self) -> Id {
        Id::new(self.device.clone(), self.number)
    }
}
