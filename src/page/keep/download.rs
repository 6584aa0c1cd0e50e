//! Offers a text as a file.

use gloo::file::{Blob, ObjectUrl};
use wasm_bindgen::JsCast;
use web_sys::HtmlAnchorElement;

/// The media type of a saved answer.
pub const JSON: &str = "application/json";

/// Lets the user save `text`, of a media type, under `name`.
pub fn offer(name: &str, kind: &str, text: &str) {
    offer_blob(name, Blob::new_with_options(text, Some(kind)));
}

/// Lets the user save what the browser holds, under `name`.
pub fn offer_blob(name: &str, blob: Blob) {
    let document = gloo::utils::document();
    let Ok(link) = document.create_element("a").map(JsCast::unchecked_into::<HtmlAnchorElement>) else {
        return;
    };
    let address = ObjectUrl::from(blob);
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The browser reads the address after this call returns.
    gloo::timers::callback::Timeout::new(60_000, move || drop(address)).forget();
}
