//! Site on paper: the wall chart of a standard, its sheet, its labels, and the sheet of a trial.

mod chart;
mod code;
mod facts;
mod labels;
mod pieces;
mod sheet;
mod standard;
mod trial;

pub use code::{address as outer_address, no_way_here};
pub use sheet::sheet;

use crate::form::Action;
use crate::form::action::{Line, Shelf};
use crate::page::components::{Choice, Text, choice, named, print_part, text_field};
use crate::page::shared::Shared;
use crate::site::address;
use yew::prelude::*;

/// All that can be printed, each part with a button that prints it alone.
pub fn paper(shared: &Shared) -> Html {
    let (standard, trial) = (shared.typed.standard(), shared.typed.trial());
    html! {
        <section class="papers" aria-labelledby="papers">
            <h2 id="papers">{ shared.say("paper-heading") }</h2>
            { text_field(shared, outside(shared)) }
            if let Some(standard) = standard {
                <div class="fields">
                    { choose(shared, "paper-standard", Shelf::Standard) }
                    { choose(shared, "paper-measure", Shelf::Measure) }
                    { choose(shared, "paper-machine", Shelf::Machine) }
                </div>
                { part(shared, "chart", "chart-print", "paper-chart", code::no_way_here(shared), || chart::chart(shared, standard)) }
                { part(shared, "standard", "standard-print", "paper-sheet", None, || standard::sheet_of(shared, standard)) }
                { part(shared, "labels", "labels-print", "paper-labels", None, || labels::labels(shared, standard)) }
            } else {
                <p>{ shared.say("paper-no-standard") }</p>
            }
            if let Some(trial) = trial {
                { choose(shared, "paper-trial", Shelf::Trial) }
                { part(shared, "trial", "trial-print", "paper-patches", None, || trial::sheet(shared, trial)) }
            } else {
                <p>{ shared.say("paper-no-trial") }</p>
            }
        </section>
    }
}

/// Which record a sheet is about.
fn choose(shared: &Shared, name: &'static str, shelf: Shelf) -> Html {
    let list = Choice {
        name: name.into(),
        label: shared.say(name),
        options: named(shared, shelf),
        chosen: shelf.chosen(&shared.typed).unwrap_or_default().to_owned(),
        hint: None,
    };
    choice(shared, list, move |id| Action::Pick(shelf, id))
}

/// The address that codes begin with.
fn outside(shared: &Shared) -> Text {
    let typed = &shared.typed.site.address;
    let mistake = (!typed.trim().is_empty()).then(|| address::read(typed).err()).flatten();
    Text {
        line: Line::Address,
        name: "site-address".to_owned(),
        key: "site-address",
        value: typed.clone(),
        tall: false,
        mistake: mistake.map(|mistake| code::wrong(shared, mistake)),
    }
}

/// A sheet that unfolds on demand, and the button that prints it; `lacks` is what the paper will not have.
fn part(
    shared: &Shared,
    part: &'static str,
    button: &'static str,
    title: &str,
    lacks: Option<String>,
    content: impl Fn() -> Html,
) -> Html {
    html! {
        <details class="more">
            <summary>{ shared.say(title) }</summary>
            <div class="buttons">{ print_part(shared, button, part) }</div>
            if let Some(lacks) = lacks { <p class="unknown" data-lacks={part}>{ lacks }</p> }
            <div data-part={part}>{ content() }</div>
        </details>
    }
}
