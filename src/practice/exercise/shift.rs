//! Plan a small shift: how much mix, how many fills, how much product.

use super::super::picture::{Picture, Strip};
use super::super::ready::{Asks, Ground, Machine, Written};
use super::super::road::Way;
use super::super::round::{Round, count_in, step_for};
use super::super::{Draw, Level, Ready, Topic};
use super::scene::aim;
use super::sum::{turned, undisturbed};
use super::telling::{label_told, may_go_in, step, strength_step, tank_told};
use super::{Amount, Exercise, Key, Said};
use crate::answer::Value;
use crate::limits;
use crate::number::Marks;
use crate::site::Entry;
use crate::trade::coverage::spent_share;
use crate::trade::formula;
use crate::units::{ApplicationRate, Area, Kind, Quantity, Volume, VolumeFraction, unit};

/// The most tanks that one area takes, and the largest one. Common practice, no source.
const TANKS: f64 = 5.0;
const LARGEST: f64 = 10_000.0;
/// So many marks lie between nothing and the largest area.
const MARKS: f64 = 24.0;

/// An area and what is laid on it.
struct Job {
    floor: String,
    rate: Written<ApplicationRate>,
    area: Written<Area>,
}

impl Job {
    fn draw(ground: &Ground, draw: &mut Draw) -> Option<Self> {
        let rate = rate(ground, draw);
        let (step, unit) = if rate.entry.unit == "ml_per_m2" { (50, "m2") } else { (500, "ft2") };
        Self::of(ground, rate, &Round::new(step, 0).times(2 + draw.below(30)).entry(unit))
    }

    /// One that takes up to a few tanks of a machine, any number of them as likely.
    fn for_tanks(ground: &Ground, machine: &Machine, draw: &mut Draw) -> Option<Self> {
        let rate = rate(ground, draw);
        let unit = unit(if rate.entry.unit == "ml_per_m2" { "m2" } else { "ft2" })?;
        let most = (machine.tank.value.si() * TANKS / rate.value.si()).min(LARGEST);
        let (step, value) = step_for(unit.from_si(most), MARKS);
        let marks = 1 + draw.below(count_in(unit.from_si(most), value));
        Self::of(ground, rate, &step.times(marks).entry(unit.code))
    }

    fn of(ground: &Ground, rate: Written<ApplicationRate>, area: &Entry) -> Option<Self> {
        let value: Area = area.read(&limits::AREA, Marks::POINT).ok()?;
        Some(Self { floor: ground.name.clone(), rate, area: Written { entry: area.clone(), value } })
    }

    fn solution(&self) -> Volume {
        self.rate.value * self.area.value
    }

    fn told(&self) -> Said {
        Said { key: "practice-area".to_owned(), ..self.unnamed().text("floor", &self.floor) }
    }

    /// Without its floor: whether a product suits one is no part of this topic, and none is taught by the way.
    fn unnamed(&self) -> Said {
        Said::new("practice-area-plain").entry("area", &self.area.entry).entry("rate", &self.rate.entry)
    }
}

/// What a floor gets: the least or the most that it should.
fn rate(ground: &Ground, draw: &mut Draw) -> Written<ApplicationRate> {
    if draw.one_in(2) { &ground.low } else { &ground.high }.clone()
}

/// The units of mix and of product that go with a rate.
fn units_with(rate: &Entry) -> (&'static str, &'static str) {
    match rate.unit.as_str() {
        "ml_per_m2" => ("l", "ml"),
        "gal_imp_per_1000ft2" => ("gal_imp", "floz_imp"),
        _ => ("gal_us", "floz_us"),
    }
}

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let ground = draw.pick(&ready.grounds)?;
    if level == Level::Second {
        let machine = draw.pick(&ready.machines)?;
        return fills(ready, &Job::for_tanks(ground, machine, draw)?, machine);
    }
    let job = Job::draw(ground, draw)?;
    if level == Level::First { Some(solution(ready, &job)) } else { product(ready, &job, draw) }
}

/// What the areas take of the tank, side by side.
fn strip(jobs: &[&Job], tank: Option<&Machine>, spent: f64) -> Picture {
    let areas = jobs.iter().map(|job| job.solution().si() * spent).collect();
    Picture::Strip(Strip { areas, tank: tank.map(|machine| machine.tank.value.si()) })
}

fn solution_step(jobs: &[&Job], spent: f64) -> crate::answer::Step {
    let total: Volume = jobs.iter().map(|job| job.solution()).sum();
    let mut given = Vec::new();
    for job in jobs {
        given.push(("a", Value::new(job.rate.value, Kind::Rate)));
        given.push(("A", Value::new(job.area.value, Kind::Area)));
    }
    given.push(("u", Value::new(VolumeFraction::new(1.0 - spent), Kind::Percent)));
    step(&formula::SOLUTION, &given, Value::new(total * spent, Kind::Fill))
}

fn solution(ready: &Ready, job: &Job) -> Exercise {
    let si = job.solution().si();
    let (unit, _) = units_with(&job.rate.entry);
    let key = Key::Amount(Amount::digits(Kind::Fill, unit, si));
    let asked = vec![job.told(), Said::new("practice-ask-solution")];
    let mut exercise = Exercise::new(Topic::Shift, Level::First, ready, asked, key);
    // A rate for 1,000 ft² taken for one of 1 ft², or mL taken for L.
    exercise.amounts([
        (Way::Thousand, si * 1_000.0),
        (Way::DecimalSlip, si * 10.0),
        (Way::DecimalSlip, si / 10.0),
    ]);
    exercise.steps.push(solution_step(&[job], 1.0));
    exercise.picture = Some(strip(&[job], None, 1.0));
    exercise
}

fn fills(ready: &Ready, job: &Job, machine: &Machine) -> Option<Exercise> {
    let tanks = job.solution() / machine.tank.value;
    let clear = (tanks - tanks.round()).abs() > 0.04 && (0.3..=12.0).contains(&tanks);
    if !clear || machine.reuse.is_some() {
        return None;
    }
    let si = tanks.ceil();
    let key = Key::Amount(Amount::whole(si));
    let mut asked = vec![job.told()];
    asked.extend(tank_told(machine, None));
    asked.push(Said::new("practice-ask-fills"));
    let mut exercise = Exercise::new(Topic::Shift, Level::Second, ready, asked, key);
    exercise.amounts([(Way::RoundedDown, tanks.floor()), (Way::NotWhole, tanks)]);
    exercise.steps.push(solution_step(&[job], 1.0));
    let given =
        [("S", Value::new(job.solution(), Kind::Fill)), ("T", Value::new(machine.tank.value, Kind::Fill))];
    exercise.steps.push(step(&formula::FILLS, &given, Value::plain(si, Kind::Count)));
    exercise.picture = Some(strip(&[job], Some(machine), 1.0));
    Some(exercise)
}

fn product(ready: &Ready, first: &Job, draw: &mut Draw) -> Option<Exercise> {
    let second = Job::draw(draw.pick(&ready.grounds)?, draw)?;
    let machine = draw.pick(&ready.machines)?;
    let liquid = draw.pick(&ready.liquids)?;
    let aim = aim(draw);
    let strength = undisturbed(machine, liquid, aim).filter(|_| may_go_in(machine, liquid))?;
    let (mix, unit) = units_with(&first.rate.entry);
    if units_with(&second.rate.entry).0 != mix || first.area.entry == second.area.entry {
        return None;
    }
    let spent = machine.reuse.as_ref().map_or(1.0, |reuse| spent_share(reuse.value));
    let laid = first.solution() + second.solution();
    let si = (strength * (laid * spent)).si();
    if si < 3e-5 {
        return None;
    }
    let key = Key::Amount(Amount::digits(Kind::Dose, unit, si));
    let mut asked = vec![first.unnamed(), second.unnamed()];
    asked.extend(tank_told(machine, Some(liquid)));
    asked.extend(machine.reuse.iter().map(|reuse| Said::new("practice-reuse").entry("reuse", &reuse.entry)));
    asked.extend(label_told(Level::Third, liquid, aim));
    asked.push(Said::new("practice-ask-product"));
    let mut exercise = Exercise::new(Topic::Shift, Level::Third, ready, asked, key);
    exercise.most = Some(most(liquid.asks, machine, laid * spent));
    let mut roads = vec![
        (Way::ReuseIgnored, (strength * laid).si()),
        (Way::OneAreaOnly, (strength * (first.solution() * spent)).si()),
        (Way::OneAreaOnly, (strength * (second.solution() * spent)).si()),
        (Way::MixForProduct, laid.si() * spent),
        (Way::Thousand, si * 1_000.0),
    ];
    if let Some((way, Asks::Strength(window))) = turned(liquid.label.basis, liquid.asks) {
        roads.push((way, (aim.within(window) * (laid * spent)).si()));
    }
    exercise.amounts(roads);
    exercise.steps.push(solution_step(&[first, &second], spent));
    exercise.steps.extend(strength_step(liquid.label.basis, strength));
    let given = [("r", Value::new(strength, Kind::Percent)), ("S", Value::new(laid * spent, Kind::Fill))];
    exercise.steps.push(step(&formula::CONCENTRATE, &given, Value::new(Volume::new(si), Kind::Dose)));
    exercise.picture = Some(strip(&[first, &second], Some(machine), spent));
    Some(exercise)
}

/// The most product that the label allows in so much mix.
fn most(asks: Asks, machine: &Machine, mix: Volume) -> f64 {
    match asks {
        Asks::Strength(window) => (window.high * mix).si(),
        Asks::PerTank(window) => window.high.si() * (mix / machine.tank.value),
    }
}
