//! What can hurt people, floors or the machine: label elements, advice, products that must never
//! meet, foam, what each floor bears, and how acid or alkaline a use solution is.
//!
//! Everything here is a table row with its source, or a pure function over such rows. No rule here
//! replaces the product label, its safety data sheet or local codes, and nothing unknown is ever
//! answered with "safe".

pub mod acid_base;
pub mod advice;
pub mod cas;
pub mod drying;
pub mod family;
pub mod floor;
pub mod foam;
pub mod ghs;
pub mod pairs;
pub mod rinse;

/// Every word key this layer can hand to the page, for the check that each has its words.
///
/// ```
/// assert!(brimline::chemistry::word_keys().any(|key| key == "ghs-h-h314"));
/// ```
pub fn word_keys() -> impl Iterator<Item = String> {
    ghs::word_keys()
        .chain(advice::word_keys())
        .chain(family::word_keys())
        .chain(pairs::word_keys())
        .chain(foam::word_keys())
        .chain(floor::word_keys())
        .chain(rinse::word_keys())
}
