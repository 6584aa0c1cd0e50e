//! Read a label: which convention it is written in, and what that makes of the mix.

use super::super::picture::{Picture, Range};
use super::super::ready::{Asks, Liquid, is_open};
use super::super::road::{Led, Road, Way};
use super::super::{Draw, Level, Ready, Topic};
use super::scene::aim;
use super::sum::turned;
use super::telling::{label_told, means, strength_step};
use super::{Amount, Exercise, Key, Said, mixed};
use crate::answer::Value;
use crate::source::Source;
use crate::trade::governing::Aim;
use crate::trade::label::{Basis, Rule, Window};
use crate::units::{Kind, Quantity, VolumeFraction};

const ALL: [Basis; 9] = [
    Basis::PlusWater,
    Basis::OfTotal,
    Basis::PerWater,
    Basis::MadeUp,
    Basis::Percent,
    Basis::PerTank,
    Basis::Powder,
    Basis::Active,
    Basis::Packets,
];

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    if level == Level::First {
        return convention(ready, draw);
    }
    let liquid = draw.pick(&ready.liquids)?;
    let Asks::Strength(window) = liquid.asks else { return None };
    let aim = aim(draw);
    let strength = aim.within(window);
    let parts = 1.0 / strength.si();
    let whole = (parts - parts.round()).abs() < 1e-9;
    if level == Level::Second && whole && liquid.label.basis == Basis::PlusWater {
        return Some(parts_in_all(level, ready, liquid, aim, parts));
    }
    percent(level, ready, liquid, aim)
}

/// What a rule allows, and the end that is asked for.
fn range(rule: &Rule, aim: Option<Aim>) -> Picture {
    fn of<Q: Quantity>(window: Window<Q>, kind: Kind, aim: Option<Aim>) -> Picture {
        let value = |one: Q| Value::new(one, kind);
        let asked = aim.map(|aim| value(aim.within(window)));
        Picture::Range(Range { low: value(window.low), high: value(window.high), asked })
    }
    match *rule {
        Rule::Strength(window) => of(window, Kind::Percent, aim),
        Rule::PerTank(window) => of(window, Kind::Dose, aim),
        Rule::Powder(window) => of(window, Kind::Powder, aim),
        Rule::Active(window) => of(window, Kind::Active, aim),
        Rule::Packets(window) => of(window, Kind::Fill, aim),
    }
}

/// Which convention the label is written in.
fn convention(ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let (product, text, label) = draw.pick(&ready.labels)?;
    let basis = label.basis;
    let (near, way) = neighbour(basis);
    // Both readings of a label that leaves it open are right: the other one is not offered as wrong.
    let open = is_open(basis, text);
    let (near, way) = if open { (Basis::Percent, Way::OtherReading) } else { (near, way) };
    let also = |one: Basis| open && one == Basis::MadeUp;
    let mut rest: Vec<Basis> =
        ALL.into_iter().filter(|one| *one != basis && *one != near && !also(*one)).collect();
    draw.shuffle(&mut rest);
    let offered = [basis, near].into_iter().chain(rest.into_iter().take(2));
    let (options, place) = mixed(draw, &offered.map(|one| Said::new(means(one))).collect::<Vec<_>>());
    let key = Key::Choice { right: place[0], options };
    let asked = vec![
        Said::new("practice-label").text("product", product).text("label", text),
        Said::new("practice-ask-convention"),
    ];
    let mut exercise = Exercise::new(Topic::Label, Level::First, ready, asked, key);
    exercise.roads = vec![
        Road::new(way, Led::Choice(place[1])),
        Road::new(Way::OtherReading, Led::Choice(place[2])),
        Road::new(Way::OtherReading, Led::Choice(place[3])),
    ];
    exercise.because(Said::new(means(basis)), Source::COMMON_PRACTICE);
    exercise.picture = Some(range(&label.rule, None));
    Some(exercise)
}

/// What a convention is most often taken for.
fn neighbour(basis: Basis) -> (Basis, Way) {
    match basis {
        Basis::PlusWater => (Basis::OfTotal, Way::PartsForTotal),
        Basis::OfTotal => (Basis::PlusWater, Way::TotalForParts),
        Basis::PerWater => (Basis::MadeUp, Way::WaterForMix),
        Basis::MadeUp | Basis::Percent => (Basis::PerWater, Way::MixForWater),
        Basis::PerTank | Basis::Packets => (Basis::PerWater, Way::OtherReading),
        Basis::Powder => (Basis::PerWater, Way::WeightForVolume),
        Basis::Active => (Basis::Percent, Way::OtherReading),
    }
}

/// How many parts the mix has in all. Half a part less or more is another number of parts.
fn parts_in_all(level: Level, ready: &Ready, liquid: &Liquid, aim: Aim, parts: f64) -> Exercise {
    let key = Key::Amount(Amount::whole(parts));
    let mut asked = label_told(level, liquid, aim);
    asked.push(Said::new("practice-ask-parts"));
    let mut exercise = Exercise::new(Topic::Label, level, ready, asked, key);
    exercise.amounts([(Way::PartsForTotal, parts - 1.0)]);
    exercise.because(Said::new(means(liquid.label.basis)), Source::COMMON_PRACTICE);
    exercise.picture = Some(range(&liquid.label.rule, Some(aim)));
    exercise
}

/// The share of the mix that is product.
fn percent(level: Level, ready: &Ready, liquid: &Liquid, aim: Aim) -> Option<Exercise> {
    let Asks::Strength(window) = liquid.asks else { return None };
    let strength: VolumeFraction = aim.within(window);
    let si = strength.si();
    let key = Key::Amount(Amount::digits(Kind::Percent, "percent", si));
    let mut asked = label_told(level, liquid, aim);
    asked.push(Said::new("practice-ask-percent"));
    let mut exercise = Exercise::new(Topic::Label, level, ready, asked, key);
    let turned = turned(liquid.label.basis, liquid.asks).and_then(|(way, asks)| match asks {
        Asks::Strength(window) => Some((way, aim.within(window).si())),
        Asks::PerTank(_) => None,
    });
    let other = if aim == Aim::Low { window.high } else { window.low };
    let parts = (Way::DecimalSlip, si * 10.0);
    exercise.amounts(turned.into_iter().chain([(Way::OtherEnd, other.si()), parts]));
    exercise.steps.extend(strength_step(liquid.label.basis, strength));
    exercise.picture = Some(range(&liquid.label.rule, Some(aim)));
    Some(exercise)
}
