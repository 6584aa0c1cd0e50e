//! The trade's arithmetic: pure formulas, one family a file, typed quantities in and out.

pub mod actives;
pub mod alone;
pub mod calibration;
pub mod certainty;
pub mod coverage;
pub mod dilution;
pub mod formula;
pub mod governing;
pub mod label;
pub mod measure;
pub mod metering;
pub mod order;
pub mod porosity;
pub mod portion;
pub mod powder;
pub mod reading;
pub mod recovery;
pub mod rescue;
pub mod residue;
pub mod setting;
pub mod shift;
pub mod soil;
pub mod stock;
pub mod top_up;
