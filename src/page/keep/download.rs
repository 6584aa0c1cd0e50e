//! Offers a text as a file.

use gloo::file::{Blob, ObjectUrl};
use wasm_bindgen::JsCast;
use web_sys::HtmlAnchorElement;

/// Lets the user save `text` under `name`.
pub fn offer(name: &str, text: &str) {
    let document = gloo::utils::document();
    let Ok(link) = document.create_element("a").map(JsCast::unchecked_into::<HtmlAnchorElement>) else {
        return;
    };
    let address = ObjectUrl::from(Blob::new_with_options(text, Some("application/json")));
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The browser reads the address after this call returns.
    gloo::timers::callback::Timeout::new(60_000, move || drop(address)).forget();
}
