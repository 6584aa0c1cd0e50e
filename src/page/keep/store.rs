//! Keeps what was typed on the device.

use crate::form::Typed;
use crate::form::typed::SCHEMA;
use web_sys::Storage;

/// The name that it is kept under.
pub const KEY: &str = "brimline.typed";
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
    let Some(storage) = storage() else { return Found::Denied };
    let Ok(text) = storage.get_item(KEY) else { return Found::Denied };
    let Some(text) = text else { return Found::Nothing };
    match serde_json::from_str::<Typed>(&text) {
        Ok(mut typed) if typed.schema <= SCHEMA => {
            // The next person at this device has not read what the last one did.
            typed.ask.stop_read = false;
            Found::Typed(Box::new(typed.up_to_date()))
        }
        _ => {
            // Without room for the copy the message still carries the text.
            let _ = storage.set_item(ASIDE, &text);
            Found::Unreadable(text)
        }
    }
}

/// What was typed, as it is kept. The day is told anew on opening: kept, it would count as a change in every other tab.
pub fn written(typed: &Typed) -> Option<String> {
    let mut typed = typed.clone();
    typed.ask.today.clear();
    serde_json::to_string(&typed).ok()
}

/// Keeps a text under a name; tells whether the browser took it.
pub fn put(name: &str, text: &str) -> bool {
    storage().is_some_and(|storage| storage.set_item(name, text).is_ok())
}

/// Removes what is kept under a name.
pub fn remove(name: &str) {
    if let Some(storage) = storage() {
        // What cannot be removed is there once more on the next visit.
        let _ = storage.remove_item(name);
    }
}

/// The names under which something is kept.
pub fn names() -> impl Iterator<Item = String> {
    let storage = storage();
    let count = storage.as_ref().and_then(|storage| storage.length().ok()).unwrap_or(0);
    (0..count).filter_map(move |at| storage.as_ref()?.key(at).ok()?)
}

/// The device's own site waits here while a fill from a link is shown.
const OWN: &str = "brimline.own";

/// Whether the device's own site waits.
pub fn has_own() -> bool {
    storage().is_some_and(|storage| storage.get_item(OWN).is_ok_and(|kept| kept.is_some()))
}

/// Puts the device's own site aside, unless one waits already; tells whether one waits now.
pub fn put_own_aside(typed: &Typed) -> bool {
    has_own() || serde_json::to_string(typed).is_ok_and(|text| put(OWN, &text))
}

/// The device's own site, which goes on waiting.
pub fn own() -> Option<Typed> {
    let typed = serde_json::from_str::<Typed>(&storage()?.get_item(OWN).ok()??).ok()?;
    Some(typed.up_to_date())
}

/// Takes the device's own site back.
pub fn take_own() -> Option<Typed> {
    let typed = own()?;
    remove(OWN);
    Some(typed)
}

/// The browser's store; none where it is blocked, which some browsers tell by an error.
fn storage() -> Option<Storage> {
    gloo::utils::window().local_storage().ok().flatten()
}
