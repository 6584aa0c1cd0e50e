//! How people write the units of a list: in its headers and behind its numbers.

use crate::number::vulgar;
use crate::units::{Unit, unit};

/// The code of each unit, and how it is written: in lower case, without dots, `2` for `²`.
const SPELLINGS: &[(&str, &[&str])] = &[
    ("ft2", &["ft2", "ft^2", "sq ft", "sqft", "sq feet", "square feet", "square foot", "sf"]),
    (
        "m2",
        &["m2", "m^2", "sq m", "sqm", "square meters", "square metres", "square meter", "square metre", "qm"],
    ),
    ("ft", &["ft", "feet", "foot"]),
    ("m", &["m", "meters", "metres", "meter", "metre"]),
    ("in", &["in", "inch", "inches"]),
    ("cm", &["cm", "centimeters", "centimetres"]),
    ("mm", &["mm", "millimeters", "millimetres"]),
    ("h", &["h", "hr", "hrs", "hour", "hours"]),
    ("min", &["min", "mins", "minute", "minutes"]),
    ("s", &["s", "sec", "secs", "second", "seconds"]),
    ("d", &["d", "days"]),
    ("per_day", &["a day", "per day", "/day", "daily"]),
    ("per_week", &["a week", "per week", "/week", "weekly"]),
    ("per_month", &["a month", "per month", "/month", "monthly"]),
    ("per_year", &["a year", "per year", "/year", "yearly"]),
];

/// A text in one spelling: lower case, one space between words, no dots or underscores.
pub(super) fn plain(text: &str) -> String {
    let even = text.to_lowercase().replace('²', "2").replace('.', "").replace(['_', '-', ':'], " ");
    even.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The unit of this spelling that measures what `like` does.
fn spelled(text: &str, like: &Unit) -> Option<&'static Unit> {
    SPELLINGS
        .iter()
        .filter(|(_, spellings)| spellings.contains(&text))
        .find_map(|(code, _)| unit(code).filter(|unit| unit.dimension == like.dimension))
}

/// What a header says without its unit, and the unit, if it names one that measures what `like` does:
/// in brackets, or as its last words.
pub(super) fn header(text: &str, like: &Unit) -> (String, Option<&'static Unit>) {
    let text = plain(text);
    if let Some((stem, rest)) = text.split_once(['(', '[']) {
        let inside = rest.split([')', ']']).next().unwrap_or_default().trim();
        let inside = inside.strip_prefix("in ").unwrap_or(inside);
        return (stem.trim().to_owned(), spelled(inside, like));
    }
    let words: Vec<&str> = text.split([' ', ',']).filter(|word| !word.is_empty()).collect();
    // The longest first: "sq ft" before "ft".
    for count in (1..=words.len().min(2)).rev() {
        let (stem, last) = words.split_at(words.len() - count);
        if let Some(unit) = spelled(&last.join(" "), like) {
            let stem = stem.strip_suffix(&["in"]).unwrap_or(stem);
            return (stem.join(" "), Some(unit));
        }
    }
    (text, None)
}

/// A cell without the unit behind its number, and that unit: "120 m²".
pub(super) fn cell<'a>(text: &'a str, like: &Unit) -> (&'a str, Option<&'static Unit>) {
    let number = |character: char| character.is_ascii_digit() || vulgar(character).is_some();
    let Some((at, last)) = text.char_indices().rfind(|(at, character)| {
        // The 2 of "m2" belongs to the unit.
        number(*character) && !text[..*at].ends_with(|before: char| before.is_alphabetic() || before == '^')
    }) else {
        return (text, None);
    };
    let (bare, tail) = text.split_at(at + last.len_utf8());
    match spelled(&plain(tail), like) {
        Some(unit) => (bare, Some(unit)),
        None => (text, None),
    }
}
