//! The density in section 9.

use super::doubt::Doubt;
use super::found::{Finding, What, in_section};
use super::lines::Line;
use super::scan::{Token, range, tokens, until_next_property};

/// A liquid that is cleaned with lies in between, g/mL; a powder as it is poured begins lower.
const LIKELY: (f64, f64) = (0.3, 2.5);

/// How a density is called, small letters. What stands first is looked for first.
const NAMES: &[&str] = &["relative density", "specific gravity", "bulk density", "density", "sp. gr."];

/// Every density and specific gravity.
pub(super) fn find(lines: &[Line]) -> Vec<Finding> {
    in_section(lines, 9, |line, below| {
        let Some((name, rest)) = named(&line.text) else { return Vec::new() };
        let found = values(line, name, &rest);
        let below = below.filter(|below| found.is_empty() && named(&below.text).is_none());
        match below.filter(|below| opens_with_number(&below.text)) {
            Some(below) => values(line, name, &below.text).into_iter().map(|one| one.and(below)).collect(),
            None => found,
        }
    })
}

fn opens_with_number(text: &str) -> bool {
    text.trim_start().starts_with(|one: char| one.is_ascii_digit() || "<>~≥≤".contains(one))
}

/// The name, and what stands behind it without what is said in brackets of the water that it is held against.
fn named(text: &str) -> Option<(&'static str, String)> {
    let lower = text.to_ascii_lowercase();
    let (name, at) = NAMES.iter().find_map(|name| Some((*name, lower.find(name)?)))?;
    let before = lower[..at].trim_end();
    if before.ends_with("vapor") || before.ends_with("vapour") || lower[at..].starts_with("density of vap") {
        return None;
    }
    let rest = &text[at + name.len()..];
    if lower[at + name.len()..].trim_start().starts_with("vap") {
        return None;
    }
    Some((name, without_reference(until_next_property(rest))))
}

/// "(water = 1)" says no density.
fn without_reference(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some((before, tail)) = rest.split_once('(') {
        out.push_str(before);
        let Some((inner, after)) = tail.split_once(')') else {
            rest = tail;
            break;
        };
        if inner.contains('=') {
            out.push(' ');
        } else {
            out.extend(["(", inner, ")"]);
        }
        rest = after;
    }
    out + rest
}

pub(super) fn values(line: &Line, name: &str, text: &str) -> Vec<Finding> {
    let all = tokens(text);
    let mut out: Vec<Finding> = Vec::new();
    let mut at = 0;
    while at < all.len() {
        let Some(found) = range(&all, at) else {
            at += 1;
            continue;
        };
        at = found.next.max(at + 1);
        let glued = text[..found.start].ends_with(|one: char| one.is_alphanumeric() || one == '/');
        let unit = unit(text, &all, found.next, found.end);
        if glued || found.percent || unit == Unit::Other || !found.span.high.is_finite() {
            continue;
        }
        let relative = name != "density" && name != "bulk density";
        let (code, factor) = match unit {
            Unit::PerGallon => ("lb_per_gal_us", 1.0),
            Unit::PerCubicMetre => ("g_per_ml", 1e-3),
            _ => ("g_per_ml", 1.0),
        };
        let mut span = found.span;
        (span.low, span.high) = (span.low * factor, span.high * factor);
        let to_grams = if unit == Unit::PerGallon { 0.119_826_427_3 } else { 1.0 };
        let likely = span.low * to_grams >= LIKELY.0 && span.high * to_grams <= LIKELY.1;
        // Behind the first number one without a unit is a temperature or an edition of a method.
        if unit == Unit::None && (!out.is_empty() || !likely && !relative) {
            continue;
        }
        let finding = Finding::new(line, What::Density { span, unit: code })
            .doubt_if(unit == Unit::None && !relative, Doubt::NoUnit)
            .doubt_if(found.backwards, Doubt::Backwards)
            .doubt_if(found.ranged, Doubt::Range)
            .doubt_if(!likely, Doubt::Unlikely);
        out.push(finding);
    }
    out
}

/// What stands behind a number.
#[derive(Clone, Copy, PartialEq)]
enum Unit {
    None,
    PerMillilitre,
    PerCubicMetre,
    PerGallon,
    /// A temperature, or anything that is no density.
    Other,
}

fn unit(text: &str, all: &[Token], next: usize, end: usize) -> Unit {
    let Some(token) = all.get(next) else { return Unit::None };
    let rest: String = text[end..].chars().filter(|one| !one.is_whitespace()).take(16).collect();
    let rest = rest.to_ascii_lowercase();
    let starts = |words: &[&str]| words.iter().any(|word| rest.starts_with(word));
    if starts(&["g/cm", "g/ml", "g/cc", "kg/l", "kg/dm", "g.cm", "gcm", "g/cu"]) {
        Unit::PerMillilitre
    } else if starts(&["kg/m", "g/l", "kg.m"]) {
        Unit::PerCubicMetre
    } else if starts(&["lb/gal", "lbs/gal", "lb/us", "lbs/us", "lb./gal", "lbs./gal", "poundspergal", "lb/g"])
    {
        Unit::PerGallon
    } else if starts(&["°", "c)", "c,", "f)", "f,", "deg", "cat", "/"])
        || (token.start == end && token.text.len() > 1)
        || matches!(token.text, "C" | "F" | "c" | "f" | "K")
    {
        Unit::Other
    } else {
        Unit::None
    }
}
