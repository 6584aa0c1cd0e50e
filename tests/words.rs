//! The language files: nothing missing, nothing idle, read as the reference reader reads them.

#![cfg(not(target_arch = "wasm32"))]

#[path = "words/keys.rs"]
mod keys;
#[path = "words/languages.rs"]
mod languages;
#[path = "words/meant.rs"]
mod meant;
#[path = "words/parts.rs"]
mod parts;
#[path = "words/reference.rs"]
mod reference;
#[path = "words/spoken.rs"]
mod spoken;
#[path = "words/symbols.rs"]
mod symbols;
#[path = "words/told.rs"]
mod told;
