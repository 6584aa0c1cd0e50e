//! Keeps the fills as they stand as blocks, so that the log opens without reading every record.

use super::clock::Slices;
use super::database::{META, Mode, PACKED};
use super::held::held;
use super::meta::{self, MARK, Mark};
use super::{Trouble, tab};
use crate::site::log::pack;
use gloo::timers::callback::Timeout;
use std::cell::Cell;

/// Fills of a block: packing one takes less than a frame, and one correction makes so many be written again.
const BLOCK: usize = 1_024;
/// Records that may stand outside of blocks: so many are read one by one when the log is opened.
const LOOSE: usize = 512;
/// Milliseconds until the device is idle again.
const SOON: u32 = 1_000;

thread_local! {
    static WAITS: Cell<bool> = const { Cell::new(false) };
}

/// Counts records that came; packs soon where they are many.
pub fn after(count: usize) {
    if tab::loosen(count) >= LOOSE {
        soon();
    }
}

/// Packs in a moment.
pub fn soon() {
    if !WAITS.replace(true) {
        Timeout::new(SOON, || {
            yew::platform::spawn_local(async {
                WAITS.set(false);
                // A log without blocks opens, too, only later.
                let _ = pack_all().await;
            });
        })
        .forget();
    }
}

/// The checksum that a block begins with, after the version of its layout.
pub fn sum(block: &[u8]) -> u64 {
    let bytes = block.get(1..9).and_then(|sum| sum.try_into().ok());
    bytes.map(u64::from_le_bytes).unwrap_or_default()
}

async fn pack_all() -> Result<(), Trouble> {
    if !tab::is_settled() {
        soon();
        return Ok(());
    }
    let (view, ends) = (held().view.clone(), tab::ends());
    let mut slices = Slices::begin();
    let mut blocks = Vec::new();
    for fills in view.fills.chunks(BLOCK) {
        blocks.push(pack(fills));
        slices.breathe().await;
    }
    let whole = tab::database().await?.begin(&[META, PACKED], Mode::Derive)?;
    let (meta, packed) = (whole.store(META)?, whole.store(PACKED)?);
    // What was erased meanwhile must not come back: the blocks stand for these ends or for none.
    let now = meta::read(&whole).await?;
    if now.ends != ends {
        return Ok(());
    }
    let before = now.mark.map(|mark| mark.sums).unwrap_or_default();
    if before.len() > blocks.len() || before.is_empty() {
        packed.clear()?;
    }
    for (place, block) in blocks.iter().enumerate() {
        if before.len() > blocks.len() || before.get(place) != Some(&sum(block)) {
            packed.put_bytes(&(place as f64).into(), block)?;
        }
    }
    let mark = Mark {
        heads: meta::heads(&ends),
        sums: blocks.iter().map(|block| sum(block)).collect(),
        fills: view.fills.len() as u64,
        lessons: view.lessons.iter().map(|one| one.id.to_string()).collect(),
        astray: view.astray.iter().map(ToString::to_string).collect(),
    };
    meta.put_document(&MARK.into(), &mark)?;
    whole.done().await?;
    tab::packed();
    Ok(())
}
