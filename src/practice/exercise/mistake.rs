//! Spot the mistake in a fill ticket.

use super::super::picture::{Picture, Ticket};
use super::super::road::{Harm, Led, Road, Way};
use super::super::round::Round;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::Scene;
use super::telling::{asked_in, is_nearest, round_step, water_first};
use super::{DIGITS, Exercise, Key, Said, mixed};
use crate::site::Entry;
use crate::source::Source;
use crate::trade::governing::{Bound, Governs};
use crate::trade::label::Window;
use crate::trade::measure::{Rounded, round_to};
use crate::units::{Quantity, Volume, unit};

/// The most wrong roads that a ticket offers beside "nothing" and "product first".
const MOST: usize = 3;

/// What was poured, in whole steps of the measure.
#[derive(Clone)]
struct Poured {
    volume: Volume,
    entry: Entry,
    count: f64,
}

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let scene = Scene::draw(level, ready, draw).filter(|scene| !scene.contradicts())?;
    // Where a rule asks for another step than the nearest, a ticket would have two right amounts.
    let right = scene.whole().filter(|whole| is_nearest(scene.dose(), scene.jug, *whole))?;
    let right = Poured { volume: right.dose, entry: written(&scene, right.count)?, count: right.count };
    let step = scene.jug.step.value.si();
    // What the measure cannot tell from right is no mistake, and two that look alike on a ticket are one.
    let apart = |a: f64, b: f64| (a - b).abs() > (step + a.max(b) * DIGITS) * 1.01;
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
        None => right.clone(),
    };
    // Of all that is offered one alone may be true of this ticket.
    let told = Told { scene: &scene, poured: poured.volume, product_first: first };
    let offered = [None, Some((Way::ProductFirst, 0.0))].into_iter().chain(ways.iter().copied().map(Some));
    let mut true_of_it = (0..).zip(offered).filter(|(_, one)| told.may_be(*one)).map(|(at, _)| at);
    if (true_of_it.next(), true_of_it.next()) != (Some(fate), None) {
        return None;
    }
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
    let rounded = Rounded { count: right.count, dose: right.volume, inside: true };
    exercise.steps.push(round_step(scene.dose(), scene.jug, rounded));
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

/// A ticket as it reads.
struct Told<'a> {
    scene: &'a Scene<'a>,
    poured: Volume,
    product_first: bool,
}

impl Told<'_> {
    /// Whether an answer may be true of it: by the amount to which its slip leads, or because the rule that it names
    /// was passed over, by whatever slip. None is that nothing went wrong.
    fn may_be(&self, offered: Option<(Way, f64)>) -> bool {
        let step = self.scene.jug.step.value.si();
        let near = |si: f64| (self.poured.si() - si).abs() <= step / 2.0 + si * DIGITS;
        let sound = near(self.scene.dose().si());
        match offered {
            None => sound && !self.product_first,
            Some((Way::ProductFirst, _)) => self.product_first,
            Some((way, si)) => near(si) || self.passes_over(way),
        }
    }

    /// Whether the rule that a slip names does not allow what was poured. One number cannot be met to the drop: there
    /// half a step counts as kept.
    fn passes_over(&self, way: Way) -> bool {
        let by = match way {
            Way::MachineIgnored => Governs::Machine,
            Way::StandardIgnored => Governs::Standard,
            _ => return false,
        };
        let half = self.scene.jug.step.value / 2.0;
        self.scene.bounds().into_iter().filter(|bound| bound.by == by).any(|bound| {
            let slack = if bound.window.is_point() { half } else { Volume::ZERO };
            let Window { low, high } = bound.window;
            let wider = Bound { by, window: Window { low: low - slack, high: high + slack } };
            !wider.allows(self.poured)
        })
    }
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

/// What somebody pours for a dose: the nearest whole steps of the measure.
fn poured(scene: &Scene, dose: Volume) -> Option<Poured> {
    let rounded = round_to(dose, scene.jug.step.value, Window { low: dose, high: dose });
    Some(Poured { volume: rounded.dose, entry: written(scene, rounded.count)?, count: rounded.count })
}

/// So many steps of the measure, as a person writes them.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "some hundred steps")]
fn written(scene: &Scene, count: f64) -> Option<Entry> {
    let step = &scene.jug.step;
    if !(1.0..=5_000.0).contains(&count) {
        return None;
    }
    let own = unit(asked_in(scene.jug))?;
    // Whole steps of a round measure are round numbers themselves.
    let thousandths = (own.from_si(step.value.si()) * 1_000.0).round();
    let exact = (own.from_si(step.value.si()) * 1_000.0 - thousandths).abs() < 1e-6;
    let fits = exact && thousandths * count < 4e9;
    fits.then(|| Round::new(thousandths as u32, -3).times(count as u32).entry(own.code))
}
