//! Dose a fill: how much product goes into the tank.

use super::super::picture::Picture;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::Scene;
use super::telling::{other_step, round_step, water_first};
use super::{Amount, Exercise, Key, Said};

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let scene = Scene::draw(level, ready, draw).filter(|scene| !scene.contradicts())?;
    let rounded = scene.whole()?;
    let key = Key::Amount(Amount::measured(scene.jug, scene.dose(), rounded));
    let mut asked = scene.told();
    asked.push(Said::new("practice-ask-dose"));
    let mut exercise = Exercise::new(Topic::Dose, level, ready, asked, key);
    exercise.most = Some(scene.most());
    exercise.amounts(scene.roads());
    exercise.steps = scene.steps();
    exercise.steps.push(round_step(scene.dose(), scene.jug, rounded));
    exercise.reasons.extend(scene.rule());
    exercise.reasons.extend(other_step(scene.dose(), scene.jug, rounded));
    exercise.reasons.push(water_first());
    exercise.picture = scene.drawn().map(Picture::Fill);
    Some(exercise)
}
