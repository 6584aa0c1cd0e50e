//! A pasted text as tidy lines, each in its section.

use super::heading;
use crate::chemistry::cas::is_dash;

/// The most characters of a line that are looked at in one go; a longer one is cut at a space. Whoever checks
/// a finding must be able to see where it comes from.
const LONGEST: usize = 400;

/// The most lines that are read; a sheet has a thousand or two.
const MOST: usize = 50_000;

/// A line, or a piece of a long one.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Line {
    /// The number of the line in the pasted text, from 1 on.
    pub number: usize,
    /// Its text: one kind of dash, tabs between cells, nothing that does not print.
    pub text: String,
    /// The section that it belongs to; none before the first heading.
    pub section: Option<u8>,
    /// Whether it is the heading.
    pub heading: bool,
}

impl Line {
    /// Whether a reader of this section looks at it.
    pub fn belongs_to(&self, section: u8) -> bool {
        self.section.is_none_or(|own| own == section)
    }
}

/// The lines of a text that are not empty, and whether there were more of them than are read.
pub(super) fn read(text: &str) -> (Vec<Line>, bool) {
    let mut lines: Vec<Line> = Vec::new();
    let mut section = None;
    let mut joined: Option<(usize, String)> = None;
    for (number, raw) in numbered(text) {
        let (number, clean) = match joined.take() {
            Some((first, before)) => (first, before + &clean(raw)),
            None => (number, clean(raw)),
        };
        // A hyphen that only stands for a word that goes on in the next line.
        if raw.trim_end().ends_with('\u{ad}') && clean.len() < LONGEST {
            joined = Some((number, clean));
            continue;
        }
        for piece in pieces(&clean) {
            if lines.len() == MOST {
                return (lines, true);
            }
            let found = heading::section(piece);
            section = found.or(section);
            lines.push(Line { number, text: piece.to_owned(), section, heading: found.is_some() });
        }
    }
    if let Some((number, text)) = joined {
        lines.push(Line { number, text, section, heading: false });
    }
    (lines, false)
}

/// The lines with their numbers, by whatever ends them.
fn numbered(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let mut rest = Some(text);
    let lines = std::iter::from_fn(move || {
        let text = rest?;
        let Some(at) = text.find(['\n', '\r', '\u{85}', '\u{2028}', '\u{2029}']) else {
            rest = None;
            return Some(text);
        };
        let (line, tail) = text.split_at(at);
        let mut ends = tail.chars();
        let end = ends.next();
        let after = ends.as_str();
        rest = Some(if end == Some('\r') { after.strip_prefix('\n').unwrap_or(after) } else { after });
        Some(line)
    });
    (1..).zip(lines)
}

/// A line without what does not print, and with one character for the many that print alike.
pub(super) fn clean(line: &str) -> String {
    let mut out = String::with_capacity(line.len());
    for one in line.chars() {
        match one {
            '\u{ad}' | '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{feff}' => (),
            '\t' | '|' | '¦' | '│' => out.push('\t'),
            '＜' | '﹤' => out.push('<'),
            '＞' | '﹥' => out.push('>'),
            '⩽' | '≦' => out.push('≤'),
            '⩾' | '≧' => out.push('≥'),
            '％' | '﹪' => out.push('%'),
            '：' => out.push(':'),
            'º' | '˚' => out.push('°'),
            _ if is_dash(one) => out.push('-'),
            _ if one.is_whitespace() || one.is_control() => out.push(' '),
            _ => out.push(one),
        }
    }
    out
}

/// A line in pieces that a person can look over. One that is longer than a line can be lost its line ends:
/// there headings are looked for in the middle too.
fn pieces(line: &str) -> impl Iterator<Item = &str> {
    let line = line.trim();
    let unbroken = line.len() > LONGEST;
    let mut rest = line;
    std::iter::from_fn(move || {
        rest = rest.trim_start();
        if rest.is_empty() {
            return None;
        }
        let window = &rest[..rest.char_indices().nth(LONGEST).map_or(rest.len(), |(at, _)| at)];
        let end = if window.len() == rest.len() { window.len() } else { last_space(window) };
        let heading = |text: &str| heading::end(text).or_else(|| heading::inside(text));
        let end = unbroken.then(|| heading(&window[..end])).flatten().unwrap_or(end);
        let (piece, tail) = rest.split_at(end);
        rest = tail;
        Some(piece)
    })
}

/// Where a full window is cut: at the last space of its second half, or at its end.
fn last_space(window: &str) -> usize {
    window.rfind([' ', '\t']).filter(|at| *at > window.len() / 2).unwrap_or(window.len())
}
