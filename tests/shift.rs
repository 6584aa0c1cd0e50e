//! The shift: worked by hand to the ounce, machine by machine, with its costs and its stock, and the laws
//! that no plan may break.

#![cfg(not(target_arch = "wasm32"))]

#[path = "shift/by_hand.rs"]
mod by_hand;
#[path = "common/figures.rs"]
mod figures;
#[path = "shift/laws.rs"]
mod laws;
#[path = "shift/machines.rs"]
mod machines;
#[path = "shift/products.rs"]
mod products;
#[path = "shift/stock.rs"]
mod stock;

use brimline::answer::Answer;
use brimline::form::Action;
use figures::{after, assert_printed, in_unit, near, of};

fn write(field: brimline::form::Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

/// A figure in a unit, as it is printed; plain for a count.
#[track_caller]
fn assert_figure(answer: &Answer, name: &str, code: &str, printed: &str) {
    let value = answer.get(name).unwrap_or_else(|| panic!("{name} is missing"));
    assert_printed(brimline::units::unit(code).map_or(value.si, |unit| unit.from_si(value.si)), printed);
}

/// The codes of what is said.
fn codes(answer: &Answer) -> Vec<&'static str> {
    answer.remarks.iter().map(|remark| remark.code).collect()
}
