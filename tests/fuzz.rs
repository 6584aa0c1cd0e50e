//! Every reader of what people type, paste, scan or open: whatever comes, it ends, says something, and what it takes
//! it writes again the same.
//!
//! Files and texts that are right are changed at random: bytes, pieces, digits, words of their own kind. Where a
//! checksum would keep all changes out, it is made anew, so that what lies behind it is reached. The readers of the
//! log, of a site's file and its keys, and of safety data sheets have tests of the same kind beside their others
//! (`log/fuzz.rs`, `passing/fuzz.rs`, `sheet/noise.rs`). `BRIMLINE_FUZZ=100 cargo test --release fuzz noise` runs all of
//! them a hundred times as long, with other draws.

#![cfg(not(target_arch = "wasm32"))]

#[path = "fuzz/changed.rs"]
mod changed;
#[path = "fuzz/codes.rs"]
mod codes;
#[path = "fuzz/documents.rs"]
mod documents;
#[path = "fuzz/texts.rs"]
mod texts;
#[path = "common/times.rs"]
mod times;

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};

/// No input that a person could wait for may take longer, unoptimized and on a busy machine.
const BOUND: Duration = Duration::from_secs(10);

/// Feeds a reader `count` times (or as many as are asked for), tells how often it took what came, and fails with the
/// input where it panics or does not end in time.
fn fuzz(
    name: &str,
    seed: u64,
    count: u32,
    draw: impl Fn(&mut fastrand::Rng) -> Vec<u8>,
    feed: impl Fn(&[u8]) -> bool,
) {
    let count = count * times::times();
    let mut rng = fastrand::Rng::with_seed(seed + u64::from(times::times()) - 1);
    let (mut taken, mut slowest) = (0, Duration::ZERO);
    for _ in 0..count {
        let bytes = draw(&mut rng);
        let began = Instant::now();
        let ended = catch_unwind(AssertUnwindSafe(|| feed(&bytes)));
        let took = began.elapsed();
        let shown = || String::from_utf8_lossy(&bytes).into_owned();
        taken += u32::from(ended.unwrap_or_else(|_| panic!("{name} breaks with {:?}", shown())));
        assert!(took < BOUND, "{name} takes {took:?} for {:?}", shown());
        slowest = slowest.max(took);
    }
    println!("{name}: {count} executions, {taken} taken, {} refused, the slowest {slowest:?}", count - taken);
    assert!(taken * 50 > count, "{name}: the changes leave some of it right ({taken} of {count})");
    assert!(taken < count, "{name}: something is refused");
}
