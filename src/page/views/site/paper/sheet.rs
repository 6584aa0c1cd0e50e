//! What every sheet has: a line that stands on each piece of paper it takes.

use crate::form::site::in_force::{Phase, phase};
use crate::page::keep::today;
use crate::page::shared::Shared;
use crate::site::Standard;
use crate::words::Argument;
use yew::prelude::*;

/// A sheet under its running line: the site, what the sheet is of, the day and the version of the page.
pub fn sheet(shared: &Shared, of: String, content: Html) -> Html {
    let printed = shared.tell(
        "sheet-line",
        &[("date", Argument::text(today::now())), ("version", Argument::text(env!("CARGO_PKG_VERSION")))],
    );
    let site = Some(shared.typed.site.name.trim().to_owned()).filter(|name| !name.is_empty());
    let line: Vec<String> = site.into_iter().chain([of, printed]).collect();
    // Laid out as a table, whose head is printed again on every piece of paper.
    html! {
        <div class="sheet">
            <div class="running"><p>{ line.join(" · ") }</p></div>
            <div class="body">{ content }</div>
        </div>
    }
}

/// The number of a standard and since when it holds.
pub fn edition(shared: &Shared, standard: &Standard) -> String {
    let version = Argument::text(standard.version.max(1).to_string());
    match since(standard) {
        "" => shared.tell("paper-edition", &[("version", version)]),
        date => shared.tell("paper-edition-from", &[("version", version), ("date", Argument::text(date))]),
    }
}

/// The day that it holds from: as it was written, else the day it was published.
pub fn since(standard: &Standard) -> &str {
    let effective = standard.effective.trim();
    if effective.is_empty() { standard.published.trim() } else { effective }
}

/// What nobody goes by says so.
pub fn standing(shared: &Shared, standard: &Standard) -> Html {
    let key = match phase(&shared.typed, standard) {
        Phase::InForce => return Html::default(),
        Phase::Draft => "paper-draft",
        Phase::Waits => "paper-waits",
        Phase::Replaced => "paper-replaced",
    };
    let told = shared.tell(key, &[("day", Argument::text(since(standard)))]);
    html! { <p class="standing"><strong>{ told }</strong></p> }
}

/// Names and what they are, those that are known.
pub fn pairs(all: Vec<(String, Html)>) -> Html {
    html! {
        <dl class="pairs">
            { for all.into_iter().map(|(name, what)| html! { <div><dt>{ name }</dt><dd>{ what }</dd></div> }) }
        </dl>
    }
}
