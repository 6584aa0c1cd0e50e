//! Keeps what was pasted of a safety data sheet on this device, until it is taken or cleared.

use super::kept::Kept;
use crate::form::pasted::Pasted;
use std::cell::Cell;
use std::rc::Rc;

thread_local! {
    static STORE: Kept<Pasted> = Kept::open("brimline.sheet");
    // Whether something was changed since it was kept, and whether the browser took it then.
    static CHANGED: Cell<bool> = const { Cell::new(false) };
    static TAKEN: Cell<bool> = const { Cell::new(true) };
}

/// It as it is now.
pub fn now() -> Rc<Pasted> {
    STORE.with(Kept::now)
}

/// Changes it; it is long, so that it is kept by [`keep`] when typing rests.
pub fn change(with: impl FnOnce(&mut Pasted)) {
    STORE.with(|store| store.change_unkept(with));
    CHANGED.set(true);
}

/// Keeps it, and removes what nobody needs any more; tells whether the browser took it. What it has no room for it does not
/// have by half either: an earlier text would look as if it were this one.
pub fn keep() -> bool {
    if CHANGED.take() {
        TAKEN.set(STORE.with(|store| {
            let taken = !store.now().is_blank() && store.keep();
            if !taken {
                store.remove();
            }
            taken || store.now().is_blank()
        }));
    }
    TAKEN.get()
}

/// It was taken into a product.
pub fn forget() {
    change(|pasted| *pasted = Pasted::default());
    keep();
}
