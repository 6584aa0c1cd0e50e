//! Quantities as people say them, and figures as they are printed: what every file of checks needs.

#![allow(dead_code, reason = "each test crate takes what it needs")]

use brimline::form::{Action, Typed, action::reduce};
use brimline::units::{Quantity, unit};

/// A quantity as a person says it.
#[track_caller]
pub fn of<Q: Quantity>(value: f64, code: &str) -> Q {
    let unit = unit(code).unwrap_or_else(|| panic!("{code} is no unit"));
    Q::of(value, unit).unwrap_or_else(|| panic!("{code} measures something else"))
}

/// It, in a unit.
#[track_caller]
pub fn in_unit<Q: Quantity>(quantity: Q, code: &str) -> f64 {
    let unit = unit(code).unwrap_or_else(|| panic!("{code} is no unit"));
    quantity.value_in(unit).unwrap_or_else(|| panic!("{code} measures something else"))
}

/// Whether a result is a printed figure: within half of its last digit.
pub fn is_printed(got: f64, printed: &str) -> bool {
    let decimals = printed.split_once('.').map_or(0, |(_, tail)| tail.len());
    let value: f64 = printed.parse().expect("a printed figure");
    let half = 0.5 * 10_f64.powi(-i32::try_from(decimals).expect("few digits"));
    (got - value).abs() <= half * (1.0 + 1e-9)
}

/// Holds a result against a printed figure.
#[track_caller]
pub fn assert_printed(got: f64, printed: &str) {
    assert!(is_printed(got, printed), "{got} is not {printed}");
}

/// Equal but for rounding.
pub fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// The demo site after some actions.
pub fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}
