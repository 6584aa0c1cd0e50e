//! The language of the page: chosen at its top. `offline/language.js` fetches and keeps it.

use super::rest::Loaded;
use super::shared::Shared;
use crate::words::{Argument, LANGUAGES, Language, Words};
use gloo::events::EventListener;
use js_sys::{Function, Reflect};
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// What is spoken, and what was asked for.
#[derive(Clone, Copy, PartialEq)]
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

/// Asks for a language.
fn ask(code: &str) {
    let window = gloo::utils::window();
    let speak = Reflect::get(&window, &"brimlineSpeak".into());
    if let Some(speak) = speak.ok().as_ref().and_then(JsCast::dyn_ref::<Function>) {
        // It tells itself what does not come.
        let _ = speak.call1(&window, &code.into());
    }
}

impl Tongue {
    fn as_told() -> Self {
        let one = |part: &str| told(part).and_then(|code| of_code(&code));
        let now = one("now").unwrap_or_else(Language::english);
        Self { now, asked: one("asked").unwrap_or(now), failed: one("failed") }
    }

    /// The list to choose from, each language named in itself.
    pub fn picker(self, shared: &Shared) -> Html {
        let onchange = |event: Event| ask(&event.target_unchecked_into::<HtmlSelectElement>().value());
        let chosen = self.asked.code;
        html! {
            <div class="field">
                <label for="language">{ shared.say("language") }</label>
                <select id="language" name="language" {onchange} ~value={JsValue::from_str(chosen)}>
                    { for LANGUAGES.iter().map(|one| html! {
                        <option lang={one.code} value={one.code} selected={one.code == chosen}>{ one.name }</option>
                    }) }
                </select>
            </div>
        }
    }

    /// What is being loaded, and what did not come.
    pub fn notice(self, shared: &Shared) -> Html {
        let told = |key: &str, language: &Language| {
            let name = |language: &Language| Argument::text(language.name);
            shared.tell(key, &[("language", name(language)), ("now", name(self.now))])
        };
        match self.failed {
            Some(failed) => html! {
                <p role="alert">
                    { told("language-failed", failed) }{ " " }
                    <button type="button" name="language-again" onclick={|_| ask(failed.code)}>{ shared.say("language-again") }</button>
                </p>
            },
            None if self.asked == self.now => Html::default(),
            None => html! { <p>{ told("language-loading", self.asked) }</p> },
        }
    }
}

/// What is spoken, and what was asked for.
#[hook]
pub fn use_tongue() -> Tongue {
    let tongue = use_state_eq(Tongue::as_told);
    {
        let tongue = tongue.clone();
        use_effect_with((), move |()| {
            let changed = move |_: &Event| tongue.set(Tongue::as_told());
            let listener = EventListener::new(&gloo::utils::window(), "brimline-language", changed);
            move || drop(listener)
        });
    }
    *tongue
}

/// The words of the page. What a language lacks is said in English.
#[hook]
pub fn use_words(tongue: Tongue, rest: Loaded) -> Rc<Words> {
    use_memo((matches!(rest, Loaded::Here(_)), tongue.now.code), |_| {
        let english = match rest {
            Loaded::Here(rest) => (rest.words)(),
            Loaded::Waiting | Loaded::Failed => Words::of_fill(),
        };
        match told("text").map(|text| Words::of(tongue.now, &text)) {
            Some(Ok(own)) => own.or(english),
            _ => english,
        }
    })
}

/// What a language says on its face that nobody has checked yet, in itself and in English.
pub fn unchecked(words: &Words) -> Option<(String, String)> {
    (!words.language().checked)
        .then(|| (words.say("language-unchecked"), words.say("language-unchecked-english")))
}
