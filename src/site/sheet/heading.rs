//! The headings of the sixteen sections, as sheets spell them.

use super::scan::squeezed;

/// How a heading begins, its letters as [`squeezed`] gives them (z reads as s); the longest come first where one begins like another. The last
/// column says whether the words make a heading without a number too.
const TITLES: &[(u8, &str, bool)] = &[
    (1, "identification", false),
    (1, "productidentification", false),
    (1, "productandcompanyidentification", true),
    (1, "chemicalproductandcompanyidentification", true),
    (2, "hasardsidentification", true),
    (2, "hasardidentification", true),
    (3, "compositioninformationoningredients", true),
    (3, "compositionandinformationoningredients", true),
    (3, "informationoningredients", true),
    (3, "composition", false),
    (3, "ingredients", false),
    (4, "firstaidmeasures", true),
    (4, "firstaid", false),
    (5, "firefightingmeasures", true),
    (5, "firefighting", false),
    (6, "accidentalreleasemeasures", true),
    (6, "accidentalrelease", false),
    (7, "handlingandstorage", true),
    (8, "exposurecontrolspersonalprotection", true),
    (8, "exposurecontrolsandpersonalprotection", true),
    (8, "exposurecontrols", false),
    (8, "exposurecontrol", false),
    (9, "physicalandchemicalproperties", true),
    (9, "physicalchemicalproperties", true),
    (10, "stabilityandreactivity", true),
    (11, "toxicologicalinformation", true),
    (12, "ecologicalinformation", true),
    (13, "disposalconsiderations", true),
    (13, "disposalconsideration", true),
    (14, "transportinformation", true),
    (14, "transportationinformation", true),
    (15, "regulatoryinformation", true),
    (16, "otherinformation", true),
];

/// How many letters may follow the words of a numbered heading: more of them make a sentence.
const TAIL: usize = 30;

/// As few letters of a numbered heading tell it.
const SHORTEST: usize = 6;

/// The section that a line opens. The words decide; the number only where "Section" stands before it.
pub(super) fn section(line: &str) -> Option<u8> {
    opening(line).map(|(section, _)| section)
}

/// The section that a text opens, and where the heading ends.
fn opening(text: &str) -> Option<(u8, usize)> {
    let line = text.trim_start_matches(|one: char| !one.is_alphanumeric());
    let (named, line) = without_word(line);
    let (number, line) = without_number(line);
    let letters = squeezed(line, 80);
    let title = TITLES.iter().find(|(section, title, alone)| {
        let marked = named || number.is_some();
        // "9. Physical", shortened or gone on in the next line: there the number must be its own.
        let short = number == Some(*section) && letters.len() >= SHORTEST && title.starts_with(&letters);
        if marked {
            short || letters.strip_prefix(title).is_some_and(|tail| tail.len() <= TAIL || named)
        } else {
            *alone && letters == *title
        }
    });
    let before = text.len() - line.len();
    match title {
        Some((section, title, _)) => {
            Some((*section, before + letters_end(line, title.len().min(letters.len()))))
        }
        None => number.filter(|number| named && (1..=16).contains(number)).map(|number| (number, before)),
    }
}

/// Where so many letters end.
fn letters_end(text: &str, letters: usize) -> usize {
    let mut ends =
        text.char_indices().filter(|(_, one)| one.is_alphabetic()).map(|(at, one)| at + one.len_utf8());
    ends.nth(letters.saturating_sub(1)).unwrap_or(text.len())
}

/// Where the heading that a text opens with ends, for texts that lost their line ends.
pub(super) fn end(text: &str) -> Option<usize> {
    opening(text).map(|(_, end)| end).filter(|end| *end < text.len())
}

/// Without "Section" before the number, and whether it stood there.
fn without_word(line: &str) -> (bool, &str) {
    for word in ["section", "sect.", "sec."] {
        if let Some(rest) = line.get(..word.len()).filter(|head| head.eq_ignore_ascii_case(word)) {
            let rest = line[rest.len()..].trim_start();
            if rest.starts_with(|one: char| one.is_ascii_digit()) {
                return (true, rest);
            }
        }
    }
    (false, line)
}

/// Without the number, if one stands there that is not that of a part of a section ("2.1").
fn without_number(line: &str) -> (Option<u8>, &str) {
    let end = line.find(|one: char| !one.is_ascii_digit()).unwrap_or(line.len());
    let (digits, rest) = line.split_at(end);
    let mut after = rest.chars();
    let part = matches!((after.next(), after.next()), (Some('.' | ','), Some(next)) if next.is_ascii_digit());
    match digits.parse() {
        Ok(number) if !part => (Some(number), rest),
        _ => (None, line),
    }
}

/// Where a heading stands in the middle of a text that lost its line ends: "SECTION 3" that nobody refers to.
pub(super) fn inside(text: &str) -> Option<usize> {
    let mut from = 1;
    while let Some(at) = text.get(from..).and_then(|rest| rest.find("SECTION ")).map(|at| at + from) {
        let before = text[..at].trim_end();
        let word = before.rsplit(' ').next().unwrap_or_default().to_ascii_lowercase();
        let refers = ["see", "to", "in", "of", "and", "or", "also", "under"].contains(&word.as_str());
        if !refers && section(&text[at..]).is_some() {
            return Some(at);
        }
        from = at + "SECTION ".len();
    }
    None
}
