//! Standards: checked before they are published, replaced and never rewritten, and what a fill station then shows.

#![cfg(not(target_arch = "wasm32"))]

#[path = "site/first_day.rs"]
mod first_day;
#[path = "site/in_force.rs"]
mod in_force;
#[path = "site/left_out.rs"]
mod left_out;
#[path = "site/let_pass.rs"]
mod let_pass;
#[path = "site/library.rs"]
mod library;
#[path = "site/proof.rs"]
mod proof;

use brimline::form::action::{Line, StandardLine, reduce};
use brimline::form::site::Act;
use brimline::form::{Action, Typed};

/// The demo site with a draft that says who, why and from when.
fn draft(floor: &str, product: &str, dilution: &str) -> Typed {
    let begun =
        Act::Draft { floor: floor.to_owned(), product: product.to_owned(), dilution: dilution.to_owned() };
    let line = |line: StandardLine, text: &str| Action::Text(Line::Rule(line), text.to_owned());
    [
        begun.action(),
        line(StandardLine::Author, "K. M."),
        line(StandardLine::Reason, "New finish"),
        line(StandardLine::Effective, "2026-01-05"),
    ]
    .into_iter()
    .fold(Typed::default(), reduce)
}

/// What was typed after these actions.
fn after(typed: Typed, actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(typed, reduce)
}

/// The draft put into force on a day.
fn published(typed: Typed, date: &str) -> Typed {
    after(typed, [Act::Publish { date: date.to_owned(), proved: String::new() }.action()])
}
