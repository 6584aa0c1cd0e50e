//! A computed figure, with the stable name and the full value that tests and assistive tools read.

use crate::answer::{Answer, Value};
use crate::page::shared::Shared;
use yew::prelude::*;

/// A figure in the reader's units.
pub fn computed(shared: &Shared, name: impl Into<AttrValue>, value: Value) -> Html {
    computed_as(name, value, shared.show(value))
}

/// A figure in words of its own: counted, or in the unit of the measure.
pub fn computed_as(name: impl Into<AttrValue>, value: Value, text: String) -> Html {
    let si = AttrValue::from(value.si.to_string());
    html! { <data value={si.clone()} data-answer={name.into()} data-si={si.clone()}>{ text }</data> }
}

/// Those figures of an answer that it has, each under its name.
pub fn facts(shared: &Shared, answer: &Answer, names: &[&'static str]) -> Html {
    let known = names.iter().filter_map(|name| Some((*name, answer.get(name)?)));
    html! {
        <dl class="facts">
            { for known.map(|(name, value)| html! {
                <div class="fact">
                    <dt>{ shared.say(&format!("figure-{}", name.replace(['.', '_'], "-"))) }</dt>
                    <dd>{ computed(shared, name, value) }</dd>
                </div>
            }) }
        </dl>
    }
}
