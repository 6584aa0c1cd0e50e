//! What people wrote in their own words: sealed in the chain, and outside it, so that it can be erased.

use crate::coded::coded;
use crate::document::shaped as document;
use sha2::{Digest, Sha256};
use std::fmt::Write;

/// What stands before a text that is sealed.
const PURPOSE: &str = "brimline log words 1";

/// What stands before the random bytes that a salt is made of.
const SALT: &str = "brimline log salt 1";

coded! {
    /// One of the texts that can be erased.
    Part {
        /// Initials of who wrote the record.
        By = "by",
        /// Initials of who did the fill.
        Who = "who",
        /// Why it was done otherwise.
        Reason = "reason",
        /// Notes.
        Notes = "notes",
        /// Why it is corrected or erased.
        Why = "why",
    }
}

document! {
    /// A text with its salt.
    Text {
        /// 32 hexadecimal digits that make the seal of a short text hard to guess; empty where there is no text.
        salt: String,
        /// The text.
        text: String,
    }
}

document! {
    /// The texts of a record. In a correction, `who`, `reason` and `notes` are the corrected ones; empty: as before.
    Words {
        /// Initials of who wrote the record.
        by: Text,
        /// Initials of who did the fill.
        who: Text,
        /// Why it was done otherwise.
        reason: Text,
        /// Notes.
        notes: Text,
        /// Why it is corrected or erased.
        why: Text,
    }
}

document! {
    /// A seal for each text, 64 hexadecimal digits; empty where there never was one.
    Seals {
        /// Of `by`.
        by: String,
        /// Of `who`.
        who: String,
        /// Of `reason`.
        reason: String,
        /// Of `notes`.
        notes: String,
        /// Of `why`.
        why: String,
    }
}

/// How a text stands to its seal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// There never was one.
    None,
    /// It is what was sealed.
    Whole,
    /// It was blanked.
    Blanked,
    /// It is not what was sealed.
    Altered,
}

impl Words {
    /// One of the texts.
    pub const fn get(&self, part: Part) -> &Text {
        match part {
            Part::By => &self.by,
            Part::Who => &self.who,
            Part::Reason => &self.reason,
            Part::Notes => &self.notes,
            Part::Why => &self.why,
        }
    }

    /// One of the texts, to change it.
    pub(super) const fn get_mut(&mut self, part: Part) -> &mut Text {
        match part {
            Part::By => &mut self.by,
            Part::Who => &mut self.who,
            Part::Reason => &mut self.reason,
            Part::Notes => &mut self.notes,
            Part::Why => &mut self.why,
        }
    }

    /// Puts a text there; its salt comes when the record is added.
    ///
    /// ```
    /// use brimline::site::log::{Part, Words};
    /// let words = Words::default().with(Part::Who, "AB");
    /// assert_eq!(words.who.text, "AB");
    /// ```
    #[must_use]
    pub fn with(mut self, part: Part, text: impl Into<String>) -> Self {
        self.get_mut(part).text = text.into();
        self
    }

    /// Gives every text a salt of its own out of 32 random bytes, and the seals of all.
    pub(super) fn seal(&mut self, random: &[u8; 32]) -> Seals {
        let mut seals = Seals::default();
        for part in Part::ALL {
            let text = self.get_mut(*part);
            text.salt.clear();
            if !text.text.is_empty() {
                let salt = hashed(&[SALT.as_bytes(), part.code().as_bytes(), random]);
                salt[..32].clone_into(&mut text.salt);
                *seals.get_mut(*part) = text.seal(*part);
            }
        }
        seals
    }

    /// How one of the texts stands to its seal.
    pub fn state(&self, part: Part, seals: &Seals) -> State {
        let (text, seal) = (self.get(part), seals.get(part));
        match (text.is_blank(), seal.is_empty()) {
            (true, true) => State::None,
            (true, false) => State::Blanked,
            (false, _) if text.seal(part) == seal => State::Whole,
            (false, _) => State::Altered,
        }
    }
}

impl Text {
    pub(super) fn is_blank(&self) -> bool {
        self.salt.is_empty() && self.text.is_empty()
    }

    fn seal(&self, part: Part) -> String {
        hashed(&[PURPOSE.as_bytes(), part.code().as_bytes(), self.salt.as_bytes(), self.text.as_bytes()])
    }
}

impl Seals {
    /// One of the seals.
    pub fn get(&self, part: Part) -> &str {
        match part {
            Part::By => &self.by,
            Part::Who => &self.who,
            Part::Reason => &self.reason,
            Part::Notes => &self.notes,
            Part::Why => &self.why,
        }
    }

    const fn get_mut(&mut self, part: Part) -> &mut String {
        match part {
            Part::By => &mut self.by,
            Part::Who => &mut self.who,
            Part::Reason => &mut self.reason,
            Part::Notes => &mut self.notes,
            Part::Why => &mut self.why,
        }
    }
}

/// SHA-256 (FIPS 180-4) of parts with a zero byte between them, in hexadecimal. Only the last part may have one.
pub(super) fn hashed(parts: &[&[u8]]) -> String {
    let mut text = String::with_capacity(64);
    for byte in Sha256::digest(parts.join(&0)) {
        let _ = write!(text, "{byte:02x}");
    }
    text
}
