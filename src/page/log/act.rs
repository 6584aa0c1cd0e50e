//! What a person does to the log.

use super::held::{Saved, Stage, change, held};
use super::{Trouble, Waiting};
use crate::number::Marks;
use crate::page::keep::download;
use crate::site::log::{Fill, Flaw, Id, Log, Part, Record, Stamp, Words, csv, current, write};
use crate::units::System;
use serde_json::{Map, Value};
use std::cell::RefCell;
use std::rc::Rc;

thread_local! {
    static LOG: RefCell<Log> = RefCell::default();
}

/// Opens it, once a tab.
pub(super) fn open() {
    if held().stage != Stage::Open {
        change(|held| {
            held.stage = Stage::Open;
            "d-memory".clone_into(&mut held.device);
        });
    }
}

fn done(act: impl FnOnce(&mut Log, &Stamp) -> Result<Id, Flaw>) {
    let when = "2026-03-07T18:30:00Z";
    let made = LOG.with_borrow_mut(|log| {
        let id = act(log, &Stamp { device: "d-memory", when, random: [7; 32] })?;
        Ok((id, current(log), log.heads()))
    });
    change(|held| match made {
        Ok((id, view, heads)) => {
            held.view = Rc::new(view);
            held.heads = heads;
            held.last = Some(Saved { id, when: when.to_owned(), took: 0.0 });
        }
        Err(flaw) => {
            held.waiting.push(Waiting { key: 0, line: String::new(), trouble: Some(Trouble::Refused(flaw)) })
        }
    });
}

/// Writes a fill down. What comes of it lands in [`Held`](super::Held).
pub fn record(fill: Fill, words: Words) {
    done(|log, stamp| log.fill(stamp, fill, words));
}

/// Corrects a fill: `changes` as [`changed`](crate::site::log::changed()) gives them.
pub fn correct(of: Id, changes: Map<String, Value>, words: Words) {
    done(|log, stamp| log.correct(stamp, &of, &changes, words));
}

/// Blanks texts of a record.
pub fn erase(of: Id, parts: Vec<Part>, words: Words) {
    done(|log, stamp| log.erase(stamp, &of, &parts, words));
}

/// Tries an act again that was not confirmed.
pub fn again(key: u32) {
    let_go(key);
}

/// Lets go of an act that was not confirmed.
pub fn let_go(key: u32) {
    change(|held| held.waiting.retain(|one| one.key != key));
}

/// Saves what was not confirmed as a file that the log takes back.
pub fn save_waiting() {
    let lines: String = held().waiting.iter().map(|one| format!("{}\n", one.line)).collect();
    download::offer("brimline-log-waiting.ndjson", "application/x-ndjson", &lines);
}

/// A fill with its corrections and erasures, in the order in which they were written.
#[allow(clippy::unused_async, reason = "the records are read from the browser")]
pub async fn history(id: &Id) -> Vec<Record> {
    let named = id.to_string();
    LOG.with_borrow(|log| {
        log.records().iter().filter(|one| one.id() == *id || one.of == named).cloned().collect()
    })
}

/// Saves the whole log as NDJSON.
pub fn backup_ndjson() {
    download::offer("brimline-log.ndjson", "application/x-ndjson", &LOG.with_borrow(write));
}

/// Saves the fills as they stand as CSV, a table for people.
pub fn backup_csv(system: System, marks: Marks) {
    download::offer("brimline-log.csv", "text/csv", &csv(&held().view.fills, system, marks));
}

/// Holds every record to its chain, in slices: the page stays alive.
pub fn check_now() {
    let records = LOG.with_borrow(|log| log.records().len());
    change(|held| held.check = super::Check::Whole { records });
}
