//! Keeps what is typed about the log on this device.

use super::kept::{Kept, use_kept};
use super::today;
use crate::form::log::Draft;
use gloo::events::EventListener;
use gloo::timers::callback::Interval;
use std::rc::Rc;
use yew::prelude::*;

/// Milliseconds between two looks whether another day has begun.
const LOOK: u32 = 30_000;

thread_local! {
    static STORE: Kept<Draft> = Kept::open("brimline.log-draft");
}

/// Changes what is typed.
pub fn change(with: impl FnOnce(&mut Draft)) {
    STORE.with(|store| {
        store.change(|draft| {
            draft.go_on(&today::now());
            with(draft);
        });
    });
}

/// Asks for the initials anew where another day has begun.
fn go_on() {
    if STORE.with(Kept::now).day != today::now() {
        change(|_| {});
    }
}

/// What is typed now.
pub fn now() -> Rc<Draft> {
    go_on();
    STORE.with(Kept::now)
}

/// What is typed now; a view that uses it is drawn again when it changes, and when another day begins.
#[hook]
pub fn use_draft() -> Rc<Draft> {
    use_memo((), |()| go_on());
    use_effect_with((), |()| {
        let timer = Interval::new(LOOK, go_on);
        // A device that slept does not wait for the next look.
        let back = EventListener::new(&gloo::utils::window(), "focus", |_| go_on());
        move || drop((timer, back))
    });
    use_kept(&STORE)
}
