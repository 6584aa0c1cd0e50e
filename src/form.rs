//! From what was typed to an answer: the state of the page, the actions that change it, and one
//! pure function a view.

pub mod action;
pub mod cautions;
pub mod field;
pub mod fill;
pub mod flow;
pub mod log;
pub mod names;
pub mod outcome;
pub mod pasted;
pub mod rules;
pub mod saved;
pub mod shift;
pub mod site;
pub mod station;
pub mod typed;

pub use action::Action;
pub use field::Field;
pub use outcome::{Outcome, Trouble, What};
pub use typed::{Ask, Filling, Typed};
