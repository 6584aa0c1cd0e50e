//! Drawings to scale, from the numbers: every line means something.

pub mod calibration;
mod jug;
mod rates;
mod tank_level;
mod windows;

pub use jug::{JugAndTank, jug_and_tank};
pub use rates::{RateBars, rate_bars};
pub use tank_level::tank_level;
pub use windows::{Row as WindowRow, Windows, windows};
