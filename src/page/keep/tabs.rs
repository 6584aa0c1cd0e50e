//! Several tabs of one device: none writes over what it has not seen. What is changed in one that is behind is kept under
//! a name of its own, until a person says which of both goes on.

use super::store::{self, KEY};
use super::texts;
use crate::form::Typed;
use crate::form::typed::SCHEMA;
use std::cell::RefCell;
use std::rc::Rc;

/// How the names begin that what waits is kept under.
const ASIDE: &str = "brimline.tab/";

/// What this tab knows of the device.
#[derive(Default)]
struct Known {
    /// The text that it opened with, or kept last.
    base: Option<String>,
    /// The text that another tab kept last since then, as far as this one heard.
    heard: Option<String>,
    /// Where what is changed here waits.
    own: Option<String>,
    /// What it shows.
    shown: Option<Rc<Typed>>,
    /// The name of what waited and was shown last.
    last: Option<String>,
}

thread_local! {
    static KNOWN: RefCell<Known> = RefCell::default();
}

/// How what this tab shows stands to what the device keeps.
#[derive(Clone, Copy)]
pub struct Standing {
    /// Whether the device has it, as its own or aside.
    pub kept: bool,
    /// Whether another tab has kept something that this one does not show.
    pub behind: bool,
}

/// Remembers what the page opens with.
pub fn begin() {
    KNOWN.with_borrow_mut(|known| known.base = texts::get(KEY));
}

/// Keeps what this tab shows.
pub fn keep(typed: Rc<Typed>) -> Standing {
    KNOWN.with_borrow_mut(|known| known.shown = Some(typed));
    look()
}

/// Keeps what this tab showed last: as the device’s own where nobody kept anything else meanwhile, else aside.
pub fn look() -> Standing {
    KNOWN.with_borrow_mut(|known| {
        let Some(typed) = &known.shown else { return Standing { kept: true, behind: false } };
        let Some(text) = store::written(typed) else { return Standing { kept: false, behind: false } };
        let now = texts::get(KEY);
        let behind = now.is_some() && now != known.base && now.as_ref() != Some(&text);
        if behind && known.base.as_deref() != Some(&text) {
            let own = known.own.get_or_insert_with(name);
            return Standing { kept: texts::put(own, &text), behind };
        }
        // Nothing is here that the device has not, or had when the other tab went on from it.
        if let Some(own) = known.own.take() {
            texts::remove(&own);
        }
        let kept = behind || texts::put(KEY, &text);
        if kept && !behind && known.base.as_ref() != Some(&text) {
            known.base = Some(text);
            known.heard = None;
        }
        Standing { kept, behind }
    })
}

/// Hears what another tab kept in the place of what. Two may have written in the same moment: what this one wrote over
/// unseen is put back, and its own is behind.
pub fn hear(old: Option<String>, new: Option<String>) {
    KNOWN.with_borrow_mut(|known| {
        let last = known.heard.as_ref().or(known.base.as_ref());
        let unseen = old.as_ref() != last && new != known.base;
        if let (true, Some(text)) = (unseen && texts::get(KEY) == known.base, &new) {
            // Without room this one stays, and the other hears of it.
            if texts::put(KEY, text) {
                known.base = old;
            }
        }
        known.heard = new;
    });
}

/// Puts what the other tab kept aside, so that what is here may take its place; tells whether there was room.
pub fn put_other_aside() -> bool {
    let Some(other) = texts::get(KEY) else { return true };
    KNOWN.with_borrow_mut(|known| {
        let aside = known.own.take().unwrap_or_else(name);
        let room = texts::put(&aside, &other);
        if room {
            known.base = Some(other);
        } else {
            known.own = Some(aside);
        }
        room
    })
}

/// A name that no other tab has.
fn name() -> String {
    format!("{ASIDE}{}", js_sys::Math::random())
}

/// What waits and is not what is shown, with its name: the next behind the one that was shown last. None where nothing
/// waits, or nothing that this version reads.
pub fn waiting(shown: &Typed) -> Option<(String, Typed)> {
    let (own, last) = KNOWN.with_borrow(|known| (known.own.clone(), known.last.clone()));
    let mut names: Vec<String> =
        texts::names().filter(|name| name.starts_with(ASIDE) && Some(name) != own.as_ref()).collect();
    names.sort();
    let behind = last.map_or(0, |last| names.partition_point(|name| *name <= last));
    names.rotate_left(behind);
    names
        .into_iter()
        .find_map(|name| read(&name).filter(|typed| !same(typed, shown)).map(|typed| (name, typed)))
}

/// Puts what is shown aside too, unless it waits already, so that what waits under a name may take its place; tells
/// whether there was room. What is shown from there goes on waiting: a step back leaves nothing behind.
pub fn turn_to(next: &str, shown: &Typed) -> bool {
    let waits =
        |name: String| name.starts_with(ASIDE) && read(&name).is_some_and(|typed| same(&typed, shown));
    let room =
        texts::names().any(waits) || store::written(shown).is_some_and(|text| texts::put(&name(), &text));
    if room {
        KNOWN.with_borrow_mut(|known| known.last = Some(next.to_owned()));
    }
    room
}

/// Whether both say the same. What was read of a warning and the day are no part of it.
fn same(one: &Typed, other: &Typed) -> bool {
    let bare = |typed: &Typed| {
        let mut ask = typed.ask.clone();
        (ask.stop_read, ask.held) = (false, false);
        ask.today.clear();
        ask
    };
    one.site == other.site && bare(one) == bare(other)
}

/// What the device keeps as its own.
pub fn devices_own() -> Option<Typed> {
    read(KEY)
}

/// What is kept under a name.
fn read(name: &str) -> Option<Typed> {
    let typed = serde_json::from_str::<Typed>(&texts::get(name)?).ok()?;
    (typed.schema <= SCHEMA).then(|| typed.up_to_date())
}
