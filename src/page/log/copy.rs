//! The second copy: the ends of the chains, and this device's latest records since the last backup. A browser that
//! throws a damaged database away does so without a word; what stands here tells, and brings back what it can.

use super::meta::{End, Ends};
use crate::document::document;
use crate::page::keep::texts;
use crate::site::log::Record;

/// The key of the ends.
const ENDS: &str = "brimline.log";
/// What stands before the id of a record.
const LINE: &str = "brimline.log/";
/// The most records that are copied.
const MOST: u64 = 1_000;

document! {
    /// A chain of one device.
    Chain {
        /// The device.
        device: String,
        /// Where it ends.
        end: End,
    }
}

document! {
    /// The ends of the chains.
    Kept {
        /// This device.
        device: String,
        /// The chains.
        chains: Vec<Chain>,
    }
}

impl Kept {
    /// The ends of the chains, by device.
    pub fn ends(&self) -> Ends {
        self.chains.iter().map(|chain| (chain.device.clone(), chain.end.clone())).collect()
    }
}

/// The ends as they are kept; none where nothing is.
pub fn ends() -> Option<Kept> {
    serde_json::from_str(&texts::get(ENDS)?).ok()
}

/// Keeps the ends. Nobody is told where the browser has no room: it is a copy.
pub fn keep_ends(device: &str, ends: &Ends) {
    let chain = |(device, end): (&String, &End)| Chain { device: device.clone(), end: end.clone() };
    let kept = Kept { device: device.to_owned(), chains: ends.iter().map(chain).collect() };
    if let Ok(text) = serde_json::to_string(&kept) {
        texts::put(ENDS, &text);
    }
}

/// Copies a record, and lets go of the one that is too old for it.
pub fn keep(record: &Record, line: &str) {
    let name = |number: u64| format!("{LINE}{}/{number}", record.device);
    if let Some(old) = record.number.checked_sub(MOST) {
        texts::remove(&name(old));
    }
    texts::put(&name(record.number), line);
}

/// The records that are copied, as their lines.
pub fn lines() -> Vec<String> {
    texts::names().filter(|name| name.starts_with(LINE)).filter_map(|name| texts::get(&name)).collect()
}

/// Lets go of copies: of all of them after a backup, or of one whose texts were erased.
pub fn drop_lines(is: impl Fn(&str) -> bool) {
    // All of them first: each that goes moves those behind it.
    for name in texts::names().collect::<Vec<_>>() {
        if name.strip_prefix(LINE).is_some_and(&is) {
            texts::remove(&name);
        }
    }
}
