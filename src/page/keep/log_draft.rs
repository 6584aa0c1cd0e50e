//! Keeps what is typed about the log on this device.

use super::kept::{Kept, use_kept};
use crate::form::log::Draft;
use std::rc::Rc;
use yew::prelude::*;

thread_local! {
    static STORE: Kept<Draft> = Kept::open("brimline.log-draft");
}

/// Changes what is typed.
pub fn change(with: impl FnOnce(&mut Draft)) {
    STORE.with(|store| store.change(with));
}

/// What is typed now.
pub fn now() -> Rc<Draft> {
    STORE.with(Kept::now)
}

/// What is typed now; a view that uses it is drawn again when it changes.
#[hook]
pub fn use_draft() -> Rc<Draft> {
    use_kept(&STORE)
}
