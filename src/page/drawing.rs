//! Drawings to scale, from the numbers: every line means something.

mod bars;
mod bottles;
pub mod calibration;
mod control_chart;
mod cost_bars;
mod cup;
mod drift_line;
mod film_on_tile;
mod foam;
mod jug;
mod ph_curve;
mod qr;
mod range;
mod rates;
mod scales;
mod strip;
mod tank_level;
mod tanks;
mod ticket;
mod timeline;
mod to_scale;
mod wear;
mod why;
mod windows;

pub use bars::{Bar, bars};
pub use bottles::bottles;
pub use control_chart::control_chart;
pub use cost_bars::cost_bars;
pub use cup::cup_and_tank;
pub use drift_line::drift_line;
pub use film_on_tile::film_on_tile;
pub use foam::foam;
pub use jug::{JugAndTank, jug_and_tank};
pub use ph_curve::ph_curve;
pub use qr::qr;
pub use range::range;
pub use rates::{RateBars, rate_bars};
pub use scales::scales;
pub use strip::strip;
pub use tank_level::tank_level;
pub use tanks::tanks;
pub use ticket::ticket;
pub use timeline::{act_key, timeline};
pub use to_scale::to_scale;
pub use wear::wear;
pub use why::why_drawing;
pub use windows::{Row as WindowRow, Windows, windows};

/// The width of a letter in a drawing, about.
const LETTER: f64 = 9.0;

/// To what width a text is drawn narrower, where it has more letters than there is room for.
fn narrow(text: &str, room: f64) -> Option<String> {
    (text.chars().count() as f64 * LETTER > room).then(|| room.to_string())
}
