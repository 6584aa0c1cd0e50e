//! Dose a fill: how much product goes into the tank.

use super::super::picture::Picture;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::Scene;
use super::telling::{asked_in, water_first};
use super::{Amount, Exercise, Key, Said, half_width};
use crate::units::{Kind, Quantity};

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let scene = Scene::draw(level, ready, draw)?;
    let (si, jug) = (scene.dose().si(), scene.jug);
    let within = half_width(si, jug.step.value.si());
    let key = Key::Amount(Amount { kind: Kind::Dose, unit: asked_in(jug), si, within });
    let mut asked = scene.told();
    asked.push(Said::new("practice-ask-dose"));
    let mut exercise = Exercise::new(Topic::Dose, level, ready, asked, key);
    exercise.most = Some(scene.most());
    exercise.amounts(scene.roads());
    exercise.steps = scene.steps();
    exercise.reasons.extend(scene.rule());
    exercise.reasons.push(water_first());
    exercise.picture = scene.drawn().map(Picture::Fill);
    Some(exercise)
}
