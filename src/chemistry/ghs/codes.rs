//! Reads H and P codes out of text pasted from a label or a safety data sheet.

use super::Knowledge;
use super::hazard::{self, Hazard};
use super::precaution::{self, Precaution};

/// The codes found in a text, each once, in the order they came.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Codes {
    /// Hazard statements in the table.
    pub hazards: Vec<&'static Hazard>,
    /// Precautionary statements in the table.
    pub precautions: Vec<&'static Precaution>,
    /// What looks like a code but stands in no table here, as it was written (upper case).
    pub unknown: Vec<String>,
}

impl Codes {
    /// What these codes alone let us claim: never `Full`, when nothing was found or something was
    /// not understood. That a product is not classified must be said by a person who read its sheet.
    pub fn knowledge(&self) -> Knowledge {
        if self.hazards.is_empty() || !self.unknown.is_empty() { Knowledge::Partial } else { Knowledge::Full }
    }

    /// Looks a code or combination up and keeps it; false when no table has it.
    fn keep(&mut self, code: &str) -> bool {
        if let Some(found) = hazard::find(code) {
            push(&mut self.hazards, found);
        } else if let Some(found) = precaution::find(code) {
            push(&mut self.precautions, found);
        } else {
            return false;
        }
        true
    }

    /// Keeps a chain of codes joined by `+`, the longest known combinations first.
    fn keep_chain(&mut self, chain: &[String]) {
        let mut start = 0;
        while start < chain.len() {
            // No longer than any in the tables: a paste may hold a chain of thousands.
            let mut end = chain.len().min(start + LONGEST);
            while end > start && !self.keep(&chain[start..end].join("+")) {
                end -= 1;
            }
            if end == start {
                push(&mut self.unknown, chain[start].clone());
                end = start + 1;
            }
            start = end;
        }
    }
}

/// The most single codes in a combination of the tables.
const LONGEST: usize = 4;

fn push<T: PartialEq>(list: &mut Vec<T>, item: T) {
    if !list.contains(&item) {
        list.push(item);
    }
}

/// Finds the H and P codes in any text. It never fails: what it cannot place is kept as unknown.
///
/// Case, spaces and line breaks inside a combination do not matter; `+351` and `/351` take the
/// letter of the code before; the endings some countries add (H350i, H360FD) are understood.
///
/// ```
/// use brimline::chemistry::ghs::codes::read;
/// let codes = read("H314, P305 + P351+P338; h290, H999");
/// assert_eq!(codes.hazards.iter().map(|h| h.code).collect::<Vec<_>>(), ["H314", "H290"]);
/// assert_eq!(codes.precautions[0].code, "P305+P351+P338");
/// assert_eq!(codes.unknown, ["H999"]);
/// ```
pub fn read(text: &str) -> Codes {
    let written: Vec<char> = text.chars().collect();
    let chars: Vec<char> = written.iter().map(|one| plain(*one)).collect();
    let mut codes = Codes::default();
    let mut at = 0;
    let mut fresh = true; // a code may start here: nothing, or a whole code, stands before
    while at < chars.len() {
        let Some(first) = fresh.then(|| scan(&chars, at, None)).flatten() else {
            if let Some(end) = fresh.then(|| foreign(&chars, at).or_else(|| cut_off(&chars, at))).flatten() {
                push(&mut codes.unknown, chars[at..end].iter().collect());
                at = end;
                continue;
            }
            at += 1;
            fresh = starts_word(&written, at);
            continue;
        };
        let letter = chars[at];
        let mut chain = vec![first.code];
        let mut ending = first.ending;
        at = first.end;
        while let Some(next) = joined(&chars, at).and_then(|from| scan(&chars, from, Some(letter))) {
            chain.push(next.code);
            ending = ending.or(next.ending);
            at = next.end;
        }
        codes.keep_chain(&chain);
        if let Some(odd) = ending {
            push(&mut codes.unknown, odd);
        }
    }
    codes
}

/// Whether a code may start here: after no letter or digit, or where a paste lost a space ("burnsH318"),
/// but not inside "pH".
fn starts_word(written: &[char], at: usize) -> bool {
    let before = written[at - 1];
    let glued =
        before.is_lowercase() && before != 'p' && written.get(at).is_some_and(|one| one.is_uppercase());
    !before.is_alphanumeric() || glued
}

/// One code in the text: `H314`, where it ends, and an ending that was not understood.
struct Scan {
    code: String,
    ending: Option<String>,
    end: usize,
}

/// Reads a code at `from`. In a chain the letter may be left out.
fn scan(chars: &[char], from: usize, chain_letter: Option<char>) -> Option<Scan> {
    let mut at = from;
    let letter = match chars.get(at) {
        Some(&found @ ('H' | 'P')) if chain_letter.is_none_or(|letter| letter == found) => {
            at += 1;
            if chars.get(at) == Some(&' ') {
                at += 1;
            }
            found
        }
        _ => chain_letter?,
    };
    let digits_end = run(chars, at, |one| one.is_ascii_digit());
    let bare = at == from; // a bare number after a plus is taken for a code only when it has three digits
    if digits_end < at + 3 || (bare && digits_end > at + 3) {
        return None;
    }
    let code: String = std::iter::once(letter).chain(chars[at..digits_end].iter().copied()).collect();
    let letters_end = run(chars, digits_end, char::is_alphabetic);
    let tail: String = chars[digits_end..letters_end].iter().collect();
    let glued = matches!(chars.get(letters_end), Some(next) if next.is_ascii_digit());
    let end = match tail.as_str() {
        "" => digits_end,
        // "H314H318" and "H314Causes": the code is over, what follows is read on its own.
        _ if glued || tail.chars().count() > 2 => digits_end,
        _ => letters_end,
    };
    let understood = end == digits_end || is_regional(&code, &tail);
    let ending = (!understood).then(|| format!("{code}{tail}"));
    Some(Scan { code, ending, end })
}

/// Endings of Regulation (EC) No 1272/2008: inhaled only, or which part of fertility is harmed.
fn is_regional(code: &str, tail: &str) -> bool {
    matches!((code, tail), ("H350", "I") | ("H360" | "H361", "F" | "D" | "FD" | "DF"))
}

/// A regional supplement ("EUH031") ends here; kept as unknown.
fn foreign(chars: &[char], at: usize) -> Option<usize> {
    let end = run(chars, at + 3, |one| one.is_ascii_digit());
    (chars.get(at..at + 3)? == ['E', 'U', 'H'] && end >= at + 6).then_some(end)
}

/// A code that lost its last digits ("H3") ends here, where nothing else stands beside it; kept as unknown.
fn cut_off(chars: &[char], at: usize) -> Option<usize> {
    let end = run(chars, at + 1, |one| one.is_ascii_digit());
    let short = matches!(chars.get(at), Some('H' | 'P')) && (at + 2..at + 4).contains(&end);
    let alone = chars.get(end).is_none_or(|one| !one.is_alphanumeric());
    (short && alone).then_some(end)
}

/// Where the next code of a chain would start: after a plus, slash or bracket.
fn joined(chars: &[char], at: usize) -> Option<usize> {
    let sign = run(chars, at, |one| matches!(one, ' ' | '[' | '('));
    if !matches!(chars.get(sign), Some('+' | '/')) {
        return None;
    }
    Some(run(chars, sign + 1, |one| one == ' '))
}

/// The end of the run of characters from `at` that pass the test.
fn run(chars: &[char], at: usize, test: impl Fn(char) -> bool) -> usize {
    let rest = chars.get(at..).unwrap_or_default();
    at + rest.iter().take_while(|one| test(**one)).count()
}

/// One plain character for the many that print alike: any white space, full-width plus, the
/// Cyrillic letters that look like H and P.
fn plain(one: char) -> char {
    match one {
        'Н' | 'н' => 'H',
        'Р' | 'р' => 'P',
        '＋' => '+',
        _ if one.is_whitespace() => ' ',
        _ => one.to_ascii_uppercase(),
    }
}
