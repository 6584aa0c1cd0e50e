//! Choosing one of a few, and yes or no.

use crate::coded::Coded;
use crate::form::Action;
use crate::page::shared::Shared;
use std::rc::Rc;
use wasm_bindgen::JsValue;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// One of a few.
pub struct Choice {
    /// Its stable name.
    pub name: AttrValue,
    /// Its label.
    pub label: String,
    /// The value and the text of each option.
    pub options: Vec<(String, String)>,
    /// The value chosen.
    pub chosen: String,
    /// What stands under it.
    pub hint: Option<String>,
}

/// What a list shows, as a property: the attribute on its options counts only until somebody has
/// chosen by hand, and after that another record's value would not be shown.
pub fn shown(chosen: &str) -> JsValue {
    JsValue::from_str(chosen)
}

/// What a control does with what was chosen. The markup takes it boxed, so that it stands in the page
/// once and not once for each kind of choice.
type Does<T> = Rc<dyn Fn(T) -> Action>;

/// A drop-down list with its label; `action` is told the value.
pub fn choice(shared: &Shared, choice: Choice, action: impl Fn(String) -> Action + 'static) -> Html {
    list(shared, choice, Rc::new(action))
}

fn list(shared: &Shared, choice: Choice, action: Does<String>) -> Html {
    let disabled = shared.forbids(&action(choice.chosen.clone()));
    let onchange =
        shared.on(move |event: Event| action(event.target_unchecked_into::<HtmlSelectElement>().value()));
    drop_down(choice, disabled, onchange)
}

/// The list itself, whatever hears of it.
pub fn drop_down(choice: Choice, disabled: bool, onchange: Callback<Event>) -> Html {
    let Choice { name, label, options, chosen, hint } = choice;
    let described = hint.is_some().then(|| format!("{name}-hint"));
    html! {
        <div class="field">
            <label for={name.clone()}>{ label }</label>
            <select id={name.clone()} name={name.clone()} {disabled} {onchange} aria-describedby={described} ~value={shown(&chosen)}>
                { for options.into_iter().map(|(value, text)| {
                    let selected = value == chosen;
                    html! { <option {value} selected={selected}>{ text }</option> }
                }) }
            </select>
            if let Some(hint) = hint { <p class="hint" id={format!("{name}-hint")}>{ hint }</p> }
        </div>
    }
}

/// A drop-down list of choices that have codes. The words of each stand under `<words>-<code>`, and
/// what stands under the list under `<name>-hint`.
pub fn pick<T: Coded>(
    shared: &Shared,
    name: &'static str,
    words: &str,
    chosen: T,
    action: impl Fn(T) -> Action + 'static,
) -> Html {
    let list = of_codes(shared, name, words, T::CODES, chosen.code());
    choice(shared, list, move |code| action(T::from_code(&code).unwrap_or(chosen)))
}

fn of_codes(shared: &Shared, name: &'static str, words: &str, codes: &[&str], chosen: &str) -> Choice {
    let option =
        |code: &&str| ((*code).to_owned(), shared.say(&format!("{words}-{}", code.replace('_', "-"))));
    Choice {
        name: name.into(),
        label: shared.say(name),
        options: codes.iter().map(option).collect(),
        chosen: chosen.to_owned(),
        hint: shared.words.find(&format!("{name}-hint")),
    }
}

/// A tick box with its label; `action` is told the new state.
pub fn switch(
    shared: &Shared,
    name: impl Into<AttrValue>,
    label: String,
    on: bool,
    action: impl Fn(bool) -> Action + 'static,
) -> Html {
    tick(shared, name.into(), label, on, Rc::new(action))
}

fn tick(shared: &Shared, name: AttrValue, label: String, on: bool, action: Does<bool>) -> Html {
    let disabled = shared.forbids(&action(on));
    let onchange =
        shared.on(move |event: Event| action(event.target_unchecked_into::<HtmlInputElement>().checked()));
    html! {
        <label class="switch">
            <input type="checkbox" id={name.clone()} {name} checked={on} {disabled} {onchange} />
            <span>{ label }</span>
        </label>
    }
}

/// A button; `action` is what it does.
pub fn button(
    shared: &Shared,
    name: impl Into<AttrValue>,
    text: String,
    action: impl Fn() -> Action + 'static,
) -> Html {
    if shared.forbids(&action()) {
        return Html::default();
    }
    press(name.into(), text, shared.on(move |_: MouseEvent| action()))
}

fn press(name: AttrValue, text: String, onclick: Callback<MouseEvent>) -> Html {
    html! { <button type="button" {name} {onclick}>{ text }</button> }
}
