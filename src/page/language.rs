//! The language of the page: chosen at its top, kept on the device, loaded when it is chosen.

use super::rest::Loaded;
use super::shared::Shared;
use crate::words::{Argument, LANGUAGES, Language, Words};
use js_sys::{Function, Promise, Reflect};
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// The name that its tag is kept under.
const KEY: &str = "brimline.language";

/// What is spoken, and what was asked for.
pub struct Tongue {
    /// The words of the page.
    pub words: Rc<Words>,
    /// The language that was asked for: another one than that of the words while it is being loaded.
    asked: &'static Language,
    /// What could not be loaded.
    failed: Option<&'static Language>,
    /// Asks for one.
    ask: Callback<&'static Language>,
}

fn of_code(code: &str) -> Option<&'static Language> {
    LANGUAGES.iter().find(|one| one.code == code)
}

/// The one that was chosen here, else one that the browser's user reads, else English.
fn first() -> &'static Language {
    let window = gloo::utils::window();
    let storage = window.local_storage().ok().flatten();
    let kept = storage.and_then(|storage| storage.get_item(KEY).ok()?).and_then(|code| of_code(&code));
    let preferred = || {
        let tags: Vec<String> =
            window.navigator().languages().iter().filter_map(|tag| tag.as_string()).collect();
        Language::preferred(tags.iter().map(String::as_str))
    };
    kept.or_else(preferred).unwrap_or_else(Language::english)
}

fn keep(language: &Language) {
    if let Ok(Some(storage)) = gloo::utils::window().local_storage() {
        // Where the browser keeps nothing the page says so once, and the language is asked for again.
        let _ = storage.set_item(KEY, language.code);
    }
}

/// The words of a language, from whatever started the page.
async fn load(language: &'static Language) -> Result<Words, JsValue> {
    let window = gloo::utils::window();
    let give: Function = Reflect::get(&window, &"brimlineWords".into())?.dyn_into()?;
    let given: Promise = give.call1(&window, &language.code.into())?.dyn_into()?;
    let text = JsFuture::from(given).await?.as_string().unwrap_or_default();
    Words::of(language, &text).map_err(|flaw| flaw.text.into())
}

/// The words of the page: in the language that was asked for as soon as they are here, and in the former one till then.
#[hook]
pub fn use_language(rest: Loaded) -> Tongue {
    let asked = use_state_eq(first);
    let own = use_state(|| None::<Rc<Words>>);
    let failed = use_state_eq(|| None);
    let here = own.as_ref().map_or_else(Language::english, |own| own.language());
    {
        let (own, failed, asked) = (own.clone(), failed.clone(), asked.clone());
        use_effect_with(*asked, move |language| {
            let language = *language;
            let wanted = Rc::new(Cell::new(true));
            let still = wanted.clone();
            if language == Language::english() {
                own.set(None);
            } else if language != here {
                yew::platform::spawn_local(async move {
                    match load(language).await {
                        _ if !still.get() => {}
                        Ok(words) => {
                            keep(language);
                            failed.set(None);
                            own.set(Some(Rc::new(words)));
                        }
                        Err(_) => {
                            failed.set(Some(language));
                            asked.set(here);
                        }
                    }
                });
            }
            move || wanted.set(false)
        });
    }
    let words = {
        let own = own.clone();
        use_memo((matches!(rest, Loaded::Here(_)), here.code), move |_| {
            let english = match rest {
                Loaded::Here(rest) => (rest.words)(),
                Loaded::Waiting | Loaded::Failed => Words::of_fill(),
            };
            match &*own {
                Some(own) => (**own).clone().or(&english),
                None => english,
            }
        })
    };
    use_effect_with(here.code, |code| {
        if let Some(page) = gloo::utils::document().document_element() {
            // A language's own tag is a name that the attribute takes.
            let _ = page.set_attribute("lang", code);
        }
    });
    let ask = {
        let (asked, failed) = (asked.clone(), failed.clone());
        Callback::from(move |language: &'static Language| {
            failed.set(None);
            // English is here; another one is kept when it comes.
            if language == Language::english() {
                keep(language);
            }
            asked.set(language);
        })
    };
    Tongue { words, asked: *asked, failed: *failed, ask }
}

impl Tongue {
    /// The list to choose from, each language named in itself.
    pub fn picker(&self, shared: &Shared) -> Html {
        let ask = self.ask.clone();
        let onchange = move |event: Event| {
            if let Some(language) = of_code(&event.target_unchecked_into::<HtmlSelectElement>().value()) {
                ask.emit(language);
            }
        };
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
    pub fn notice(&self, shared: &Shared) -> Html {
        let told = |key: &str, language: &Language| {
            shared.tell(
                key,
                &[
                    ("language", Argument::text(language.name)),
                    ("now", Argument::text(self.words.language().name)),
                ],
            )
        };
        if let Some(language) = self.failed {
            let again = self.ask.reform(move |_: MouseEvent| language);
            return html! {
                <p role="alert">
                    { told("language-failed", language) }{ " " }
                    <button type="button" name="language-again" onclick={again}>{ shared.say("language-again") }</button>
                </p>
            };
        }
        if self.asked == self.words.language() {
            return Html::default();
        }
        html! { <p>{ told("language-loading", self.asked) }</p> }
    }
}

/// What a language says on its face that nobody has checked yet, in itself and in English.
pub fn unchecked(words: &Words) -> Option<(String, String)> {
    (!words.language().checked)
        .then(|| (words.say("language-unchecked"), words.say("language-unchecked-english")))
}
