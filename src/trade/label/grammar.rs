//! From tokens to a label: what stands beside the numbers, and whether they are parts or amounts.

use super::amounts::amount;
use super::counted::counted;
use super::lexer::Token::{self, Dash, Number, Slash};
use super::lexer::{self, tokens};
use super::ratio::ratio;
use super::vocabulary::{Customary, Measure, Word};
use super::{Basis, Label, LabelMistake, Note, Rule, Window};
use crate::limits::STRENGTH;
use crate::units::{System, VolumeFraction};

pub(super) const TO: Token = Token::Word(Word::To);
pub(super) const IN: Token = Token::Word(Word::In);
pub(super) const PER: Token = Token::Word(Word::Per);
pub(super) const TANK: Token = Token::Word(Word::Tank);

/// Reads one statement of a label.
pub(super) fn statement(text: &str, system: System) -> Result<Label, LabelMistake> {
    let mut pieces = tokens(text, system)?;
    let has = |word: Word| pieces.contains(&Token::Word(word));
    if has(Word::ByWeight) {
        return Err(LabelMistake::Weight);
    }
    if has(Word::Neat) {
        let counted = pieces.iter().any(|token| matches!(token, Number(_)));
        return Err(if counted { LabelMistake::Shape } else { LabelMistake::Neat });
    }
    let has_unit = pieces.iter().any(|t| matches!(t, Token::Word(Word::Measure(_) | Word::Percent)));
    let said = Said {
        made_up: has(Word::MadeUp) || has_unit && has(Word::Solution),
        water: has(Word::Water),
        system: pieces.iter().find_map(|token| match token {
            Token::Word(Word::System(system)) => Some(*system),
            _ => None,
        }),
        water_first: water_first(&pieces),
        site: system,
    };
    let systems = pieces.iter().filter(|token| matches!(token, Token::Word(Word::System(_)))).count();
    pieces = resolve_systems(pieces, said, systems);
    let solid = |t: &Token| matches!(t, Token::Word(Word::Mass(_) | Word::Weight | Word::Ppm | Word::Packet));
    if pieces.iter().any(solid) {
        counted(&fold_range(join_fractions(&pieces)), said)
    } else if has_unit {
        if said.water_first {
            return Err(LabelMistake::Shape);
        }
        amount(&fold_range(join_fractions(&pieces)), said)
    } else {
        ratio(&pieces, said)
    }
}

/// What stands in a statement beside its numbers and units.
#[derive(Clone, Copy)]
pub(super) struct Said {
    /// The numbers are for the finished solution. "Solution" alone says so of an amount; beside a
    /// ratio it only names what the ratio makes.
    pub made_up: bool,
    pub water: bool,
    /// The first number is the water's: "64 parts water to 1 part cleaner".
    pub water_first: bool,
    pub system: Option<System>,
    pub site: System,
}

fn water_first(pieces: &[Token]) -> bool {
    let number = |token: &Token| matches!(token, Number(_));
    let water = pieces.iter().position(|token| *token == Token::Word(Word::Water));
    let (first, last) = (pieces.iter().position(number), pieces.iter().rposition(number));
    water.is_some() && first < water && water < last
}

/// "US gal" becomes the US gallon; the words that [`Said`] keeps are taken out. Where the label names
/// one system once, its other measures belong to it too.
fn resolve_systems(pieces: Vec<Token>, said: Said, systems: usize) -> Vec<Token> {
    let mut out = Vec::with_capacity(pieces.len());
    let mut named = None;
    for piece in pieces {
        match piece {
            Token::Word(Word::System(system)) => named = Some(system),
            Token::Word(Word::Water | Word::MadeUp | Word::Solution) => {}
            Token::Word(Word::Measure(Measure::Customary(measure))) => {
                let system = named.take().or(said.system.filter(|_| systems == 1));
                let known = system.and_then(|system| measure.in_system(system)).map(Measure::Known);
                out.push(Token::Word(Word::Measure(known.unwrap_or(Measure::Customary(measure)))));
            }
            Token::Word(Word::Measure(Measure::BareOunce)) if named.is_some() => {
                let ounce = named.take().and_then(|system| Customary::FluidOunce.in_system(system));
                out.push(Token::Word(Word::Measure(ounce.map_or(Measure::BareOunce, Measure::Known))));
            }
            other => out.push(other),
        }
    }
    out
}

/// "1/2 oz", "1 1/2 oz" and "1-1/2 oz" (a range would run from more to less): in an amount with a
/// unit, whole numbers around a slash are a fraction. "10-gal" is "10 gal".
fn join_fractions(pieces: &[Token]) -> Vec<Token> {
    let mut out = Vec::with_capacity(pieces.len());
    let mut rest = pieces;
    let whole = |number: f64| number.fract() == 0.0 && number > 0.0;
    loop {
        rest = match rest {
            [] => return out,
            [Number(n), Number(a), Slash, Number(b), tail @ ..]
            | [Number(n), Dash, Number(a), Slash, Number(b), tail @ ..]
                if whole(*n) && whole(*a) && whole(*b) && a < b =>
            {
                out.push(Number(n + a / b));
                tail
            }
            [Number(a), Slash, Number(b), tail @ ..] if whole(*a) && whole(*b) => {
                out.push(Number(a / b));
                tail
            }
            [Number(n), Dash, unit @ Token::Word(Word::Measure(_)), tail @ ..] => {
                out.extend([Number(*n), *unit]);
                tail
            }
            [other, tail @ ..] => {
                out.push(*other);
                tail
            }
        };
    }
}

/// "1 oz per gal to 2 oz per gal" says the same of both its ends: "1 - 2 oz per gal".
fn fold_range(pieces: Vec<Token>) -> Vec<Token> {
    match pieces.split_at(pieces.len() / 2) {
        ([low @ Number(_), of @ ..], [Dash | TO, high @ Number(_), same @ ..])
            if of == same && of.len() > 1 =>
        {
            [&[*low, Dash, *high], of].concat()
        }
        _ => pieces,
    }
}

/// A number in a reading.
pub(super) fn plain(value: f64) -> String {
    lexer::plain(value, 6)
}

pub(super) fn label(
    basis: Basis,
    window: Window<VolumeFraction>,
    notes: Vec<Note>,
    others: Vec<String>,
) -> Result<Label, LabelMistake> {
    for strength in [window.low, window.high] {
        STRENGTH.check(strength).map_err(LabelMistake::Range)?;
    }
    Ok(Label { basis, rule: Rule::Strength(window), notes, others })
}
