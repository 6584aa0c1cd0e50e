//! Moves the focus where the address cannot: its fragment names the view.

use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Moves the focus to an element and into sight, unfolding what hides it.
pub fn on(id: &str) {
    let Some(element) = gloo::utils::document().get_element_by_id(id) else { return };
    if let Ok(Some(details)) = element.closest("details") {
        // Setting an attribute of that name cannot fail.
        let _ = details.set_attribute("open", "");
    }
    // A field comes into sight with its label.
    element.closest(".field").ok().flatten().as_ref().unwrap_or(&element).scroll_into_view();
    if let Ok(element) = element.dyn_into::<HtmlElement>() {
        // What takes no focus is in sight all the same.
        let _ = element.focus();
    }
}

/// The same, when what is being drawn now stands.
pub fn soon(id: String) {
    gloo::timers::callback::Timeout::new(0, move || on(&id)).forget();
}
