//! Why a view matters at work: a few plain sentences and a picture, behind a small control beside its heading.

use crate::page::drawing::why_drawing;
use crate::page::shared::Shared;
use yew::prelude::*;

/// What unfolds at the heading of a view. The jobs of the fill station are views of their own here.
pub fn why(shared: &Shared, view: &'static str) -> Html {
    let about = match view {
        "fill" => shared.typed.ask.station.job.code().replace('_', "-"),
        view => view.to_owned(),
    };
    html! {
        <details class="matters" data-why={about.clone()}>
            <summary>{ shared.say("why") }</summary>
            <p>{ shared.say(&format!("why-{about}")) }</p>
            { why_drawing(shared, &about) }
        </details>
    }
}
