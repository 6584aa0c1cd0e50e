//! The pH in section 9.

use super::doubt::Doubt;
use super::found::{Finding, Of, What, in_section};
use super::lines::Line;
use super::scan::{Kind, Range, Token, range, squeezed, tokens, until_next_property};

/// Every pH with what it was measured on.
pub(super) fn find(lines: &[Line]) -> Vec<Finding> {
    in_section(lines, 9, |line, below| {
        let Some(rest) = behind(&line.text) else { return Vec::new() };
        let found = readings(line, rest);
        let below = below.filter(|below| found.is_empty() && behind(&below.text).is_none());
        match below.filter(|below| opens_with_value(&below.text)) {
            // Words of this line, numbers of the next one.
            Some(below) => {
                let both = readings(line, &format!("{rest} {}", below.text));
                both.into_iter().map(|one| one.and(below)).collect()
            }
            None => found,
        }
    })
}

/// What stands behind "pH", where it is a word of its own.
fn behind(text: &str) -> Option<&str> {
    let mut from = 0;
    while let Some(at) = text.get(from..)?.find(['p', 'P']).map(|at| at + from) {
        from = at + 1;
        let before = text[..at].chars().next_back();
        let after = text[at + 1..].strip_prefix(['H', 'h']).or_else(|| text[at + 1..].strip_prefix(" H"));
        let Some(rest) = after.filter(|_| before.is_none_or(|one| !one.is_alphanumeric())) else { continue };
        // "pH-value", not "Ph.D." or "phosphate".
        let goes_on = rest.chars().next().is_some_and(char::is_alphanumeric);
        if !goes_on && !rest.starts_with(".D") {
            return Some(until_next_property(rest));
        }
    }
    None
}

fn opens_with_value(text: &str) -> bool {
    let text = text.trim_start_matches([' ', '\t', ':', '=', '~', '>', '<', '≥', '≤', '(']);
    text.starts_with(|one: char| one.is_ascii_digit()) || says_none(text)
}

fn says_none(text: &str) -> bool {
    let letters = squeezed(text, 40);
    ["notapplicable", "notavailable", "nodata", "notdetermined", "none", "na"]
        .iter()
        .any(|words| letters == *words || (words.len() > 4 && letters.contains(words)))
}

/// A part of the line with a context of its own.
struct Segment {
    numbers: Vec<Range>,
    of: Of,
}

pub(super) fn readings(line: &Line, rest: &str) -> Vec<Finding> {
    let mut segments: Vec<Segment> = Vec::new();
    let mut waiting = Of::NotSaid;
    for text in split(rest) {
        let Segment { numbers, of } = segment(text);
        if !numbers.is_empty() {
            let of = if of == Of::NotSaid { waiting } else { of };
            segments.push(Segment { numbers, of });
            waiting = Of::NotSaid;
        } else if let Some(last) = segments.last_mut().filter(|last| last.of == Of::NotSaid) {
            // "11.8, 1 % solution"
            last.of = of;
        } else if of != Of::NotSaid {
            waiting = of;
        }
    }
    if segments.is_empty() && says_none(rest) {
        return vec![Finding::new(line, What::NoPh)];
    }
    segments.iter().flat_map(|segment| of_segment(line, segment)).collect()
}

fn of_segment(line: &Line, segment: &Segment) -> Vec<Finding> {
    let several = segment.numbers.len() > 1;
    let one = |range: &Range| {
        let mut span = range.span;
        // "> 12" goes to the end of the scale.
        span.high = if span.high.is_finite() { span.high } else { span.low.max(14.0) };
        let finding = Finding::new(line, What::Ph { span, of: segment.of });
        finding
            .doubt_if(several, Doubt::SeveralNumbers)
            .doubt_if(range.backwards, Doubt::Backwards)
            .doubt_if(range.ranged, Doubt::Range)
            .doubt_if(span.low < 0.0 || span.high > 14.0, Doubt::Unlikely)
            .doubt_if(segment.of == Of::Solution, Doubt::OtherSolution)
            .doubt_if(matches!(segment.of, Of::Concentrate | Of::NotSaid), Doubt::OfConcentrate)
    };
    segment.numbers.iter().map(one).collect()
}

/// At semicolons, and at commas before a space, outside brackets.
fn split(text: &str) -> Vec<&str> {
    let mut out = Vec::new();
    let (mut depth, mut from) = (0_u32, 0);
    let mut chars = text.char_indices().peekable();
    while let Some((at, one)) = chars.next() {
        match one {
            '(' | '[' => depth += 1,
            ')' | ']' => depth = depth.saturating_sub(1),
            ';' | ',' if depth == 0 => {
                let parts = one == ';' || chars.peek().is_some_and(|(_, next)| next.is_whitespace());
                if parts {
                    out.push(&text[from..at]);
                    from = at + 1;
                }
            }
            _ => (),
        }
    }
    out.push(&text[from..]);
    out
}

/// The numbers that may be a pH, and what the words around them say of the solution.
fn segment(text: &str) -> Segment {
    let all = tokens(text);
    let mut numbers = Vec::new();
    let mut of = by_words(text);
    let mut at = 0;
    while at < all.len() {
        let Some(range) = range(&all, at) else {
            at += 1;
            continue;
        };
        at = range.next.max(at + 1);
        match role(text, &all, &range) {
            Role::Ph => numbers.push(range),
            Role::Strength(whole) if of == Of::NotSaid => {
                of = if whole { Of::Concentrate } else { Of::Solution }
            }
            Role::Strength(_) | Role::Other => (),
        }
    }
    Segment { numbers, of }
}

/// What a number behind "pH" is.
enum Role {
    Ph,
    /// How strong the solution is; whether it is the whole.
    Strength(bool),
    /// A temperature or a part of a name.
    Other,
}

fn role(text: &str, all: &[Token], range: &Range) -> Role {
    if range.percent {
        return Role::Strength(range.span.low >= 100.0);
    }
    let next = all.get(range.next);
    let word = next.map_or(String::new(), |token| token.text.to_ascii_lowercase());
    let before = text[..range.start].chars().next_back();
    let glued = next.is_some_and(|token| token.start == range.end);
    match word.as_str() {
        "°" | "c" | "f" | "deg" | "degrees" | "k" => Role::Other,
        "g" | "mg" | "ml" | "m" | "n" | "mol" | "ppm" | "oz" => Role::Strength(false),
        ":" if glued => Role::Strength(false),
        _ if glued && next.is_some_and(|token| token.kind == Kind::Word) => Role::Other,
        _ if before == Some(':') && text[..range.start - 1].ends_with(|one: char| one.is_ascii_digit()) => {
            Role::Strength(false)
        }
        _ if before.is_some_and(char::is_alphabetic) || before == Some('@') => Role::Other,
        _ => Role::Ph,
    }
}

fn by_words(text: &str) -> Of {
    let letters = squeezed(text, 400);
    let holds = |words: &[&str]| words.iter().any(|word| letters.contains(word));
    if holds(&["usesolution", "usedilution", "inuse", "asused", "readytouse", "workingsolution"]) {
        Of::UseSolution
    } else if holds(&["undiluted", "concentrate", "assupplied", "assold", "asis", "neat"]) {
        Of::Concentrate
    } else if holds(&["solution", "dilut", "aqueous"]) {
        Of::Solution
    } else {
        Of::NotSaid
    }
}
