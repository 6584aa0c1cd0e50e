//! Drawings to scale, from the numbers: every line means something.

mod bars;
pub mod calibration;
mod control_chart;
mod cost_bars;
mod cup;
mod drift_line;
mod jug;
mod ph_curve;
mod qr;
mod rates;
mod tank_level;
mod timeline;
mod why;
mod windows;

pub use bars::{Bar, bars};
pub use control_chart::control_chart;
pub use cost_bars::cost_bars;
pub use cup::cup_and_tank;
pub use drift_line::drift_line;
pub use jug::{JugAndTank, jug_and_tank};
pub use ph_curve::ph_curve;
pub use qr::qr;
pub use rates::{RateBars, rate_bars};
pub use tank_level::tank_level;
pub use timeline::{act_key, timeline};
pub use why::why_drawing;
pub use windows::{Row as WindowRow, Windows, windows};
