//! The trade's arithmetic: pure formulas, one family a file, typed quantities in and out.

pub mod coverage;
pub mod dilution;
pub mod formula;
pub mod governing;
pub mod label;
pub mod measure;
pub mod porosity;
pub mod setting;
pub mod shift;
