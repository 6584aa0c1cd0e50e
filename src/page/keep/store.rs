//! Keeps what was typed on the device.

use super::texts;
use crate::form::Typed;
use crate::form::typed::SCHEMA;

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
    let Some(storage) = texts::storage() else { return Found::Denied };
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
            texts::put(ASIDE, &text);
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

/// The device's own site waits here while a fill from a link is shown.
const OWN: &str = "brimline.own";

/// Whether the device's own site waits.
pub fn has_own() -> bool {
    texts::get(OWN).is_some()
}

/// Puts the device's own site aside, unless one waits already; tells whether one waits now.
pub fn put_own_aside(typed: &Typed) -> bool {
    has_own() || serde_json::to_string(typed).is_ok_and(|text| texts::put(OWN, &text))
}

/// The device's own site, which goes on waiting.
pub fn own() -> Option<Typed> {
    let typed = serde_json::from_str::<Typed>(&texts::get(OWN)?).ok()?;
    Some(typed.up_to_date())
}

/// Takes the device's own site back.
pub fn take_own() -> Option<Typed> {
    let typed = own()?;
    // Where it cannot be removed it is offered once more.
    texts::remove(OWN);
    Some(typed)
}
