//! What every sheet has: a line that stands on each piece of paper it takes.

use crate::form::site::in_force::{Phase, next, phase};
use crate::page::keep::today;
use crate::page::language::unchecked;
use crate::page::shared::Shared;
use crate::site::Standard;
use crate::words::Argument;
use yew::prelude::*;

/// A sheet under its running line: the site, what the sheet is of, the day and the version of the page.
pub fn sheet(shared: &Shared, of: String, content: Html) -> Html {
    let printed = shared.tell(
        "sheet-line",
        &[("date", shared.day(&today::now())), ("version", Argument::text(env!("CARGO_PKG_VERSION")))],
    );
    let site = Some(shared.typed.site.name.trim().to_owned()).filter(|name| !name.is_empty());
    // On a wall nobody sees the head of the page.
    let unchecked = unchecked(&shared.words).into_iter().flatten();
    let line: Vec<String> = site.into_iter().chain([of, printed]).chain(unchecked).collect();
    // Laid out as a table, whose head is printed again on every piece of paper.
    html! {
        <div class="sheet">
            <div class="running"><p>{ line.join(" · ") }</p></div>
            <div class="body">{ content }</div>
        </div>
    }
}

/// The number of a standard, since when it holds and, where that is known, until when.
pub fn edition(shared: &Shared, standard: &Standard) -> String {
    let version = Argument::text(standard.version.max(1).to_string());
    let edition = match since(standard) {
        "" => shared.tell("paper-edition", &[("version", version)]),
        date => shared.tell("paper-edition-from", &[("version", version), ("date", shared.day(date))]),
    };
    match next(&shared.typed, standard) {
        None => edition,
        Some(next) => {
            let until = [("edition", Argument::text(edition)), ("date", shared.day(since(next)))];
            shared.tell("paper-edition-until", &until)
        }
    }
}

/// The day that it holds from: as it was written, else the day it was published.
pub fn since(standard: &Standard) -> &str {
    let effective = standard.effective.trim();
    if effective.is_empty() { standard.published.trim() } else { effective }
}

/// What nobody goes by says so, and so does what another one will take the place of.
pub fn standing(shared: &Shared, standard: &Standard) -> Html {
    let key = match phase(&shared.typed, standard) {
        Phase::InForce => None,
        Phase::Draft => Some("paper-draft"),
        Phase::Waits => Some("paper-waits"),
        Phase::Replaced => Some("paper-replaced"),
    };
    let told = key.map(|key| shared.tell(key, &[("day", shared.day(since(standard)))]));
    let until = next(&shared.typed, standard).map(|next| {
        let version = Argument::text(next.version.max(1).to_string());
        shared.tell("paper-until", &[("day", shared.day(since(next))), ("version", version)])
    });
    let lines = told.into_iter().chain(until);
    html! { { for lines.map(|line| html! { <p class="standing"><strong>{ line }</strong></p> }) } }
}

/// Names and what they are, those that are known.
pub fn pairs(all: Vec<(String, Html)>) -> Html {
    html! {
        <dl class="pairs">
            { for all.into_iter().map(|(name, what)| html! { <div><dt>{ name }</dt><dd>{ what }</dd></div> }) }
        </dl>
    }
}
