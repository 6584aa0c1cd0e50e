//! The database that the browser keeps: opened, brought up to date, and its transactions.
//!
//! | store | key | value |
//! |---|---|---|
//! | `records` | device, number, own hash | the record as its line: canonical JSON that any program reads |
//! | `meta` | text | JSON: this device, the end of each chain, the last backup, what the blocks stand for |
//! | `about` | device and number of a record, then device, number and hash of one that names it | JSON: what that one does |
//! | `packed` | from 0 | a block of fills as they stand |
//!
//! Only `records` and the ends of chains in `meta` are more than a copy; the rest is made anew where it is missing.

mod steps;
mod transaction;

pub use transaction::{Store, Transaction, after, key, range, read};

use super::Trouble;
use super::script::{call, get, set, window};
use gloo::events::EventListener;
use js_sys::{Array, Object, Promise};
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The name of the database.
const NAME: &str = "brimline-log";

/// Every record, line by line.
pub const RECORDS: &str = "records";
/// What is known of the whole.
pub const META: &str = "meta";
/// Which records name which.
pub const ABOUT: &str = "about";
/// Fills as they stand.
pub const PACKED: &str = "packed";

/// What a transaction may do.
#[derive(Clone, Copy, PartialEq)]
pub enum Mode {
    /// Only read.
    Read,
    /// Write what can be made anew.
    Derive,
    /// Write what nobody else has: done when it is on the disk.
    Keep,
}

/// The open database.
pub struct Database {
    base: JsValue,
    closed: Rc<Cell<bool>>,
    _listeners: [EventListener; 2],
}

impl Database {
    /// Opens it, and brings one of an earlier version up to date.
    ///
    /// * `held_up`: called where a tab with an older version of the page has to be closed first.
    ///
    /// # Errors
    /// [`Trouble::Denied`], [`Trouble::Newer`], and what else the browser says.
    pub async fn open(held_up: impl Fn() + 'static) -> Result<Self, Trouble> {
        // Where storage is blocked, asking for it is an error already.
        let factory = get(&window(), "indexedDB").ok().filter(JsValue::is_object).ok_or(Trouble::Denied)?;
        let request = call(&factory, "open", &[&NAME.into(), &steps::VERSION.into()]).map_err(opening)?;
        let upgrade = EventListener::once(request.unchecked_ref(), "upgradeneeded", {
            let request = request.clone();
            move |event| {
                let from = get(event, "oldVersion").ok().and_then(|old| old.as_f64());
                if steps::take(&request, from.unwrap_or_default()).is_err() {
                    // Half a step is none: the database stays as it was.
                    let _ = get(&request, "transaction").and_then(|whole| call(&whole, "abort", &[]));
                }
            }
        });
        let blocked = EventListener::once(request.unchecked_ref(), "blocked", move |_| held_up());
        let opened = answer(&request).await;
        drop((upgrade, blocked));
        let base = opened.map_err(opening)?;
        let closed = Rc::new(Cell::new(false));
        let listen = |event: &'static str, base: JsValue| {
            let closed = closed.clone();
            EventListener::new(base.clone().unchecked_ref(), event, move |_| {
                // A later version of the page waits for it, or the browser took it away.
                closed.set(true);
                let _ = call(&base, "close", &[]);
            })
        };
        let listeners = [listen("versionchange", base.clone()), listen("close", base.clone())];
        Ok(Self { base, closed, _listeners: listeners })
    }

    /// Whether it was taken away: it has to be opened again.
    pub fn is_closed(&self) -> bool {
        self.closed.get()
    }

    /// Begins a transaction over these stores.
    ///
    /// # Errors
    /// What the browser says.
    pub fn begin(&self, stores: &[&str], mode: Mode) -> Result<Transaction, Trouble> {
        let options = Object::new();
        let durability = if mode == Mode::Keep { "strict" } else { "relaxed" };
        set(&options, "durability", &durability.into())?;
        let names: Array = stores.iter().map(|name| JsValue::from_str(name)).collect();
        let access = if mode == Mode::Read { "readonly" } else { "readwrite" };
        Ok(Transaction::of(call(&self.base, "transaction", &[&names, &access.into(), &options])?)?)
    }
}

/// Waits for a request; its answer.
async fn answer(request: &JsValue) -> Result<JsValue, JsValue> {
    match JsFuture::from(either(request, "onsuccess", "onerror")?).await {
        Ok(_) => get(request, "result"),
        Err(_) => Err(get(request, "error")?),
    }
}

/// What is kept where the first of two events comes, and broken where the second does. The ends of the promise are
/// the handlers themselves.
fn either(of: &JsValue, well: &str, ill: &str) -> Result<Promise, JsValue> {
    let mut done = Ok(());
    let promise = Promise::new(&mut |resolve, reject| {
        done = set(of, well, &resolve).and_then(|()| set(of, ill, &reject));
    });
    done.map(|()| promise)
}

/// Why it does not open.
fn opening(error: JsValue) -> Trouble {
    match Trouble::from(error) {
        // Private windows of some browsers say it so.
        Trouble::Failed(words) if words.starts_with("InvalidStateError") => Trouble::Denied,
        other => other,
    }
}
