//! M factors of ingredients, by which their harm in water counts more.

use super::doubt::Doubt;
use super::found::{Finding, What};
use super::lines::Line;
use super::listed::{self, Ingredient};
use super::scan::{Kind, Token, tokens};
use crate::limits;

/// The harm in water that an M factor is told for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Harm {
    /// At once.
    Acute,
    /// For long.
    Chronic,
    /// The sheet does not say: then it can be put in neither place.
    NotSaid,
}

/// Every M factor that stands beside a listed ingredient.
pub(super) fn find(lines: &[Line], composition: &[Finding]) -> Vec<Finding> {
    let mut out: Vec<Finding> = Vec::new();
    for about in listed::lines(lines, composition, |text| !factors(text).is_empty()) {
        for (factor, harm) in factors(&about.line.text) {
            let what = What::Multiplier { of: about.ingredient.clone(), factor, harm };
            let one = checked(about.finding(what), factor, harm);
            if !out.iter().any(|other| other.what == one.what) {
                out.push(one);
            }
        }
    }
    out
}

fn checked(finding: Finding, factor: f64, harm: Harm) -> Finding {
    // They are 1, 10, 100 and so on: CLP, Annex I, table 4.1.3, from memory.
    let power = (0..=6).any(|power| (factor - 10_f64.powi(power)).abs() < 1e-9);
    finding
        .doubt_if(harm == Harm::NotSaid, Doubt::WhichHarm)
        .doubt_if(!power || factor > limits::M_FACTOR.high, Doubt::Unlikely)
}

/// The same ingredient with the factor of another text, such as "10 (acute)".
pub(super) fn again(line: &Line, of: &Ingredient, text: &str) -> Option<Finding> {
    let [(factor, harm)] = factors(&format!("M = {text}"))[..] else { return None };
    let what = What::Multiplier { of: of.clone(), factor, harm };
    Some(checked(Finding::new(line, what), factor, harm))
}

/// The most signs and words between "M" and its number.
const BETWEEN: usize = 8;

/// "M = 10", "M-factor (acute): 10", "Aquatic Chronic 1, H410 (M=1)", "M factor 10 (chronic)".
fn factors(text: &str) -> Vec<(f64, Harm)> {
    let all = tokens(text);
    let mut out = Vec::new();
    let mut from = 0;
    while let Some(at) = (from..all.len()).find(|at| marks(&all, *at)) {
        from = at + 1;
        let number = all[at + 1..].iter().take(BETWEEN).position(|token| token.kind == Kind::Number);
        let Some(place) = number.map(|gap| at + 1 + gap) else { continue };
        let Some(factor) = all[place].value().filter(|factor| *factor >= limits::M_FACTOR.low) else {
            continue;
        };
        // Its own words first, then those of the class that it stands behind.
        let end = all.get(place + 1).filter(|next| next.text == "(").map_or(place, |_| place + 2);
        let own = &text[all[at].start..all.get(end).map_or(text.len(), |token| token.end)];
        let clause = text[..all[at].start].rsplit([';', '\t']).next().unwrap_or_default();
        let harm = own_harm(own).or_else(|| class(clause)).unwrap_or(Harm::NotSaid);
        out.push((factor, harm));
        from = place + 1;
    }
    out
}

/// Whether the M of a factor stands here: before "=" or "factor", or before a bracket of its own.
fn marks(all: &[Token], at: usize) -> bool {
    let word = |at: usize| all.get(at).map_or("", |token| token.text);
    let factor = |at: usize| word(at).to_ascii_lowercase().starts_with("factor");
    let harm = |at: usize| matches!(word(at).to_ascii_lowercase().as_str(), "acute" | "chronic");
    word(at) == "M"
        && (word(at + 1) == "="
            || factor(at + 1)
            || word(at + 1) == "-" && factor(at + 2)
            || word(at + 1) == "(" && harm(at + 2))
}

fn own_harm(text: &str) -> Option<Harm> {
    let lower = text.to_lowercase();
    match (lower.contains("acute"), lower.contains("chronic") || lower.contains("long")) {
        (true, false) => Some(Harm::Acute),
        (false, true) => Some(Harm::Chronic),
        _ => None,
    }
}

/// The class in water that a clause names last.
fn class(text: &str) -> Option<Harm> {
    let lower = text.to_lowercase();
    let words = [
        ("aquatic acute", Harm::Acute),
        ("h400", Harm::Acute),
        ("aquatic chronic", Harm::Chronic),
        ("h410", Harm::Chronic),
    ];
    let last = words.iter().filter_map(|(word, harm)| Some((lower.rfind(word)?, *harm)));
    last.max_by_key(|(at, _)| *at).map(|(_, harm)| harm)
}
