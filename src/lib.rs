//! Brimline: from a product label, a tank and a floor to the amount of concentrate, the flow
//! setting, the shift's fills and the cautions.
//!
//! The arrows between the layers point one way only:
//!
//! ```text
//! units, number, limits, source, error, answer   what a quantity, a limit, a citation, a mistake and an answer are
//!    -> trade, chemistry                         pure formulas and rules
//!    -> site                                     the user's documents, as they were typed
//!    -> form                                     from what was typed to an answer
//!    -> practice                                 exercises from a site's own records, judged
//!    -> words                                    codes and figures to a person's language
//!    -> page (wasm32) | desk (native)            what a person meets
//! ```

pub mod answer;
pub mod chemistry;
pub mod coded;
pub mod document;
pub mod error;
pub mod form;
pub mod limits;
pub mod number;
pub mod practice;
pub mod shape;
pub mod site;
pub mod source;
pub mod trade;
pub mod units;
pub mod words;

#[cfg(not(target_arch = "wasm32"))]
pub mod desk;

#[cfg(target_arch = "wasm32")]
pub mod page;
