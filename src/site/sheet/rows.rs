//! One line of section 3: which cells of a table it holds.

use super::found::Span;
use super::scan::{Kind as Token, Range, range, tokens};
use crate::chemistry::cas::{self, Cas};
use crate::chemistry::ghs::{Hazard, codes};

/// A CAS number in a line.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Number {
    /// As printed, without spaces.
    pub text: String,
    /// Whether its check digit is right.
    pub right: bool,
}

/// A share in a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Share {
    pub span: Span,
    pub backwards: bool,
    /// Whether a percent sign stands at it.
    pub percent: bool,
    /// Whether others stand beside it that may be meant.
    pub several: bool,
}

/// What stands in a line.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Row {
    pub numbers: Vec<Number>,
    pub share: Option<Share>,
    pub hazards: Vec<&'static Hazard>,
    pub name: String,
    /// Whether it is the head of a table.
    pub head: bool,
    /// Whether a percent sign or its words stand in that head.
    pub head_percent: bool,
}

/// The longest name that is kept.
const LONGEST_NAME: usize = 160;

/// The classes of hazards as sheets shorten them: behind one of them no name and no bare share stands.
#[rustfmt::skip]
const CLASSES: &[&str] = &[
    "skin corr", "skin irrit", "skin sens", "eye dam", "eye irrit", "acute tox", "aquatic ", "met. corr",
    "met corr", "flam. ", "flam liq", "ox. ", "stot ", "resp. sens", "asp. tox", "carc. ", "repr. ",
    "muta. ", "press. gas", "org. perox", "not classified", "skin corrosion", "skin irritation",
    "eye damage", "serious eye", "eye irritation", "eye irritant", "acute toxicity", "corrosive to metals",
    "oral ld50", "ate ", "ate:", "m=", "m =", "m-factor",
];

/// Words that name a column or a kind of number and are no part of a name.
#[rustfmt::skip]
const LABELS: &[&str] = &[
    "cas", "cas-no", "cas-nr", "cas#", "casrn", "ec", "ec-no", "einecs", "elincs", "reach", "reach-no",
    "index", "index-no", "#", "%", "wt", "wt%", "w/w", "weight", "by", "percent", "rn", "registry",
    "registration", "-", ":", "*", "•", "range", "concentration", "conc", "content", "balance", "remainder",
    "rest",
];

/// Words that follow one of these and belong to it.
const AFTER_LABEL: &[&str] = &["no", "nr", "number", "numbers"];

/// Words of a table's head.
#[rustfmt::skip]
const HEAD: &[&str] = &[
    "cas", "no", "nr", "number", "ec", "name", "component", "components", "ingredient", "ingredients",
    "chemical", "substance", "weight", "wt", "w", "percent", "concentration", "conc", "range", "content",
    "classification", "hazard", "hazards", "common", "synonym", "synonyms", "identifier", "product", "and",
    "of", "or", "by", "the", "clp", "ghs", "amount", "einecs", "index", "reach", "codes", "code",
    "statements", "material", "identity", "registration",
];

/// Reads a line.
pub(super) fn row(line: &str) -> Row {
    let (numbers, rest) = without_numbers(line);
    let hazards = codes::read(&rest).hazards;
    let rest = without_codes(&rest);
    let own = &rest[..class_at(&rest).unwrap_or(rest.len())];
    let (share, taken) = share(&rest, own.len(), !numbers.is_empty());
    let mut name = own.to_owned();
    for (start, end) in taken.into_iter().rev() {
        name.replace_range(start..end.min(own.len()), "\t");
    }
    let name = tidy(&name);
    let head = numbers.is_empty() && share.is_none() && is_head(line);
    let letters = line.to_ascii_lowercase();
    let head_percent =
        head && (letters.contains('%') || letters.contains("percent") || letters.contains("weight"));
    Row { numbers, share, hazards, name, head, head_percent }
}

/// The CAS numbers, and the line without them and without numbers of other lists.
fn without_numbers(line: &str) -> (Vec<Number>, String) {
    let mut numbers = Vec::new();
    let mut out = String::with_capacity(line.len());
    let mut at = 0;
    while let Some(first) = line[at..].chars().next() {
        let fresh = !out.ends_with(|one: char| one.is_alphanumeric() || one == '-');
        if fresh && first.is_ascii_digit() {
            if let Some((number, end)) = number_at(line, at) {
                numbers.push(number);
                out.push('\t');
                at = end;
                continue;
            }
            if let Some(end) = other_list(line, at) {
                out.push('\t');
                at = end;
                continue;
            }
        }
        out.push(first);
        at += first.len_utf8();
    }
    (numbers, out)
}

/// A text that is a CAS number and nothing else, its check digit right or wrong.
pub(super) fn number(text: &str) -> Option<Number> {
    number_at(text, 0).filter(|(_, end)| *end == text.len()).map(|(number, _)| number)
}

/// A text that is a share and nothing else.
pub(super) fn only_share(text: &str) -> Option<Share> {
    let all = tokens(text);
    let one = range(&all, 0).filter(|one| one.next == all.len())?;
    Some(Share { span: one.span, backwards: one.backwards, percent: one.percent, several: false })
}

/// A CAS number: with single spaces around its hyphens only if its check digit is right.
fn number_at(line: &str, from: usize) -> Option<(Number, usize)> {
    let bytes = line.as_bytes();
    let mut at = from;
    let mut spaced = false;
    let mut text = String::new();
    for (place, least, most) in [(0, 2, 7), (1, 2, 2), (2, 1, 1)] {
        let digits = bytes[at..].iter().take_while(|one| one.is_ascii_digit()).count();
        if digits < least || digits > most {
            return None;
        }
        text.push_str(&line[at..at + digits]);
        at += digits;
        if place < 2 {
            let hyphen = bytes[at..].iter().take(2).position(|one| *one == b'-')?;
            let gap = hyphen + 1 + usize::from(bytes.get(at + hyphen + 1) == Some(&b' '));
            if line[at..at + hyphen].bytes().any(|one| one != b' ') {
                return None;
            }
            spaced |= gap > 1;
            at += gap;
            text.push('-');
        }
    }
    let after = line[at..].chars().next();
    let goes_on = after.is_some_and(|one| one.is_alphanumeric() || one == '-');
    let right: Option<Cas> = cas::check(&text);
    if goes_on || (spaced && right.is_none()) {
        return None;
    }
    let text = right.map_or(text, |cas| cas.to_string());
    Some((Number { text, right: right.is_some() }, at))
}

/// The end of a number of another list: digits and at least two hyphens, as 215-185-5 or 011-002-00-6.
fn other_list(line: &str, from: usize) -> Option<usize> {
    let run = line[from..]
        .bytes()
        .take_while(|one| one.is_ascii_digit() || matches!(one, b'-' | b'X' | b'x'))
        .count();
    let text = &line[from..from + run];
    let digits = text.bytes().filter(u8::is_ascii_digit).count();
    (text.matches('-').count() >= 2 && digits >= 6).then_some(from + run)
}

/// Without H codes, which are read already.
fn without_codes(line: &str) -> String {
    let code = |word: &str| {
        let word = word.strip_prefix("EU").unwrap_or(word);
        let digits =
            word.strip_prefix(['H', 'h']).map(|rest| rest.bytes().take(3).filter(u8::is_ascii_digit).count());
        digits == Some(3)
    };
    let mut out = String::with_capacity(line.len());
    for word in line.split_inclusive([' ', '\t', ',', ';', '(', ')', '/', '+']) {
        let bare = word.trim_end_matches([' ', '\t', ',', ';', '(', ')', '/', '+']);
        if code(bare) {
            out.push('\t');
        } else {
            out.push_str(word);
        }
    }
    out
}

/// Where the classification of a substance begins.
fn class_at(line: &str) -> Option<usize> {
    let lower = line.to_ascii_lowercase();
    let starts = |at: usize| at == 0 || !lower[..at].ends_with(|one: char| one.is_alphanumeric());
    CLASSES.iter().filter_map(|class| lower.find(class)).filter(|at| starts(*at)).min()
}

/// The share of a line, and where it and its like stand. What stands before the classification counts before what stands in
/// it, where limits of their own may stand; one with a percent sign before all others; and a bare number only
/// where nothing else can be meant.
fn share(line: &str, own: usize, has_number: bool) -> (Option<Share>, Vec<(usize, usize)>) {
    let all = tokens(line);
    let mut found: Vec<Range> = Vec::new();
    let mut at = 0;
    while at < all.len() {
        let Some(one) = range(&all, at).filter(|one| stands(line, one)) else {
            at += 1;
            continue;
        };
        // "C ≥ 5 %": from there on a classification holds.
        let limit = at > 0 && all[at - 1].text == "C";
        at = one.next.max(at + 1);
        // "6 EO" and "500 mg/kg" are no shares.
        let next = all.get(one.next).filter(|next| next.kind == Token::Word);
        let measures = next.is_some_and(|next| !is_wide(&line[one.end..next.start]));
        let bare =
            !one.percent && (measures || one.start >= own || !one.ranged && !is_cell(line, &one, has_number));
        if !bare && !limit {
            found.push(one);
        }
    }
    let taken = found.iter().map(|one| (one.start, one.end)).filter(|(start, _)| *start < own).collect();
    let before = found.iter().any(|one| one.start < own);
    found.retain(|one| !before || one.start < own);
    let marked = found.iter().any(|one| one.percent);
    found.retain(|one| one.percent == marked);
    let Some(first) = found.first() else { return (None, taken) };
    let share = Share {
        span: first.span,
        backwards: first.backwards,
        percent: marked,
        several: found.iter().any(|one| one.span != first.span),
    };
    (Some(share), taken)
}

/// Whether a gap parts two cells.
fn is_wide(gap: &str) -> bool {
    gap.contains('\t') || gap.len() > 1
}

/// Whether a number is not part of a word: not "C12-16", "1,2-benzisothiazol" or "(2:1)".
fn stands(line: &str, one: &Range) -> bool {
    let before = line[..one.start].chars().next_back();
    let mut after = line[one.end..].chars();
    let free = |one: char| one.is_whitespace() || "([:;=,%".contains(one);
    let ends = match after.next() {
        None | Some(')' | ']' | ';' | '%' | '*') => true,
        Some(',' | '.') => after.next().is_none_or(char::is_whitespace),
        Some(one) => one.is_whitespace(),
    };
    before.is_none_or(free) && ends
}

/// Whether a number without a percent sign has a cell of its own: between tabs or wide spaces, or behind the
/// CAS number.
fn is_cell(line: &str, one: &Range, has_number: bool) -> bool {
    let (before, after) = (&line[..one.start], &line[one.end..]);
    let left = &before[before.trim_end().len()..];
    let right = &after[..after.len() - after.trim_start().len()];
    let first = before.trim().is_empty();
    let last = after.trim().is_empty();
    (first || is_wide(left))
        && (last || is_wide(right))
        && (has_number || first && last || before.contains('\t'))
}

/// What is left of a line as a name.
fn tidy(text: &str) -> String {
    let mut out = String::new();
    let mut after_label = false;
    for word in text.split_whitespace() {
        let bare = word.trim_matches([':', '.', ',', ';', '(', ')', '[', ']']).to_ascii_lowercase();
        let is_label = bare.is_empty() || LABELS.contains(&bare.as_str());
        let follows = after_label && AFTER_LABEL.contains(&bare.as_str());
        after_label = is_label || follows;
        if after_label || out.len() + word.len() > LONGEST_NAME {
            continue;
        }
        if !out.is_empty() {
            out.push(' ');
        }
        out.push_str(word);
    }
    // A comma or hyphen at the end says that the name goes on in the next line.
    let name = out
        .trim_start_matches([' ', ',', ';', ':', '-', '.', '*'])
        .trim_end_matches([' ', ';', ':', '.', '*']);
    if name.chars().filter(|one| one.is_alphabetic()).count() < 2 { String::new() } else { name.to_owned() }
}

fn is_head(line: &str) -> bool {
    let words: Vec<String> = line
        .split(|one: char| !one.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_ascii_lowercase)
        .collect();
    let known = words.iter().filter(|word| HEAD.contains(&word.as_str())).count();
    let telling = line.contains('%')
        || words
            .iter()
            .any(|word| ["cas", "name", "component", "ingredient", "concentration"].contains(&word.as_str()));
    (1..=16).contains(&words.len()) && telling && known * 3 >= words.len() * 2
}
