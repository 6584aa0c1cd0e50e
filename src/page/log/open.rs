//! Opens the log: who this device is, what the second copy can bring back, and every fill as it stands.

use super::database::{ABOUT, META, Mode, PACKED, RECORDS, Transaction, key, range, read};
use super::held::{Stage, Usage, change, held};
use super::meta::{self, DEVICE, Ends, Mark, Meta};
use super::script::{call, get, window};
use super::tab::Unsettled;
use super::{Trouble, copy, fold, packing, restore, tab, write};
use crate::site::log::{Record, View, unpack};
use js_sys::{Array, Promise, Uint8Array};
use std::rc::Rc;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

/// Letters of a device's id.
const LETTERS: &[u8] = b"abcdefghijklmnopqrstuvwxyz0123456789";
/// How many of them it has.
const LETTER_COUNT: usize = 8;

/// Opens the log; what the page holds says how that went.
pub async fn open() {
    match load().await {
        Ok(()) => usage(false).await,
        Err(trouble) => {
            change(|held| held.stage = Stage::Shut(trouble));
            write::run();
        }
    }
}

/// Reads everything.
pub async fn load() -> Result<(), Trouble> {
    // Before the database: what is confirmed meanwhile is in that, and not missed here.
    let kept = copy::ends();
    let _unsettled = Unsettled::begin();
    let database = tab::database().await?;
    let whole = database.begin(&[META, PACKED, RECORDS], Mode::Read)?;
    let mut meta = meta::read(&whole).await?;
    let blocks = whole.store(PACKED)?.all(&JsValue::UNDEFINED, None).await?;
    let ends_are_there = ends_are_there(&whole, &meta.ends).await?;
    whole.done().await?;
    let device = match meta.device.take() {
        Some(device) => device,
        None => name(kept.as_ref().map(|kept| kept.device.clone())).await?,
    };
    let mut view = match &meta.mark {
        Some(mark) if ends_are_there => view(mark, &blocks, &meta.ends),
        _ => None,
    };
    if let Some(kept) = &kept
        && restore::restore(kept, &meta.ends, view.is_none()).await?
    {
        (meta, view) = (again().await?, None);
    }
    match (view, &meta.mark) {
        (Some(mut view), Some(mark)) => {
            view.lessons = fold::lessons(&mark.lessons).await?;
            change(|held| held.view = Rc::new(view));
            tab::packed();
            let tail = tail(&mark_ends(mark), &meta.ends).await?;
            fold::absorb(&tail).await?;
            packing::after(tail.len());
            tab::know(&device, meta.ends, meta.backup, &meta.lost);
        }
        _ => rebuild(&device, meta).await?,
    }
    copy::keep_ends(&device, &tab::ends());
    tab::tell(|held| held.stage = Stage::Open);
    write::run();
    Ok(())
}

/// Reads what came at the ends of chains.
pub async fn catch_up() -> Result<(), Trouble> {
    let _unsettled = Unsettled::begin();
    let meta = again().await?;
    let tail = tail(&tab::ends(), &meta.ends).await?;
    fold::absorb(&tail).await?;
    packing::after(tail.len());
    tab::know(&tab::device(), meta.ends, meta.backup, &meta.lost);
    Ok(())
}

/// Folds all records anew.
async fn rebuild(device: &str, meta: Meta) -> Result<(), Trouble> {
    let rebuilt = fold::rebuild(&meta.ends).await?;
    change(|held| held.view = Rc::new(rebuilt.view));
    // What was written while it was read.
    let now = again().await?.ends;
    fold::absorb(&tail(&rebuilt.ends, &now).await?).await?;
    tab::know(device, rebuilt.ends, meta.backup, &rebuilt.gaps);
    for (device, end) in now {
        tab::know_end(&device, end);
    }
    packing::soon();
    Ok(())
}

async fn again() -> Result<Meta, Trouble> {
    let whole = tab::database().await?.begin(&[META], Mode::Read)?;
    meta::read(&whole).await
}

/// Whether the last record of each chain is there.
async fn ends_are_there(whole: &Transaction, ends: &Ends) -> Result<bool, Trouble> {
    let records = whole.store(RECORDS)?;
    for (device, end) in ends {
        if records.get(&key(device, end.number, Some(&end.own))).await?.is_undefined() {
            return Ok(false);
        }
    }
    Ok(true)
}

/// The fills that the blocks have, where these are whole and the log has gone on from them.
fn view(mark: &Mark, blocks: &Array, ends: &Ends) -> Option<View> {
    let follows = |head: &crate::site::log::Head| {
        ends.get(&head.device)
            .is_some_and(|end| end.number > head.number || end.number == head.number && end.own == head.own)
    };
    if mark.sums.len() != blocks.length() as usize || !mark.heads.iter().all(follows) {
        return None;
    }
    let mut fills = Vec::new();
    for (block, sum) in blocks.iter().zip(&mark.sums) {
        let block = Uint8Array::new(&block).to_vec();
        if packing::sum(&block) != *sum {
            return None;
        }
        fills.extend(unpack(&block)?);
    }
    let astray = mark.astray.iter().filter_map(|id| crate::site::log::Id::read(id)).collect();
    (fills.len() as u64 == mark.fills).then_some(View { fills, lessons: Vec::new(), astray })
}

fn mark_ends(mark: &Mark) -> Ends {
    let end = |head: &crate::site::log::Head| meta::End { number: head.number, ..meta::End::default() };
    mark.heads.iter().map(|head| (head.device.clone(), end(head))).collect()
}

/// The records after these ends.
async fn tail(from: &Ends, to: &Ends) -> Result<Vec<Record>, Trouble> {
    let behind = |(device, end): &(&String, &meta::End)| {
        from.get(*device).is_none_or(|known| known.number < end.number)
    };
    let mut tail = Vec::new();
    let whole = tab::database().await?.begin(&[RECORDS, ABOUT], Mode::Read)?;
    for (device, end) in to.iter().filter(behind) {
        let known = from.get(device).map_or(0, |end| end.number);
        let keys = range(&key(device, known + 1, None), true, &key(device, end.number + 1, None))?;
        for line in whole.store(RECORDS)?.all(&keys, None).await?.iter() {
            tail.push(read(&line)?);
        }
    }
    Ok(tail)
}

/// Gives this device an id; where another tab was faster, that one's.
async fn name(before: Option<String>) -> Result<String, Trouble> {
    let new = match before.filter(|device| crate::site::log::Id::is_device(device)) {
        Some(before) => before,
        None => random_name()?,
    };
    let whole = tab::database().await?.begin(&[META], Mode::Keep)?;
    let meta = whole.store(META)?;
    if let Some(device) = meta.get(&DEVICE.into()).await?.as_string() {
        return Ok(device);
    }
    meta.put(&DEVICE.into(), &new.as_str().into())?;
    whole.done().await?;
    Ok(new)
}

/// A new id: no two devices ever have the same.
pub fn random_name() -> Result<String, Trouble> {
    let mut name = "d-".to_owned();
    while name.len() < 2 + LETTER_COUNT {
        // A byte at the end of the range would make some letters likelier.
        let fair =
            random()?.into_iter().filter(|byte| usize::from(*byte) < 256 / LETTERS.len() * LETTERS.len());
        name.extend(
            fair.take(LETTER_COUNT + 2 - name.len())
                .map(|byte| char::from(LETTERS[usize::from(byte) % LETTERS.len()])),
        );
    }
    Ok(name)
}

/// 32 bytes from the browser's own random numbers.
pub fn random() -> Result<[u8; 32], Trouble> {
    let mut random = [0; 32];
    let crypto = gloo::utils::window().crypto().map_err(|_| Trouble::NoRandom)?;
    crypto.get_random_values_with_u8_array(&mut random).map_err(|_| Trouble::NoRandom)?;
    Ok(random)
}

/// Asks the browser to keep what the page stores until a person removes it; whether it does.
///
/// Source: WHATWG, Storage Standard, `StorageManager.persist()`.
pub async fn ask_to_keep() -> bool {
    usage(true).await;
    held().usage.is_some_and(|usage| usage.kept)
}

/// Asks how much is used; with `ask`, also that the browser keeps it, which some ask the person about.
pub async fn usage(ask: bool) {
    // Where there is no such thing, nobody can tell.
    let _ = used(ask).await;
}

async fn used(ask: bool) -> Result<(), JsValue> {
    let storage = get(&get(&window(), "navigator")?, "storage")?;
    let ask_it = async |what: &str| JsFuture::from(Promise::from(call(&storage, what, &[])?)).await;
    let mut kept = ask_it("persisted").await?.is_truthy();
    if ask && !kept {
        kept = ask_it("persist").await?.is_truthy();
    }
    let estimate = ask_it("estimate").await?;
    let number = |name| get(&estimate, name).ok().and_then(|number| number.as_f64());
    if let (Some(used), Some(allowed)) = (number("usage"), number("quota")) {
        change(|held| held.usage = Some(Usage { used, allowed, kept }));
    }
    Ok(())
}
