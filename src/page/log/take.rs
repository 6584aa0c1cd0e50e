//! Takes what a file brings.

use super::clock::Slices;
use super::database::{ABOUT, META, Mode, PACKED, RECORDS, key};
use super::held::{Busy, Doing, change};
use super::incoming::{Fresh, Incoming};
use super::meta::{self, End, MARK};
use super::{Trouble, copy, fold, open, tab, tabs};
use crate::site::log::Record;

/// Records that are put in one transaction.
const PART: usize = 500;

/// Takes what [`compare`](super::compare) found, in slices. What comes of it lands in
/// [`Held::taken`](super::Held::taken).
pub fn take(incoming: &Incoming) {
    let (fresh, added) = (incoming.fresh.clone(), incoming.added);
    let erased = incoming.erased.clone();
    change(|held| held.taken = None);
    yew::platform::spawn_local(async move {
        let taken = put_all(&fresh).await;
        for (id, _) in erased {
            copy::drop_lines(|name| name == id.to_string());
        }
        // Also where it stopped half way: what is there is shown.
        let loaded = open::load().await;
        tabs::tell(true);
        open::usage(false).await;
        tab::tell(|held| {
            held.busy = None;
            held.taken = Some(taken.and(loaded).map(|()| added));
        });
    });
}

/// Every part of it is a log that holds as far as it goes: whoever stops half way can begin again.
async fn put_all(fresh: &[Fresh]) -> Result<(), Trouble> {
    let mut slices = Slices::begin();
    for (place, part) in fresh.chunks(PART).enumerate() {
        let whole = tab::database().await?.begin(&[RECORDS, META, ABOUT, PACKED], Mode::Keep)?;
        let (records, meta, abouts) = (whole.store(RECORDS)?, whole.store(META)?, whole.store(ABOUT)?);
        if place == 0 {
            // The blocks may lack what comes in between, and have what was erased.
            meta.remove(&MARK.into())?;
            whole.store(PACKED)?.clear()?;
        }
        for one in part {
            records.put(&key(&one.id.device, one.id.number, Some(&one.own)), &one.line.as_str().into())?;
            if let Some((of, about)) = &one.about {
                let named = Record {
                    device: one.id.device.to_string(),
                    number: one.id.number,
                    own: one.own.clone(),
                    ..Record::default()
                };
                abouts.put_document(&fold::about_key(of, &named), about)?;
            }
        }
        for chain in part.chunk_by(|one, other| one.id.device == other.id.device) {
            let Some(last) = chain.iter().max_by_key(|one| one.id.number) else { continue };
            let device = &last.id.device;
            let known = meta::end(&meta, device).await?.unwrap_or_default();
            if known.number < last.id.number {
                let end = End { number: last.id.number, own: last.own.clone(), ..known };
                meta::put_end(&meta, device, &end)?;
            }
        }
        whole.done().await?;
        let (done, of) = (place * PART + part.len(), fresh.len());
        change(|held| held.busy = Some(Busy { doing: Doing::Writing, done, of }));
        slices.breathe().await;
    }
    Ok(())
}
