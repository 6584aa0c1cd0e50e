//! Choose a flow setting for a floor.

use super::super::picture::{Picture, Rates};
use super::super::ready::{Drive, Ground};
use super::super::road::{Led, Road, Way};
use super::super::round::{count_in, step_for};
use super::super::{Draw, Level, Ready, Topic};
use super::telling::step;
use super::{Exercise, Key, Said};
use crate::answer::Value;
use crate::limits;
use crate::number::{self, Marks};
use crate::site::Entry;
use crate::source::Source;
use crate::trade::coverage::application_rate;
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::setting::{Fit, choose, fit};
use crate::units::{ApplicationRate, Flow, Kind, Quantity, Speed, unit};

/// A rate so near the target's ends could be told either way by who keeps fewer digits.
const NEAR: f64 = 0.02;

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let machine = draw.pick(&ready.machines)?;
    let drive = machine.drive.as_ref()?;
    let ground = draw.pick(&ready.grounds)?;
    let (speed, value) = if level == Level::Third {
        other_speed(drive, draw)?
    } else {
        (drive.speed.entry.clone(), drive.speed.value)
    };
    let passing = value * drive.width;
    let target = Window { low: ground.low.value, high: ground.high.value };
    let flows: Vec<Flow> = drive.flows.iter().map(|one| one.value).collect();
    let rates: Vec<ApplicationRate> = flows.iter().map(|flow| application_rate(*flow, passing)).collect();
    let near = |end: ApplicationRate| rates.iter().any(|rate| (*rate / end - 1.0).abs() < NEAR);
    if near(target.low) || near(target.high) {
        return None;
    }
    let choice = choose(&flows, target, value, drive.width)?;
    let none = flows.len();
    let right = if choice.fit == Fit::Meets { choice.index } else { none };
    let own = unit(&ground.low.entry.unit)?;
    let option = |index: usize| {
        let said =
            Said::new(if level == Level::First { "practice-setting-rate" } else { "practice-setting-flow" });
        let said = said.count("n", u32::try_from(index + 1).unwrap_or(u32::MAX));
        if level == Level::First {
            let shown = number::plain(own.from_si(rates[index].si()), 3, '.');
            said.entry("amount", &Entry::new(shown, own.code))
        } else {
            said.entry("amount", &drive.flows[index].entry)
        }
    };
    let options = (0..none).map(option).chain([Said::new("practice-setting-none")]).collect();
    let asked = asked(level, &machine.name, drive, &speed, ground);
    let mut exercise = Exercise::new(Topic::Setting, level, ready, asked, Key::Choice { options, right });
    let way = |index: usize| match rates.get(index).map(|rate| fit(*rate, target)) {
        Some(Fit::Short) => Way::TooDry,
        Some(Fit::TooWet) => Way::TooWet,
        Some(Fit::Meets) => Way::MoreThanNeeded,
        None => Way::NoneThought,
    };
    exercise.roads = (0..=none)
        .filter(|index| *index != right)
        .map(|index| Road::new(way(index), Led::Choice(index)))
        .collect();
    let shown = choice.index;
    let p = Value::new(passing, Kind::Productivity);
    let width = [("v", Value::new(value, Kind::Speed)), ("w − o", Value::new(drive.width, Kind::Width))];
    if level != Level::First {
        exercise.steps.push(step(&formula::PASSING, &width, p));
        let given = [("Q", Value::new(flows[shown], Kind::Flow)), ("P", p)];
        exercise.steps.push(step(&formula::RATE, &given, Value::new(rates[shown], Kind::Rate)));
    }
    exercise.because(Said::new("practice-because-setting"), Source::COMMON_PRACTICE);
    exercise.picture = Some(Picture::Rates(Rates {
        rates: rates.iter().map(|rate| rate.si()).collect(),
        low: target.low.si(),
        high: target.high.si(),
        right: (right < none).then_some(right),
    }));
    Some(exercise)
}

fn asked(level: Level, machine: &str, drive: &Drive, speed: &Entry, ground: &Ground) -> Vec<Said> {
    let floor = Said::new("practice-floor").text("floor", &ground.name);
    let mut asked = vec![floor.entry("low", &ground.low.entry).entry("high", &ground.high.entry)];
    asked.push(Said::new("practice-machine").text("machine", machine));
    if level != Level::First {
        asked.push(Said::new("practice-speed").entry("speed", speed));
        asked.push(match &drive.overlap {
            None => Said::new("practice-path").entry("path", &drive.path),
            Some(overlap) => {
                Said::new("practice-path-overlap").entry("path", &drive.path).entry("overlap", overlap)
            }
        });
    }
    asked.push(Said::new("practice-ask-setting"));
    asked
}

/// Another speed than the machine's usual one, half to twice as fast.
fn other_speed(drive: &Drive, draw: &mut Draw) -> Option<(Entry, Speed)> {
    let own = unit(&drive.speed.entry.unit)?;
    let usual = own.from_si(drive.speed.value.si());
    let (step, value) = step_for(usual, 6.0);
    let (least, most) = (count_in(usual / 2.0, value), count_in(usual * 2.0, value));
    let count = least.max(1) + draw.below(most.checked_sub(least)?);
    let entry = step.times(count).entry(own.code);
    let speed: Speed = entry.read(&limits::SPEED, Marks::POINT).ok()?;
    ((speed / drive.speed.value - 1.0).abs() > 0.05).then_some((entry, speed))
}
