//! Brings back what the second copy has and the database has lost.

use super::copy::{self, Kept};
use super::database::{META, Mode, RECORDS, key};
use super::meta::{self, Ends, MARK};
use super::{Trouble, tab};
use crate::site::log::{Id, Record};

/// Puts copied records back where chains are shorter than they were once, and the ends as they were; whether any
/// was. A chain goes on from its old end even where records before it are gone: a backup has them.
///
/// * `doubted`: records may be missing between others as well.
pub async fn restore(kept: &Kept, ends: &Ends, doubted: bool) -> Result<bool, Trouble> {
    let shorter = |(device, end): &(&String, &meta::End)| {
        Id::is_device(device) && ends.get(*device).is_none_or(|is| is.number < end.number)
    };
    let once = kept.ends();
    let missing: Vec<_> = once.iter().filter(shorter).collect();
    if missing.is_empty() && !doubted {
        return Ok(false);
    }
    let copied: Vec<(Record, String)> = copy::lines()
        .into_iter()
        .filter_map(|line| Some((serde_json::from_str(&line).ok()?, line)))
        .collect();
    let mut changed = !missing.is_empty();
    let whole = tab::database().await?.begin(&[RECORDS, META], Mode::Keep)?;
    let (records, meta) = (whole.store(RECORDS)?, whole.store(META)?);
    for (record, line) in copied {
        let here = key(&record.device, record.number, Some(&record.own));
        if records.get(&here).await?.is_undefined() {
            records.put(&here, &line.as_str().into())?;
            changed = true;
        }
    }
    for (device, end) in missing {
        // Another tab may have been here first.
        if meta::end(&meta, device).await?.is_none_or(|is| is.number < end.number) {
            meta::put_end(&meta, device, end)?;
        }
    }
    if changed {
        meta.remove(&MARK.into())?;
    }
    whole.done().await?;
    Ok(changed)
}
