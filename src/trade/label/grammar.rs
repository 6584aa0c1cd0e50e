//! From tokens to a label: the shapes a dilution can have, each one arm of a match.

use super::amounts::amount;
use super::lexer::Token::{self, Colon, Dash, Number, Plus, Slash};
use super::lexer::{self, tokens};
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
    let mut pieces = tokens(text)?;
    let has = |word: Word| move |token: &Token| *token == Token::Word(word);
    if pieces.iter().any(has(Word::Weight)) {
        return Err(LabelMistake::Weight);
    }
    let said = Said {
        made_up: pieces.iter().any(has(Word::MadeUp)),
        system: pieces.iter().find_map(|token| match token {
            Token::Word(Word::System(system)) => Some(*system),
            _ => None,
        }),
        water_first: water_first(&pieces),
        site: system,
    };
    let systems = pieces.iter().filter(|token| matches!(token, Token::Word(Word::System(_)))).count();
    pieces = resolve_systems(pieces, said, systems);
    let has_unit = pieces.iter().any(|t| matches!(t, Token::Word(Word::Measure(_) | Word::Percent)));
    if has_unit {
        if said.water_first {
            return Err(LabelMistake::Shape);
        }
        pieces = join_fractions(&pieces);
        amount(&pieces, said)
    } else {
        ratio(&pieces, said)
    }
}

/// What stands in a statement beside its numbers and units.
#[derive(Clone, Copy)]
pub(super) struct Said {
    pub made_up: bool,
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
            Token::Word(Word::Water | Word::MadeUp) => {}
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

/// "1/2 oz", "1 1/2 oz" and "1-1/2 oz" (a range would run from more to less): in an amount with a unit, whole numbers around a slash are a fraction.
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
            [other, tail @ ..] => {
                out.push(*other);
                tail
            }
        };
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

fn ratio(pieces: &[Token], said: Said) -> Result<Label, LabelMistake> {
    match *pieces {
        [Number(a), Colon | TO | Plus, Number(b)] if said.water_first => {
            plus_water(b, a, vec![Note::ReversedOrder])
        }
        _ if said.water_first => Err(LabelMistake::Shape),
        [Number(a), Colon | TO | Plus, Number(b)] if said.made_up => of_total(a, b),
        [Number(a), Plus, Number(b)] if b != 1.0 || a <= 1.0 => plus_water(a, b, Vec::new()),
        [Number(a), Colon | TO | Plus, Number(b)] => ordered(a, b),
        [Number(a), Slash | IN, Number(b)] => of_total(a, b),
        [Number(a), Colon, Number(b), Dash | TO, Number(c), Colon, Number(d)] => {
            let read = if said.made_up { of_total } else { ordered };
            ratio_range(read(a, b)?, &read(c, d)?)
        }
        [Number(a), Dash, Number(b)] => {
            let per = match said.site {
                System::Us => "US fl oz per US gal",
                System::Metric => "mL per L",
                System::Imperial => "imp fl oz per imp gal",
            };
            let (a, b) = (plain(a), plain(b));
            Err(LabelMistake::Ambiguous { readings: vec![format!("{a}:{b}"), format!("{a} to {b} {per}")] })
        }
        [Number(_)] | [Number(_), Number(_)] => Err(LabelMistake::NoUnit),
        _ => Err(LabelMistake::Shape),
    }
}

/// "1:64 to 1:128". A label may start its range at either end: the weaker dilution is the low one.
fn ratio_range(first: Label, second: &Label) -> Result<Label, LabelMistake> {
    let (Rule::Strength(one), Rule::Strength(other)) = (&first.rule, &second.rule) else {
        return Err(LabelMistake::Shape);
    };
    let window = Window { low: one.low.min(other.low), high: one.high.max(other.high) };
    label(first.basis, window, first.notes, Vec::new())
}

/// Which of two numbers is the concentrate: the one that is 1, or less.
fn ordered(a: f64, b: f64) -> Result<Label, LabelMistake> {
    if a == 0.0 || b == 0.0 {
        Err(LabelMistake::Zero)
    } else if a <= 1.0 && b >= 1.0 {
        plus_water(a, b, Vec::new())
    } else if b <= 1.0 {
        plus_water(b, a, vec![Note::ReversedOrder])
    } else {
        let (a, b) = (plain(a), plain(b));
        Err(LabelMistake::Ambiguous { readings: vec![format!("{a}+{b}"), format!("{b}+{a}")] })
    }
}

fn plus_water(concentrate: f64, water: f64, notes: Vec<Note>) -> Result<Label, LabelMistake> {
    if concentrate == 0.0 || water == 0.0 {
        return Err(LabelMistake::Zero);
    }
    let strength = VolumeFraction::from_parts_of_water(water / concentrate);
    let others = if water > concentrate {
        vec![format!("{} in {}", plain(concentrate), plain(water))]
    } else {
        Vec::new()
    };
    label(Basis::PlusWater, Window { low: strength, high: strength }, notes, others)
}

fn of_total(part: f64, total: f64) -> Result<Label, LabelMistake> {
    if part == 0.0 || total == 0.0 {
        return Err(LabelMistake::Zero);
    }
    if part > total {
        return Err(LabelMistake::MoreThanWhole);
    }
    let strength = VolumeFraction::new(part / total);
    let others = if part < total { vec![format!("{}+{}", plain(part), plain(total))] } else { Vec::new() };
    label(Basis::OfTotal, Window { low: strength, high: strength }, Vec::new(), others)
}
