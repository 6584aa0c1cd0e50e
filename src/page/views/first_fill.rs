//! A first fill, step by step, on the page as it stands: the guide above each view, and where it is offered.

mod asked;
mod ended;
mod lead;
mod offer;
mod panel;
mod ways;

pub use offer::Offer;

use super::log::record_part;
use crate::page::place::Place;
use crate::page::shared::Shared;
use yew::prelude::*;

/// What a part with a state of its own needs.
#[derive(Clone, PartialEq, Properties)]
pub struct Props {
    /// What every part needs.
    pub shared: Shared,
}

/// Above each view, while a step is shown.
pub fn guide(shared: &Shared, place: Place) -> Html {
    html! { <panel::Guide shared={shared.clone()} {place} /> }
}

/// What stands below Fill's answer: the record, and the quiet offer for who sees the demo.
pub fn record_and_offer(shared: &Shared) -> Html {
    html! { <>{ record_part(shared) }<offer::Link shared={shared.clone()} /></> }
}
