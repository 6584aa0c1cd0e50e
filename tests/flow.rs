//! Flow in depth: calibrated settings, tanks that drain by gravity, films that dry, against published
//! and certified values, reference libraries, and laws.

#![cfg(not(target_arch = "wasm32"))]

#[path = "flow/air.rs"]
mod air;
#[path = "flow/calibration.rs"]
mod calibration;
#[path = "flow/drying.rs"]
mod drying;
#[path = "flow/reference.rs"]
mod reference;

#[path = "common/figures.rs"]
mod figures;

use figures::assert_printed as prints;
