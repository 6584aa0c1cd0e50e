//! The languages that the page speaks.

use super::Plural;

/// A language. Its words stand in `words/<code>/`.
#[derive(Debug, PartialEq, Eq)]
pub struct Language {
    /// Its tag (BCP 47).
    pub code: &'static str,
    /// What it calls itself.
    pub name: &'static str,
    /// Which form a number takes.
    pub plural: Plural,
    /// Whether a native reader has checked its words.
    pub checked: bool,
}

/// All, English first: it is part of the page, and what another language lacks is said in it.
pub const LANGUAGES: &[Language] = &[
    Language { code: "en", name: "English", plural: Plural::One, checked: true },
    Language { code: "es", name: "Español", plural: Plural::One, checked: false },
    Language { code: "fr", name: "Français", plural: Plural::ZeroOrOne, checked: false },
    Language { code: "ht", name: "Kreyòl", plural: Plural::Same, checked: false },
    Language { code: "pl", name: "Polski", plural: Plural::Polish, checked: false },
    Language { code: "pt", name: "Português", plural: Plural::ZeroOrOne, checked: false },
];

impl Language {
    /// English.
    pub fn english() -> &'static Self {
        &LANGUAGES[0]
    }
}
