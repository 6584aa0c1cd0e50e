//! Why a file from elsewhere is not taken, and where.

use serde_json::Value;
use std::fmt;

/// What a JSON value is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Json {
    /// `null`
    Null,
    /// `true` or `false`
    Flag,
    /// A number.
    Number,
    /// A text.
    Text,
    /// A list.
    List,
    /// Fields by name.
    Object,
}

impl Json {
    /// What this value is.
    pub fn of(value: &Value) -> Self {
        match value {
            Value::Null => Self::Null,
            Value::Bool(_) => Self::Flag,
            Value::Number(_) => Self::Number,
            Value::String(_) => Self::Text,
            Value::Array(_) => Self::List,
            Value::Object(_) => Self::Object,
        }
    }

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Null => "json-null",
            Self::Flag => "json-flag",
            Self::Number => "json-number",
            Self::Text => "json-text",
            Self::List => "json-list",
            Self::Object => "json-object",
        }
    }
}

/// Where something is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// At this place of the document, as `site.products[2].name`; lists count from 0.
    Path(String),
    /// In the text, both counted from 1; the column counts bytes.
    Line {
        /// The line.
        line: usize,
        /// The column.
        column: usize,
    },
    /// After so many bytes, or in a file of so many.
    Bytes(usize),
}

impl fmt::Display for Place {
    fn fmt(&self, out: &mut fmt::Formatter) -> fmt::Result {
        match self {
            Self::Path(path) => out.write_str(path),
            Self::Line { line, column } => write!(out, "{line}:{column}"),
            Self::Bytes(bytes) => write!(out, "{bytes}"),
        }
    }
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reason {
    /// The file is larger than this many bytes.
    TooLarge(usize),
    /// It is not text: a byte is not UTF-8.
    NotText,
    /// It ends too early.
    CutOff,
    /// It is not JSON.
    NotJson,
    /// Lists within lists, deeper than any document goes.
    TooDeep,
    /// One object has the same field twice, and readers would differ about which counts.
    FieldTwice,
    /// It is JSON, but not the kind of file that was asked for.
    OtherKind,
    /// It was written by a later version.
    Later {
        /// The version that it states.
        schema: u64,
        /// The latest that is understood.
        known: u32,
    },
    /// A field that must be there is not.
    Missing,
    /// A field that no such file has.
    UnknownField,
    /// Something else should stand here.
    Type {
        /// What should stand here.
        expected: Json,
        /// What does.
        found: Json,
    },
    /// None of the codes that may stand here.
    Choice(String),
    /// A text of more characters than [`super::MOST_CHARACTERS`]: so many.
    LongText(usize),
    /// A list of more entries than [`super::MOST_ENTRIES`]: so many.
    LongList(usize),
    /// A character that is not seen, or that turns the order of its neighbours round.
    Hidden(char),
    /// A record has no id, or one that begins with the mark of a name without a record.
    NoId,
    /// Two records of one list have this id.
    SameId(String),
    /// It names a record that the list does not have.
    Nowhere {
        /// The id.
        id: String,
        /// The list.
        list: &'static str,
    },
    /// Records name each other in a circle: these ids, in order.
    Circle(Vec<String>),
    /// It is no public key.
    NotAKey,
    /// It is no signature.
    NotASignature,
    /// It is no number of an edition.
    NotAnEdition,
    /// The reader of the document does not take it; its own words.
    Unreadable(String),
}

impl Reason {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::TooLarge(_) => "passing-too-large",
            Self::NotText => "passing-not-text",
            Self::CutOff => "passing-cut-off",
            Self::NotJson => "passing-not-json",
            Self::TooDeep => "passing-too-deep",
            Self::FieldTwice => "passing-field-twice",
            Self::OtherKind => "passing-other-kind",
            Self::Later { .. } => "passing-later",
            Self::Missing => "passing-missing",
            Self::UnknownField => "passing-unknown-field",
            Self::Type { .. } => "passing-type",
            Self::Choice(_) => "passing-choice",
            Self::LongText(_) => "passing-long-text",
            Self::LongList(_) => "passing-long-list",
            Self::Hidden(_) => "passing-hidden",
            Self::NoId => "passing-no-id",
            Self::SameId(_) => "passing-same-id",
            Self::Nowhere { .. } => "passing-nowhere",
            Self::Circle(_) => "passing-circle",
            Self::NotAKey => "passing-not-a-key",
            Self::NotASignature => "passing-not-a-signature",
            Self::NotAnEdition => "passing-not-an-edition",
            Self::Unreadable(_) => "passing-unreadable",
        }
    }
}

/// Why a file is not taken, and where. Nothing of it was taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// Where.
    pub place: Place,
    /// What is wrong there.
    pub reason: Reason,
}

impl Refusal {
    /// Something wrong at a place of the document.
    pub(in crate::site) fn at(path: impl Into<String>, reason: Reason) -> Self {
        Self { place: Place::Path(path.into()), reason }
    }

    /// The stable code of the reason.
    ///
    /// ```
    /// use brimline::site::passing::{Place, read};
    /// let refused = read(r#"{"brimline":"site","schema":1,"site":{"name":7}}"#).unwrap_err();
    /// assert_eq!((refused.code(), refused.place), ("passing-type", Place::Path("site.name".to_owned())));
    /// ```
    pub const fn code(&self) -> &'static str {
        self.reason.code()
    }
}
