//! The records of the site, shelf by shelf.

use crate::page::shared::Shared;
use yew::prelude::*;

/// The library.
pub fn library(_shared: &Shared) -> Html {
    Html::default()
}
