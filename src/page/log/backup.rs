//! The log as files to save.

use super::Trouble;
use super::clock::now;
use super::database::{META, Mode};
use super::held::{Busy, Doing, change, held};
use super::meta::{self, BACKUP, Ends};
use super::script::{call, make, set};
use super::{copy, fold, tab, tabs};
use crate::number::Marks;
use crate::page::keep::download;
use crate::site::log::{Id, Log, Record, csv, write};
use crate::units::System;
use js_sys::{Array, Object};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::Blob;

/// The media types.
const NDJSON: &str = "application/x-ndjson";
const CSV: &str = "text/csv;charset=utf-8";

/// Saves the whole log as NDJSON, and remembers when: [`Held::backup`](super::Held::backup). Where that fails,
/// [`Held::taken`](super::Held::taken) says why.
pub fn backup_ndjson() {
    yew::platform::spawn_local(async {
        if let Err(trouble) = ndjson().await {
            change(|held| held.taken = Some(Err(trouble)));
        }
        change(|held| held.busy = None);
    });
}

async fn ndjson() -> Result<(), Trouble> {
    let of = held().heads.iter().map(|head| usize::try_from(head.number).unwrap_or_default()).sum();
    let whole = tab::database().await?.begin(&[META], Mode::Read)?;
    let ends = meta::read(&whole).await?.ends;
    drop(whole);
    let parts = Array::new();
    parts.push(&first_line(&ends).into());
    let (mut next, mut done) = (Some(JsValue::UNDEFINED), 0);
    while let Some(from) = next {
        let (lines, then) = fold::page(&from).await?;
        next = then;
        done += lines.length() as usize;
        if lines.length() > 0 {
            // Joined by the browser: the texts never come here.
            lines.push(&"".into());
            parts.push(&call(&lines, "join", &[&"\n".into()])?);
        }
        change(|held| held.busy = Some(Busy { doing: Doing::Saving, done, of }));
    }
    let kind = Object::new();
    set(&kind, "type", &NDJSON.into())?;
    let blob: Blob = make("Blob", &[&parts, &kind])?.unchecked_into();
    let when = now();
    download::offer_blob(&format!("brimline-log-{}.ndjson", &when[..10]), blob.into());
    let saved = meta::Saved { when, heads: meta::heads(&ends) };
    let whole = tab::database().await?.begin(&[META], Mode::Keep)?;
    whole.store(META)?.put_document(&BACKUP.into(), &saved)?;
    whole.done().await?;
    copy::drop_lines(|name| {
        Id::read(name).is_none_or(|id| ends.get(&*id.device).is_some_and(|end| id.number <= end.number))
    });
    tab::know_backup(saved);
    tabs::tell(false);
    tab::tell(|_| {});
    Ok(())
}

/// What the file is, and where each chain ends.
fn first_line(ends: &Ends) -> String {
    let mut file = write(&Log::default());
    let heads = serde_json::to_string(&meta::heads(ends)).unwrap_or_default();
    file = file.replacen("\"heads\":[]", &format!("\"heads\":{heads}"), 1);
    file
}

/// Saves the fills as they stand as CSV, a table for people: not a backup.
pub fn backup_csv(system: System, marks: Marks) {
    let name = format!("brimline-log-{}.csv", &now()[..10]);
    download::offer(&name, CSV, &csv(&held().view.fills, system, marks));
}

/// Saves what was not confirmed as a file that the log takes.
pub fn save_waiting() {
    let held = held();
    let records = held.waiting.iter().filter_map(|one| serde_json::from_str::<Record>(&one.line).ok());
    let name = format!("brimline-log-waiting-{}.ndjson", &now()[..10]);
    download::offer(&name, NDJSON, &write(&Log::of(records)));
}
