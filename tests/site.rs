//! What a supervisor does on Site: a new finish, worked by hand and against libraries; what may clean it; trial
//! patches; addresses that phones can open; and the laws that none of them may break.

#![cfg(not(target_arch = "wasm32"))]

#[path = "site/address.rs"]
mod address;
#[path = "site/calendar.rs"]
mod calendar;
#[path = "site/candidates.rs"]
mod candidates;
#[path = "site/coats.rs"]
mod coats;
#[path = "site/dilutions.rs"]
mod dilutions;
#[path = "common/figures.rs"]
mod figures;
#[path = "site/ground.rs"]
mod ground;
#[path = "site/strip.rs"]
mod strip;
#[path = "site/trial.rs"]
mod trial;

use brimline::answer::Answer;
use brimline::form::action::Shelf;
use brimline::form::{Action, Field};
use brimline::units::unit;
use figures::{after, assert_printed};

fn write(field: Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

fn pick(shelf: Shelf, id: &str) -> Action {
    Action::Pick(shelf, id.into())
}

/// A figure in a unit, as it is printed; plain for a count.
#[track_caller]
fn assert_figure(answer: &Answer, name: &str, code: &str, printed: &str) {
    let value = answer.get(name).unwrap_or_else(|| panic!("{name} is missing"));
    assert_printed(unit(code).map_or(value.si, |unit| unit.from_si(value.si)), printed);
}

/// The codes of what is said.
fn codes(answer: &Answer) -> Vec<&'static str> {
    answer.remarks.iter().map(|remark| remark.code).collect()
}
