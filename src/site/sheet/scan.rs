//! Words, numbers and signs of a line, and ranges of numbers.

use super::found::Span;
use crate::number::{self, NumberMistake};

/// The letters of a text, small and without anything between, the first `most` of them. British and American
/// endings (oxidising, oxidizing) read alike.
pub(super) fn squeezed(text: &str, most: usize) -> String {
    let letters = text.chars().filter(|one| one.is_alphabetic()).flat_map(char::to_lowercase);
    letters.map(|one| if one == 'z' { 's' } else { one }).take(most).collect()
}

/// Names of properties in section 9 that end what is said of the one before, small letters.
#[rustfmt::skip]
const PROPERTIES: &[&str] = &[
    "density", "gravity", "boiling", "melting", "freezing", "flash", "viscosity", "solub", "vapor",
    "vapour", "odor", "odour", "appearance", "relative", "specific", "evaporation", "partition", "flammab",
    "explosi", "section ",
];

/// A text up to the name of the next property.
pub(super) fn until_next_property(text: &str) -> &str {
    let lower = text.to_ascii_lowercase();
    let end = PROPERTIES.iter().filter_map(|name| lower.find(name)).min();
    &text[..end.unwrap_or(text.len())]
}

/// What a token is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    Number,
    Word,
    Sign,
}

/// A word, a number or a sign, and where it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Token<'a> {
    pub kind: Kind,
    pub text: &'a str,
    pub start: usize,
    pub end: usize,
}

impl Token<'_> {
    fn is(&self, sign: &str) -> bool {
        self.text == sign
    }

    /// Its value, where it is a number. What could be read with a decimal mark or with one between thousands
    /// is read with the decimal mark: no share, pH or density is in the thousands.
    pub fn value(&self) -> Option<f64> {
        if self.kind != Kind::Number {
            return None;
        }
        match number::decimal(self.text, None) {
            Ok(value) => Some(value),
            Err(NumberMistake::TwoReadings { decimal, .. }) => Some(decimal),
            Err(_) => None,
        }
    }
}

/// The tokens of a line.
pub(super) fn tokens(text: &str) -> Vec<Token<'_>> {
    let mut out = Vec::new();
    let mut chars = text.char_indices().peekable();
    while let Some((start, first)) = chars.next() {
        if first.is_whitespace() {
            continue;
        }
        let kind = match first {
            _ if first.is_ascii_digit() => Kind::Number,
            _ if first.is_alphabetic() => Kind::Word,
            _ => Kind::Sign,
        };
        while let Some((at, next)) = chars.peek().copied() {
            let more = match kind {
                Kind::Word => next.is_alphabetic(),
                Kind::Number => {
                    let digit = |text: &str| text.starts_with(|one: char| one.is_ascii_digit());
                    next.is_ascii_digit() || (matches!(next, '.' | ',') && digit(&text[at + 1..]))
                }
                Kind::Sign => false,
            };
            if !more {
                break;
            }
            chars.next();
        }
        let end = chars.peek().map_or(text.len(), |(at, _)| *at);
        out.push(Token { kind, text: &text[start..end], start, end });
    }
    out
}

/// A number or a range in a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Range {
    pub span: Span,
    /// Whether the first number is the greater one.
    pub backwards: bool,
    /// Whether a percent sign stands at it.
    pub percent: bool,
    /// Whether it has two ends or an open one.
    pub ranged: bool,
    pub start: usize,
    pub end: usize,
    /// The token behind it.
    pub next: usize,
}

/// How a number is bounded by what stands before it.
#[derive(Clone, Copy, PartialEq)]
enum Bound {
    None,
    Most,
    Least,
}

/// The most signs and words before a number that are looked at: "at least approx. ~".
const MOST_BEFORE: usize = 8;

/// Signs and words before a number: `<`, `<=`, `=<`, `≥`, "less than", "up to", "max.", "about".
fn bound(tokens: &[Token], from: usize) -> (Bound, usize) {
    let is = |at: usize, words: &[&str]| {
        tokens.get(at).is_some_and(|token| words.iter().any(|word| word.eq_ignore_ascii_case(token.text)))
    };
    let mut at = from;
    let mut found = Bound::None;
    while at < from + MOST_BEFORE {
        let than = is(at + 1, &["than"]);
        (found, at) = if is(at, &["<", "≤", "max", "maximum", "below", "under"]) {
            (Bound::Most, at + 1)
        } else if is(at, &[">", "≥", "min", "minimum", "above", "over"]) {
            (Bound::Least, at + 1)
        } else if is(at, &["=", "~", "≈", "ca", "approx", "approximately", "about", "or", "equal"]) {
            (found, at + 1)
        } else if than && is(at, &["less", "lower"]) || is(at, &["up"]) && is(at + 1, &["to"]) {
            (Bound::Most, at + 2)
        } else if than && is(at, &["more", "greater", "higher"]) || is(at, &["at"]) && is(at + 1, &["least"])
        {
            (Bound::Least, at + 2)
        } else if at > from && is(at, &["."]) {
            // "max." and "ca."
            (found, at + 1)
        } else {
            break;
        };
    }
    (found, at)
}

/// Reads a number or range that begins at a token: `5`, `5-10 %`, `5 - <10`, `>= 1 < 5 %`, `≤ 1`, `7 ± 0.5`.
pub(super) fn range(tokens: &[Token], from: usize) -> Option<Range> {
    let (first_bound, mut at) = bound(tokens, from);
    let first = tokens.get(at)?;
    let value = first.value()?;
    let mut percent = false;
    let mut end = first.end;
    at += 1;
    let mut take_percent = |at: &mut usize, end: &mut usize| {
        let found = percent_sign(tokens, *at);
        if let Some(next) = found {
            percent = true;
            *end = tokens[next - 1].end;
            *at = next;
        }
    };
    take_percent(&mut at, &mut end);
    let second = second(tokens, at, first_bound);
    let (low, high) = match (second, first_bound) {
        (Some((Join::PlusMinus, other, _)), _) => (value - other, value + other),
        (Some((Join::To, other, _)), _) => (value, other),
        (None, Bound::None) => (value, value),
        (None, Bound::Most) => (0.0, value),
        (None, Bound::Least) => (value, f64::INFINITY),
    };
    if let Some((_, _, next)) = second {
        end = tokens[next - 1].end;
        at = next;
        take_percent(&mut at, &mut end);
    }
    let backwards = low > high;
    let span = Span { low: low.min(high), high: low.max(high) };
    let start = tokens[from].start;
    Some(Range { span, backwards, percent, ranged: !span.is_one(), start, end, next: at })
}

/// Behind a percent sign, a unit of percent by mass, or the word.
fn percent_sign(tokens: &[Token], from: usize) -> Option<usize> {
    let text = |at: usize| tokens.get(at).map_or("", |token| token.text);
    let word = text(from).to_ascii_lowercase();
    match word.as_str() {
        "%" | "percent" => Some(from + 1),
        // "wt%", "wt. %", "weight %"
        "wt" | "weight" | "w" if text(from + 1) == "%" => Some(from + 2),
        "wt" if text(from + 1) == "." && text(from + 2) == "%" => Some(from + 3),
        _ => None,
    }
}

/// What joins two numbers.
#[derive(Clone, Copy, PartialEq)]
enum Join {
    To,
    PlusMinus,
}

/// The second number of a range, and the token behind it.
fn second(tokens: &[Token], from: usize, first: Bound) -> Option<(Join, f64, usize)> {
    let token = tokens.get(from)?;
    let (join, at) = match token.text {
        "-" | "to" => (Join::To, from + 1),
        "±" => (Join::PlusMinus, from + 1),
        "+" if tokens.get(from + 1)?.is("/") && tokens.get(from + 2)?.is("-") => (Join::PlusMinus, from + 3),
        // "≥ 5 < 10", with or without "and".
        "and" if first == Bound::Least => (Join::To, from + 1),
        "<" | "≤" => (Join::To, from),
        _ => return None,
    };
    let (bound, at) = bound(tokens, at);
    let number = tokens.get(at)?;
    // "5 - > 10" is no range.
    if bound == Bound::Least {
        return None;
    }
    Some((join, number.value()?, at + 1))
}
