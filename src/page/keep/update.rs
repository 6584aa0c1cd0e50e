//! A newer version of the page: `boot.js` tells of it, and waits until the user accepts.

use gloo::events::EventListener;
use web_sys::Event;
use yew::prelude::*;

/// Whether a newer version waits.
#[hook]
pub fn use_waiting() -> bool {
    // Told before this code listened, it stands in a flag.
    let flag = || {
        js_sys::Reflect::get(&gloo::utils::window(), &"brimlineUpdate".into())
            .is_ok_and(|flag| flag.is_truthy())
    };
    let waiting = use_state_eq(flag);
    {
        let waiting = waiting.clone();
        use_effect_with((), move |()| {
            let listener =
                EventListener::new(&gloo::utils::window(), "brimline-update", move |_| waiting.set(true));
            move || drop(listener)
        });
    }
    *waiting
}

/// Lets it take over; the page loads again.
pub fn accept() {
    if let Ok(event) = Event::new("brimline-accept-update") {
        // Nobody listens only where there is no service worker, and then nothing waits.
        let _ = gloo::utils::window().dispatch_event(&event);
    }
}
