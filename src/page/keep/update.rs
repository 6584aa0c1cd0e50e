//! A newer version of the page: `boot.js` tells of it, and waits until the user accepts.

use super::event::use_event;
use web_sys::Event;
use yew::prelude::*;

/// Whether a newer version waits.
#[hook]
pub fn use_waiting() -> bool {
    // Told before this code listened, it stands in a flag.
    let flag = || {
        let flag = js_sys::Reflect::get(&gloo::utils::window(), &"brimlineUpdate".into());
        if flag.is_ok_and(|flag| flag.is_truthy()) { "yes" } else { "" }.to_owned()
    };
    !use_event("brimline-update", flag).is_empty()
}

/// Lets it take over; the page loads again.
pub fn accept() {
    if let Ok(event) = Event::new("brimline-accept-update") {
        // Nobody listens only where there is no service worker, and then nothing waits.
        let _ = gloo::utils::window().dispatch_event(&event);
    }
}
