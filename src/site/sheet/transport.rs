//! The UN number in section 14, or that the product is no dangerous good.

use super::doubt::Doubt;
use super::found::{Finding, What, in_section};
use super::lines::Line;
use super::scan::squeezed;

/// The numbers that the UN gives: from 0004 on, and not yet at 3600 (from memory, unverified).
const LIKELY: std::ops::RangeInclusive<u16> = 4..=3600;

/// How a sheet says that it is no dangerous good, letters only.
const NOT_REGULATED: &[&str] = &[
    "notregulated",
    "nonregulated",
    "notdangerousgoods",
    "nodangerousgoods",
    "notadangerousgood",
    "notclassifiedasdangerous",
    "notsubjectto",
    "notrestricted",
    "nothasardousfortransport",
];

/// Every UN number once, and statements that there is none.
pub(super) fn find(lines: &[Line]) -> Vec<Finding> {
    in_section(lines, 14, |line, below| {
        let in_section = line.section.is_some();
        let mut found: Vec<Finding> = numbers(&line.text, in_section).map(|one| of(line, one)).collect();
        if found.is_empty() && in_section {
            let below = below.filter(|_| asks_for_number(&line.text));
            found.extend(below.and_then(|below| Some(of(line, bare(&below.text)?).and(below))));
            let letters = squeezed(&line.text, 400);
            let none = NOT_REGULATED.iter().any(|words| letters.contains(words))
                || (mentions_un(&line.text) && letters.contains("notapplicable"));
            found.extend(none.then(|| Finding::new(line, What::NotRegulated)));
        }
        found
    })
}

pub(super) fn of(line: &Line, number: u16) -> Finding {
    Finding::new(line, What::Un(number)).doubt_if(!LIKELY.contains(&number), Doubt::Unlikely)
}

/// "UN1719", "UN 1719", "UN no.: 1719", "UN number or ID number UN1719"; under no heading only with "UN" right
/// before the digits.
fn numbers(text: &str, in_section: bool) -> impl Iterator<Item = u16> {
    let mut from = 0;
    std::iter::from_fn(move || {
        loop {
            let at = text.get(from..)?.find("UN").map(|at| at + from)?;
            from = at + 2;
            let before = text[..at].chars().next_back();
            let rest = &text[from..];
            let whole =
                before.is_none_or(|one| !one.is_alphanumeric()) && !rest.starts_with(char::is_alphabetic);
            let gap = rest.find(|one: char| one.is_ascii_digit()).filter(|_| whole);
            let near = gap.filter(|gap| {
                let between = &rest[..*gap];
                if in_section {
                    *gap <= 40 && is_label(between)
                } else {
                    between.trim_matches([' ', '-']).is_empty()
                }
            });
            if let Some(number) = near.and_then(|gap| four_digits(&rest[gap..])) {
                from += near.unwrap_or(0) + 4;
                return Some(number);
            }
        }
    })
}

/// Words and signs that may stand between "UN" and its digits.
fn is_label(between: &str) -> bool {
    let letters = squeezed(between, 40);
    let mut rest = letters.as_str();
    while !rest.is_empty() {
        let words = [
            "number", "numero", "or", "and", "id", "no", "nr", "na", "adr", "imdg", "iata", "dot", "un",
            "proper",
        ];
        match words.iter().find_map(|word| rest.strip_prefix(word)) {
            Some(tail) => rest = tail,
            None => return false,
        }
    }
    true
}

/// Exactly four digits.
pub(super) fn four_digits(text: &str) -> Option<u16> {
    let digits = text.bytes().take_while(u8::is_ascii_digit).count();
    let more = text[digits..].starts_with(|one: char| one == '-' || one.is_alphabetic());
    (digits == 4 && !more).then(|| text[..4].parse().ok())?
}

fn mentions_un(text: &str) -> bool {
    text.split(|one: char| !one.is_alphanumeric()).any(|word| word == "UN")
}

fn asks_for_number(text: &str) -> bool {
    mentions_un(text) && squeezed(text, 60).contains("number") || squeezed(text, 8) == "unno"
}

/// A line that opens with four digits, as under a heading "UN number".
fn bare(text: &str) -> Option<u16> {
    four_digits(text.trim_start())
}
