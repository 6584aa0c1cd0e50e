//! The language of the page: chosen at its top. `offline/language.js` fetches and keeps it.

use super::components::{Choice, drop_down};
use super::keep::event::use_event;
use super::rest::Loaded;
use super::shared::Shared;
use crate::words::{Argument, Days, LANGUAGES, Language, Words};
use js_sys::Reflect;
use std::rc::Rc;
use yew::prelude::*;

/// What is spoken, and what was asked for.
#[derive(Clone, Copy)]
pub struct Tongue {
    /// The language whose words are here.
    now: &'static Language,
    /// The one that was asked for: another one while it is being loaded.
    asked: &'static Language,
    /// The one that did not come.
    failed: Option<&'static Language>,
}

/// A part of what `language.js` tells. Where nothing told it the page is not the built one, and speaks English.
fn told(part: &str) -> Option<String> {
    let all = Reflect::get(&gloo::utils::window(), &"brimlineLanguage".into()).ok()?;
    Reflect::get(&all, &part.into()).ok()?.as_string()
}

fn of_code(code: &str) -> Option<&'static Language> {
    LANGUAGES.iter().find(|one| one.code == code)
}

impl Tongue {
    /// The list to choose from, each language named in itself; `language.js` hears what is chosen.
    pub fn picker(self, shared: &Shared) -> Html {
        let options = LANGUAGES.iter().map(|one| (one.code.to_owned(), one.name.to_owned())).collect();
        let choice = Choice {
            name: "language".into(),
            label: shared.say("language"),
            options,
            chosen: self.asked.code.to_owned(),
            hint: None,
        };
        drop_down(choice, false, Callback::noop())
    }

    /// What is being loaded or did not come: what is said of it, and whether another try helps.
    pub fn news(self, shared: &Shared) -> Option<(String, bool)> {
        let (key, language) = match self.failed {
            Some(failed) => ("language-failed", failed),
            None if self.asked.code == self.now.code => return None,
            None => ("language-loading", self.asked),
        };
        let name = |language: &Language| Argument::text(language.name);
        let told = shared.tell(key, &[("language", name(language)), ("now", name(self.now))]);
        Some((told, self.failed.is_some()))
    }
}

/// What is spoken, and what was asked for.
#[hook]
pub fn use_tongue() -> Tongue {
    let told = use_event("brimline-language", || told("tags").unwrap_or_default());
    let mut tags = told.split(' ').map(of_code);
    let mut next = || tags.next().flatten();
    let now = next().unwrap_or_else(Language::english);
    Tongue { now, asked: next().unwrap_or(now), failed: next() }
}

/// The words of the page: `first` as long as it opens in their language, then those of all views. What a language lacks is
/// said in English.
#[hook]
pub fn use_words(tongue: Tongue, rest: Loaded, first: &Rc<Words>) -> Rc<Words> {
    let words = use_memo((matches!(rest, Loaded::Here(_)), tongue.now.code), |_| match rest {
        Loaded::Here(rest) => spoken(tongue.now, (rest.words)(), Some(rest.day)),
        _ if first.language() == tongue.now => first.clone(),
        Loaded::Waiting | Loaded::Failed => spoken(tongue.now, Rc::new(Words::of_fill()), None),
    });
    (*words).clone()
}

/// What Fill says in the language that the page opens in.
pub fn first_words() -> Rc<Words> {
    let tags = told("tags").unwrap_or_default();
    let now = tags.split(' ').next().and_then(of_code).unwrap_or_else(Language::english);
    spoken(now, Rc::new(Words::of_fill()), None)
}

fn spoken(language: &'static Language, english: Rc<Words>, days: Option<Days>) -> Rc<Words> {
    let own = told("text").filter(|_| language != Language::english());
    let Some(Ok(own)) = own.map(|text| Words::of(language, &text)) else { return english };
    let own = own.or(english);
    Rc::new(match days {
        Some(days) => own.with_days(days),
        None => own,
    })
}

/// What a language says on its face that nobody has checked yet, in itself and in English.
pub fn unchecked(words: &Words) -> Option<[String; 2]> {
    (!words.language().checked)
        .then(|| ["language-unchecked", "language-unchecked-english"].map(|key| words.say(key)))
}
