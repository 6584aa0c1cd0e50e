//! Asks the browser to keep what the page stores until a person removes it.

use wasm_bindgen_futures::JsFuture;

/// Whether the browser says so; it may ask the person first. A browser that cannot keeps nothing back.
///
/// Source: WHATWG, Storage Standard, `StorageManager.persist()`.
pub async fn ask() -> bool {
    let Ok(asked) = gloo::utils::window().navigator().storage().persist() else { return false };
    JsFuture::from(asked).await.ok().and_then(|kept| kept.as_bool()).unwrap_or(false)
}
