//! Flow in depth: calibrated settings, tanks that drain by gravity, films that dry, against published
//! and certified values, reference libraries, and laws.

#![cfg(not(target_arch = "wasm32"))]

#[path = "flow/calibration.rs"]
mod calibration;
#[path = "flow/drying.rs"]
mod drying;
#[path = "flow/reference.rs"]
mod reference;

/// Within half of the last printed digit.
#[track_caller]
fn prints(got: f64, printed: &str) {
    let decimals = printed.split_once('.').map_or(0, |(_, tail)| tail.len());
    let value: f64 = printed.parse().expect("a printed figure");
    let half = 0.5 * 10_f64.powi(-i32::try_from(decimals).expect("few digits"));
    assert!((got - value).abs() <= half * (1.0 + 1e-9), "{got} is not {printed}");
}
