//! Round numbers, as they stand on a jug, a tank or a plan, written without any rounding of their own.

use crate::site::Entry;

/// A number of few digits: digits × 10^tens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Round {
    digits: u32,
    tens: i8,
}

/// What a scale is marked in: 1, 2 and 5 and their tens, each with its value.
const STEPS: [(Round, f64); 21] = [
    (Round::new(1, -3), 0.001),
    (Round::new(2, -3), 0.002),
    (Round::new(5, -3), 0.005),
    (Round::new(1, -2), 0.01),
    (Round::new(2, -2), 0.02),
    (Round::new(5, -2), 0.05),
    (Round::new(1, -1), 0.1),
    (Round::new(2, -1), 0.2),
    (Round::new(5, -1), 0.5),
    (Round::new(1, 0), 1.0),
    (Round::new(2, 0), 2.0),
    (Round::new(5, 0), 5.0),
    (Round::new(1, 1), 10.0),
    (Round::new(2, 1), 20.0),
    (Round::new(5, 1), 50.0),
    (Round::new(1, 2), 100.0),
    (Round::new(2, 2), 200.0),
    (Round::new(5, 2), 500.0),
    (Round::new(1, 3), 1_000.0),
    (Round::new(2, 3), 2_000.0),
    (Round::new(5, 3), 5_000.0),
];

impl Round {
    /// digits × 10^tens.
    pub(super) const fn new(digits: u32, tens: i8) -> Self {
        Self { digits, tens }
    }

    /// So many times as much.
    pub(super) const fn times(self, count: u32) -> Self {
        Self { digits: self.digits * count, tens: self.tens }
    }

    /// In digits with a decimal point and nothing between thousands, which reads the same everywhere.
    pub(super) fn text(self) -> String {
        let places = usize::from(self.tens.unsigned_abs());
        if self.tens >= 0 {
            return format!("{}{}", self.digits, "0".repeat(places));
        }
        let digits = format!("{:0>width$}", self.digits, width = places + 1);
        let (whole, tail) = digits.split_at(digits.len() - places);
        let tail = tail.trim_end_matches('0');
        let mut out = whole.to_owned();
        // Three decimals could be read as thousands.
        for part in [if tail.is_empty() { "" } else { "." }, tail, if tail.len() == 3 { "0" } else { "" }] {
            out.push_str(part);
        }
        out
    }

    /// In a unit, as a person would type it.
    pub(super) fn entry(self, unit: &str) -> Entry {
        Entry::new(self.text(), unit)
    }
}

/// The coarsest step of which at least `marks` go into `most`, and its value; the finest that there is where
/// none does.
pub(super) fn step_for(most: f64, marks: f64) -> (Round, f64) {
    let fits = |(_, value): &&(Round, f64)| *value * marks <= most * (1.0 + 1e-9);
    *STEPS.iter().rev().find(fits).unwrap_or(&STEPS[0])
}

/// How many whole steps go into `most`.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped to what fits")]
pub(super) fn count_in(most: f64, step: f64) -> u32 {
    (most / step + 1e-9).floor().clamp(0.0, 1e6) as u32
}
