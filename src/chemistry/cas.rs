//! CAS numbers: the names of substances that a safety data sheet gives beside its words.

use crate::source::Source;
use std::fmt;

/// A CAS number whose check digit is right. Whether a substance bears it is not known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Cas(u64);

/// Where the check digit comes from.
pub const SOURCE: Source =
    Source::published("CAS, Check Digit Verification of CAS Registry Numbers, 2007: 107-07-3 keeps it");

/// Reads a text as a CAS number: two to seven digits, two digits and the check digit that belongs to them,
/// with hyphens between. Spaces around the hyphens, any kind of dash, and zeros before the number do not
/// matter.
///
/// `R = Σ i × dᵢ mod 10`, the digits before the last one counted from the right
///
/// * `text`: as typed or as a sheet prints it, and nothing beside it.
///
/// Returns none where it is no CAS number. Source: [`SOURCE`].
///
/// ```
/// use brimline::chemistry::cas::check;
/// assert_eq!(check(" 64–19–7 ").unwrap().to_string(), "64-19-7");
/// assert!(check("7732-18-5").is_some());
/// assert!(check("7732-18-6").is_none() && check("7732185").is_none());
/// ```
pub fn check(text: &str) -> Option<Cas> {
    let mut groups = text.split(is_dash).map(str::trim);
    let (first, second, last) = (groups.next()?, groups.next()?, groups.next()?);
    let first = first.trim_start_matches('0');
    let lengths = (2..=7).contains(&first.len()) && second.len() == 2 && last.len() == 1;
    let digits = || first.bytes().chain(second.bytes()).chain(last.bytes());
    if groups.next().is_some() || !lengths || !digits().all(|one| one.is_ascii_digit()) {
        return None;
    }
    let number = digits().fold(0, |number, digit| number * 10 + u64::from(digit - b'0'));
    let sum: u64 =
        digits().rev().skip(1).zip(1..).map(|(digit, place)| place * u64::from(digit - b'0')).sum();
    (sum % 10 == number % 10).then_some(Cas(number))
}

/// Whether it is one of the dashes that sheets put for a hyphen.
pub fn is_dash(one: char) -> bool {
    matches!(one, '-' | '‐' | '‑' | '‒' | '–' | '—' | '―' | '−' | '﹣' | '－')
}

impl fmt::Display for Cas {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}-{:02}-{}", self.0 / 1_000, self.0 / 10 % 100, self.0 % 10)
    }
}
