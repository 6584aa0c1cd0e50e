//! The amount: the largest thing on a view.

use super::{Announcer, computed_as};
use crate::answer::Value;
use yew::prelude::*;

/// The amount and what stands around it.
pub struct Amount {
    /// The stable name.
    pub name: &'static str,
    /// The figure.
    pub value: Value,
    /// Its text: in the measure on the wall, or counted.
    pub text: String,
    /// What the amount is, in a few words above it.
    pub title: String,
    /// The sentence that says what to do with it, announced when it has come to rest.
    pub sentence: String,
    /// The same in other units.
    pub others: Html,
}

/// The amount.
pub fn amount(amount: Amount) -> Html {
    let Amount { name, value, text, title, sentence, others } = amount;
    html! {
        <div class="amount">
            <p class="amount-title">{ title }</p>
            <p class={classes!("amount-figure", (text.chars().count() > 8).then_some("long"))}>{ computed_as(name, value, text) }</p>
            <p class="amount-other">{ others }</p>
            <p class="amount-sentence">{ &sentence }</p>
            <Announcer text={sentence} />
        </div>
    }
}
