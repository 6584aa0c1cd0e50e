//! The fill station: topping up, rescuing, reading, powders, packets, metering and how sure a dose
//! is, against hand-worked cases, published figures and the laws that none of them may break.

#![cfg(not(target_arch = "wasm32"))]

#[path = "station/actives.rs"]
mod actives;
#[path = "station/cases.rs"]
mod cases;
#[path = "station/certainty.rs"]
mod certainty;
#[path = "station/measures.rs"]
mod measures;
#[path = "station/reading.rs"]
mod reading;
#[path = "station/tank.rs"]
mod tank;

use brimline::limits::Limit;
use brimline::trade::label::Window;
use brimline::units::{Quantity, unit};
use proptest::prelude::*;

/// A quantity as a person says it.
#[track_caller]
fn of<Q: Quantity>(value: f64, code: &str) -> Q {
    let unit = unit(code).unwrap_or_else(|| panic!("{code} is no unit"));
    Q::of(value, unit).unwrap_or_else(|| panic!("{code} measures something else"))
}

/// It, in a unit.
#[track_caller]
fn in_unit<Q: Quantity>(quantity: Q, code: &str) -> f64 {
    let unit = unit(code).unwrap_or_else(|| panic!("{code} is no unit"));
    quantity.value_in(unit).unwrap_or_else(|| panic!("{code} measures something else"))
}

/// Whether a result is a printed figure: within half of its last digit.
fn is_printed(got: f64, printed: &str) -> bool {
    let decimals = printed.split_once('.').map_or(0, |(_, tail)| tail.len());
    let value: f64 = printed.parse().expect("a printed figure");
    let half = 0.5 * 10_f64.powi(-i32::try_from(decimals).expect("few digits"));
    (got - value).abs() <= half * (1.0 + 1e-9)
}

#[track_caller]
fn assert_printed(got: f64, printed: &str) {
    assert!(is_printed(got, printed), "{got} is not {printed}");
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// A quantity within its limits, evenly over the orders of magnitude.
fn within<Q: Quantity + std::fmt::Debug>(limit: &'static Limit) -> impl Strategy<Value = Q> {
    assert_eq!(limit.dimension, Q::DIMENSION);
    let low = limit.low.max(limit.high * 1e-6);
    (low.ln()..=limit.high.ln()).prop_map(|log| Q::from_si(log.exp()))
}

/// Two of them in order.
fn window<Q: Quantity + PartialOrd + std::fmt::Debug>(
    limit: &'static Limit,
) -> impl Strategy<Value = Window<Q>> {
    (within(limit), within(limit)).prop_map(|(a, b): (Q, Q)| {
        if a <= b { Window { low: a, high: b } } else { Window { low: b, high: a } }
    })
}
