//! Put an overdosed tank right: how much water, or how much to drain first.

use super::super::picture::{Picture, State, Tanks};
use super::super::road::Way;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::{Scene, tank_mark};
use super::telling::{label_told, step, strength_step, tank_told};
use super::{Amount, Exercise, Key, Said};
use crate::answer::Value;
use crate::form::Filling;
use crate::source::Source;
use crate::trade::formula;
use crate::trade::rescue::{Rescue, TOLERANCE, rescue};
use crate::trade::top_up::Content;
use crate::units::{Kind, Quantity, Volume, unit};

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    // On the first level too the tank must have room for water.
    let drawn = if level == Level::First { Level::Second } else { level };
    let scene = Scene { filling: Filling::MadeUp, level, ..Scene::draw(drawn, ready, draw)? };
    if (scene.dose() / scene.label_dose() - 1.0).abs() > 1e-9 {
        return None;
    }
    let (tank, target) = (scene.machine.tank.value, scene.label_dose().fraction_of(scene.fill.value));
    let (share, put_in) = put_in(&scene, draw)?;
    let found = Content { volume: scene.fill.value, strength: put_in.fraction_of(scene.fill.value) };
    let Rescue::Strong(work) = rescue(found, target, tank, TOLERANCE) else { return None };
    let drains = work.drain > Volume::ZERO;
    if drains != (level == Level::Third) || share < 1.2 {
        return None;
    }
    let needed = found.volume * (found.strength / target - 1.0);
    let answer = if drains { work.drain } else { work.water };
    if answer.si() < tank_mark(scene.machine) {
        return None;
    }
    let own = unit(&scene.machine.tank.entry.unit)?.code;
    let key = Key::Amount(Amount::digits(Kind::Fill, own, answer.si()));
    let mut asked = label_told(level, scene.liquid, scene.aim);
    asked.extend(tank_told(scene.machine, Some(scene.liquid)));
    let jug = unit(&scene.jug.step.entry.unit)?;
    let entry = super::super::round::Round::new(thousandths(jug.from_si(put_in.si()))?, -3).entry(jug.code);
    asked.push(Said::new("practice-found").entry("found", &scene.fill.entry).entry("poured", &entry));
    asked.push(Said::new(if drains { "practice-ask-rescue-drain" } else { "practice-ask-rescue-water" }));
    let mut exercise = Exercise::new(Topic::Rescue, level, ready, asked, key);
    let mut roads = vec![(Way::SameAgain, found.volume.si())];
    if drains {
        let kept = found.volume - work.drain;
        roads.insert(0, (Way::EndForAdded, kept.si()));
        roads.insert(0, (Way::RoomIgnored, (found.volume + needed - tank).si()));
    } else {
        roads.insert(0, (Way::EndForAdded, (found.volume + needed).si()));
        roads.insert(1, (Way::UpsideDown, (found.volume * (1.0 - target / found.strength)).si()));
    }
    exercise.amounts(roads);
    steps(&mut exercise, &scene, found, work.drain, needed);
    exercise.because(Said::new("practice-because-rescue"), Source::DEFINITION);
    let kept = Content { volume: found.volume - work.drain, ..found };
    let drained = drains.then(|| State::of("practice-state-drained", kept));
    let states = [State::of("practice-state-found", found)].into_iter().chain(drained);
    let states = states.chain([State::of("practice-state-rescued", work.on(found))]).collect();
    exercise.picture = Some(Picture::Tanks(Tanks { tank: tank.si(), states }));
    Some(exercise)
}

/// Too much product, in whole steps of the measure: how many times the right dose, and the volume.
fn put_in(scene: &Scene, draw: &mut Draw) -> Option<(f64, Volume)> {
    let dose = scene.label_dose();
    let times = [1.5, 2.0, 2.5, 3.0];
    let steps = (dose * *draw.pick(&times)? / scene.jug.step.value).round();
    let put_in = scene.jug.step.value * steps;
    (put_in < scene.fill.value / 2.0).then_some((put_in / dose, put_in))
}

/// Whole thousandths, where it is some.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to the range")]
pub(super) fn thousandths(value: f64) -> Option<u32> {
    let whole = (value * 1_000.0).round();
    let exact = (value * 1_000.0 - whole).abs() < 1e-6 * whole.max(1.0);
    (exact && (1.0..4e9).contains(&whole)).then_some(whole as u32)
}

fn steps(exercise: &mut Exercise, scene: &Scene, found: Content, drain: Volume, water: Volume) {
    let target = scene.label_dose().fraction_of(scene.fill.value);
    let fill = |volume| Value::new(volume, Kind::Fill);
    let percent = |share| Value::new(share, Kind::Percent);
    let (volume, tank) = (("V", fill(found.volume)), ("T", fill(scene.machine.tank.value)));
    let (r, m) = (("r", percent(target)), ("m", percent(found.strength)));
    exercise.steps.extend(strength_step(scene.liquid.label.basis, target));
    if drain > Volume::ZERO {
        exercise.steps.push(step(&formula::RESCUE_DRAIN, &[volume, r, tank, m], fill(drain)));
    } else {
        exercise.steps.push(step(&formula::RESCUE_WATER, &[volume, m, r], fill(water)));
    }
}
