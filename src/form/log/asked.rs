//! What the log is asked: each question as a sentence, figures, a table and what could not be counted.

mod costs;
mod doses;
mod drifts;
mod shelf;
mod undone;
mod uses;

pub use costs::{CostRow, Costs, costs};
pub use doses::{Doses, FEWEST, LATEST, Point, doses};
pub use drifts::{DriftRow, Drifts, FEWEST_READINGS, Read, drifts};
pub use shelf::{Lasting, Shelf, shelf};
pub use undone::{Undone, undone};
pub use uses::{UseRow, Uses, uses};

use crate::answer::{Answer, Value};
use crate::units::Kind;

/// What every question answers.
#[derive(Clone, Debug, Default)]
pub struct Told {
    /// Sentences, figures and workings.
    pub answer: Answer,
    /// Fills that were asked about.
    pub fills: usize,
    /// Fills that could not be counted.
    pub uncounted: usize,
}

fn count(n: usize) -> Value {
    Value::plain(n as f64, Kind::Count)
}
