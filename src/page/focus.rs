//! Moves the focus where the address cannot: its fragment names the view.

use gloo::timers::callback::Timeout;
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

/// Milliseconds between two looks for an element that is still to be drawn, and how often it is looked for.
const LOOK: u32 = 50;
const LOOKS: u32 = 20;

/// The same, when what is being drawn now stands: another view may have to be drawn first.
pub fn soon(id: String) {
    again(id, on, 0, LOOKS);
}

/// Moves the focus to what is being drawn now, and scrolls no further than it takes to see it.
pub fn in_place(id: String) {
    again(id, still, 0, LOOKS);
}

fn still(id: &str) {
    let found = gloo::utils::document().get_element_by_id(id);
    if let Some(element) = found.and_then(|one| one.dyn_into::<HtmlElement>().ok()) {
        // What takes no focus stays as it is.
        let _ = element.focus();
    }
}

fn again(id: String, move_to: fn(&str), wait: u32, looks: u32) {
    Timeout::new(wait, move || {
        if looks == 0 || gloo::utils::document().get_element_by_id(&id).is_some() {
            move_to(&id);
        } else {
            again(id, move_to, LOOK, looks - 1);
        }
    })
    .forget();
}
