//! Say what to do about foam: before a product goes in, and when a tank foams.

use super::super::picture::{Foam as Drawn, Picture};
use super::super::road::{Harm, Led, Road, Way};
use super::super::round::Round;
use super::super::{Draw, Level, Ready, Topic};
use super::{Exercise, Key, Said, mixed};
use crate::chemistry::foam::{self, Foam, FoamVerdict, shaken, verdict};
use crate::limits;
use crate::number::Marks;
use crate::units::{Length, Quantity, System};

/// What is done when a tank foams, in order.
const STEPS: [&str; 4] = ["foam-tank-stop", "foam-tank-drain", "foam-tank-rinse", "foam-tank-refill"];

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    match level {
        Level::First => may_it_go_in(ready, draw),
        Level::Second => shake_test(level, ready, draw),
        Level::Third if draw.one_in(2) => shake_test(level, ready, draw),
        Level::Third => Some(order(ready, draw)),
    }
}

/// A machine and whether it has a vacuum; where the site has none, one with a vacuum.
fn machine(ready: &Ready, draw: &mut Draw) -> (Said, bool) {
    match draw.pick(&ready.machines) {
        Some(one) => {
            let key = if one.vacuum { "practice-foam-vacuum" } else { "practice-foam-no-vacuum" };
            (Said::new(key).text("machine", &one.name), one.vacuum)
        }
        None => (Said::new("practice-foam-any-machine"), true),
    }
}

fn may_it_go_in(ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let (product, class) = match draw.pick(&ready.foams) {
        Some((name, class)) => (Said::new("practice-foam-product").text("product", name), *class),
        None => (Said::new("practice-foam-any-product"), *draw.pick(Foam::ALL)?),
    };
    let (machine, vacuum) = machine(ready, draw);
    let asked = vec![product.words("class", class.key()), machine, Said::new("practice-ask-foam")];
    let mut exercise = by_verdict(Level::First, ready, asked, class, vacuum);
    let foams = (class != Foam::Unknown).then_some(class == Foam::Foaming);
    exercise.picture = Some(Picture::Foam(Drawn::Machine { foams, vacuum }));
    Some(exercise)
}

fn by_verdict(level: Level, ready: &Ready, asked: Vec<Said>, class: Foam, vacuum: bool) -> Exercise {
    let found = verdict(class, vacuum);
    let options = FoamVerdict::ALL.iter().map(|one| Said::new(one.key())).collect();
    let right = FoamVerdict::ALL.iter().position(|one| *one == found).unwrap_or_default();
    let mut exercise = Exercise::new(Topic::Foam, level, ready, asked, Key::Choice { options, right });
    let road = |(index, chosen): (usize, &FoamVerdict)| {
        let led = Led::Choice(index);
        match (found, chosen) {
            (FoamVerdict::Refuse, _) => Road::harms(Way::FoamLetIn, led, Harm::Foam),
            (FoamVerdict::TestFirst, FoamVerdict::Fits) => Road::harms(Way::NotTested, led, Harm::Foam),
            _ => Road::new(Way::KeptOut, led),
        }
    };
    let wrong = FoamVerdict::ALL.iter().enumerate().filter(|(_, one)| **one != found);
    exercise.roads = wrong.map(road).collect();
    exercise.because(Said::new(found.key()), foam::SOURCE);
    exercise.because(Said::new(why(class, vacuum)), foam::SOURCE);
    exercise
}

/// Why it may go in, or must not.
fn why(class: Foam, vacuum: bool) -> &'static str {
    match (class, vacuum) {
        (_, false) => "practice-because-no-vacuum",
        (Foam::NonFoaming | Foam::Low, true) => "practice-because-little-foam",
        (Foam::Foaming | Foam::Unknown, true) => foam::WHY,
    }
}

/// What a shake test says: the class, or on the third level whether it may go in.
fn shake_test(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let (step, unit, most) = if ready.system == System::Metric {
        (Round::new(1, 0), "mm", 60)
    } else {
        (Round::new(25, -2), "in", 10)
    };
    let first = draw.below(most + 1);
    let later = draw.below(first + 1);
    let height = |count: u32| step.times(count).entry(unit);
    let length = |count: u32| height(count).read::<Length>(&limits::FOAM, Marks::POINT).ok();
    let class = shaken(length(first)?, length(later)?);
    let drawn = Drawn::Shaken { first: length(first)?.si(), later: length(later)?.si() };
    let mut asked =
        vec![Said::new("practice-foam-shaken").entry("first", &height(first)).entry("later", &height(later))];
    if level == Level::Third {
        let (machine, vacuum) = machine(ready, draw);
        asked.extend([machine, Said::new("practice-ask-foam")]);
        let mut exercise = by_verdict(level, ready, asked, class, vacuum);
        exercise.picture = Some(Picture::Foam(drawn));
        return Some(exercise);
    }
    asked.push(Said::new("practice-ask-foam-class"));
    let classes = [Foam::NonFoaming, Foam::Low, Foam::Foaming];
    let options = classes.iter().map(|one| Said::new(one.key())).collect();
    let right = classes.iter().position(|one| *one == class)?;
    let mut exercise = Exercise::new(Topic::Foam, level, ready, asked, Key::Choice { options, right });
    let road = |(index, chosen): (usize, &Foam)| match (class, chosen) {
        (Foam::Foaming, _) => Road::harms(Way::FoamLetIn, Led::Choice(index), Harm::Foam),
        _ => Road::new(Way::KeptOut, Led::Choice(index)),
    };
    exercise.roads = classes.iter().enumerate().filter(|(_, one)| **one != class).map(road).collect();
    exercise.because(Said::new("foam-limits"), foam::SOURCE);
    exercise.picture = Some(Picture::Foam(drawn));
    Some(exercise)
}

/// The order of work when a tank foams.
fn order(ready: &Ready, draw: &mut Draw) -> Exercise {
    let (options, right) = mixed(draw, &STEPS.map(Said::new));
    let mut asked = vec![match draw.pick(&ready.foams) {
        Some((name, _)) => Said::new("practice-foam-happens").text("product", name),
        None => Said::new("practice-foam-happens-any"),
    }];
    let machine = draw.pick(&ready.machines);
    asked.extend(machine.map(|one| Said::new("practice-machine").text("machine", &one.name)));
    asked.push(Said::new("practice-ask-foam-order"));
    let vacuum = machine.is_none_or(|one| one.vacuum);
    let roads = pairs_of(right.len()).map(|(first, second)| {
        let led = Led::After(right[first], right[second]);
        let way = if first == 0 { Way::NotStopped } else { Way::OrderMixed };
        Road { harm: (first == 0 && vacuum).then_some(Harm::Foam), ..Road::new(way, led) }
    });
    let roads = roads.collect();
    let mut exercise = Exercise::new(Topic::Foam, Level::Third, ready, asked, Key::Order { options, right });
    exercise.roads = roads;
    exercise.picture = Some(Picture::Foam(Drawn::Machine { foams: Some(true), vacuum }));
    exercise.because(Said::new(why(Foam::Foaming, vacuum)), foam::SOURCE);
    exercise.reasons.extend(STEPS.map(|key| super::Reason { said: Said::new(key), source: foam::SOURCE }));
    exercise
}

/// Every two of so many, the first before the second.
fn pairs_of(count: usize) -> impl Iterator<Item = (usize, usize)> {
    (0..count).flat_map(move |first| (first + 1..count).map(move |second| (first, second)))
}
