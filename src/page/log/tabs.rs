//! Other tabs: each tells what it wrote, and reads what others did.

use super::script::{call, get, make};
use super::{open, tab};
use gloo::events::EventListener;
use std::cell::{Cell, RefCell};
use wasm_bindgen::{JsCast, JsValue};

/// The name of the channel.
const NAME: &str = "brimline-log";
/// More changed than records that came at the ends of chains.
const ALL: &str = "all";

thread_local! {
    static CHANNEL: RefCell<Option<(JsValue, EventListener)>> = const { RefCell::new(None) };
    /// Whether somebody wrote while this tab was reading.
    static BEHIND: Cell<(bool, bool)> = const { Cell::new((false, false)) };
    static READING: Cell<bool> = const { Cell::new(false) };
}

/// Listens to the other tabs.
pub fn listen() {
    if CHANNEL.with_borrow(Option::is_some) {
        return;
    }
    let Ok(channel) = make("BroadcastChannel", &[&NAME.into()]) else { return };
    let listener = EventListener::new(channel.unchecked_ref(), "message", |event| {
        let all = get(event, "data").is_ok_and(|data| data.as_string().as_deref() == Some(ALL));
        let (_, was) = BEHIND.get();
        BEHIND.set((true, was || all));
        if !READING.replace(true) {
            yew::platform::spawn_local(catch_up());
        }
    });
    CHANNEL.set(Some((channel, listener)));
}

/// Tells the other tabs that a record came, or that more changed.
pub fn tell(all: bool) {
    CHANNEL.with_borrow(|channel| {
        if let Some((channel, _)) = channel {
            let _ = call(channel, "postMessage", &[&if all { ALL } else { "" }.into()]);
        }
    });
}

async fn catch_up() {
    while BEHIND.get().0 {
        let (_, all) = BEHIND.replace((false, false));
        // What cannot be read now is read at the next word, or when the page is opened again.
        let _ = if all { open::load().await } else { open::catch_up().await };
    }
    READING.set(false);
    tab::tell(|_| {});
}
