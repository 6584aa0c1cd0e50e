//! What a log is asked: pure functions over fills as they stand.
//!
//! [`Filter::of`] lets fills through; each question takes what comes out. What was written down by mistake is never
//! counted. Where nobody measured, a use is what was planned, and the answer says how many fills that were.

mod cost;
mod dosing;
mod drift;
mod filter;
mod missed;
mod shifts;
mod supply;
mod usage;

pub use cost::{Cost, Prices, cost};
pub use dosing::{Dose, Dosing, dosing};
pub use drift::{Drift, DriftMistake, drift};
pub use filter::Filter;
pub use missed::{Missed, TaskCount, missed, tasks, unticked};
pub use shifts::{REST, shifts};
pub use supply::{RECENT, Supply, SupplyMistake, supply};
pub use usage::{By, Use, usage};
