//! Acute toxicity of ingredients: LD50 and ATE, by mouth and by skin.

use super::doubt::Doubt;
use super::found::{Finding, What};
use super::lines::Line;
use super::listed::{self, Ingredient};
use super::scan::{Kind, Range, range, tokens};
use crate::limits;
use crate::number::Marks;

/// The way into the body that a toxicity is told for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum By {
    /// Swallowed.
    Mouth,
    /// Through the skin.
    Skin,
}

/// Every LD50 and ATE in mg/kg that stands beside a listed ingredient.
pub(super) fn find(lines: &[Line], composition: &[Finding]) -> Vec<Finding> {
    let mut out: Vec<Finding> = Vec::new();
    for about in listed::lines(lines, composition, tells) {
        for amount in amounts(&about.line.text) {
            let one = checked(about.finding(what(&about.ingredient, &amount)), &amount);
            if !out.iter().any(|other| other.what == one.what) {
                out.push(one);
            }
        }
    }
    out
}

/// An amount in a line, mg for each kg of body.
pub(super) struct Amount {
    pub by: By,
    range: Range,
    /// How many mg its unit is.
    factor: f64,
    /// Whether a mark was read as one between thousands.
    thousands: bool,
}

fn what(of: &Ingredient, amount: &Amount) -> What {
    let mut span = amount.range.span;
    (span.low, span.high) = (span.low * amount.factor, span.high * amount.factor);
    What::Toxicity { of: of.clone(), by: amount.by, span }
}

/// With whatever is doubtful about an amount.
fn checked(finding: Finding, amount: &Amount) -> Finding {
    let least = amount.range.span.low * amount.factor;
    let likely = (limits::TOXICITY.low..=limits::TOXICITY.high).contains(&(least * 1e-6));
    finding
        .doubt_if(amount.thousands, Doubt::Thousands)
        .doubt_if(amount.range.backwards, Doubt::Backwards)
        .doubt_if(amount.range.ranged && likely, Doubt::LeastCounts)
        .doubt_if(!likely, Doubt::Unlikely)
}

/// The same ingredient and way with the amount of another text, in the marks of the page; none where that is not
/// one amount.
pub(super) fn again(line: &Line, of: &Ingredient, by: By, text: &str, marks: Marks) -> Option<Finding> {
    let unit = if text.contains("/kg") { "" } else { " mg/kg" };
    let points = text.chars().map(|one| match one {
        _ if one == marks.decimal => '.',
        _ if one == marks.group => ',',
        _ => one,
    });
    let way = if by == By::Mouth { "oral" } else { "dermal" };
    let text = format!("{way} {}{unit}", points.collect::<String>());
    let found = amounts(&text);
    let [amount] = &found[..] else { return None };
    let numbers = tokens(&without_thousands(&text).0).iter().filter(|one| one.kind == Kind::Number).count();
    let span = amount.range.span;
    let both_ends = amount.range.ranged && span.low > 0.0 && span.high.is_finite();
    (amount.by == by && numbers == 1 + usize::from(both_ends))
        .then(|| checked(Finding::new(line, what(of, amount)), amount))
}

fn tells(text: &str) -> bool {
    let lower = text.to_lowercase();
    is_marked(&lower) && lower.contains("/kg")
}

/// "LD50", "LD 50", or "ATE" as a word of its own, but not that of the whole mixture.
fn is_marked(lower: &str) -> bool {
    let alone = |word: &str| word == "ate" || word == "cate";
    let dose = ["ld50", "ld 50", "ld-50", "ld₅₀"].iter().any(|word| lower.contains(word));
    dose || lower.split(|one: char| !one.is_alphanumeric()).any(alone)
}

/// The amounts of a line whose way into the body is told: before it since the one before, behind it, or for
/// the whole line.
pub(super) fn amounts(text: &str) -> Vec<Amount> {
    let (text, thousands) = without_thousands(&without_fifty(text));
    let lower = text.to_lowercase();
    // Small letters may take another room than great ones: then nothing is said of places.
    if lower.len() != text.len() {
        return Vec::new();
    }
    let all = tokens(&text);
    let mut found = Vec::new();
    let mut at = 0;
    while at < all.len() {
        let Some(one) = range(&all, at) else {
            at += 1;
            continue;
        };
        at = one.next.max(at + 1);
        if let Some(factor) = unit(&lower[one.end..]) {
            found.push((one, factor));
        }
    }
    let mut out = Vec::new();
    let (mut from, mut before) = (0, None);
    for (index, (one, factor)) in found.iter().enumerate() {
        let next = found.get(index + 1).map_or(lower.len(), |(next, _)| next.start);
        let behind = &lower[one.end..next];
        let behind = behind.split(';').next().unwrap_or_default();
        let way = way(&lower[from..one.start]).or_else(|| way(behind)).or(before);
        if let Some(Way::By(by)) = way {
            out.push(Amount { by, range: *one, factor: *factor, thousands });
        }
        (from, before) = (one.end, way);
    }
    out
}

#[derive(Clone, Copy)]
enum Way {
    By(By),
    /// Breathed in, or fed again and again.
    Other,
}

/// The way that a text names last.
fn way(lower: &str) -> Option<Way> {
    let words = [
        ("oral", Way::By(By::Mouth)),
        ("swallow", Way::By(By::Mouth)),
        ("ingestion", Way::By(By::Mouth)),
        ("dermal", Way::By(By::Skin)),
        ("skin", Way::By(By::Skin)),
        ("inhal", Way::Other),
        ("lcso", Way::Other),
        ("noael", Way::Other),
        ("loael", Way::Other),
        ("repeated", Way::Other),
        ("intra", Way::Other),
        ("subcut", Way::Other),
    ];
    let last = words.iter().filter_map(|(word, way)| Some((lower.rfind(word)?, *way)));
    last.max_by_key(|(at, _)| *at).map(|(_, way)| way)
}

/// How many mg the unit behind a number is, if it is one of mass for each body mass.
fn unit(behind: &str) -> Option<f64> {
    let letters: String = behind.chars().filter(|one| !one.is_whitespace()).take(8).collect();
    let opens = |units: &[&str]| units.iter().any(|unit| letters.starts_with(unit));
    if opens(&["mg/kg", "mgkg"]) { Some(1.0) } else { opens(&["g/kg"]).then_some(1000.0) }
}

/// Without commas that part thousands, since doses are told in thousands of mg and "2,000" is not 2; and whether
/// there was such a comma, or a point or a space that could be one. Those two are left: the reading that is more
/// toxic counts.
fn without_thousands(text: &str) -> (String, bool) {
    let chars: Vec<char> = text.chars().collect();
    let digit = |at: usize| chars.get(at).is_some_and(char::is_ascii_digit);
    let mut out = String::with_capacity(text.len());
    let mut parted = false;
    // Digits so far of a number that may be parted.
    let mut run = None;
    for (at, one) in chars.iter().enumerate() {
        let groups = matches!(run, Some(1..=3)) && (1..=3).all(|next| digit(at + next)) && !digit(at + 4);
        if groups && matches!(one, ',' | '.' | ' ') {
            parted = true;
            run = Some(0);
            if *one == ',' {
                continue;
            }
        } else if one.is_ascii_digit() {
            let opens = at == 0 || !(chars[at - 1].is_alphanumeric() || "-.,".contains(chars[at - 1]));
            run = match run {
                Some(digits) => Some(digits + 1),
                // "0,125" is no thousand.
                None => (opens && *one != '0').then_some(1),
            };
        } else {
            run = None;
        }
        out.push(*one);
    }
    (out, parted)
}

/// "LD50" and "LC50" without their digits, which belong to no amount.
fn without_fifty(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find("50") {
        let (before, tail) = rest.split_at(at);
        out.push_str(before);
        let name = out.trim_end_matches([' ', '-']).to_ascii_lowercase();
        out.push_str(if name.ends_with("ld") || name.ends_with("lc") { "so" } else { "50" });
        rest = &tail[2..];
    }
    out + rest
}
