//! The views: a question, and its answer.

mod cautions;
pub mod fill;
mod first_fill;
mod flow;
mod log;
mod practice;
mod shift;
mod site;
mod station;
mod why;

pub use cautions::cautions_view;
pub use fill::fill_view;
pub use first_fill::{guide, record_and_offer};
pub use flow::flow_view;
pub use log::log_view;
pub use practice::practice_view;
pub use shift::shift_view;
pub use site::{open_link, site_view};
pub use station::station_view;
pub use why::why;

use super::shared::Shared;
use yew::prelude::*;

/// The frame of a view: the question under its heading, and the answer.
fn frame(shared: &Shared, name: &'static str, question: Html, answer: Html) -> Html {
    let heading = format!("{name}-heading");
    html! {
        <div class={classes!("view", name)}>
            <section class="question" aria-labelledby={heading.clone()}>
                <div class="titled">
                    <h1 id={heading.clone()}>{ shared.say(&heading) }</h1>
                    { (shared.why)(shared, name) }
                </div>
                { question }
            </section>
            <section id="answer" class="answer" tabindex="-1" aria-label={shared.say("answer")}>{ answer }</section>
        </div>
    }
}

/// A table with its caption, which scrolls sideways where the screen is narrow.
fn table(shared: &Shared, caption: &str, columns: &[&str], rows: Vec<Html>) -> Html {
    captioned(shared, shared.say(caption), columns, rows)
}

/// A table of so many rows stays whole on paper.
const SHORT: usize = 12;

/// The same with a caption in words.
fn captioned(shared: &Shared, caption: String, columns: &[&str], rows: Vec<Html>) -> Html {
    html! {
        <div class="scroll" tabindex="0" role="region" aria-label={caption.clone()}>
            <table class={(rows.len() <= SHORT).then_some("short")}>
                <caption><span>{ caption }</span></caption>
                <thead><tr>{ for columns.iter().map(|key| html! { <th scope="col">{ shared.say(key) }</th> }) }</tr></thead>
                <tbody>{ for rows }</tbody>
            </table>
        </div>
    }
}

/// How a setting meets a floor, as a word key.
fn fit_key(fit: crate::trade::setting::Fit) -> &'static str {
    use crate::trade::setting::Fit;
    match fit {
        Fit::Short => "fit-short",
        Fit::Meets => "fit-meets",
        Fit::TooWet => "fit-too-wet",
    }
}
