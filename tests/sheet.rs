//! The reader of pasted safety data sheets: sheets of our own in many layouts, single lines, laws, and noise.

#![cfg(not(target_arch = "wasm32"))]

#[path = "sheet/accept.rs"]
mod accept;
#[path = "sheet/clashes.rs"]
mod clashes;
#[path = "sheet/correct.rs"]
mod correct;
#[path = "sheet/layouts.rs"]
mod layouts;
#[path = "sheet/lines.rs"]
mod lines;
#[path = "sheet/noise.rs"]
mod noise;
#[path = "common/times.rs"]
mod times;
#[path = "sheet/toxicity.rs"]
mod toxicity;
#[path = "sheet/whole.rs"]
mod whole;
