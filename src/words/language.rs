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
];

impl Language {
    /// English.
    pub fn english() -> &'static Self {
        &LANGUAGES[0]
    }

    /// The first language that a person reads out of those that he or she prefers, by their tags.
    ///
    /// ```
    /// use brimline::words::Language;
    /// let code = |tags: &[&str]| Language::preferred(tags.iter().copied()).map(|one| one.code);
    /// assert_eq!(code(&["de-AT", "es-419", "en"]), Some("es"));
    /// assert_eq!(code(&["est"]), None);
    /// ```
    pub fn preferred<'a>(tags: impl IntoIterator<Item = &'a str>) -> Option<&'static Self> {
        tags.into_iter().find_map(|tag| {
            let own = tag.split('-').next().unwrap_or_default();
            LANGUAGES.iter().find(|one| one.code.eq_ignore_ascii_case(own))
        })
    }
}
