//! Practice: every exercise is solvable, its key is what exact arithmetic says, and no wrong road is taken for right.

#![cfg(not(target_arch = "wasm32"))]

#[path = "practice/answers.rs"]
mod answers;
#[path = "practice/codes.rs"]
mod codes;
#[path = "practice/draws.rs"]
mod draws;
#[path = "practice/exact.rs"]
mod exact;
#[path = "practice/first_fill.rs"]
mod first_fill;
#[path = "practice/golden.rs"]
mod golden;
#[path = "practice/grade.rs"]
mod grade;
#[path = "practice/judged.rs"]
mod judged;
#[path = "practice/keys.rs"]
mod keys;
#[path = "practice/labels.rs"]
mod labels;
#[path = "practice/numbers.rs"]
mod numbers;
#[path = "practice/pictures.rs"]
mod pictures;
#[path = "practice/registers.rs"]
mod registers;
#[path = "practice/rules.rs"]
mod rules;
#[path = "practice/runs.rs"]
mod runs;
#[path = "practice/seeds.rs"]
mod seeds;
#[path = "practice/sessions.rs"]
mod sessions;
#[path = "practice/stocks.rs"]
mod stocks;
#[path = "practice/tickets.rs"]
mod tickets;
#[path = "practice/told.rs"]
mod told;
