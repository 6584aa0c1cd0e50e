//! The language of the page: chosen at its top. `offline/language.js` fetches and keeps it.

use super::components::{Choice, drop_down};
use super::keep::event::use_event;
use super::rest::Loaded;
use super::shared::Shared;
use crate::words::{Argument, LANGUAGES, Language, Words};
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

/// The words of the page. What a language lacks is said in English.
#[hook]
pub fn use_words(tongue: Tongue, rest: Loaded) -> Rc<Words> {
    use_memo((matches!(rest, Loaded::Here(_)), tongue.now.code), |_| {
        let english = match rest {
            Loaded::Here(rest) => (rest.words)(),
            Loaded::Waiting | Loaded::Failed => Words::of_fill(),
        };
        let words = match told("text").map(|text| Words::of(tongue.now, &text)) {
            Some(Ok(own)) => own.or(english),
            _ => english,
        };
        match rest {
            Loaded::Here(rest) => words.with_days(rest.day),
            Loaded::Waiting | Loaded::Failed => words,
        }
    })
}

/// What a language says on its face that nobody has checked yet, in itself and in English.
pub fn unchecked(words: &Words) -> Option<[String; 2]> {
    (!words.language().checked)
        .then(|| ["language-unchecked", "language-unchecked-english"].map(|key| words.say(key)))
}
