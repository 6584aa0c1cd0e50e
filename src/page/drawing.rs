//! Drawings to scale, from the numbers: every line means something.

mod jug;
mod rates;

pub use jug::{JugAndTank, jug_and_tank};
pub use rates::{RateBars, rate_bars};
