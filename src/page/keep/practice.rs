//! Keeps what is practised on this device; what a class did only where its trainer asked for it.

use super::texts;
use crate::practice::{Desk, Register};
use gloo::events::EventListener;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::StorageEvent;
use yew::prelude::*;

/// The name that choices, the session under way and what was handed out are kept under. No names stand in it.
const DESK: &str = "brimline.practice";
/// The name that the results of classes are kept under, on request.
const CLASS: &str = "brimline.practice-class";

/// What the view draws from.
#[derive(Clone, Default, PartialEq)]
pub struct Held {
    /// What is chosen, under way and handed out.
    pub desk: Rc<Desk>,
    /// What classes did.
    pub register: Rc<Register>,
    /// Codes that are typed and not taken yet.
    pub typed: Rc<str>,
    /// Whether the results stay on this device.
    pub is_kept: bool,
    /// Whether the browser refused to keep something.
    pub refused: bool,
}

impl Held {
    /// Takes all results of a person off this device, those that are typed and not taken among them.
    pub fn forget(&mut self, initials: &str) {
        Rc::make_mut(&mut self.register).remove(initials);
        self.typed = Register::without(&self.typed, initials).into();
    }
}

/// What is held, and who is told when it changes.
#[derive(Default)]
struct Store {
    held: Held,
    listeners: Vec<(u32, Callback<Held>)>,
    next: u32,
}

thread_local! {
    static STORE: RefCell<Store> = RefCell::new(Store { held: kept(Held::default()), ..Store::default() });
}

/// What the device keeps. A text of another version is passed over.
fn kept(mut held: Held) -> Held {
    if let Some(desk) = texts::get(DESK).and_then(|text| serde_json::from_str(&text).ok()) {
        held.desk = Rc::new(desk);
    }
    let register = texts::get(CLASS).and_then(|text| serde_json::from_str(&text).ok());
    held.is_kept = register.is_some();
    if let Some(register) = register {
        held.register = Rc::new(register);
    }
    held
}

/// Keeps what is held; tells whether the browser took it. Results that are not to stay are taken off the device.
fn keep(held: &Held) -> bool {
    let desk = serde_json::to_string(&*held.desk).is_ok_and(|text| texts::put(DESK, &text));
    let class = if held.is_kept {
        serde_json::to_string(&*held.register).is_ok_and(|text| texts::put(CLASS, &text))
    } else {
        texts::remove(CLASS)
    };
    desk && class
}

/// Changes what is held. Where the browser keeps nothing it stays as long as the page does.
pub fn change(with: impl FnOnce(&mut Held)) {
    let held = STORE.with_borrow_mut(|store| {
        with(&mut store.held);
        store.held.refused = !keep(&store.held);
        store.held.clone()
    });
    tell(&held);
}

/// Changes what is chosen and under way.
pub fn at_desk(with: impl FnOnce(&mut Desk)) {
    change(|held| with(Rc::make_mut(&mut held.desk)));
}

fn tell(held: &Held) {
    let listeners = STORE.with_borrow(|store| store.listeners.clone());
    for (_, listener) in listeners {
        listener.emit(held.clone());
    }
}

/// What another tab changed takes the place of what this one holds, so that neither writes over the other.
fn from_elsewhere(event: &Event) {
    let key = event.dyn_ref::<StorageEvent>().and_then(StorageEvent::key);
    if key.is_some_and(|key| key == DESK || key == CLASS) {
        let held = STORE.with_borrow_mut(|store| {
            store.held = kept(store.held.clone());
            store.held.clone()
        });
        tell(&held);
    }
}

/// What is held now.
pub fn now() -> Held {
    STORE.with_borrow(|store| store.held.clone())
}

/// What is held now; a view that uses it is drawn again when it changes.
#[hook]
pub fn use_held() -> Held {
    let held = use_state_eq(now);
    {
        let held = held.clone();
        use_effect_with((), move |()| {
            let key = STORE.with_borrow_mut(|store| {
                store.next += 1;
                store.listeners.push((store.next, Callback::from(move |now| held.set(now))));
                store.next
            });
            let listener = EventListener::new(&gloo::utils::window(), "storage", from_elsewhere);
            move || {
                drop(listener);
                STORE.with_borrow_mut(|store| store.listeners.retain(|(one, _)| *one != key));
            }
        });
    }
    (*held).clone()
}
