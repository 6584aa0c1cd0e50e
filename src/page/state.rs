//! What was typed, the steps back, and whether the browser keeps it.

use super::keep::after_paint::after_paint;
use super::keep::store::{self, Found};
use super::keep::tabs::{self, Standing};
use super::keep::{lock, today};
use crate::form::action::{Line, reduce};
use crate::form::site::Act;
use crate::form::{Action, Field, Typed};
use gloo::events::EventListener;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::StorageEvent;
use yew::prelude::*;

/// So many steps can be undone.
const STEPS: usize = 30;

/// What was typed, now and before.
#[derive(Clone, PartialEq)]
pub struct Now {
    /// Now.
    pub typed: Rc<Typed>,
    /// Before each of the last steps, the latest last. Typing into one place is one step.
    past: Vec<Rc<Typed>>,
    /// Where was typed last.
    place: Option<Place>,
    /// Before something was last taken away that cannot be typed again.
    pub removed: Option<Rc<Typed>>,
}

/// A place that can be typed into.
#[derive(Clone, Copy, PartialEq)]
enum Place {
    Number(Field),
    Line(Line),
}

impl Now {
    /// What the last step changed.
    pub fn before(&self) -> Option<&Rc<Typed>> {
        self.past.last()
    }
}

impl Reducible for Now {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let comes_back = |state: &Rc<Typed>| matches!(&action, Action::Replace(whole) if **whole == **state);
        let removed = match &self.removed {
            Some(removed) if comes_back(removed) => None,
            // A step back takes the step away: it can be had again.
            _ if takes_away(&self.typed, &action) => Some(self.typed.clone()),
            removed => removed.clone(),
        };
        if self.before().is_some_and(comes_back) {
            let mut past = self.past.clone();
            past.pop();
            // Nobody has read there what stands in the way of an amount.
            let typed = done(&self.typed, action);
            return Rc::new(Self { typed, past, place: None, removed });
        }
        let place = match &action {
            Action::Write(field, _) | Action::Unit(field, _) => Some(Place::Number(*field)),
            Action::Text(line, _) => Some(Place::Line(*line)),
            _ => None,
        };
        let asks = matches!(&action, Action::Pick(..) | Action::Job(_) | Action::StopRead | Action::Today(_))
            || matches!(&action, Action::Text(Line::Search, _))
            || matches!(&action, Action::Site(deed) if deed.act.only_asks());
        let publishes = matches!(&action, Action::Site(deed) if matches!(deed.act, Act::Publish { .. }));
        let typed = done(&self.typed, action);
        if publishes && typed.site != self.typed.site {
            // What was published is never rewritten: no step leads back to before it.
            return Rc::new(Self { typed, past: Vec::new(), place: None, removed: None });
        }
        let mut past = self.past.clone();
        if !asks && (place.is_none() || place != self.place) {
            past.push(self.typed.clone());
            past.drain(..past.len().saturating_sub(STEPS));
        }
        Rc::new(Self { typed, past, place: if asks { self.place } else { place }, removed })
    }
}

/// What was typed after an action, on the day that it is now: what is opened may be of another.
fn done(typed: &Typed, action: Action) -> Rc<Typed> {
    Rc::new(reduce(reduce(typed.clone(), action), Action::Today(today::now())))
}

/// Whether an action takes something away that cannot be typed again.
fn takes_away(typed: &Typed, action: &Action) -> bool {
    match action {
        Action::Remove(..)
        | Action::Replace(_)
        | Action::DropSetting
        | Action::DropCatch(_)
        | Action::DropPart(_)
        | Action::TakeFlows(_) => true,
        Action::Site(deed) => matches!(deed.act, Act::Discard(..) | Act::TakeSite(_)),
        // The usual target takes the place of one that somebody may have typed.
        Action::Porosity(_) => typed.floor().is_some_and(|floor| !floor.has_usual_target()),
        _ => false,
    }
}

/// The state of the page.
pub struct State {
    /// What was typed.
    pub now: UseReducerHandle<Now>,
    /// Whether the device keeps it.
    pub kept: bool,
    /// Whether another tab has kept something that this one does not show.
    pub behind: bool,
    /// Looks again whether it has.
    pub look: Callback<()>,
}

/// What is typed when the page opens: what the device has, else the demo.
pub fn first(found: &Found) -> Rc<Typed> {
    let kept = match found {
        Found::Typed(typed) => (**typed).clone(),
        _ => Typed::default(),
    };
    Rc::new(reduce(kept, Action::Today(today::now())))
}

/// What was typed, kept in the browser after each change.
#[hook]
pub fn use_typed(first: &Rc<Typed>) -> State {
    let typed = first.clone();
    let now = use_reducer_eq(move || Now { typed, past: Vec::new(), place: None, removed: None });
    let kept = use_state_eq(|| true);
    let behind = use_state_eq(|| false);
    let stands = {
        let (kept, behind) = (kept.clone(), behind.clone());
        use_callback((), move |standing: Standing, ()| {
            kept.set(standing.kept);
            behind.set(standing.behind);
        })
    };
    let look = stands.reform(|()| tabs::look());
    {
        let look = look.clone();
        use_effect_with((), move |()| {
            // A browser tells every tab but the one that kept something, and none that is out of sight in the history.
            let listeners = ["storage", "pageshow"].map(|name| {
                let look = look.clone();
                EventListener::new(&gloo::utils::window(), name, move |event| {
                    let event = event.unchecked_ref::<StorageEvent>();
                    match event.key().as_deref() {
                        // Set to its standards, or set free: every tab is.
                        Some(lock::KEY) => drop(gloo::utils::window().location().reload()),
                        Some(store::KEY) => {
                            tabs::hear(event.old_value(), event.new_value());
                            look.emit(());
                        }
                        // Whoever clears the storage has nothing written into it by that.
                        None if event.type_() == "pageshow" => look.emit(()),
                        _ => {}
                    }
                })
            });
            move || drop(listeners)
        });
    }
    use_effect_with(now.typed.clone(), move |typed| {
        let typed = typed.clone();
        let keep = after_paint(move || stands.emit(tabs::keep(typed)));
        move || drop(keep)
    });
    State { now, kept: *kept, behind: *behind, look }
}
