//! The texts that the browser keeps for this page, each under a name.

use web_sys::Storage;

/// The browser's store; none where it is blocked, which some browsers tell by an error.
pub fn storage() -> Option<Storage> {
    gloo::utils::window().local_storage().ok().flatten()
}

/// The text under a name; none where there is none, or the browser keeps nothing.
pub fn get(name: &str) -> Option<String> {
    storage()?.get_item(name).ok()?
}

/// Keeps a text under a name; tells whether the browser took it.
pub fn put(name: &str, text: &str) -> bool {
    storage().is_some_and(|storage| storage.set_item(name, text).is_ok())
}

/// Removes what is kept under a name; tells whether the browser did. What it did not is there once more on the next visit.
pub fn remove(name: &str) -> bool {
    storage().is_some_and(|storage| storage.remove_item(name).is_ok())
}

/// The names under which something is kept.
pub fn names() -> impl Iterator<Item = String> {
    let storage = storage();
    let count = storage.as_ref().and_then(|storage| storage.length().ok()).unwrap_or(0);
    (0..count).filter_map(move |at| storage.as_ref()?.key(at).ok()?)
}
