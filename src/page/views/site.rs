//! Site: what the site keeps, the standards that it goes by, and how they reach every fill station.

mod finish;
mod library;

use super::frame;
use crate::page::shared::Shared;
use yew::prelude::*;

/// The view.
pub fn site_view(shared: &Shared) -> Html {
    frame(shared, "site", library::library(shared), finish::finish_steps(shared))
}
