//! Choosing one of a few, and yes or no.

use crate::page::shared::use_shared;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// One of a few.
#[derive(Properties, PartialEq)]
pub struct ChoiceProps {
    /// Its stable name.
    pub name: AttrValue,
    /// Its label.
    pub label: String,
    /// The value and the text of each option.
    pub options: Vec<(String, String)>,
    /// The value chosen.
    pub chosen: String,
    /// Told the value.
    pub onchoose: Callback<String>,
    /// What stands under it.
    #[prop_or_default]
    pub hint: Option<String>,
    /// Whether the label is only for screen readers, where a table heading shows it.
    #[prop_or_default]
    pub quiet: bool,
}

/// A drop-down list with its label.
#[component]
pub fn Choice(props: &ChoiceProps) -> Html {
    let name = &props.name;
    let onchange =
        props.onchoose.reform(|event: Event| event.target_unchecked_into::<HtmlSelectElement>().value());
    let described = props.hint.is_some().then(|| format!("{name}-hint"));
    html! {
        <div class="field">
            <label for={name.clone()} class={props.quiet.then_some("unseen")}>{ &props.label }</label>
            <select id={name.clone()} name={name.clone()} {onchange} aria-describedby={described}>
                { for props.options.iter().map(|(value, text)| html! {
                    <option value={value.clone()} selected={*value == props.chosen}>{ text }</option>
                }) }
            </select>
            if let Some(hint) = &props.hint { <p class="hint" id={format!("{name}-hint")}>{ hint }</p> }
        </div>
    }
}

/// Yes or no.
#[derive(Properties, PartialEq)]
pub struct SwitchProps {
    /// Its stable name.
    pub name: AttrValue,
    /// The word key of its label.
    pub key_: AttrValue,
    /// Whether it is on.
    pub on: bool,
    /// Told the new state.
    pub onswitch: Callback<bool>,
    /// A label of its own, where the usual one does not tell enough.
    #[prop_or_default]
    pub label: Option<String>,
}

/// A tick box with its label.
#[component]
pub fn Switch(props: &SwitchProps) -> Html {
    let shared = use_shared();
    let onchange =
        props.onswitch.reform(|event: Event| event.target_unchecked_into::<HtmlInputElement>().checked());
    html! {
        <label class="switch">
            <input type="checkbox" id={props.name.clone()} name={props.name.clone()} checked={props.on} {onchange} />
            <span>{ props.label.clone().unwrap_or_else(|| shared.say(&props.key_)) }</span>
        </label>
    }
}
