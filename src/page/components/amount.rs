//! The amount: the largest thing on a view.

use super::{Announcer, Computed};
use crate::answer::Value;
use crate::page::shared::use_shared;
use yew::prelude::*;

/// The amount and what stands under it.
#[derive(Properties, PartialEq)]
pub struct AmountProps {
    /// The stable name.
    pub name: AttrValue,
    /// The figure.
    pub value: Value,
    /// Its text, where it is not the value in the reader's units.
    #[prop_or_default]
    pub text: Option<String>,
    /// What the amount is, in a few words above it.
    pub title: String,
    /// The sentence that says what to do with it, announced when it has come to rest.
    pub sentence: String,
    /// The same in other units.
    #[prop_or_default]
    pub children: Html,
}

/// The amount.
#[component]
pub fn Amount(props: &AmountProps) -> Html {
    let shared = use_shared();
    let text = props.text.clone().unwrap_or_else(|| shared.show(props.value));
    html! {
        <div class="amount">
            <p class="amount-title">{ &props.title }</p>
            <p class="amount-figure"><Computed name={props.name.clone()} value={props.value} text={text} /></p>
            <p class="amount-other">{ props.children.clone() }</p>
            <p class="amount-sentence">{ &props.sentence }</p>
            <Announcer text={props.sentence.clone()} />
        </div>
    }
}
