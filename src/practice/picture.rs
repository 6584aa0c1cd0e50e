//! What is drawn when a task is over: the numbers of the task itself, in SI units, and its answer.

mod fill;

pub use fill::Fill;

use super::exercise::{Fact, Said};
use crate::answer::Value;
use crate::chemistry::ghs::Pictogram;
use crate::trade::top_up::Content;
use crate::units::Quantity;

/// A picture. What it holds comes from the exercise that it belongs to.
#[derive(Clone, Debug, PartialEq)]
pub enum Picture {
    /// A cup and a tank.
    Fill(Fill),
    /// One tank, as it is before and after each step.
    Tanks(Tanks),
    /// What each flow setting lays down, and what the floor should get.
    Rates(Rates),
    /// What the areas of a small shift take, and where the tank is filled.
    Strip(Strip),
    /// A label as a range.
    Range(Range),
    /// One amount on two scales.
    Scales(Scales),
    /// A fill ticket with the line that is wrong.
    Ticket(Ticket),
    /// What a label warns of, and what is worn.
    Wear(Wear),
    /// Two bottles and what comes of them.
    Bottles(Bottles),
    /// Foam in a bottle, or on its way to the vacuum.
    Foam(Foam),
}

/// One tank, step by step.
#[derive(Clone, Debug, PartialEq)]
pub struct Tanks {
    /// What it holds, m³.
    pub tank: f64,
    /// How it stands before and after each step, in their order.
    pub states: Vec<State>,
}

/// How a tank stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    /// The word key of when.
    pub when: &'static str,
    /// Mix in it, m³.
    pub mix: f64,
    /// Product in the mix, m³.
    pub product: f64,
}

impl State {
    pub(super) fn of(when: &'static str, content: Content) -> Self {
        let product = content.strength * content.volume;
        Self { when, mix: content.volume.si(), product: product.si() }
    }
}

/// What each flow setting lays down.
#[derive(Clone, Debug, PartialEq)]
pub struct Rates {
    /// Of each setting, m³/m².
    pub rates: Vec<f64>,
    /// The least that the floor should get.
    pub low: f64,
    /// The most.
    pub high: f64,
    /// The right setting, from 0; none where none is.
    pub right: Option<usize>,
}

/// A small shift.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// The mix that each area takes out of the tank for good, m³.
    pub areas: Vec<f64>,
    /// What the tank holds; none where the task names no tank.
    pub tank: Option<f64>,
}

/// A label as a range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// The least that it allows.
    pub low: Value,
    /// The most.
    pub high: Value,
    /// The end that the task asks for; none where it asks for neither.
    pub asked: Option<Value>,
}

/// One amount on two scales.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scales {
    /// The amount, in SI units.
    pub si: f64,
    /// The code of the unit that was told.
    pub from: &'static str,
    /// The code of the unit that is asked for.
    pub to: &'static str,
}

/// A fill ticket.
#[derive(Clone, Debug, PartialEq)]
pub struct Ticket {
    /// Its lines.
    pub lines: Vec<Said>,
    /// The line that is wrong, from 0, and what should stand there; none where all is right.
    pub wrong: Option<(usize, Said)>,
}

/// What a label warns of.
#[derive(Clone, Debug, PartialEq)]
pub struct Wear {
    /// The pictograms of its statements.
    pub pictograms: Vec<Pictogram>,
    /// The word key of its signal word.
    pub signal: &'static str,
    /// The word keys of what is worn.
    pub wear: Vec<&'static str>,
}

/// Two that must never meet.
#[derive(Clone, Debug, PartialEq)]
pub struct Bottles {
    /// What stands on the bottles.
    pub names: [Fact; 2],
    /// The word key of what happens.
    pub happens: &'static str,
}

impl Foam {
    /// The key of the words beside it: what foam could do is told only where it could.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Shaken { .. } => "practice-picture-shaken",
            Self::Machine { vacuum: false, .. } => "practice-because-no-vacuum",
            Self::Machine { foams: Some(false), .. } => "practice-because-little-foam",
            Self::Machine { .. } => "practice-picture-foam",
        }
    }
}

/// Foam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Foam {
    /// A shake test.
    Shaken {
        /// How high it stands at once, m.
        first: f64,
        /// How high after a minute, m.
        later: f64,
    },
    /// A tank below a vacuum, or below none.
    Machine {
        /// Whether it foams; none where nobody knows.
        foams: Option<bool>,
        /// Whether there is a vacuum.
        vacuum: bool,
    },
}
