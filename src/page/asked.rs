//! Fill's answer, worked out once for all parts that draw from it.

use super::shared::Shared;
use crate::form::Typed;
use crate::form::fill::{Fill, work};
use crate::number::Marks;
use std::cell::RefCell;
use std::rc::Rc;

/// What an answer was worked out of, and the answer.
type Last = Option<(Rc<Typed>, Marks, Rc<Fill>)>;

thread_local! {
    static LAST: RefCell<Last> = const { RefCell::new(None) };
}

/// Fill's answer to what is typed. Each change makes a new `Typed`: as long as that lies where it lay, the answer is the
/// last one.
pub fn fill(shared: &Shared) -> Rc<Fill> {
    of(&shared.typed, shared.marks())
}

/// The same before there is anything to draw.
pub fn of(asked: &Rc<Typed>, marks: Marks) -> Rc<Fill> {
    LAST.with_borrow_mut(|last| match last {
        Some((typed, of, found)) if Rc::ptr_eq(typed, asked) && *of == marks => found.clone(),
        _ => {
            let found = Rc::new(work(asked, marks));
            *last = Some((asked.clone(), marks, found.clone()));
            found
        }
    })
}
