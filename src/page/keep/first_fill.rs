//! Keeps where a person is in the guide through a first fill, on this device and nowhere else.

use crate::practice::first_fill::FirstFill;
use std::cell::RefCell;
use std::rc::Rc;
use web_sys::Storage;
use yew::prelude::*;

/// The name that it is kept under.
const KEY: &str = "brimline.first-fill";

/// What is kept, and who is told when it changes.
struct Store {
    guide: Rc<FirstFill>,
    listeners: Vec<(u32, Callback<Rc<FirstFill>>)>,
    next: u32,
}

thread_local! {
    static STORE: RefCell<Store> =
        RefCell::new(Store { guide: Rc::new(kept().unwrap_or_default()), listeners: Vec::new(), next: 0 });
}

fn storage() -> Option<Storage> {
    gloo::utils::window().local_storage().ok()?
}

/// Whether the device keeps one: what draws it is loaded at once then.
pub fn is_kept() -> bool {
    storage().is_some_and(|storage| storage.get_item(KEY).is_ok_and(|text| text.is_some()))
}

/// What an earlier visit left. A text that does not read is passed over: nothing but a place in the guide is lost.
fn kept() -> Option<FirstFill> {
    serde_json::from_str(&storage()?.get_item(KEY).ok()??).ok()
}

/// Changes it. Where the browser keeps nothing it stays as long as the page does.
pub fn change(with: impl FnOnce(&mut FirstFill)) {
    let (guide, listeners) = STORE.with_borrow_mut(|store| {
        with(Rc::make_mut(&mut store.guide));
        (store.guide.clone(), store.listeners.clone())
    });
    if let (Ok(text), Some(storage)) = (serde_json::to_string(&*guide), storage()) {
        let _ = storage.set_item(KEY, &text);
    }
    for (_, listener) in listeners {
        listener.emit(guide.clone());
    }
}

/// It as it is now; what uses it is drawn again when it changes.
#[hook]
pub fn use_first_fill() -> Rc<FirstFill> {
    let guide = use_state_eq(|| STORE.with_borrow(|store| store.guide.clone()));
    {
        let guide = guide.clone();
        use_effect_with((), move |()| {
            let key = STORE.with_borrow_mut(|store| {
                store.next += 1;
                store.listeners.push((store.next, Callback::from(move |now| guide.set(now))));
                store.next
            });
            move || STORE.with_borrow_mut(|store| store.listeners.retain(|(one, _)| *one != key))
        });
    }
    (*guide).clone()
}
