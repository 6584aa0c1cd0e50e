//! Which ingredient a line of section 3 or 11 is about: one that the line names, or the last one named above.

use super::found::{Finding, What};
use super::lines::Line;
use crate::chemistry::cas;

/// How many lines below its name what is said of an ingredient may stand.
const APART: usize = 8;

/// The most ingredients that are looked for in each line.
const MOST: usize = 60;

/// The shortest name that is looked for: "Urea", not "EC".
const SHORTEST: usize = 4;

/// Words of tables and tests: a line with one of them names no other substance.
const OF_TESTS: &[&str] = &[
    "acute", "oral", "dermal", "skin", "inhal", "toxic", "ld50", "lc50", "ate", "species", "method",
    "result", "value", "exposure", "route", "rat", "rabbit", "mouse", "effect", "oecd", "remark", "m-factor",
    "corros", "irrita", "page",
];

/// An ingredient, as it was found in section 3.
#[derive(Clone, Debug, PartialEq)]
pub struct Ingredient {
    /// Its name; may be empty.
    pub name: String,
    /// Its CAS number; may be empty.
    pub cas: String,
}

/// A line that says something of an ingredient.
pub(super) struct About<'a> {
    pub ingredient: Ingredient,
    /// The line that names it.
    pub named: &'a Line,
    pub line: &'a Line,
}

impl About<'_> {
    /// Something found in the line, with the line that names the ingredient.
    pub fn finding(&self, what: What) -> Finding {
        let finding = Finding::new(self.line, what);
        if self.named.number == self.line.number { finding } else { finding.and(self.named) }
    }
}

/// The lines of sections 3 and 11 that `tells` of and that one listed ingredient belongs to.
pub(super) fn lines<'a>(
    lines: &'a [Line],
    composition: &[Finding],
    tells: impl Fn(&str) -> bool,
) -> Vec<About<'a>> {
    let listed = ingredients(composition);
    let mut out = Vec::new();
    let mut last: Option<(&Ingredient, &Line)> = None;
    for line in lines.iter().filter(|line| line.belongs_to(3) || line.belongs_to(11)) {
        let telling = tells(&line.text);
        // Under no heading only what stands in one line belongs together.
        if line.heading || (line.section.is_none() && !telling) {
            last = None;
            continue;
        }
        let lower = line.text.to_lowercase();
        last = match named(&listed, &line.text, &lower) {
            Named::One(one) => Some((one, line)),
            Named::Other => None,
            Named::Nothing => last.filter(|(_, named)| {
                line.number <= named.number + APART && named.section == line.section && line.section.is_some()
            }),
        };
        if let Some((one, named)) = last.filter(|_| telling) {
            out.push(About { ingredient: one.clone(), named, line });
        }
    }
    out
}

fn ingredients(composition: &[Finding]) -> Vec<Ingredient> {
    let mut out: Vec<Ingredient> = Vec::new();
    for finding in composition {
        let What::Part(part) = &finding.what else { continue };
        let one = Ingredient { name: part.name.clone(), cas: part.cas.clone() };
        let told = one.name.chars().count() >= SHORTEST || cas::check(&one.cas).is_some();
        if told && !out.contains(&one) && out.len() < MOST {
            out.push(one);
        }
    }
    out
}

/// What a line names.
enum Named<'a> {
    One(&'a Ingredient),
    /// Several, or something that is not listed.
    Other,
    Nothing,
}

fn named<'a>(listed: &'a [Ingredient], text: &str, lower: &str) -> Named<'a> {
    let by_number = |one: &&Ingredient| cas::check(&one.cas).is_some() && text.contains(&one.cas);
    let mut found: Vec<&Ingredient> = listed.iter().filter(by_number).collect();
    if found.is_empty() {
        let by_name =
            |one: &&Ingredient| one.name.len() >= SHORTEST && holds(lower, &one.name.to_lowercase());
        found = listed.iter().filter(by_name).collect();
        // "Hydroxide" in "Sodium hydroxide" is no other one.
        let longest = found.iter().map(|one| one.name.len()).max().unwrap_or(0);
        let within = |one: &Ingredient, all: &[&Ingredient]| {
            all.iter().any(|other| {
                other.name.len() == longest && holds(&other.name.to_lowercase(), &one.name.to_lowercase())
            })
        };
        let all = found.clone();
        found.retain(|one| one.name.len() == longest || !within(one, &all));
    }
    match found[..] {
        [one] => Named::One(one),
        [] if is_other(text, lower) => Named::Other,
        [] => Named::Nothing,
        _ => Named::Other,
    }
}

/// Whether a text holds words that are not part of longer words.
fn holds(text: &str, words: &str) -> bool {
    text.match_indices(words).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = text[at + words.len()..].chars().next();
        let free = |one: Option<char>| one.is_none_or(|one| !one.is_alphanumeric());
        free(before) && free(after)
    })
}

/// Whether a line begins to speak of another substance, or of the whole product.
fn is_other(text: &str, lower: &str) -> bool {
    let whole = ["product", "mixture", "atemix", "ate mix"].iter().any(|word| lower.contains(word));
    let other_number = text
        .split(|one: char| !one.is_ascii_digit() && one != '-')
        .any(|word| word.matches('-').count() == 2 && cas::check(word).is_some());
    let letters = text.chars().any(char::is_alphabetic);
    let bare = letters && !OF_TESTS.iter().any(|word| lower.contains(word)) && !lower.contains("m=");
    whole || other_number || bare
}
