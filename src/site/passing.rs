//! Passing a site on: one person keeps it, and every fill station's device gets it without a server.
//!
//! | part | what it does |
//! |---|---|
//! | [`write()`], [`read()`] | a site as one file; what a reader would refuse is never written |
//! | [`compare()`], [`choose()`] | what another site has that is different, and taking some of it |
//! | [`merge()`], [`decide()`] | two sites that grew apart from one, item by item |
//! | [`sign()`], [`verify()`], [`admit()`] | whose site it is: Ed25519, and the key that a device is pinned to |
//! | [`backup`], [`Chain`] | keeping a key, and passing on to the next one, step by step |
//! | [`link`] | one small thing, such as a fill, in the fragment of an address |
//!
//! All of it is pure: text in, text out. Nothing here asks for the time, keeps anything or draws a number; the
//! 32 random bytes of a new key are the caller's. Every mistake has a stable `code()` for its words.
//!
//! Sites are compared and merged as JSON, so that a new kind of record needs no code here but a row in
//! [`REFERENCES`] for each id that it holds of another.

pub mod backup;
pub(super) mod blanks;
mod canonical;
mod change;
pub(super) mod check;
mod choose;
mod conflict;
mod crc;
pub(super) mod file;
mod handover;
mod key;
pub mod link;
mod merge;
mod numbers;
mod order;
mod records;
mod references;
mod refusal;
mod seal;
pub mod stamp;
pub(super) mod strict;

pub use blanks::{restore, strip};
pub use canonical::canonical;
pub use change::{Change, What, compare, readable};
pub use choose::choose;
pub use conflict::{Clash, Conflict, Decision, Side, Use};
pub use file::{Opened, SCHEMA, read, write};
pub use handover::{Chain, Followed, Handover, MOST_STEPS};
pub use key::{PublicKey, Secret};
pub use merge::{Merged, Renamed, WHOLE, decide, merge};
pub use numbers::{NoNumber, Unread, no_numbers, unread};
pub use references::{REFERENCES, Reference};
pub use refusal::{Json, Place, Reason, Refusal};
pub use seal::{Pin, Standing, Why, admit, next_edition, sign, verify};

/// The most characters of one text: the notes from a long safety data sheet have a third of that.
pub const MOST_CHARACTERS: usize = 20_000;

/// The most entries of one list: as many as the list of areas may have.
pub const MOST_ENTRIES: usize = super::area_list::MOST_AREAS;
