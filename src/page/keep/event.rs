//! What is read anew whenever the window tells of an event.

use gloo::events::EventListener;
use yew::prelude::*;

/// What `read` gives, now and after each event of this name. A text, so that the code for all of them stands in the
/// page once.
#[hook]
pub fn use_event(name: &'static str, read: fn() -> String) -> String {
    let told = use_state(read);
    {
        let told = told.clone();
        use_effect_with((), move |()| {
            let listener = EventListener::new(&gloo::utils::window(), name, move |_| told.set(read()));
            move || drop(listener)
        });
    }
    (*told).clone()
}
