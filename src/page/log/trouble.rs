//! Why the log could not be opened, or a record not be kept.

use crate::site::log::Flaw;

/// What went wrong between the log and the browser.
#[derive(Clone, Debug, PartialEq)]
pub enum Trouble {
    /// The browser keeps nothing for this page: storage is off, or it was opened privately.
    Denied,
    /// The device has no room left, or the browser gives the page none.
    Full,
    /// A later version of the page keeps the log here; this one leaves it as it is.
    Newer,
    /// Another tab has an older version of the page open and holds the log.
    Blocked,
    /// The log that the browser keeps cannot be read.
    Unreadable,
    /// The browser has no random numbers to give, and no text is sealed without them.
    NoRandom,
    /// The record is none that the log takes.
    Refused(Flaw),
    /// The browser gave another reason, in its own words.
    Failed(String),
}

impl Trouble {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Denied => "log-denied",
            Self::Full => "log-full",
            Self::Newer => "log-newer",
            Self::Blocked => "log-blocked",
            Self::Unreadable => "log-unreadable",
            Self::NoRandom => "log-no-random",
            Self::Refused(flaw) => flaw.code(),
            Self::Failed(_) => "log-failed",
        }
    }
}
