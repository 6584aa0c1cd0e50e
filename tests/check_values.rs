//! One table of every value from outside that pH, air, toxicity, bleach and published guidance are held against:
//! ours, theirs, the difference, what it may be, and where theirs comes from. `cargo test --test check_values`
//! prints it; a difference beyond its tolerance fails.

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    run::main();
}

#[cfg(not(target_arch = "wasm32"))]
#[path = "flow/air.rs"]
mod air;
#[cfg(not(target_arch = "wasm32"))]
#[path = "station/bleach.rs"]
mod bleach;
#[cfg(not(target_arch = "wasm32"))]
#[path = "acid_base/cases.rs"]
mod cases;
#[cfg(not(target_arch = "wasm32"))]
#[path = "acid_base/computed.rs"]
mod computed;
#[cfg(not(target_arch = "wasm32"))]
#[path = "check_values/guidance.rs"]
mod guidance;
#[cfg(not(target_arch = "wasm32"))]
#[path = "check_values/ph.rs"]
mod ph;
#[cfg(not(target_arch = "wasm32"))]
#[path = "check_values/report.rs"]
mod report;
#[cfg(not(target_arch = "wasm32"))]
#[path = "check_values/rest.rs"]
mod rest;

#[cfg(not(target_arch = "wasm32"))]
mod run {
    use crate::report::Report;
    use crate::{guidance, ph, rest};

    /// As the harness of Rust's tests takes its words: a filter that leaves this file out, and a run of ignored
    /// tests alone, print nothing.
    pub fn main() {
        let words: Vec<String> = std::env::args().skip(1).collect();
        let filter = words.iter().find(|word| !word.starts_with('-'));
        let left_out = filter.is_some_and(|filter| !"check_values".contains(filter.as_str()));
        if left_out || words.iter().any(|word| word == "--ignored" || word == "--list") {
            return;
        }
        let mut report = Report::default();
        ph::all(&mut report);
        rest::air(&mut report);
        rest::toxicity(&mut report);
        rest::bleach(&mut report);
        guidance::all(&mut report);
        report.close();
    }
}
