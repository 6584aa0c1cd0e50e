//! What was typed, one step back from what cannot be typed again, and whether the browser keeps it.

use super::keep::store::{self, Found};
use crate::form::action::reduce;
use crate::form::{Action, Typed};
use std::rc::Rc;
use yew::prelude::*;

/// What was typed, now and before something was taken away.
#[derive(Clone, PartialEq)]
pub struct Now {
    /// Now.
    pub typed: Rc<Typed>,
    /// Before the last removal or replacement.
    pub before: Option<Rc<Typed>>,
}

impl Reducible for Now {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let takes_away = match action {
            Action::Remove(..)
            | Action::Replace(_)
            | Action::DropSetting
            | Action::DropCatch(_)
            | Action::DropPart(_)
            | Action::TakeFlows(_) => true,
            // The usual target takes the place of one that somebody may have typed.
            Action::Porosity(_) => self.typed.floor().is_some_and(|floor| !floor.has_usual_target()),
            _ => false,
        };
        let undoes = matches!(&action, Action::Replace(whole) if self.before.as_deref() == Some(whole));
        let before = match (undoes, takes_away) {
            (true, _) => None,
            (false, true) => Some(self.typed.clone()),
            (false, false) => self.before.clone(),
        };
        Rc::new(Self { typed: Rc::new(reduce((*self.typed).clone(), action)), before })
    }
}

/// The state of the page.
pub struct State {
    /// What was typed.
    pub now: UseReducerHandle<Now>,
    /// Whether the browser keeps it.
    pub kept: bool,
}

/// What was typed, kept in the browser after each change.
#[hook]
pub fn use_typed(found: &Found) -> State {
    let start = match found {
        Found::Typed(typed) => Some((**typed).clone()),
        _ => None,
    };
    let now = use_reducer_eq(move || Now { typed: Rc::new(start.unwrap_or_default()), before: None });
    let kept = use_state(|| true);
    {
        let kept = kept.clone();
        use_effect_with(now.typed.clone(), move |typed| kept.set(store::keep(typed)));
    }
    State { now, kept: *kept }
}
