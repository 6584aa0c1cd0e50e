//! The log: its chain, its file, its merge, what it is asked, and control charts.

#![cfg(not(target_arch = "wasm32"))]

#[path = "log/asked.rs"]
mod asked;
#[path = "log/chain.rs"]
mod chain;
#[path = "log/control.rs"]
mod control;
#[path = "log/database.rs"]
mod database;
#[path = "log/end_of_shift.rs"]
mod end_of_shift;
#[path = "log/erasure.rs"]
mod erasure;
#[path = "common/faults.rs"]
mod faults;
#[path = "log/fills.rs"]
mod fills;
#[path = "log/form.rs"]
mod form;
#[path = "log/fuzz.rs"]
mod fuzz;
#[path = "log/golden.rs"]
mod golden;
#[path = "log/hostile.rs"]
mod hostile;
#[path = "log/lessons.rs"]
mod lessons;
#[path = "log/made.rs"]
mod made;
#[path = "log/merging.rs"]
mod merging;
#[path = "log/numbers.rs"]
mod numbers;
#[path = "log/packed.rs"]
mod packed;
#[path = "log/questions.rs"]
mod questions;
#[path = "log/refused.rs"]
mod refused;
#[path = "log/speed.rs"]
mod speed;
#[path = "log/table.rs"]
mod table;
#[path = "common/times.rs"]
mod times;
