//! Spot the mistake in a fill ticket.

use super::super::picture::{Picture, Ticket};
use super::super::road::{Harm, Led, Road, Way};
use super::super::round::Round;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::Scene;
use super::telling::{asked_in, water_first};
use super::{Exercise, Key, Said, half_width, mixed};
use crate::answer::Value;
use crate::site::Entry;
use crate::source::Source;
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::measure::round_to;
use crate::units::{Kind, Quantity, Volume, unit};

/// The most wrong roads that a ticket offers beside "nothing" and "product first".
const MOST: usize = 3;

/// What was poured, in whole steps of the measure.
struct Poured {
    volume: Volume,
    entry: Entry,
}

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let scene = Scene::draw(level, ready, draw)?;
    let right = poured(&scene, scene.dose())?;
    let step = scene.jug.step.value.si();
    // What the measure cannot tell from right is no mistake, and two that look alike on a ticket are one.
    let apart = |a: f64, b: f64| (a - b).abs() > (step + half_width(a.max(b), step)) * 1.01;
    let mut ways: Vec<(Way, f64)> = Vec::new();
    for (way, si) in scene.roads() {
        let open =
            apart(si, scene.dose().si()) && ways.iter().all(|(one, other)| *one != way && apart(si, *other));
        if open && si > step * 2.0 && si < scene.machine.tank.value.si() / 2.0 {
            ways.push((way, si));
        }
    }
    draw.shuffle(&mut ways);
    ways.truncate(MOST);
    if ways.len() < 2 {
        return None;
    }
    let fate = draw.below(2 + u32::try_from(ways.len()).ok()?);
    let (chosen, first) = match fate {
        0 => (None, false),
        1 => (None, true),
        other => (ways.get(other as usize - 2), false),
    };
    let poured = match chosen {
        Some((_, si)) => poured(&scene, Volume::new(*si))?,
        None => poured(&scene, scene.dose())?,
    };
    let nothing = Said::new("practice-ticket-nothing");
    let options = [nothing, Said::new(way_key(Way::ProductFirst))]
        .into_iter()
        .chain(ways.iter().map(|(way, _)| Said::new(way_key(*way))))
        .collect::<Vec<_>>();
    let (options, place) = mixed(draw, &options);
    let key = Key::Choice { right: place[fate as usize], options };
    let mut asked = scene.told();
    asked.push(Said::new(if first {
        "practice-ticket-product-first"
    } else {
        "practice-ticket-water-first"
    }));
    asked.push(Said::new("practice-ticket-poured").entry("poured", &poured.entry));
    let lines = asked.clone();
    asked.push(Said::new("practice-ask-mistake"));
    let mut exercise = Exercise::new(Topic::Mistake, level, ready, asked, key);
    exercise.roads = roads(&place, fate, poured.volume.si() > scene.most() + step, first);
    exercise.steps = scene.steps();
    let given =
        [("c", Value::new(scene.dose(), Kind::Dose)), ("s", Value::new(scene.jug.step.value, Kind::Dose))];
    let count = (scene.dose() / scene.jug.step.value).round().max(1.0);
    exercise.steps.push(super::telling::step(&formula::ROUND, &given, Value::plain(count, Kind::Count)));
    exercise.because(
        Said::new(["practice-ticket-is-right", "practice-ticket-is-wrong"][usize::from(fate > 0)]),
        Source::DEFINITION,
    );
    exercise.reasons.extend(scene.rule());
    exercise.reasons.push(water_first());
    // The order stands on the last line but one, the amount on the last.
    let should = || Said::new("practice-ticket-poured").entry("poured", &right.entry);
    let wrong = match fate {
        0 => None,
        1 => Some((lines.len() - 2, Said::new("practice-ticket-water-first"))),
        _ => Some((lines.len() - 1, should())),
    };
    exercise.picture = Some(Picture::Ticket(Ticket { lines, wrong }));
    Some(exercise)
}

/// The words of a way, as they stand among the choices.
fn way_key(way: Way) -> String {
    format!("practice-made-{}", way.code())
}

/// Every wrong choice is a road: to miss a mistake, to see one that is not there, to see another one.
fn roads(place: &[usize], fate: u32, over: bool, first: bool) -> Vec<Road> {
    let hurts = if over {
        Some(Harm::OverLabel)
    } else if first {
        Some(Harm::Splash)
    } else {
        None
    };
    let wrong = |(index, now): (usize, &usize)| {
        let led = Led::Choice(*now);
        match (index, fate) {
            (0, _) => Road { harm: hurts, ..Road::new(Way::Overlooked, led) },
            (_, 0) => Road::new(Way::FalseAlarm, led),
            _ => Road::new(Way::OtherMistake, led),
        }
    };
    place.iter().enumerate().filter(|(index, _)| *index != fate as usize).map(wrong).collect()
}

/// The nearest whole steps of the measure.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "some hundred steps")]
fn poured(scene: &Scene, dose: Volume) -> Option<Poured> {
    let step = &scene.jug.step;
    let rounded = round_to(dose, step.value, Window { low: dose, high: dose });
    if !(1.0..=5_000.0).contains(&rounded.count) {
        return None;
    }
    let own = unit(asked_in(scene.jug))?;
    // Whole steps of a round measure are round numbers themselves.
    let thousandths = (own.from_si(step.value.si()) * 1_000.0).round();
    let exact = (own.from_si(step.value.si()) * 1_000.0 - thousandths).abs() < 1e-6;
    let entry = Round::new(thousandths as u32, -3).times(rounded.count as u32).entry(own.code);
    (exact && thousandths * rounded.count < 4e9).then_some(Poured { volume: rounded.dose, entry })
}
