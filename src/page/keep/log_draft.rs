//! Keeps what is typed about the log on this device, and tells who draws it when it changes.

use crate::form::log::Draft;
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// The name that it is kept under.
const KEY: &str = "brimline.log-draft";

/// What is typed, and who is told when it changes.
struct Store {
    draft: Rc<Draft>,
    listeners: Vec<(u32, Callback<Rc<Draft>>)>,
    next: u32,
}

thread_local! {
    static STORE: RefCell<Store> =
        RefCell::new(Store { draft: Rc::new(kept().unwrap_or_default()), listeners: Vec::new(), next: 0 });
}

/// What an earlier visit left. A text of another version is passed over: it holds nothing that was written down.
fn kept() -> Option<Draft> {
    let text = gloo::utils::window().local_storage().ok()??.get_item(KEY).ok()??;
    serde_json::from_str(&text).ok()
}

/// Changes what is typed. Where the browser keeps nothing it stays as long as the page does.
pub fn change(with: impl FnOnce(&mut Draft)) {
    let (draft, listeners) = STORE.with_borrow_mut(|store| {
        with(Rc::make_mut(&mut store.draft));
        (store.draft.clone(), store.listeners.clone())
    });
    if let (Ok(text), Ok(Some(storage))) =
        (serde_json::to_string(&*draft), gloo::utils::window().local_storage())
    {
        let _ = storage.set_item(KEY, &text);
    }
    for (_, listener) in listeners {
        listener.emit(draft.clone());
    }
}

/// What is typed now.
pub fn now() -> Rc<Draft> {
    STORE.with_borrow(|store| store.draft.clone())
}

/// What is typed now; a view that uses it is drawn again when it changes.
#[hook]
pub fn use_draft() -> Rc<Draft> {
    let draft = use_state_eq(now);
    {
        let draft = draft.clone();
        use_effect_with((), move |()| {
            let key = STORE.with_borrow_mut(|store| {
                store.next += 1;
                store.listeners.push((store.next, Callback::from(move |now| draft.set(now))));
                store.next
            });
            move || STORE.with_borrow_mut(|store| store.listeners.retain(|(one, _)| *one != key))
        });
    }
    (*draft).clone()
}
