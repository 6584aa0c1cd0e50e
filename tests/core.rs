//! Units, numbers, limits, labels, formulas and forms: against published figures, hand-worked
//! examples and the laws that none of them may break.

#![cfg(not(target_arch = "wasm32"))]

#[path = "core/area_list.rs"]
mod area_list;
#[path = "core/by_hand.rs"]
mod by_hand;
#[path = "core/dilution.rs"]
mod dilution;
#[path = "core/form_actions.rs"]
mod form_actions;
#[path = "core/form_answers.rs"]
mod form_answers;
#[path = "core/form_flow.rs"]
mod form_flow;
#[path = "core/form_measures.rs"]
mod form_measures;
#[path = "core/form_saved.rs"]
mod form_saved;
#[path = "core/form_shift.rs"]
mod form_shift;
#[path = "core/form_station.rs"]
mod form_station;
#[path = "core/form_troubles.rs"]
mod form_troubles;
#[path = "core/label_counted.rs"]
mod label_counted;
#[path = "core/label_laws.rs"]
mod label_laws;
#[path = "core/label_refusals.rs"]
mod label_refusals;
#[path = "core/labels.rs"]
mod labels;
#[path = "core/limits.rs"]
mod limits;
#[path = "core/numbers.rs"]
mod numbers;
#[path = "core/trade_laws.rs"]
mod trade_laws;
#[path = "core/units.rs"]
mod units;

use brimline::form::{Action, Typed, action::reduce};
use brimline::units::{Quantity, unit};

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

/// Holds a result against a printed figure: within half of its last digit.
#[track_caller]
fn assert_printed(got: f64, printed: &str) {
    let decimals = printed.split_once('.').map_or(0, |(_, tail)| tail.len());
    let value: f64 = printed.parse().expect("a printed figure");
    let half = 0.5 * 10_f64.powi(-i32::try_from(decimals).expect("few digits"));
    assert!((got - value).abs() <= half * (1.0 + 1e-9), "{got} is not {printed}");
}

/// The demo site after some actions.
fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}
