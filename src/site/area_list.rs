//! The list of areas as a table for spreadsheets: written with units in the header, read as people keep it.
//!
//! Every column is one row of [`COLUMNS`]; what goes out, what is found in a file and what comes in all follow
//! from it. A file comes in by three steps, so that a person can look on: [`Table::open`] reads its cells,
//! [`Mapping::guess`] finds which column is what and can be corrected, and [`import()`] makes the areas.
//! CSV is RFC 4180, of which spreadsheets vary the separator and the decimal mark.

mod cell;
mod column;
mod export;
pub(super) mod guard;
mod import;
mod mapping;
mod marks;
mod spelling;
mod table;
mod text;

pub use column::{COLUMNS, Column, Kind};
pub use export::export;
pub use import::{Flaw, Imported, Wrong, import};
pub use mapping::{Mapping, Source};
pub use table::{Refusal, Row, Table};

/// The most areas that a list may have: more than these a browser does not keep, 5 MB being the most that it
/// keeps of one site.
pub const MOST_AREAS: usize = 5_000;

/// The most columns that a file may have; a spreadsheet of rooms has a dozen.
pub const MOST_COLUMNS: usize = 200;

/// The most characters of a cell that are kept; a name or a number has far fewer.
pub const MOST_CHARACTERS: usize = 500;
