//! Parts: the shapes that a ratio can have, each one arm of a match.

use super::grammar::{IN, PER, Said, TO, label, plain};
use super::lexer::Token::{self, Colon, Dash, Number, Plus, Slash};
use super::{Basis, Label, LabelMistake, Note, Rule, Window};
use crate::units::{System, VolumeFraction};

/// Two numbers and the sign between them.
type Pair = (f64, Token, f64);

/// Reads numbers that have no unit.
pub(super) fn ratio(pieces: &[Token], said: Said) -> Result<Label, LabelMistake> {
    match *pieces {
        [Number(a), Colon | TO | Plus, Number(b)] if said.water_first => {
            plus_water(b, a, vec![Note::ReversedOrder])
        }
        _ if said.water_first => Err(LabelMistake::Shape),
        [Number(a), sign @ (Colon | TO | Plus | Slash | IN), Number(b)] => pair((a, sign, b), said),
        [Number(a), PER, Number(b)] if said.made_up => of_total(a, b),
        [Number(a), PER, Number(b)] => {
            let sign = if a <= 1.0 { ':' } else { '+' };
            let (a, b) = (plain(a), plain(b));
            Err(LabelMistake::Ambiguous { readings: vec![format!("{a}{sign}{b}"), format!("{a} in {b}")] })
        }
        [
            Number(a),
            one @ (Colon | TO | Plus | Slash | IN),
            Number(b),
            Dash | TO,
            Number(c),
            other @ (Colon | TO | Plus | Slash | IN),
            Number(d),
        ] => range((a, one, b), (c, other, d), said),
        // The first number is the concentrate of both ends, so that only water may be more than it.
        [Number(a), sign @ (Colon | TO | Plus | IN), Number(b), Dash | TO, Number(c)]
            if a <= b.min(c) || a * b * c == 0.0 =>
        {
            range((a, sign, b), (a, sign, c), said)
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

fn pair((a, sign, b): Pair, said: Said) -> Result<Label, LabelMistake> {
    match sign {
        Slash | IN => of_total(a, b),
        _ if said.made_up => of_total(a, b),
        Plus if b != 1.0 || a <= 1.0 => plus_water(a, b, Vec::new()),
        _ => ordered(a, b),
    }
}

/// "1:64 to 1:128". A label may start its range at either end: the weaker dilution is the low one.
fn range(first: Pair, second: Pair, said: Said) -> Result<Label, LabelMistake> {
    use LabelMistake::Ambiguous;
    let ((a, _, b), (c, _, d)) = (first, second);
    if [a, b, c, d].contains(&0.0) {
        return Err(LabelMistake::Zero);
    }
    let in_order = || format!("{}+{} to {}+{}", plain(a), plain(b), plain(c), plain(d));
    let reversed = || format!("{}+{} to {}+{}", plain(b), plain(a), plain(d), plain(c));
    match (pair(first, said), pair(second, said)) {
        (Ok(one), Ok(other)) => between(one, &other),
        (Err(Ambiguous { .. }), Err(Ambiguous { .. })) => {
            Err(Ambiguous { readings: vec![in_order(), reversed()] })
        }
        // The end that has one order lends it to the other.
        (Ok(known), Err(Ambiguous { .. })) | (Err(Ambiguous { .. }), Ok(known)) => {
            let turned = known.notes.contains(&Note::ReversedOrder);
            Err(if known.basis == Basis::PlusWater {
                Ambiguous { readings: vec![if turned { reversed() } else { in_order() }] }
            } else {
                LabelMistake::Shape
            })
        }
        (Err(Ambiguous { .. }) | Ok(_), Err(mistake)) | (Err(mistake), _) => Err(mistake),
    }
}

fn between(first: Label, second: &Label) -> Result<Label, LabelMistake> {
    let (Rule::Strength(one), Rule::Strength(other)) = (&first.rule, &second.rule) else {
        return Err(LabelMistake::Shape);
    };
    if first.basis != second.basis {
        return Err(LabelMistake::Shape);
    }
    let window = Window { low: one.low.min(other.low), high: one.high.max(other.high) };
    let others = first.others.iter().zip(&second.others).map(|(one, other)| format!("{one} to {other}"));
    label(first.basis, window, first.notes, others.collect())
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
