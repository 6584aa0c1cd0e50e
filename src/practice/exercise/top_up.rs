//! Top a tank up: how much product, when something is left.

use super::super::picture::{Picture, State, Tanks};
use super::super::ready::{Asks, Written};
use super::super::road::Way;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::{Scene, part};
use super::sum::{gallon_road, measure_roads, turned};
use super::telling::{asked_in, jug_told, label_told, step, strength_step, tank_told, water_first};
use super::{Amount, Exercise, Key, Said, half_width};
use crate::answer::Value;
use crate::form::Filling;
use crate::trade::formula;
use crate::trade::label::Basis;
use crate::trade::top_up::{Content, TopUp, Wanted, top_up};
use crate::units::{Kind, Quantity, Volume, VolumeFraction};

/// What a rest of another strength was mixed at, parts of water to 1.
const RATIOS: [u32; 10] = [16, 20, 32, 40, 64, 80, 100, 128, 200, 256];

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let scene = Scene { filling: Filling::MadeUp, ..Scene::draw(level, ready, draw)? };
    // A machine's limit or a standard would ask for another strength: that is the topic of a dose.
    if (scene.dose() / scene.label_dose() - 1.0).abs() > 1e-9 {
        return None;
    }
    let left = part(scene.machine, draw).filter(|left| left.value < scene.fill.value * 0.95)?;
    let strength = scene.label_dose().fraction_of(scene.fill.value);
    let other = if level == Level::Third { Some(*draw.pick(&RATIOS)?) } else { None };
    let rest = other.map_or(strength, |parts| VolumeFraction::from_parts_of_water(f64::from(parts)));
    let content = Content { volume: left.value, strength: rest };
    let wanted = Wanted { level: scene.fill.value, strength, tank: scene.machine.tank.value };
    let Ok(TopUp::Add(work)) = top_up(content, wanted) else { return None };
    let (dose, jug) = (work.concentrate, scene.jug);
    if !(3.0..=jug.most).contains(&(dose / jug.step.value)) {
        return None;
    }
    let within = half_width(dose.si(), jug.step.value.si());
    let key = Key::Amount(Amount { kind: Kind::Dose, unit: asked_in(jug), si: dose.si(), within });
    let mut exercise = Exercise::new(Topic::TopUp, level, ready, asked(&scene, &left, other), key);
    exercise.most = Some(scene.most() - (rest * left.value).si());
    exercise.amounts(roads(&scene, content, strength, dose));
    let percent = |share| Value::new(share, Kind::Percent);
    let fill = |volume| Value::new(volume, Kind::Fill);
    exercise.steps.extend(strength_step(scene.liquid.label.basis, strength));
    let given = [
        ("r", percent(strength)),
        ("V", fill(scene.fill.value)),
        ("r₀", percent(rest)),
        ("V₀", fill(left.value)),
    ];
    exercise.steps.push(step(&formula::TOP_UP, &given, Value::new(dose, Kind::Dose)));
    exercise.reasons.push(water_first());
    exercise.picture = Some(Picture::Tanks(Tanks {
        tank: scene.machine.tank.value.si(),
        states: vec![
            State::of("practice-state-before", content),
            State::of("practice-state-topped", work.on(content)),
        ],
    }));
    Some(exercise)
}

fn asked(scene: &Scene, left: &Written<Volume>, other: Option<u32>) -> Vec<Said> {
    let mut asked = label_told(scene.level, scene.liquid, scene.aim);
    asked.extend(tank_told(scene.machine, Some(scene.liquid)));
    asked.push(match other {
        None => Said::new("practice-rest-same").entry("left", &left.entry),
        Some(parts) => Said::new("practice-rest-other").entry("left", &left.entry).count("parts", parts),
    });
    asked.push(if scene.full {
        Said::new("practice-top-up-full")
    } else {
        Said::new("practice-top-up-part").entry("fill", &scene.fill.entry)
    });
    asked.push(jug_told(scene.jug));
    asked.push(Said::new("practice-ask-top-up"));
    asked
}

fn roads(scene: &Scene, left: Content, strength: VolumeFraction, right: Volume) -> Vec<(Way, f64)> {
    let level = scene.fill.value;
    let missing = level - left.volume;
    let mut out =
        vec![(Way::FullForRest, (strength * level).si()), (Way::RestIgnored, (strength * missing).si())];
    if let Some((way, Asks::Strength(window))) = turned(scene.liquid.label.basis, scene.liquid.asks) {
        let strength = scene.aim.within(window);
        let rest =
            if left.strength == scene.label_dose().fraction_of(level) { strength } else { left.strength };
        out.push((way, (strength * level).si() - (rest * left.volume).si()));
    }
    out.extend(measure_roads(right, scene.jug));
    let share = matches!(scene.liquid.label.basis, Basis::PlusWater | Basis::OfTotal | Basis::Percent);
    out.extend(gallon_road(&scene.fill.entry.unit).filter(|_| share).map(|(way, by)| (way, right.si() * by)));
    out
}
