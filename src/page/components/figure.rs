//! A computed figure, with the stable name and the full value that tests and assistive tools read.

use crate::answer::Value;
use crate::page::shared::use_shared;
use yew::prelude::*;

/// A figure.
#[derive(Properties, PartialEq)]
pub struct ComputedProps {
    /// Its stable name.
    pub name: AttrValue,
    /// Its value.
    pub value: Value,
    /// Its text, where it is not the value in the reader's units.
    #[prop_or_default]
    pub text: Option<String>,
}

/// A computed figure.
#[component]
pub fn Computed(props: &ComputedProps) -> Html {
    let shared = use_shared();
    let si = props.value.si.to_string();
    html! {
        <data value={si.clone()} data-answer={props.name.clone()} data-si={si.clone()}>
            { props.text.clone().unwrap_or_else(|| shared.show(props.value)) }
        </data>
    }
}

/// A figure under its name.
#[derive(Properties, PartialEq)]
pub struct FactProps {
    /// The word key of what it is.
    pub key_: AttrValue,
    /// The figure.
    pub children: Html,
}

/// A name and a figure, for a description list.
#[component]
pub fn Fact(props: &FactProps) -> Html {
    let shared = use_shared();
    html! { <div class="fact"><dt>{ shared.say(&props.key_) }</dt><dd>{ props.children.clone() }</dd></div> }
}
