//! The log: a record of every fill, on one device or on several, which can be added to and never changed unseen.
//!
//! | part | what it does |
//! |---|---|
//! | [`Record`], [`Fill`], [`Words`] | what is written down of a fill, a correction, a removal of personal words |
//! | [`Log`] | adds a record; merges what several devices wrote; shows where two say different things |
//! | [`Draft`] | the next record of a chain from its end alone, for whoever keeps the log outside memory |
//! | [`digest()`], [`verify()`], [`Verifier`] | the chain of hashes: the first record that was altered, left out, doubled or moved |
//! | [`write()`], [`read()`] | one record a line (NDJSON), for other devices and for ordinary databases |
//! | [`current()`], [`Folding`] | every fill as it stands after its corrections |
//! | [`pack()`], [`unpack()`] | the same as few bytes that are read fast |
//! | [`questions`] | use, doses, cost, stock, drift and tasks left undone, of the fills that a filter lets through |
//! | [`csv()`] | a table for people |
//!
//! All of it is pure: the time and 32 random bytes a record are the caller's. Every mistake has a stable `code()`
//! for its words.
//!
//! # What is hashed, and what can be erased
//!
//! A record holds the hash of the record before it on the same device, and its own: SHA-256 over
//! `brimline log record 1`, a zero byte, and the record's canonical JSON (RFC 8785) without `own` and without
//! `words`. All that a person wrote in their own words, initials included, stands in `words` alone, and the hashed
//! part holds a seal of each: SHA-256 over `brimline log words 1`, a zero byte, the name of the text, a zero byte,
//! its salt, a zero byte, the text. Salt and text can be blanked whenever somebody asks for it; the chain still
//! holds, and without the salt (128 random bits) nobody can find initials by trying them all. A blanked text
//! without a record of its erasure is found as a break.
//!
//! Blank fields are left out, of lines and of what is hashed, so that a later version can have more fields and the
//! hashes of earlier records stay what they were.
//!
//! A chain finds slips, lost lines and edits. Whoever writes the whole chain anew makes one that holds: against
//! that, [`Log::heads`] can be kept or printed elsewhere, and [`verify_to()`] holds a log to them. They also find
//! records that are missing at the end, which no chain by itself can.

mod add;
mod chain;
mod csv;
mod current;
mod fill;
mod flaw;
mod hold;
mod id;
mod lesson;
mod lines;
mod merge;
mod next;
mod packed;
pub mod questions;
mod record;
mod si;
mod verifier;
mod when;
mod words;

pub use add::Log;
pub use chain::{Broken, Head, Why, digest, verify, verify_to};
pub use csv::{COLUMNS, Column, csv};
pub use current::{Current, Folding, View, current};
pub use fill::{Amount, Checklist, Deviation, Fill, Named, Reading, Scale, Task, changed};
pub use flaw::Flaw;
pub use id::Id;
pub use lesson::{Attended, Lesson};
pub use lines::{LineFlaw, Lines, MOST_BYTES, MOST_FLAWS, MOST_LINE, Opened, SCHEMA, line, read, write};
pub use merge::{Conflict, Merged};
pub use next::{Draft, Stamp};
pub use packed::{pack, unpack};
pub use record::{Kind, Record};
pub use si::Si;
pub use verifier::Verifier;
pub use when::When;
pub use words::{Part, Seals, State, Text, Words};
