//! Labels that are not liquid in liquid: powder by weight, ppm of active substance, whole packets.

use super::amounts::{american, both_systems, in_order, in_system, known, notes, range_text};
use super::grammar::{IN, PER, Said, TO, plain};
use super::lexer::Token::{self, Colon, Dash, Number, Slash};
use super::vocabulary::{Measure, Word, plain_name};
use super::{Basis, Label, LabelMistake, Rule, Window};
use crate::limits::{ACTIVE, POWDER_STRENGTH, TANK};
use crate::units::{Dimension, MassConcentration, Quantity, Unit, Volume, unit};

const OUNCE: Token = Token::Word(Word::Measure(Measure::BareOunce));
const WEIGHT: Token = Token::Word(Word::Weight);

/// What is counted.
#[derive(Clone, Copy)]
enum Counted {
    Mass(&'static Unit),
    Packet,
    Ppm,
}

impl Counted {
    /// How a reading names it.
    fn name(self, many: bool) -> String {
        match self {
            Self::Mass(unit) => unit.symbol.to_owned(),
            Self::Packet => if many { "packets" } else { "packet" }.to_owned(),
            Self::Ppm => "ppm".to_owned(),
        }
    }
}

/// Reads the number or range, what is counted, and the volume that it is for.
pub(super) fn counted(pieces: &[Token], said: Said) -> Result<Label, LabelMistake> {
    let (low, high, rest) = match *pieces {
        [Number(low), Dash | TO, Number(high), ref rest @ ..] => (low, high, rest),
        [Number(low), ref rest @ ..] => (low, low, rest),
        _ => return Err(LabelMistake::Shape),
    };
    let (what, rest) = match *rest {
        [OUNCE, WEIGHT, ref rest @ ..] | [WEIGHT, OUNCE, ref rest @ ..] => (mass("oz")?, rest),
        [Token::Word(Word::Mass(code)), ref rest @ ..] => (mass(code)?, rest),
        [Token::Word(Word::Packet), ref rest @ ..] => (Counted::Packet, rest),
        [Token::Word(Word::Ppm), ref rest @ ..] => (Counted::Ppm, rest),
        _ => return Err(LabelMistake::Weight),
    };
    if low == 0.0 || high == 0.0 {
        return Err(LabelMistake::Zero);
    }
    let name = what.name(high != 1.0);
    let (count, per) = match *rest {
        [] if matches!(what, Counted::Ppm) => {
            in_order(low, high, " ppm")?;
            return ppm(low, high);
        }
        [PER | Slash | Colon | TO | IN, Token::Word(Word::Measure(per))] => (1.0, per),
        [PER | Slash | Colon | TO | IN, Number(count), Token::Word(Word::Measure(per))] => (count, per),
        [Number(count), Token::Word(Word::Measure(per))] if said.made_up => (count, per),
        [Token::Word(Word::Measure(per))] if said.made_up => (1.0, per),
        [] => return Err(no_volume(low, high, &name, said)),
        _ => return Err(LabelMistake::Shape),
    };
    if count == 0.0 {
        return Err(LabelMistake::Zero);
    }
    let tail = |volume: &Unit| {
        let count = if count == 1.0 { String::new() } else { format!("{} ", plain(count)) };
        format!(" {name} per {count}{}", plain_name(volume))
    };
    let Some(volume) = known(per, said) else {
        return Err(both_systems(|system| Some(range_text(low, high) + &tail(in_system(per, system)?))));
    };
    in_order(low, high, &tail(volume))?;
    let litres = volume.to_si(count);
    let (basis, rule) = match what {
        Counted::Mass(unit) => (Basis::Powder, powder(unit.to_si(low) / litres, unit.to_si(high) / litres)?),
        Counted::Packet => (Basis::Packets, packets(litres / high, litres / low)?),
        Counted::Ppm => return Err(LabelMistake::Shape),
    };
    let other = american(&[per], said, |system| Some(range_text(low, high) + &tail(in_system(per, system)?)));
    Ok(Label { basis, rule, notes: notes(&[per], said), others: other.into_iter().collect() })
}

fn mass(code: &str) -> Result<Counted, LabelMistake> {
    unit(code).filter(|unit| unit.dimension == Dimension::Mass).map(Counted::Mass).ok_or(LabelMistake::Weight)
}

fn ppm(low: f64, high: f64) -> Result<Label, LabelMistake> {
    let active = |ppm: f64| ACTIVE.check(MassConcentration::new(ppm * 1e-3)).map_err(LabelMistake::Range);
    let rule = Rule::Active(Window { low: active(low)?, high: active(high)? });
    Ok(Label { basis: Basis::Active, rule, notes: Vec::new(), others: Vec::new() })
}

fn powder(low: f64, high: f64) -> Result<Rule, LabelMistake> {
    let strength = |si: f64| POWDER_STRENGTH.check(MassConcentration::new(si)).map_err(LabelMistake::Range);
    Ok(Rule::Powder(Window { low: strength(low)?, high: strength(high)? }))
}

fn packets(least: f64, most: f64) -> Result<Rule, LabelMistake> {
    let makes = |si: f64| TANK.check(Volume::from_si(si)).map_err(LabelMistake::Range);
    Ok(Rule::Packets(Window { low: makes(least)?, high: makes(most)? }))
}

/// An amount, but not for how much solution.
fn no_volume(low: f64, high: f64, name: &str, said: Said) -> LabelMistake {
    let per = match said.system.unwrap_or(said.site) {
        crate::units::System::Metric => "L",
        crate::units::System::Us => "US gal",
        crate::units::System::Imperial => "imp gal",
    };
    LabelMistake::NoPer { readings: vec![format!("{} {name} per {per}", range_text(low, high))] }
}
