//! Opening a file: a saved answer, or whatever else a view reads.

use crate::form::Action;
use crate::form::saved::Doubt;
use crate::page::rest;
use crate::page::shared::Shared;
use gloo::file::File;
use gloo::file::callbacks::{FileReader, read_as_text};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What is told after opening.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Told {
    /// Line by line.
    pub lines: Vec<String>,
    /// Whether something is wrong.
    pub mistake: bool,
}

/// What a file input needs.
#[derive(Properties, PartialEq)]
pub struct OpenFileProps {
    /// What every part needs.
    pub shared: Shared,
    /// Its stable name; the key of its label, and with `-hint` of what stands under it.
    pub name: &'static str,
    /// Which files are offered.
    pub accept: &'static str,
    /// Is given the text, and what tells the reader how that went.
    pub ontext: Callback<(String, Callback<Told>)>,
}

/// A file input.
#[component]
pub fn OpenFile(props: &OpenFileProps) -> Html {
    let (shared, name) = (&props.shared, props.name);
    let told = use_state(Told::default);
    // A reader that is dropped stops reading: it is kept until the next one.
    let reader = use_mut_ref(|| None::<FileReader>);
    let onchange = {
        let (ontext, told) = (props.ontext.clone(), told.clone());
        move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
            let (ontext, told) = (ontext.clone(), told.clone());
            *reader.borrow_mut() = Some(read_as_text(&File::from(file), move |text| {
                let tell = move |said| told.set(said);
                ontext.emit((text.unwrap_or_default(), Callback::from(tell)));
                input.set_value("");
            }));
        }
    };
    let hint = format!("{name}-hint");
    html! {
        <div class="field">
            <label for={name}>{ shared.say(name) }</label>
            <input id={name} {name} type="file" accept={props.accept} {onchange} aria-describedby={hint.clone()} />
            <p class="hint" id={hint.clone()}>{ shared.say(&hint) }</p>
            if !told.lines.is_empty() {
                <div class={told.mistake.then_some("mistake")} role="alert">
                    { for told.lines.iter().map(|line| html! { <p>{ line }</p> }) }
                </div>
            }
        </div>
    }
}

/// Opens a saved answer: what was typed for it comes back. A file that does not stand changes nothing and
/// says why.
pub fn open_saved(shared: &Shared) -> Html {
    let ontext = {
        let shared = shared.clone();
        move |(text, told): (String, Callback<Told>)| {
            let shared = shared.clone();
            yew::platform::spawn_local(async move {
                let (key, mistake) = open(&shared, &text).await;
                told.emit(Told { lines: vec![shared.say(key)], mistake });
            });
        }
    };
    html! {
        <OpenFile shared={shared.clone()} name="open-saved" accept=".json,application/json" {ontext} />
    }
}

async fn open(shared: &Shared, text: &str) -> (&'static str, bool) {
    let Ok(rest) = rest::load().await else { return ("view-failed", true) };
    match (rest.open)(text) {
        Ok((view, typed)) => {
            let stands = (rest.recompute)(text).is_ok();
            shared.act.emit(Action::Replace(Box::new(typed)));
            // An address without a fragment shows Fill, which is no loss.
            let _ = gloo::utils::window().location().set_hash(view.fragment());
            if stands { ("open-stands", false) } else { ("open-differs", true) }
        }
        Err(doubt) => (reason(&doubt), true),
    }
}

fn reason(doubt: &Doubt) -> &'static str {
    match doubt {
        Doubt::Later(_) => "open-later",
        Doubt::InputChanged => "open-input",
        _ => "open-unreadable",
    }
}
