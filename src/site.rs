//! The user's documents: machines, products, floors, areas and measures of a site.
//!
//! A document holds what was typed, text and unit, and nothing computed: a half-typed number is
//! kept as it stands, and what is written out is what comes back. [`crate::form`] reads the texts.

pub mod address;
pub mod area_list;
mod demo;
mod entry;
mod kinds;
pub mod log;
pub mod passing;
mod record;
pub mod sheet;
mod standard;
pub mod unknown;

pub use demo::demo;
pub use entry::Entry;
pub use record::{Area, Catch, Dispenser, Floor, Ingredient, Machine, Measure, Product, Record, Site};
pub use standard::{Film, Finish, LeftOut, Override, Patch, Standard, Standing, Trial, says_why};
