//! What the browser keeps, and what leaves it as a file.

pub mod download;
pub mod store;
pub mod update;
