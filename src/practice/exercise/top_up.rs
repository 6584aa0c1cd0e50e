//! Top a tank up: how much product, when something is left.

use super::super::picture::{Picture, State, Tanks};
use super::super::ready::{Asks, Written};
use super::super::road::Way;
use super::super::{Draw, Level, Ready, Topic};
use super::scene::{Scene, part};
use super::sum::{Sum, bounds, by_all, gallon_road, measure_roads, turned};
use super::telling::{
    jug_told, label_told, other_step, round_step, step, strength_step, tank_told, water_first,
};
use super::{Amount, Exercise, Key, Said};
use crate::answer::Value;
use crate::form::Filling;
use crate::trade::formula;
use crate::trade::label::{Basis, Window};
use crate::trade::measure::Rounded;
use crate::trade::rounding::near;
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
    let rounded = whole(&scene, content, dose)?;
    let key = Key::Amount(Amount::measured(jug, dose, rounded));
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
    exercise.steps.push(round_step(dose, jug, rounded));
    exercise.reasons.extend(other_step(dose, jug, rounded));
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

/// What is poured on the measure, as the station would have it: the tank in the end must keep to the rules.
fn whole(scene: &Scene, rest: Content, dose: Volume) -> Option<Rounded> {
    let (tank, level) = (scene.machine.tank.value, scene.fill.value);
    let full = Sum { level: tank, ..scene.sum() };
    let bounds = bounds(scene.machine, scene.liquid, full, (true, true));
    let ruled = by_all(scene.liquid, full, &bounds, scene.aim);
    let held = rest.strength * rest.volume;
    let Window { low, high } = ruled.allowed();
    let of = |amount: Volume| amount.min(tank).fraction_of(tank) * level - held;
    let ranged = !ruled.governed.window.is_point();
    near(dose, scene.jug.step.value, Window { low: of(low), high: of(high) }, ranged).ok()
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
