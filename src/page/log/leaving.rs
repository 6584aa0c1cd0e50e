//! Leaving the page while the browser has not confirmed a record: it asks first.

use gloo::events::{EventListener, EventListenerOptions};
use std::cell::RefCell;

thread_local! {
    static ASKS: RefCell<Option<EventListener>> = const { RefCell::new(None) };
}

/// Has the browser ask before the page goes, or no longer. It listens only while something waits, since a page that
/// always listens is not kept for the way back.
pub fn ask(waits: bool) {
    ASKS.with_borrow_mut(|asks| {
        if asks.is_some() == waits {
            return;
        }
        *asks = waits.then(|| {
            let options = EventListenerOptions::enable_prevent_default();
            let window = gloo::utils::window();
            EventListener::new_with_options(&window, "beforeunload", options, |event| {
                event.prevent_default();
                // Older browsers ask where the event bears a value only.
                let _ = js_sys::Reflect::set(event, &"returnValue".into(), &true.into());
            })
        });
    });
}
