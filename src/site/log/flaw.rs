//! Why a record is not taken.

use super::{Id, MOST_LINE};
use crate::site::passing::Refusal;

/// What keeps a record out of the log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Flaw {
    /// The line is not the JSON of a record; where and why.
    Json(Refusal),
    /// The record would be, or is, a line of more than [`MOST_LINE`] bytes: so many.
    LongLine(usize),
    /// The last line ends before its record does.
    CutOff,
    /// It is no id of a device: see [`Id::is_device`].
    Device(String),
    /// It is no number of a record.
    Number(u64),
    /// It is no time that [`super::When::read`] takes.
    When(String),
    /// The field is no hash, seal or salt in hexadecimal digits.
    Hash(&'static str),
    /// The record does not say what it is.
    Kind,
    /// The field has no place in a record of this kind.
    Stray(&'static str),
    /// The field of a practice session is none that such a record can have.
    Lesson(&'static str),
    /// A practice session that nobody took part in.
    Nobody,
    /// It is no id of a record.
    Of(String),
    /// The log has no such record.
    Unknown(Id),
    /// Only a fill can be corrected, and this is none.
    NotAFill(Id),
    /// The correction changes nothing.
    NothingChanged,
    /// The record has none of the texts that are to be erased.
    NothingToErase(Id),
}

impl Flaw {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Json(refusal) => refusal.code(),
            Self::LongLine(_) => "log-long-line",
            Self::CutOff => "log-cut-off",
            Self::Device(_) => "log-device",
            Self::Number(_) => "log-number",
            Self::When(_) => "log-when",
            Self::Hash(_) => "log-hash",
            Self::Kind => "log-kind",
            Self::Stray(_) => "log-stray",
            Self::Lesson(_) => "log-lesson",
            Self::Nobody => "log-nobody",
            Self::Of(_) => "log-of",
            Self::Unknown(_) => "log-unknown",
            Self::NotAFill(_) => "log-not-a-fill",
            Self::NothingChanged => "log-nothing-changed",
            Self::NothingToErase(_) => "log-nothing-to-erase",
        }
    }

    /// That a line of so many bytes is not too long.
    pub(super) const fn length(bytes: usize) -> Result<(), Self> {
        if bytes > MOST_LINE { Err(Self::LongLine(bytes)) } else { Ok(()) }
    }
}

impl From<Refusal> for Flaw {
    fn from(refusal: Refusal) -> Self {
        Self::Json(refusal)
    }
}
