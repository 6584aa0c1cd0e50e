//! An exercise as data: what is asked, the key, the usual wrong roads, the workings.

mod dose;
mod foam;
mod label;
mod mistake;
mod pairs;
mod ppe;
mod rescue;
mod scene;
mod setting;
mod shift;
mod sum;
mod telling;
mod top_up;
mod units;

use super::picture::Picture;
use super::ready::Jug;
use super::road::{Led, Road, Way};
use super::{Draw, Level, Ready, Topic};
use crate::answer::{Step, Value};
use crate::site::Entry;
use crate::source::Source;
use crate::trade::measure::Rounded;
use crate::units::{Kind, Quantity, System, Volume, unit};

/// A fact inside a sentence.
#[derive(Clone, Debug, PartialEq)]
pub enum Fact {
    /// A number as it is typed, with its unit.
    Entry(Entry),
    /// What the site's people wrote: a name or a label.
    Text(String),
    /// A key of the language file.
    Key(String),
    /// A number of whole things.
    Count(u32),
    /// The least and the greatest of one kind, shown in the units of the workings.
    Window(Value, Value),
}

/// Something to be told: the key of its words and the facts in them.
#[derive(Clone, Debug, PartialEq)]
pub struct Said {
    /// The key of its words.
    pub key: String,
    /// Placeholder and fact.
    pub facts: Vec<(&'static str, Fact)>,
}

impl Said {
    /// One without facts.
    pub fn new(key: impl Into<String>) -> Self {
        Self { key: key.into(), facts: Vec::new() }
    }

    /// With a number as typed.
    #[must_use]
    pub fn entry(mut self, name: &'static str, entry: &Entry) -> Self {
        self.facts.push((name, Fact::Entry(entry.clone())));
        self
    }

    /// With a name.
    #[must_use]
    pub fn text(mut self, name: &'static str, text: &str) -> Self {
        self.facts.push((name, Fact::Text(text.to_owned())));
        self
    }

    /// With words of another key.
    #[must_use]
    pub fn words(mut self, name: &'static str, key: &str) -> Self {
        self.facts.push((name, Fact::Key(key.to_owned())));
        self
    }

    /// With the least and the greatest that something may be; one number where both are the same.
    #[must_use]
    pub fn window(mut self, name: &'static str, low: Value, high: Value) -> Self {
        self.facts.push((name, Fact::Window(low, high)));
        self
    }

    /// With a number of whole things.
    #[must_use]
    pub fn count(mut self, name: &'static str, count: u32) -> Self {
        self.facts.push((name, Fact::Count(count)));
        self
    }
}

/// An amount that answers an exercise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// What it is.
    pub kind: Kind,
    /// The unit that the answer is asked in; any other of its kind is right too.
    pub unit: &'static str,
    /// The exact value, in SI units; a plain number for counts.
    pub si: f64,
    /// How far off still counts, in SI units.
    pub within: f64,
    /// What is poured on the measure that is named, in whole steps; none where none is named.
    pub poured: Option<Poured>,
}

/// An amount in whole steps of a measure, as Fill would have it poured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poured {
    /// How many steps.
    pub count: f64,
    /// What they make, in SI units.
    pub si: f64,
}

impl Poured {
    fn of(rounded: Rounded) -> Self {
        Self { count: rounded.count, si: rounded.dose.si() }
    }

    /// Whether an amount is this one, to three digits.
    pub(super) fn is(self, si: f64) -> bool {
        (si - self.si).abs() <= self.si * (DIGITS + 1e-9)
    }
}

impl Amount {
    /// One that is asked to three digits.
    fn digits(kind: Kind, unit: &'static str, si: f64) -> Self {
        Self { kind, unit, si, within: si * DIGITS, poured: None }
    }

    /// Whether the task asks for three digits of it: neither whole things nor what a measure makes of it.
    pub fn to_digits(&self) -> bool {
        self.kind != Kind::Count && self.poured.is_none()
    }

    /// Whether a value of the workings is this very amount, whatever unit it is shown in.
    pub fn is(&self, value: Value) -> bool {
        value.kind.dimension() == self.kind.dimension() && (value.si / self.si - 1.0).abs() < 1e-9
    }

    /// A number of whole things.
    fn whole(si: f64) -> Self {
        Self { kind: Kind::Count, unit: "one", si, within: 0.25, poured: None }
    }

    /// One that is measured out.
    fn measured(jug: &Jug, dose: Volume, rounded: Rounded) -> Self {
        let (si, step) = (dose.si(), jug.step.value.si());
        let (kind, unit) = (Kind::Dose, telling::asked_in(jug));
        Self { kind, unit, si, within: half_width(si, step), poured: Some(Poured::of(rounded)) }
    }
}

/// What is right.
#[derive(Clone, Debug, PartialEq)]
pub enum Key {
    /// An amount.
    Amount(Amount),
    /// One of several.
    Choice {
        /// What there is to choose from.
        options: Vec<Said>,
        /// The right one, from 0.
        right: usize,
    },
    /// Some of several.
    Several {
        /// What there is to choose from.
        options: Vec<Said>,
        /// The right ones, rising.
        right: Vec<usize>,
    },
    /// All of several, in an order.
    Order {
        /// What is to be put in order.
        options: Vec<Said>,
        /// Which comes first, second and so on.
        right: Vec<usize>,
    },
}

/// A sentence of the workings, and where it comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Reason {
    /// What is told.
    pub said: Said,
    /// Where it comes from.
    pub source: Source,
}

/// An exercise.
#[derive(Clone, Debug)]
pub struct Exercise {
    /// What it is about.
    pub topic: Topic,
    /// How hard it is.
    pub level: Level,
    /// The units that its workings are shown in.
    pub system: System,
    /// What is asked, sentence by sentence.
    pub asked: Vec<Said>,
    /// What is right.
    pub key: Key,
    /// The usual wrong roads, none of which leads to the key or to where another leads.
    pub roads: Vec<Road>,
    /// The most product that the label allows here, in SI units; none where nothing is poured.
    pub most: Option<f64>,
    /// The workings: formulas with their numbers.
    pub steps: Vec<Step>,
    /// The workings: sentences.
    pub reasons: Vec<Reason>,
    /// What is drawn when it is over: earlier it would be the answer.
    pub picture: Option<Picture>,
}

impl Exercise {
    fn new(topic: Topic, level: Level, ready: &Ready, asked: Vec<Said>, key: Key) -> Self {
        let (roads, steps, reasons) = (Vec::new(), Vec::new(), Vec::new());
        let (most, picture, system) = (None, None, ready.system);
        Self { topic, level, system, asked, key, roads, most, steps, reasons, picture }
    }

    /// Adds the roads to amounts of which a person could tell the key and each other apart: the first that leads
    /// to a place counts.
    fn amounts(&mut self, roads: impl IntoIterator<Item = (Way, f64)>) {
        let Key::Amount(key) = self.key else { return };
        for (way, si) in roads {
            let near = |other: f64| (si - other).abs() <= key.within * 1.01;
            let taken = near(key.si)
                || key.poured.is_some_and(|poured| poured.is(si))
                || self.roads.iter().any(|road| matches!(road.led, Led::To(other) if near(other)));
            if !taken && si.is_finite() && si > 0.0 {
                self.roads.push(Road::new(way, Led::To(si)));
            }
        }
    }

    fn because(&mut self, said: Said, source: Source) {
        self.reasons.push(Reason { said, source });
    }
}

/// What rounds away where a person keeps three digits of a calculation, of the value.
pub(super) const DIGITS: f64 = 0.005;

/// How far off still counts where a measure is named: half a step of it, and in any case as much as three digits
/// round away. Common practice, no source.
fn half_width(si: f64, step: f64) -> f64 {
    (step / 2.0).max(si * DIGITS)
}

/// How often numbers are drawn anew before a topic is given up.
const TRIES: usize = 2_000;

/// How often they may be where a topic is said to be offered: far less, so that what is offered can be made.
pub(super) const TRIES_TO_OFFER: usize = 100;

/// Makes an exercise.
///
/// * `ready`: what it is made of.
/// * `draw`: where its numbers come from; the same ones make the same exercise.
///
/// None where the stock has too little for it, which [`super::Stock::lacks`] tells.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::practice::{Draw, Key, Level, Ready, Stock, Topic, make};
/// use brimline::{site::demo, units::System};
/// let ready = Ready::of(&Stock::of(&demo(), System::Us, Marks::POINT));
/// let exercise = make(Topic::Dose, Level::First, &ready, &mut Draw::new(1)).unwrap();
/// assert!(matches!(exercise.key, Key::Amount(amount) if amount.si > 0.0));
/// ```
pub fn make(topic: Topic, level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    make_within(TRIES, topic, level, ready, draw)
}

/// The same with another number of tries.
pub(super) fn make_within(
    tries: usize,
    topic: Topic,
    level: Level,
    ready: &Ready,
    draw: &mut Draw,
) -> Option<Exercise> {
    let once = match topic {
        Topic::Label => label::once,
        Topic::Units => units::once,
        Topic::Dose => dose::once,
        Topic::TopUp => top_up::once,
        Topic::Setting => setting::once,
        Topic::Shift => shift::once,
        Topic::Mistake => mistake::once,
        Topic::Rescue => rescue::once,
        Topic::Ppe => ppe::once,
        Topic::Pairs => pairs::once,
        Topic::Foam => foam::once,
    };
    (0..tries).find_map(|_| once(level, ready, draw))
}

/// The factor of a unit that the table has.
fn factor(code: &str) -> f64 {
    unit(code).map_or(1.0, |unit| unit.exact.value())
}

/// Mixes the choices of an exercise; what pointed to one of them still does.
fn mixed(draw: &mut Draw, options: &[Said]) -> (Vec<Said>, Vec<usize>) {
    let mut order: Vec<usize> = (0..options.len()).collect();
    draw.shuffle(&mut order);
    let mut place = vec![0; order.len()];
    for (now, before) in order.iter().enumerate() {
        place[*before] = now;
    }
    (order.iter().map(|before| options[*before].clone()).collect(), place)
}
