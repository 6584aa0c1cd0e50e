//! How acid or alkaline a use solution is: against computed tables, published buffers and outside

#![cfg(not(target_arch = "wasm32"))]

#[path = "acid_base/anchors.rs"]
mod anchors;
#[path = "acid_base/cases.rs"]
mod cases;
#[path = "acid_base/computed.rs"]
mod computed;
#[path = "acid_base/laws.rs"]
mod laws;
#[path = "acid_base/libraries.rs"]
mod libraries;
#[path = "acid_base/sheets.rs"]
mod sheets;
#[path = "acid_base/substances.rs"]
mod substances;
#[path = "acid_base/table.rs"]
mod table;
