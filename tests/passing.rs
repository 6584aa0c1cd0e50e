//! Passing a site on: the file, what differs, the merge, the signature, the link, and files that mean harm.

#![cfg(not(target_arch = "wasm32"))]

#[path = "passing/backups.rs"]
mod backups;
#[path = "passing/blanks.rs"]
mod blanks;
#[path = "passing/bytes.rs"]
mod bytes;
#[path = "passing/changes.rs"]
mod changes;
#[path = "passing/conflicts.rs"]
mod conflicts;
#[path = "passing/edits.rs"]
mod edits;
#[path = "common/faults.rs"]
mod faults;
#[path = "passing/files.rs"]
mod files;
#[path = "passing/fuzz.rs"]
mod fuzz;
#[path = "passing/hostile.rs"]
mod hostile;
#[path = "passing/keys.rs"]
mod keys;
#[path = "passing/laws.rs"]
mod laws;
#[path = "passing/libraries.rs"]
mod libraries;
#[path = "passing/links.rs"]
mod links;
#[path = "common/times.rs"]
mod times;
