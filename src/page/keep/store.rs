//! Keeps what was typed on the device.

use crate::form::Typed;
use crate::form::typed::SCHEMA;
use gloo::storage::{LocalStorage, Storage, errors::StorageError};

const KEY: &str = "brimline.typed";
/// What could not be read is kept aside under this name, never overwritten by a fresh start.
const ASIDE: &str = "brimline.aside";

/// What was found on opening.
#[derive(Clone, Debug, PartialEq)]
pub enum Found {
    /// Nothing: a first visit.
    Nothing,
    /// What was typed last.
    Typed(Box<Typed>),
    /// Something that this version cannot read; it is kept aside.
    Unreadable(String),
    /// The browser keeps nothing for this page.
    Denied,
}

/// Opens what the device keeps.
pub fn open() -> Found {
    let Ok(text) = LocalStorage::raw().get_item(KEY) else { return Found::Denied };
    let Some(text) = text else { return Found::Nothing };
    match serde_json::from_str::<Typed>(&text) {
        Ok(typed) if typed.schema == SCHEMA => Found::Typed(Box::new(typed)),
        _ => {
            // Without room for the copy the message still carries the text.
            let _ = LocalStorage::raw().set_item(ASIDE, &text);
            Found::Unreadable(text)
        }
    }
}

/// Keeps what was typed; tells whether the browser took it.
pub fn keep(typed: &Typed) -> Result<(), StorageError> {
    LocalStorage::set(KEY, typed)
}
