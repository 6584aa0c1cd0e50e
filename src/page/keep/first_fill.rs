//! Keeps where a person is in the guide through a first fill, on this device and nowhere else.

use super::kept::{Kept, use_kept};
use super::texts;
use crate::practice::first_fill::FirstFill;
use std::rc::Rc;
use yew::prelude::*;

/// The name that it is kept under.
const KEY: &str = "brimline.first-fill";

thread_local! {
    static STORE: Kept<FirstFill> = Kept::open(KEY);
}

/// Whether the device keeps one: what draws it is loaded at once then.
pub fn is_kept() -> bool {
    texts::get(KEY).is_some()
}

/// Changes it.
pub fn change(with: impl FnOnce(&mut FirstFill)) {
    STORE.with(|store| store.change(with));
}

/// It as it is now, in whichever tab it was changed; what uses it is drawn again when it changes.
#[hook]
pub fn use_first_fill() -> Rc<FirstFill> {
    use_memo((), |()| STORE.with(|store| store.follow(&STORE)));
    use_kept(&STORE)
}
