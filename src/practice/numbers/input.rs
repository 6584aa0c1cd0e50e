//! The fields with a unit: each is held to the limit, and offers the units, of a field that the page has elsewhere.

use super::Numbers;
use crate::form::Field;
use crate::site::Entry;

/// A field with a unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Input {
    /// What the tank holds.
    Tank,
    /// How full it is.
    Level,
    /// One step of the cup.
    Step,
    /// What is laid on the floor.
    Rate,
    /// The flow of a setting.
    Flow,
    /// How fast the machine moves.
    Speed,
    /// How wide it cleans.
    Path,
    /// How much of that two passes share.
    Overlap,
}

impl Input {
    /// All.
    pub const ALL: [Self; 8] =
        [Self::Tank, Self::Level, Self::Step, Self::Rate, Self::Flow, Self::Speed, Self::Path, Self::Overlap];

    /// Its stable name, and the key of its label.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Tank => "numbers-tank",
            Self::Level => "numbers-level",
            Self::Step => "numbers-step",
            Self::Rate => "numbers-rate",
            Self::Flow => "numbers-flow",
            Self::Speed => "numbers-speed",
            Self::Path => "numbers-path",
            Self::Overlap => "numbers-overlap",
        }
    }

    /// The field that asks for the same elsewhere.
    pub const fn field(self) -> Field {
        match self {
            Self::Tank => Field::Tank,
            Self::Level => Field::Level,
            Self::Step => Field::MeasureStep,
            Self::Rate => Field::TargetLow,
            Self::Flow => Field::Setting(0),
            Self::Speed => Field::Speed,
            Self::Path => Field::Path,
            Self::Overlap => Field::Overlap,
        }
    }

    /// What was typed.
    pub const fn of(self, numbers: &Numbers) -> &Entry {
        match self {
            Self::Tank => &numbers.tank,
            Self::Level => &numbers.level,
            Self::Step => &numbers.step,
            Self::Rate => &numbers.rate,
            Self::Flow => &numbers.flow,
            Self::Speed => &numbers.speed,
            Self::Path => &numbers.path,
            Self::Overlap => &numbers.overlap,
        }
    }

    pub(super) const fn of_mut(self, numbers: &mut Numbers) -> &mut Entry {
        match self {
            Self::Tank => &mut numbers.tank,
            Self::Level => &mut numbers.level,
            Self::Step => &mut numbers.step,
            Self::Rate => &mut numbers.rate,
            Self::Flow => &mut numbers.flow,
            Self::Speed => &mut numbers.speed,
            Self::Path => &mut numbers.path,
            Self::Overlap => &mut numbers.overlap,
        }
    }
}
