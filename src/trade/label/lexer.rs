//! From characters to numbers, signs and words.

use super::LabelMistake;
use super::vocabulary::{PHRASES, Word, number_word, word};
use crate::number::{self, Marks, NumberMistake};
use crate::units::System;

/// A piece of a label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Token {
    Number(f64),
    Colon,
    Plus,
    Slash,
    Dash,
    Word(Word),
}

/// Cuts a statement into tokens. `site` decides what a point before three digits is.
pub(super) fn tokens(text: &str, site: System) -> Result<Vec<Token>, LabelMistake> {
    let mut out: Vec<Token> = Vec::new();
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let (token, length) = if first.is_whitespace() || matches!(first, '*' | '~' | '≈') {
            (None, first.len_utf8())
        } else if first.is_ascii_digit() || starts_decimal(rest) {
            let run = number_run(rest);
            (Some(Token::Number(number_at(text, run, site)?)), run.len())
        } else if let Some(fraction) = number::vulgar(first) {
            // "1½", "1 ½" and "1-½" are one number: a range would run from more to less.
            let (whole, taken) = match *out {
                [.., Token::Number(whole)] if whole.fract() == 0.0 => (whole, 1),
                [.., Token::Number(whole), Token::Dash] if whole.fract() == 0.0 && whole > 0.0 => (whole, 2),
                _ => (0.0, 0),
            };
            out.truncate(out.len() - taken);
            (Some(Token::Number(whole + fraction)), first.len_utf8())
        } else if is_letter(first) {
            let run = word_run(rest);
            let lower = run.trim_end_matches('.').to_ascii_lowercase();
            let token = match (number_word(&lower), word(&lower)) {
                (Some(number), _) => Some(Token::Number(number)),
                (None, Some(Word::Filler)) => None,
                (None, Some(meaning)) => Some(Token::Word(meaning)),
                (None, None) => return Err(LabelMistake::Unknown { word: run.to_owned() }),
            };
            (token, run.len())
        } else {
            let token = match first {
                ':' | '∶' => Token::Colon,
                '+' => Token::Plus,
                '/' | '⁄' => Token::Slash,
                '-' | '–' | '—' | '−' | '‑' => Token::Dash,
                '%' => Token::Word(Word::Percent),
                other => return Err(LabelMistake::Unknown { word: other.to_string() }),
            };
            (Some(token), first.len_utf8())
        };
        out.extend(token);
        rest = &rest[length..];
    }
    Ok(join_fluid_ounce(out))
}

/// ".5" is a number; a comma there is punctuation between words and is refused as unknown.
fn starts_decimal(rest: &str) -> bool {
    let mut characters = rest.chars();
    characters.next() == Some('.') && characters.next().is_some_and(|second| second.is_ascii_digit())
}

fn number_run(rest: &str) -> &str {
    let end = rest.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(rest.len());
    rest[..end].trim_end_matches(['.', ','])
}

/// A letter of any script: the words that are known are all ASCII, the others are refused whole.
fn is_letter(c: char) -> bool {
    c.is_ascii_alphabetic()
        || (!c.is_ascii() && !c.is_whitespace() && number::vulgar(c).is_none() && !SIGNS.contains(c))
}

/// Signs beyond ASCII that labels are printed with.
const SIGNS: &str = "∶⁄–—−‑≈";

fn word_run(rest: &str) -> &str {
    let starts = |phrase: &&&str| {
        rest.get(..phrase.len()).is_some_and(|start| start.eq_ignore_ascii_case(phrase))
            && !rest[phrase.len()..].starts_with(is_letter)
    };
    if let Some(phrase) = PHRASES.iter().find(starts) {
        return &rest[..phrase.len()];
    }
    let end = rest.find(|c: char| !(is_letter(c) || c == '.')).unwrap_or(rest.len());
    &rest[..end]
}

/// Where gallons are at home a point before three digits is a decimal point; a comma may be either
/// mark on a label from abroad, and is asked about everywhere. So is 1.000: nobody prints that for one.
fn point_is_decimal(run: &str, decimal: f64, site: System) -> bool {
    site != System::Metric && !run.contains(',') && decimal.fract() != 0.0
}

fn number_at(text: &str, run: &str, site: System) -> Result<f64, LabelMistake> {
    number::decimal(run, None).or_else(|mistake| match mistake {
        NumberMistake::TwoReadings { decimal, .. } if point_is_decimal(run, decimal, site) => Ok(decimal),
        NumberMistake::TwoReadings { .. } => {
            let (first, second) =
                if run.contains(',') { (Marks::COMMA, Marks::POINT) } else { (Marks::POINT, Marks::COMMA) };
            let readings = vec![rewritten(text, first, site), rewritten(text, second, site)];
            Err(LabelMistake::Ambiguous { readings })
        }
        _ => Err(LabelMistake::Unknown { word: run.to_owned() }),
    })
}

/// The text with every number of two readings written in the one that `marks` gives it: a label
/// uses its marks in one way.
fn rewritten(text: &str, marks: Marks, site: System) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let run = if first.is_ascii_digit() { number_run(rest) } else { &rest[..first.len_utf8()] };
        match number::decimal(run, None) {
            Err(NumberMistake::TwoReadings { decimal, .. }) => {
                let read = if point_is_decimal(run, decimal, site) {
                    Ok(decimal)
                } else {
                    number::decimal(run, Some(marks))
                };
                out.push_str(&read.map_or(run.to_owned(), |n| plain(n, 12)));
            }
            _ => out.push_str(run),
        }
        rest = &rest[run.len()..];
    }
    out
}

/// A number that has one reading: without grouping marks, and never three digits after the mark.
pub(super) fn plain(value: f64, significant: i32) -> String {
    let text =
        number::write(value, significant, Marks { group: '\u{0}', ..Marks::POINT }).replace('\u{0}', "");
    if number::decimal(&text, None).is_ok() { text } else { text + "0" }
}

/// "fl oz" is one word, and "fluid" alone says nothing.
fn join_fluid_ounce(tokens: Vec<Token>) -> Vec<Token> {
    use super::vocabulary::{Customary, Measure};
    let mut out: Vec<Token> = Vec::with_capacity(tokens.len());
    let mut fluid = false;
    for token in tokens {
        match token {
            Token::Word(Word::Fluid) => fluid = true,
            Token::Word(Word::Measure(Measure::BareOunce)) if fluid => {
                out.push(Token::Word(Word::Measure(Measure::Customary(Customary::FluidOunce))));
                fluid = false;
            }
            other => {
                out.push(other);
                fluid = false;
            }
        }
    }
    out
}
