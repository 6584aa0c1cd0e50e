//! Why the log could not be opened, or a record not be kept.

use super::script::get;
use crate::site::log::Flaw;
use wasm_bindgen::JsValue;

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

impl From<Flaw> for Trouble {
    fn from(flaw: Flaw) -> Self {
        Self::Refused(flaw)
    }
}

/// By the name of the error, as the Indexed Database API and the Storage Standard give them.
impl From<JsValue> for Trouble {
    fn from(error: JsValue) -> Self {
        let text = |name: &str| get(&error, name).ok().and_then(|text| text.as_string());
        match text("name").unwrap_or_default().as_str() {
            "QuotaExceededError" => Self::Full,
            "SecurityError" => Self::Denied,
            "VersionError" => Self::Newer,
            "NotReadableError" | "DataError" => Self::Unreadable,
            name => Self::Failed(format!("{name} {}", text("message").unwrap_or_default())),
        }
    }
}
