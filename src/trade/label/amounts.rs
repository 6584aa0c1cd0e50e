//! Amounts with a unit: for a volume of water, for a tank, or as a percentage.

use super::grammar::{IN, PER, Said, TANK, TO, label, plain};
use super::lexer::Token::{self, Colon, Dash, Number, Slash};
use super::vocabulary::{Customary, Measure, Word, plain_name};
use super::{Basis, Label, LabelMistake, Note, Rule, Window};
use crate::limits::MACHINE_DOSE;
use crate::units::{Quantity, System, Unit, Volume, VolumeFraction, unit};

/// Reads an amount: the number or range, its unit, and what it is for.
pub(super) fn amount(pieces: &[Token], said: Said) -> Result<Label, LabelMistake> {
    let (low, high, measure, rest) = match *pieces {
        [Number(low), Dash | TO, Number(high), Token::Word(w), ref rest @ ..] => (low, high, w, rest),
        [Number(low), Token::Word(v), Dash | TO, Number(high), Token::Word(w), ref rest @ ..]
            if v == w && (!rest.is_empty() || w == Word::Percent) =>
        {
            (low, high, w, rest)
        }
        [Number(low), Token::Word(w), ref rest @ ..] => (low, low, w, rest),
        _ => return Err(LabelMistake::Shape),
    };
    if low == 0.0 || high == 0.0 {
        return Err(LabelMistake::Zero);
    }
    match (measure, rest) {
        (Word::Percent, []) => percent(low, high),
        (Word::Percent, [IN]) if said.water => percent(low, high),
        (Word::Measure(measure), rest) => per_volume(low, high, measure, rest, said),
        _ => Err(LabelMistake::Shape),
    }
}

/// One number, or the range from less to more.
pub(super) fn range_text(a: f64, b: f64) -> String {
    if a == b { plain(a) } else { format!("{} to {}", plain(a.min(b)), plain(a.max(b))) }
}

pub(super) fn in_order(low: f64, high: f64, tail: &str) -> Result<(), LabelMistake> {
    if low <= high { Ok(()) } else { Err(LabelMistake::Backwards { reading: range_text(low, high) + tail }) }
}

fn percent(low: f64, high: f64) -> Result<Label, LabelMistake> {
    in_order(low, high, " %")?;
    if high > 100.0 {
        return Err(LabelMistake::MoreThanWhole);
    }
    let window = Window { low: VolumeFraction::new(low / 100.0), high: VolumeFraction::new(high / 100.0) };
    label(Basis::Percent, window, Vec::new(), Vec::new())
}

fn per_volume(
    low: f64,
    high: f64,
    measure: Measure,
    rest: &[Token],
    said: Said,
) -> Result<Label, LabelMistake> {
    let (count, per) = match *rest {
        [PER | Slash | IN, TANK] | [TANK] => return per_tank(low, high, measure, said),
        [PER | Slash | Colon | TO | IN, Token::Word(Word::Measure(per))] => (1.0, per),
        [PER | Slash | Colon | TO | IN, Number(count), Token::Word(Word::Measure(per))]
        | [PER | Slash | Colon | TO | IN, Number(count), Token::Word(Word::Measure(per)), TANK] => {
            (count, per)
        }
        [Number(count), Token::Word(Word::Measure(per))] if said.made_up => (count, per),
        [] => return no_per(low, high, measure, said),
        _ => return Err(LabelMistake::Shape),
    };
    if count == 0.0 {
        return Err(LabelMistake::Zero);
    }
    let tail = |first: &Unit, second: &Unit, of: &str| {
        let count = if count == 1.0 { String::new() } else { format!("{} ", plain(count)) };
        format!(" {} per {count}{}{of}", plain_name(first), plain_name(second))
    };
    let text = |first: &Unit, second: &Unit, of: &str| range_text(low, high) + &tail(first, second, of);
    let of = if said.made_up { " made up" } else { "" };
    let (Some(dose), Some(volume)) = (known(measure, said), known(per, said)) else {
        return Err(both_systems(|system| {
            Some(text(in_system(measure, system)?, in_system(per, system)?, of))
        }));
    };
    in_order(low, high, &tail(dose, volume, of))?;
    let share = |amount: f64| dose.to_si(amount) / volume.to_si(count);
    let notes = notes(&[measure, per], said);
    let american = american(&[measure, per], said, |system| {
        Some(text(in_system(measure, system)?, in_system(per, system)?, of))
    });
    if said.made_up {
        if share(high) > 1.0 {
            return Err(LabelMistake::MoreThanWhole);
        }
        let window = Window { low: VolumeFraction::new(share(low)), high: VolumeFraction::new(share(high)) };
        let others = std::iter::once(text(dose, volume, " water")).chain(american);
        label(Basis::MadeUp, window, notes, others.collect())
    } else {
        let strength = |amount: f64| VolumeFraction::new(share(amount) / (1.0 + share(amount)));
        let made_up = (share(high) <= 1.0).then(|| text(dose, volume, " made up"));
        let others = made_up.into_iter().chain(american).collect();
        label(Basis::PerWater, Window { low: strength(low), high: strength(high) }, notes, others)
    }
}

fn per_tank(low: f64, high: f64, measure: Measure, said: Said) -> Result<Label, LabelMistake> {
    let text = |unit: &Unit| format!("{} {} per tank", range_text(low, high), plain_name(unit));
    let Some(dose) = known(measure, said) else {
        return Err(both_systems(|system| Some(text(in_system(measure, system)?))));
    };
    in_order(low, high, &format!(" {} per tank", plain_name(dose)))?;
    let volume = |amount: f64| Volume::from_si(dose.to_si(amount));
    for amount in [low, high] {
        MACHINE_DOSE.check(volume(amount)).map_err(LabelMistake::Range)?;
    }
    let rule = Rule::PerTank(Window { low: volume(low), high: volume(high) });
    let others = american(&[measure], said, |system| Some(text(in_system(measure, system)?)));
    Ok(Label {
        basis: Basis::PerTank,
        rule,
        notes: notes(&[measure], said),
        others: others.into_iter().collect(),
    })
}

/// "2 oz" says nothing about the water: the likely ways to go on are offered.
fn no_per(low: f64, high: f64, measure: Measure, said: Said) -> Result<Label, LabelMistake> {
    let Some(dose) = known(measure, said) else {
        let text = |system| {
            Some(format!("{} {} per tank", range_text(low, high), plain_name(in_system(measure, system)?)))
        };
        return Err(both_systems(text));
    };
    let per = match dose.system {
        Some(System::Metric) => unit("l"),
        other => Customary::Gallon.in_system(other.unwrap_or_default()),
    };
    let start = format!("{} {} per", range_text(low, high), plain_name(dose));
    let readings =
        per.map(|per| format!("{start} {}", plain_name(per))).into_iter().chain([format!("{start} tank")]);
    Err(LabelMistake::NoPer { readings: readings.collect() })
}

pub(super) fn in_system(measure: Measure, system: System) -> Option<&'static Unit> {
    match measure {
        Measure::Known(unit) => Some(unit),
        Measure::Customary(customary) => customary.in_system(system),
        Measure::BareOunce => Customary::FluidOunce.in_system(system),
    }
}

pub(super) fn known(measure: Measure, said: Said) -> Option<&'static Unit> {
    in_system(measure, said.system.unwrap_or(said.site))
}

/// In an imperial site a bare "gal" is imperial, but many products come with US labels: their
/// reading is offered too.
pub(super) fn american(
    measures: &[Measure],
    said: Said,
    text: impl Fn(System) -> Option<String>,
) -> Option<String> {
    let open = measures.iter().any(|measure| !matches!(measure, Measure::Known(_)));
    let offered = open && said.system.is_none() && said.site == System::Imperial;
    offered.then(|| text(System::Us)).flatten()
}

pub(super) fn both_systems(text: impl Fn(System) -> Option<String>) -> LabelMistake {
    LabelMistake::Ambiguous {
        readings: [System::Us, System::Imperial].into_iter().filter_map(text).collect(),
    }
}

pub(super) fn notes(measures: &[Measure], said: Said) -> Vec<Note> {
    let mut out = Vec::new();
    if measures.contains(&Measure::BareOunce) {
        out.push(Note::FluidOunce);
    }
    let open = measures.iter().any(|measure| !matches!(measure, Measure::Known(_)));
    match said.site {
        _ if said.system.is_some() || !open => {}
        System::Us => out.push(Note::UsMeasure),
        System::Imperial => out.push(Note::ImperialMeasure),
        System::Metric => {}
    }
    out
}
