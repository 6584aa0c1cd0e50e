//! The shake test: what two heights of foam say of a product.

use crate::chemistry::foam::{Foam, shaken};
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::units::Length;

/// What was found, and what is in its way.
#[derive(Clone, Debug, Default)]
pub struct Shake {
    /// Mistakes, each at its field.
    pub outcome: Outcome,
    /// The foam class that the test points to.
    pub class: Option<Foam>,
}

/// Reads the foam at once and after one minute. See [`shaken`].
///
/// ```
/// use brimline::chemistry::foam::Foam;
/// use brimline::form::{Action, Field, Typed, action::reduce, cautions::shake::work};
/// use brimline::number::Marks;
/// let tried = [(Field::FoamFirst, "2"), (Field::FoamLater, "1.5")];
/// let write = |typed, (field, text): (Field, &str)| reduce(typed, Action::Write(field, text.into()));
/// let typed = tried.into_iter().fold(Typed::default(), write);
/// assert_eq!(work(&typed, Marks::POINT).class, Some(Foam::Foaming));
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Shake {
    let mut found = Shake::default();
    let out = &mut found.outcome;
    let first = out.may::<Length>(typed, Field::FoamFirst, marks).flatten();
    let later = out.may::<Length>(typed, Field::FoamLater, marks).flatten();
    if let (Some(first), Some(later)) = (first, later) {
        if later > first {
            out.trouble(Field::FoamLater.name(), What::FoamGrows);
        } else {
            found.class = Some(shaken(first, later));
        }
    }
    found
}
