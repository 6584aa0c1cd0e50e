//! The log on this device: what the browser keeps of it, what the page holds of it, and one function an act.
//!
//! | part | what it does |
//! |---|---|
//! | [`Held`], [`use_log`] | what the page holds; a view that uses it is drawn again when it changes |
//! | [`record`], [`correct`], [`tick`], [`erase`] | write one record; it is confirmed when the browser says that it is durable |
//! | [`again`], [`let_go`], [`save_waiting`] | what was not confirmed: tried again, let go, or saved as a file |
//! | [`history`] | a fill with all that was written about it |
//! | [`backup_ndjson`], [`backup_csv`] | files to save |
//! | [`compare`], [`take`] | a file from elsewhere: what it would bring, then taking it |
//! | [`check_now`] | holds every record to its chain |
//!
//! Codes of [`Trouble`]: `log-denied`, `log-full`, `log-newer`, `log-blocked`, `log-unreadable`, `log-no-random`,
//! `log-failed`, and those of [`Flaw`](crate::site::log::Flaw) where the record itself is none. Codes of what takes long, in [`Held::busy`]:
//! `opening`, `reading`, `comparing`, `writing`, `saving`.
//!
//! All of it stands in the later chunk of the page.

mod backup;
mod check;
mod clock;
mod copy;
mod database;
mod fold;
mod held;
mod incoming;
mod leaving;
mod meta;
mod open;
mod packing;
mod restore;
pub mod script;
mod tab;
mod tabs;
mod take;
mod trouble;
mod write;

pub use backup::{backup_csv, backup_ndjson, save_waiting};
pub use check::check_now;
pub use clock::{lapsed, now, offset};
pub use held::{Check, Held, Lost, Stage, Waiting, use_log};
pub use incoming::{Incoming, NotCompared, compare};
pub use open::{ask_to_keep, random};
pub use take::take;
pub use trouble::Trouble;
pub use write::{again, let_go};

use crate::site::log::{Fill, Id, Lesson, Part, Record, Task, Words};
use database::{ABOUT, Mode, RECORDS};
use serde_json::{Map, Value};
use write::{What, write};

/// Writes a fill down. What comes of it lands in [`Held`]: first in [`Held::waiting`], then in [`Held::last`].
pub fn record(fill: Fill, words: Words) {
    write(What::Fill(Box::new(fill)), words);
}

/// Corrects a fill: `changes` as [`changed`](crate::site::log::changed()) gives them; in `words` the corrected ones,
/// and why.
pub fn correct(of: Id, changes: Map<String, Value>, words: Words) {
    write(What::Correct(of, changes), words);
}

/// Ticks off a task of a fill's checklist, by its code; in `words` who did it. Ticks that come fast after each other all
/// count: each starts from the fill as the database has it then.
pub fn tick(of: Id, task: &'static str, state: Task, words: Words) {
    write(What::Tick(of, task, state), words);
}

/// Writes down what somebody showed in a practice session; in `words` who.
pub fn attended(lesson: Lesson, words: Words) {
    write(What::Lesson(lesson), words);
}

/// Blanks texts of a record; in `words` who did it, and why.
pub fn erase(of: Id, parts: Vec<Part>, words: Words) {
    write(What::Erase(of, parts), words);
}

/// The texts of all records in which these initials stand by themselves.
///
/// # Errors
/// The records cannot be read.
pub async fn naming(initials: &str) -> Result<Vec<(Id, Vec<Part>)>, Trouble> {
    let mut found = Vec::new();
    let take = |record: Record| {
        let parts = record.naming(initials);
        if !parts.is_empty() {
            found.push((record.id(), parts));
        }
    };
    fold::each(take, |_| ()).await?;
    Ok(found)
}

/// A fill with its corrections, and the erasures of any of them, by devices and numbers; empty where it cannot be
/// read.
pub async fn history(id: &Id) -> Vec<Record> {
    read_history(id).await.unwrap_or_default()
}

async fn read_history(id: &Id) -> Result<Vec<Record>, Trouble> {
    let whole = tab::database().await?.begin(&[RECORDS, ABOUT], Mode::Read)?;
    let mut records = whole.records(id).await?;
    let mut after = Vec::new();
    for (naming, _) in fold::naming(&whole, id).await? {
        for (erasure, _) in fold::naming(&whole, &naming).await? {
            after.extend(whole.records(&erasure).await?);
        }
        records.extend(whole.records(&naming).await?);
    }
    records.extend(after);
    Ok(records)
}
