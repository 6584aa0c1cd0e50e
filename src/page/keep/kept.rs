//! A document that this device keeps under a name of its own, and whoever draws it when it changes.

use super::texts;
use gloo::events::EventListener;
use serde::{Serialize, de::DeserializeOwned};
use std::cell::{Cell, OnceCell, RefCell};
use std::rc::Rc;
use std::thread::LocalKey;
use wasm_bindgen::JsCast;
use web_sys::StorageEvent;
use yew::prelude::*;

/// What is kept, and who is told when it changes.
pub struct Kept<T: 'static> {
    key: &'static str,
    now: RefCell<Rc<T>>,
    listeners: RefCell<Vec<(u32, Callback<Rc<T>>)>>,
    next: Cell<u32>,
    elsewhere: OnceCell<EventListener>,
}

/// A text of another version is passed over: these documents hold nothing that was written down for good.
fn read<T: DeserializeOwned>(key: &str) -> Option<T> {
    serde_json::from_str(&texts::get(key)?).ok()
}

impl<T: Clone + Default + PartialEq + Serialize + DeserializeOwned + 'static> Kept<T> {
    /// What an earlier visit left, or a blank one.
    pub fn open(key: &'static str) -> Self {
        Self {
            key,
            now: RefCell::new(Rc::new(read(key).unwrap_or_default())),
            listeners: RefCell::default(),
            next: Cell::default(),
            elsewhere: OnceCell::new(),
        }
    }

    /// Changes it. Where the browser keeps nothing it stays as long as the page does.
    pub fn change(&self, with: impl FnOnce(&mut T)) {
        self.change_unkept(with);
        self.keep();
        self.tell(&self.now());
    }

    /// Changes it; what is long is kept by [`Kept::keep`] when typing rests.
    pub fn change_unkept(&self, with: impl FnOnce(&mut T)) {
        with(Rc::make_mut(&mut self.now.borrow_mut()));
    }

    /// Keeps it as it is now; tells whether the browser took it.
    pub fn keep(&self) -> bool {
        serde_json::to_string(&*self.now()).is_ok_and(|text| texts::put(self.key, &text))
    }

    /// Takes it off the device; the page has it until it is closed.
    pub fn remove(&self) {
        texts::remove(self.key);
    }

    /// It as it is now.
    pub fn now(&self) -> Rc<T> {
        self.now.borrow().clone()
    }

    fn tell(&self, now: &Rc<T>) {
        let listeners = self.listeners.borrow().clone();
        for (_, listener) in listeners {
            listener.emit(now.clone());
        }
    }

    /// From now on what another tab changed takes the place of what this one has, so that neither writes over the
    /// other. Not for what is half typed: each tab keeps its own of that.
    pub fn follow(&self, store: &'static LocalKey<Self>) {
        let key = self.key;
        self.elsewhere.get_or_init(|| {
            EventListener::new(&gloo::utils::window(), "storage", move |event| {
                let changed = event.dyn_ref::<StorageEvent>().and_then(StorageEvent::key);
                if changed.is_some_and(|changed| changed == key) {
                    store.with(|store| {
                        *store.now.borrow_mut() = Rc::new(read(key).unwrap_or_default());
                        store.tell(&store.now());
                    });
                }
            })
        });
    }

    fn listen(&self, listener: Callback<Rc<T>>) -> u32 {
        self.next.set(self.next.get() + 1);
        self.listeners.borrow_mut().push((self.next.get(), listener));
        self.next.get()
    }
}

/// It as it is now; what uses it is drawn again when it changes.
#[hook]
pub fn use_kept<T>(store: &'static LocalKey<Kept<T>>) -> Rc<T>
where
    T: Clone + Default + PartialEq + Serialize + DeserializeOwned + 'static,
{
    let now = use_state_eq(|| store.with(Kept::now));
    {
        let now = now.clone();
        use_effect_with((), move |()| {
            let key = store.with(|store| store.listen(Callback::from(move |changed| now.set(changed))));
            move || store.with(|store| store.listeners.borrow_mut().retain(|(one, _)| *one != key))
        });
    }
    (*now).clone()
}
