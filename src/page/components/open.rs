//! Opening a file: a saved answer, or whatever else a view reads.

use crate::document::MOST_BYTES;
use crate::form::Action;
use crate::form::saved::Doubt;
use crate::page::rest;
use crate::page::shared::Shared;
use gloo::file::File;
use gloo::file::callbacks::{FileReader, read_as_bytes};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A file that was chosen.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Chosen {
    /// Its name.
    pub name: String,
    /// All that stands in it.
    pub bytes: Vec<u8>,
}

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
    /// Is given the file, and what tells the reader how that went.
    pub onfile: Callback<(Chosen, Callback<Told>)>,
}

/// A file input.
#[component]
pub fn OpenFile(props: &OpenFileProps) -> Html {
    let (shared, name) = (&props.shared, props.name);
    let told = use_state(Told::default);
    // A reader that is dropped stops reading: it is kept until the next one.
    let reader = use_mut_ref(|| None::<FileReader>);
    let onchange = {
        let (onfile, told, shared) = (props.onfile.clone(), told.clone(), shared.clone());
        move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            let Some(file) = input.files().and_then(|files| files.get(0)).map(File::from) else { return };
            let (onfile, told, shared) = (onfile.clone(), told.clone(), shared.clone());
            let wrong = move |key: &str| Told { lines: vec![shared.say(key)], mistake: true };
            let name = file.name();
            if file.size() > MOST_BYTES as u64 {
                // Never read into memory.
                input.set_value("");
                return told.set(wrong("file-too-big"));
            }
            *reader.borrow_mut() = Some(read_as_bytes(&file, move |bytes| {
                input.set_value("");
                let tell = {
                    let told = told.clone();
                    Callback::from(move |said| told.set(said))
                };
                match bytes {
                    Ok(bytes) => onfile.emit((Chosen { name, bytes }, tell)),
                    Err(_) => tell.emit(wrong("file-unread")),
                }
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
    let onfile = {
        let shared = shared.clone();
        move |(file, told): (Chosen, Callback<Told>)| {
            let shared = shared.clone();
            yew::platform::spawn_local(async move {
                let (key, mistake) = open(&shared, &String::from_utf8_lossy(&file.bytes)).await;
                told.emit(Told { lines: vec![shared.say(key)], mistake });
            });
        }
    };
    html! {
        <OpenFile shared={shared.clone()} name="open-saved" accept=".json,application/json" {onfile} />
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
