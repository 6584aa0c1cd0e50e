//! Drawings to scale, from the numbers: every line means something.

mod jug;
mod rates;

pub use jug::JugAndTank;
pub use rates::RateBars;
