//! What the page holds of the log.

use super::Trouble;
use crate::coded::coded;
use crate::site::log::{Broken, Head, Id, View};
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// What the page holds; one a tab, cheap to clone.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Held {
    /// How far it is open.
    pub stage: Stage,
    /// The id of this device in the log; empty until it is open.
    pub device: String,
    /// Every fill as it stands.
    pub view: Rc<View>,
    /// The last record of each chain.
    pub heads: Vec<Head>,
    /// What this tab last had confirmed as durable.
    pub last: Option<Saved>,
    /// Acts that the browser has not confirmed, in their order.
    pub waiting: Vec<Waiting>,
    /// What holding the records to their chains has found.
    pub check: Check,
    /// How much is used, where the browser tells.
    pub usage: Option<Usage>,
    /// The last backup; none for never.
    pub backup: Option<Backup>,
    /// Records of this device whose time lies before that of the one before them.
    pub clock_back: Vec<Id>,
    /// Records that were here once, and are not any more: a backup may have them.
    pub lost: Vec<Lost>,
    /// Long work that is going on.
    pub busy: Option<Busy>,
    /// What came of taking a file: how many records are new, or why it stopped. Until the next file.
    pub taken: Option<Result<usize, Trouble>>,
}

/// How far the log is open.
#[derive(Clone, Debug, PartialEq)]
pub enum Stage {
    /// It is being opened: so many fills of so many are read; of 0 where nobody knows yet.
    Opening {
        /// Fills that are read.
        done: usize,
        /// All of them.
        of: usize,
    },
    /// It is open.
    Open,
    /// It cannot be opened. What is recorded waits in [`Held::waiting`].
    Shut(Trouble),
}

impl Default for Stage {
    fn default() -> Self {
        Self::Opening { done: 0, of: 0 }
    }
}

/// A record that is durable.
#[derive(Clone, Debug, PartialEq)]
pub struct Saved {
    /// Which.
    pub id: Id,
    /// Its time.
    pub when: String,
    /// Milliseconds from the tap to the browser's word.
    pub took: f64,
}

/// An act that is not confirmed.
#[derive(Clone, Debug, PartialEq)]
pub struct Waiting {
    /// What [`again`](super::again) and [`let_go`](super::let_go) know it by.
    pub key: u32,
    /// The record as its line; empty where none could be made.
    pub line: String,
    /// Why the browser does not keep it; none while it is being written.
    pub trouble: Option<Trouble>,
}

/// What holding the records to their chains has found.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Check {
    /// Nobody asked.
    #[default]
    NotYet,
    /// It is going on.
    Running {
        /// Records that hold.
        done: usize,
        /// All of them.
        of: usize,
    },
    /// All chains hold.
    Whole {
        /// How many records they have.
        records: usize,
    },
    /// The first record at which one does not.
    Broken(Broken),
    /// The records could not be read.
    Failed(Trouble),
}

/// How much of the device the browser uses for the page.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usage {
    /// Bytes.
    pub used: f64,
    /// Bytes that the browser gives the page at most.
    pub allowed: f64,
    /// Whether the browser keeps it until a person removes it, and does not make room with it.
    pub kept: bool,
}

/// When the log was last saved as a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Backup {
    /// When.
    pub when: String,
    /// Records that came since.
    pub since: usize,
}

/// Records that were here once.
#[derive(Clone, Debug, PartialEq)]
pub struct Lost {
    /// Of which device.
    pub device: String,
    /// The first of them.
    pub from: u64,
    /// The last of them.
    pub to: u64,
}

coded! {
    /// What takes long.
    Doing {
        /// Reading the fills anew from their records.
        Opening = "opening",
        /// Reading a file.
        Reading = "reading",
        /// Holding its records to ours.
        Comparing = "comparing",
        /// Writing them.
        Writing = "writing",
        /// Making a file.
        Saving = "saving",
    }
}

/// Long work, and how far it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Busy {
    /// What is done.
    pub doing: Doing,
    /// So much of it, records or bytes.
    pub done: usize,
    /// All of it.
    pub of: usize,
}

/// What the page holds, and who is told when it changes.
#[derive(Default)]
struct Store {
    held: Rc<Held>,
    listeners: Vec<(u32, Callback<Rc<Held>>)>,
    next: u32,
    begun: bool,
}

thread_local! {
    static STORE: RefCell<Store> = RefCell::default();
}

/// What the page holds now.
pub(super) fn held() -> Rc<Held> {
    STORE.with_borrow(|store| store.held.clone())
}

/// Changes what the page holds, and tells those who draw it.
pub(super) fn change(with: impl FnOnce(&mut Held)) {
    let (held, listeners) = STORE.with_borrow_mut(|store| {
        with(Rc::make_mut(&mut store.held));
        (store.held.clone(), store.listeners.clone())
    });
    super::leaving::ask(!held.waiting.is_empty());
    for (_, listener) in listeners {
        listener.emit(held.clone());
    }
}

fn listen(listener: Callback<Rc<Held>>) -> u32 {
    STORE.with_borrow_mut(|store| {
        store.next += 1;
        store.listeners.push((store.next, listener));
        store.next
    })
}

fn leave(key: u32) {
    STORE.with_borrow_mut(|store| store.listeners.retain(|(one, _)| *one != key));
}

/// Opens the log, once a tab.
fn begin() {
    if !STORE.with_borrow_mut(|store| std::mem::replace(&mut store.begun, true)) {
        yew::platform::spawn_local(super::open::open());
    }
}

/// What the page holds of the log: opens it on first use, and draws again when it changes.
#[hook]
pub fn use_log() -> Rc<Held> {
    let now = use_state(held);
    {
        let now = now.clone();
        use_effect_with((), move |()| {
            begin();
            now.set(held());
            let key = listen(Callback::from(move |held| now.set(held)));
            move || leave(key)
        });
    }
    (*now).clone()
}
