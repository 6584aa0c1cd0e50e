//! What stands in the way of an answer, and what can be done with one.

use crate::form::saved::{View, save};
use crate::form::{Field, What};
use crate::page::keep::download;
use crate::page::shared::use_shared;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// Mistakes, in the order of the fields.
#[derive(Properties, PartialEq)]
pub struct TroublesProps {
    /// The name of the input, the field where it is a number, and what is wrong.
    pub troubles: Vec<(String, What)>,
}

/// The field of an input's name, the label of it and what was typed: what a message needs.
fn describe(shared: &crate::page::shared::Shared, name: &str) -> (Option<Field>, String, String, String) {
    let field = all_fields(shared).into_iter().find(|field| field.name() == name);
    let entry = field.and_then(|field| field.entry(&shared.typed).cloned()).unwrap_or_default();
    let key = field.map_or_else(|| name.to_owned(), |field| field.key().to_owned());
    let number = match field {
        Some(Field::Setting(index) | Field::AreaSize(index)) => format!(" {}", index + 1),
        _ => String::new(),
    };
    let label = shared.words.find(&key).unwrap_or_else(|| shared.say("area-floor"));
    (field, format!("{label}{number}"), entry.text, entry.unit)
}

fn all_fields(shared: &crate::page::shared::Shared) -> Vec<Field> {
    let settings = shared.typed.machine().map_or(0, |machine| machine.settings.len().max(1));
    let mut all = Field::SINGLE.to_vec();
    all.extend((0..settings).map(Field::Setting));
    all.extend((0..shared.typed.site.areas.len()).map(Field::AreaSize));
    all
}

/// What to mend before there is an amount; each line leads to its field.
#[component]
pub fn Troubles(props: &TroublesProps) -> Html {
    let shared = use_shared();
    if props.troubles.is_empty() {
        return Html::default();
    }
    html! {
        <section class="troubles">
            <h3>{ shared.say("troubles") }</h3>
            <ul>
                { for props.troubles.iter().map(|(name, what)| {
                    let (field, label, text, unit) = describe(&shared, name);
                    let target = name.clone();
                    let onclick = move |event: MouseEvent| {
                        event.prevent_default();
                        focus(&target);
                    };
                    let message = shared.words.trouble(what, &label, field, (&text, &unit));
                    html! { <li><button type="button" class="link" {onclick}>{ message }</button></li> }
                }) }
            </ul>
        </section>
    }
}

/// Moves the focus to an input, unfolding what hides it.
fn focus(name: &str) {
    let Some(element) = gloo::utils::document().get_element_by_id(name) else { return };
    if let Ok(Some(details)) = element.closest("details") {
        // Setting the attribute to what it is already does no harm.
        let _ = details.set_attribute("open", "");
    }
    if let Ok(element) = element.dyn_into::<HtmlElement>() {
        let _ = element.focus();
    }
}

/// The view whose answer it is.
#[derive(Properties, PartialEq)]
pub struct AnswerToolsProps {
    /// The view.
    pub view: View,
}

/// Saves the answer as a file, and prints the view.
#[component]
pub fn AnswerTools(props: &AnswerToolsProps) -> Html {
    let shared = use_shared();
    let view = props.view;
    let onsave = {
        let shared = shared.clone();
        move |_| {
            let name = format!("brimline-{}.json", view.code());
            download::offer(&name, &save(view, &shared.typed, shared.marks()));
        }
    };
    let onprint = |_| {
        // Where a browser has no printer the button does nothing, and nothing is lost.
        let _ = gloo::utils::window().print();
    };
    html! {
        <div class="buttons tools">
            <button type="button" name="answer-save" onclick={onsave}>{ shared.say("answer-save") }</button>
            <button type="button" name="answer-print" onclick={onprint}>{ shared.say("answer-print") }</button>
        </div>
    }
}
