//! Several tabs of one device: none writes over what it has not seen. What is changed in one that is behind is kept under
//! a name of its own, until a person says which of both goes on.

use super::kept;
use super::store::{self, KEY};
use crate::form::Typed;
use crate::form::typed::SCHEMA;
use std::cell::RefCell;

/// How the names begin that what waits is kept under.
const ASIDE: &str = "brimline.tab/";

/// What this tab knows of the device.
#[derive(Default)]
struct Known {
    /// The text that it opened with, or kept last.
    base: Option<String>,
    /// The last text that it knows to have been kept, by whichever tab.
    last: Option<String>,
    /// Where what is changed here waits.
    own: Option<String>,
}

thread_local! {
    static KNOWN: RefCell<Known> = RefCell::default();
}

/// How what this tab shows stands to what the device keeps.
#[derive(Clone, Copy, PartialEq)]
pub struct Standing {
    /// Whether the device has it, as its own or aside.
    pub kept: bool,
    /// Whether another tab has kept something that this one does not show.
    pub behind: bool,
}

/// Remembers what the page opens with.
pub fn begin() {
    let base = kept::text(KEY);
    KNOWN.set(Known { last: base.clone(), base, own: None });
}

/// Keeps what this tab shows: as the device’s own where nobody kept anything else meanwhile, else aside.
pub fn keep(typed: &Typed) -> Standing {
    let Some(text) = store::written(typed) else { return Standing { kept: false, behind: false } };
    let now = kept::text(KEY);
    KNOWN.with_borrow_mut(|known| {
        let behind = now.is_some() && now != known.base && now.as_ref() != Some(&text);
        if behind && known.base.as_ref() != Some(&text) {
            let own = known.own.get_or_insert_with(name);
            return Standing { kept: store::put(own, &text), behind };
        }
        // Nothing is here that the device has not, or had when the other tab went on from it.
        if let Some(own) = known.own.take() {
            store::remove(&own);
        }
        if behind {
            return Standing { kept: true, behind };
        }
        let kept = store::put(KEY, &text);
        if kept {
            known.base = Some(text);
            known.last.clone_from(&known.base);
        }
        Standing { kept, behind }
    })
}

/// Hears what another tab kept in the place of what. Two may have written in the same moment: what this one wrote over
/// unseen is put back, and its own is behind.
pub fn hear(old: Option<String>, new: Option<String>) {
    KNOWN.with_borrow_mut(|known| {
        let unseen = old != known.last && new != known.base;
        if let (true, Some(text)) = (unseen && kept::text(KEY) == known.base, &new) {
            // Without room this one stays, and the other hears of it.
            if store::put(KEY, text) {
                known.base = old;
            }
        }
        known.last = new;
    });
}

/// Puts what the other tab kept aside, so that what is here may take its place; tells whether there was room.
pub fn put_other_aside() -> bool {
    let Some(other) = kept::text(KEY) else { return true };
    KNOWN.with_borrow_mut(|known| {
        let aside = known.own.take().unwrap_or_else(name);
        let room = store::put(&aside, &other);
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

/// The name of something that was put aside, not counting what is shown here; none where nothing waits, or nothing that
/// this version reads.
pub fn waiting() -> Option<String> {
    let own = KNOWN.with_borrow(|known| known.own.clone());
    store::names().find(|name| name.starts_with(ASIDE) && Some(name) != own.as_ref() && read(name).is_some())
}

/// What was put aside under a name.
pub fn read(name: &str) -> Option<Typed> {
    let typed = serde_json::from_str::<Typed>(&kept::text(name)?).ok()?;
    (typed.schema <= SCHEMA).then(|| typed.up_to_date())
}
