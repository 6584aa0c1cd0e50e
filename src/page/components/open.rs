//! Opens a saved answer: what was typed for it comes back.

use crate::form::Action;
use crate::form::saved::Doubt;
use crate::page::rest;
use crate::page::shared::Shared;
use gloo::file::File;
use gloo::file::callbacks::{FileReader, read_as_text};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What it needs.
#[derive(Properties, PartialEq)]
pub struct OpenSavedProps {
    /// What every part needs.
    pub shared: Shared,
}

/// A file input. A file that does not stand changes nothing and says why.
#[component]
pub fn OpenSaved(props: &OpenSavedProps) -> Html {
    let shared = &props.shared;
    // What is told after opening, and whether it is a mistake.
    let told = use_state(|| None::<(&'static str, bool)>);
    // A reader that is dropped stops reading: it is kept until the next one.
    let reader = use_mut_ref(|| None::<FileReader>);
    let onchange = {
        let (shared, told) = (shared.clone(), told.clone());
        move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
            let (shared, told) = (shared.clone(), told.clone());
            *reader.borrow_mut() = Some(read_as_text(&File::from(file), move |text| {
                let text = text.unwrap_or_default();
                let (shared, told) = (shared.clone(), told.clone());
                yew::platform::spawn_local(async move {
                    let Ok(rest) = rest::load().await else { return told.set(Some(("view-failed", true))) };
                    match (rest.open)(&text) {
                        Ok((view, typed)) => {
                            let stands = (rest.recompute)(&text).is_ok();
                            told.set(Some(if stands {
                                ("open-stands", false)
                            } else {
                                ("open-differs", true)
                            }));
                            shared.act.emit(Action::Replace(Box::new(typed)));
                            // An address without a fragment shows Fill, which is no loss.
                            let _ = gloo::utils::window().location().set_hash(view.fragment());
                        }
                        Err(doubt) => told.set(Some((reason(&doubt), true))),
                    }
                });
                input.set_value("");
            }));
        }
    };
    html! {
        <div class="field">
            <label for="open-saved">{ shared.say("open-saved") }</label>
            <input id="open-saved" name="open-saved" type="file" accept=".json,application/json" {onchange}
                aria-describedby="open-saved-hint" />
            <p class="hint" id="open-saved-hint">{ shared.say("open-saved-hint") }</p>
            if let Some((key, mistake)) = *told {
                <p class={mistake.then_some("mistake")} role="alert">{ shared.say(key) }</p>
            }
        </div>
    }
}

fn reason(doubt: &Doubt) -> &'static str {
    match doubt {
        Doubt::Later(_) => "open-later",
        Doubt::InputChanged => "open-input",
        _ => "open-unreadable",
    }
}
