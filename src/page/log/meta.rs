//! What the database knows of the whole log, as JSON.

use super::Trouble;
use super::database::{META, Store, Transaction};
use crate::document::document;
use crate::site::log::{Head, Kind, Part};
use std::collections::BTreeMap;
use wasm_bindgen::JsValue;

/// The key of this device's id.
pub const DEVICE: &str = "device";
/// The key of what the blocks stand for.
pub const MARK: &str = "view";
/// The key of the last backup.
pub const BACKUP: &str = "backup";
/// The key of what was here once.
pub const LOST: &str = "lost";
/// What stands before the device in the key of the end of its chain.
const END: &str = "end/";

document! {
    /// The end of a chain.
    End {
        /// The number of its last record.
        number: u64,
        /// The hash of that record.
        own: String,
        /// The latest time that a record of it gives, seconds since 1970.
        latest: i64,
        /// Records whose time lies before that of the one before them.
        back: Vec<u64>,
    }
}

document! {
    /// What a record does to another one.
    About {
        /// It corrects or erases.
        kind: Kind,
        /// Of a correction the time that it counts by, seconds since 1970.
        latest: i64,
        /// Of an erasure what it blanks.
        erased: Vec<Part>,
    }
}

document! {
    /// What the blocks stand for.
    Mark {
        /// The records that are in them, by the ends of their chains.
        heads: Vec<Head>,
        /// The checksum of each.
        sums: Vec<u64>,
        /// How many fills they have.
        fills: u64,
        /// The records of practice sessions, which stand in no block.
        lessons: Vec<String>,
        /// Corrections that are not counted.
        astray: Vec<String>,
    }
}

document! {
    /// The last backup.
    Saved {
        /// When it was made.
        when: String,
        /// The records that are in it, by the ends of their chains.
        heads: Vec<Head>,
    }
}

document! {
    /// Records that were here once.
    Gap {
        /// Of which device.
        device: String,
        /// The first of them.
        from: u64,
        /// The last of them.
        to: u64,
    }
}

/// The ends of all chains, by device.
pub type Ends = BTreeMap<String, End>;

/// What the database knows of the whole log.
#[derive(Default)]
pub struct Meta {
    /// This device; none in a new database.
    pub device: Option<String>,
    /// The chains.
    pub ends: Ends,
    /// What the blocks stand for; none where they have to be made.
    pub mark: Option<Mark>,
    /// The last backup.
    pub backup: Option<Saved>,
    /// What was here once.
    pub lost: Vec<Gap>,
}

/// Reads all of it.
pub async fn read(whole: &Transaction) -> Result<Meta, Trouble> {
    let store = whole.store(META)?;
    let keys = store.keys(&JsValue::UNDEFINED, None).await?;
    let values = store.all(&JsValue::UNDEFINED, None).await?;
    let mut meta = Meta::default();
    for (key, value) in keys.iter().zip(values.iter()) {
        let (Some(key), Some(text)) = (key.as_string(), value.as_string()) else { continue };
        match key.as_str() {
            DEVICE => meta.device = Some(text),
            MARK => meta.mark = serde_json::from_str(&text).ok(),
            BACKUP => meta.backup = serde_json::from_str(&text).ok(),
            LOST => meta.lost = serde_json::from_str(&text).unwrap_or_default(),
            other => {
                if let (Some(device), Ok(end)) = (other.strip_prefix(END), serde_json::from_str(&text)) {
                    meta.ends.insert(device.to_owned(), end);
                }
            }
        }
    }
    Ok(meta)
}

/// The end of a device's chain; none where it has no record.
pub async fn end(meta: &Store, device: &str) -> Result<Option<End>, Trouble> {
    meta.document(&format!("{END}{device}")).await
}

/// Puts the end of a chain there.
pub fn put_end(meta: &Store, device: &str, end: &End) -> Result<(), Trouble> {
    meta.put_document(&format!("{END}{device}").into(), end)
}

/// The ends of chains as heads.
pub fn heads(ends: &Ends) -> Vec<Head> {
    let head = |(device, end): (&String, &End)| Head {
        device: device.clone(),
        number: end.number,
        own: end.own.clone(),
    };
    ends.iter().map(head).collect()
}

impl End {
    /// It as a head.
    pub fn head(&self, device: &str) -> Head {
        Head { device: device.to_owned(), number: self.number, own: self.own.clone() }
    }
}
