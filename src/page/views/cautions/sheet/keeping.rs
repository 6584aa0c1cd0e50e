//! Keeping what was pasted of a safety data sheet, once typing rests.

use crate::page::keep::after_paint::when_going;
use crate::page::keep::pasted;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// Milliseconds without a key after which what was pasted is kept: it is long, and no key waits for it.
const REST: u32 = 300;

/// Whether the browser keeps what was pasted, and what has it kept when typing rests.
#[hook]
pub fn use_keeping() -> (bool, Callback<()>) {
    let taken = use_state_eq(|| true);
    let waits = use_mut_ref(|| None::<Timeout>);
    let keep = {
        let taken = taken.clone();
        use_callback((), move |(), ()| taken.set(pasted::keep()))
    };
    {
        let keep = keep.clone();
        use_effect_with((), move |()| {
            let going = when_going(move || keep.emit(()));
            move || {
                drop(going);
                pasted::keep();
            }
        });
    }
    let soon = Callback::from(move |()| {
        let keep = keep.clone();
        *waits.borrow_mut() = Some(Timeout::new(REST, move || keep.emit(())));
    });
    (*taken, soon)
}
