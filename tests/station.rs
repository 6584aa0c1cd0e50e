//! The fill station: topping up, rescuing, reading, powders, packets, metering and how sure a dose
//! is, against hand-worked cases, published figures and the laws that none of them may break.

#![cfg(not(target_arch = "wasm32"))]

#[path = "station/actives.rs"]
mod actives;
#[path = "station/bleach.rs"]
mod bleach;
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

#[path = "common/figures.rs"]
mod figures;

use brimline::limits::Limit;
use brimline::trade::label::Window;
use brimline::units::Quantity;
use figures::{assert_printed, in_unit, is_printed, near, of};
use proptest::prelude::*;

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
