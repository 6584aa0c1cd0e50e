//! Drawings to scale, from the numbers: every line means something.

pub mod calibration;
mod cost_bars;
mod jug;
mod ph_curve;
mod qr;
mod rates;
mod tank_level;
mod timeline;
mod windows;

pub use cost_bars::cost_bars;
pub use jug::{JugAndTank, jug_and_tank};
pub use ph_curve::ph_curve;
pub use qr::qr;
pub use rates::{RateBars, rate_bars};
pub use tank_level::tank_level;
pub use timeline::{act_key, timeline};
pub use windows::{Row as WindowRow, Windows, windows};
