//! What every part of the page needs: what was typed, the words, and the way to act.
//!
//! Parts without a state of their own are plain functions of it: each component costs 3 kB of wasm,
//! and only a handful have something to remember.

use crate::answer::Value;
use crate::form::{Action, Typed};
use crate::number::Marks;
use crate::page::keep::store;
use crate::units::{Kind, System};
use crate::words::{Argument, Words};
use std::rc::Rc;
use yew::prelude::*;

/// Passed down to every part.
#[derive(Clone)]
pub struct Shared {
    /// What was typed.
    pub typed: Rc<Typed>,
    /// What the last step changed.
    pub before: Option<Rc<Typed>>,
    /// The words.
    pub words: Rc<Words>,
    /// Whether the limits of a number stand under its field.
    pub limits: bool,
    /// Whether this device is set to its standards: nobody changes a record on it.
    pub locked: bool,
    /// The measures that it does not offer, by their ids, and the line that says what they lack.
    pub lacking: Rc<(Vec<String>, String)>,
    /// Draws why a view matters, by its code.
    pub why: fn(&Shared, &'static str) -> Html,
    /// Says what a label text that is offered means.
    pub meant: fn(&Shared, &str) -> String,
    /// Does something.
    pub act: Callback<Action>,
}

/// A change makes a new value, so that nobody needs to look through a long site to see whether it is the same.
impl PartialEq for Shared {
    fn eq(&self, other: &Self) -> bool {
        let before = match (&self.before, &other.before) {
            (Some(one), Some(other)) => Rc::ptr_eq(one, other),
            (one, other) => one.is_none() && other.is_none(),
        };
        before
            && Rc::ptr_eq(&self.typed, &other.typed)
            && Rc::ptr_eq(&self.words, &other.words)
            && (self.limits, self.locked) == (other.limits, other.locked)
            && self.act == other.act
    }
}

impl Shared {
    /// The message of a key.
    pub fn say(&self, key: &str) -> String {
        self.words.say(key)
    }

    /// The message of a key with its placeholders filled.
    pub fn tell(&self, key: &str, arguments: &[(&str, Argument)]) -> String {
        self.words.tell(key, arguments)
    }

    /// A day, given as ISO 8601 has it, as what fills a placeholder.
    pub fn day(&self, iso: &str) -> Argument {
        Argument::text(self.words.day(iso))
    }

    /// A day and a time as the clock on the wall had it, given as ISO 8601 has them. What is none stays as it is.
    pub fn moment(&self, iso: &str) -> String {
        let (Some(day), Some(clock)) = (iso.get(..10), iso.get(11..16)) else { return iso.to_owned() };
        self.tell("moment", &[("day", self.day(day)), ("clock", Argument::text(clock))])
    }

    /// A value in the reader's units.
    pub fn show(&self, value: Value) -> String {
        let text = self.words.value(value, self.system());
        let money = matches!(value.kind, Kind::Money | Kind::AreaPrice | Kind::VolumePrice | Kind::Wage);
        if money { format!("{}{text}", self.typed.site.currency) } else { text }
    }

    /// A value as what fills a placeholder.
    pub fn argument(&self, value: Value) -> Argument {
        Argument::number(value.si, self.show(value))
    }

    /// The reader's units.
    pub fn system(&self) -> System {
        self.typed.system
    }

    /// The marks of the reader's numbers.
    pub fn marks(&self) -> Marks {
        self.words.marks()
    }

    /// Puts something else in the place of the site, which is put aside first and survives a reload; tells whether
    /// there was room for it. Never over a site that waits already: that one is the device's own.
    pub fn put_aside_for(&self, action: Action) -> bool {
        let room = store::put_own_aside(&self.typed);
        if room {
            self.act.emit(action);
        } else {
            // There is no place of its own to say it in, and it must not pass unseen.
            gloo::dialogs::alert(&self.say("link-no-room"));
        }
        room
    }

    /// Whether this device is not free to do something.
    pub fn forbids(&self, action: &Action) -> bool {
        self.locked && !action.is_asking()
    }

    /// A callback that does `action` of what it is given.
    pub fn on<T: 'static>(&self, action: impl Fn(T) -> Action + 'static) -> Callback<T> {
        self.act.reform(action)
    }
}
