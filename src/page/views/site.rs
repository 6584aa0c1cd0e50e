//! Site: what the site keeps, the standards that it goes by, and how they reach every fill station.

mod device;
mod finish;
mod library;
mod link;
mod paper;
mod passing;
mod records;
mod standards;

pub use link::open_link;
pub use paper::{no_way_here, outer_address, sheet};
pub use passing::refusal;

use super::frame;
use crate::form::Action;
use crate::form::site::{Act, Part};
use crate::page::components::button;
use crate::page::keep::keys::{self, Pinned};
use crate::page::shared::Shared;
use yew::prelude::*;

/// The view.
pub fn site_view(shared: &Shared) -> Html {
    if shared.locked {
        // What a pinned device takes is signed; any other would let an operator change the records.
        let taking = if keys::pinned() == Pinned::No { Html::default() } else { passing::taking(shared) };
        return frame(shared, "site", html! { <device::Device shared={shared.clone()} /> }, taking);
    }
    let (question, answer) = match shared.typed.ask.site.part {
        Part::Library => (library::list(shared), records::record(shared)),
        Part::Standards => (standards::writing(shared), standards::checked(shared)),
        Part::Device => (html! { <device::Device shared={shared.clone()} /> }, Html::default()),
        Part::Paper => (Html::default(), wide(paper::paper(shared))),
        Part::Passing => (passing::giving(shared), passing::taking(shared)),
        Part::Finish => (Html::default(), wide(finish::finish_steps(shared))),
    };
    frame(shared, "site", html! { <>{ parts(shared) }{ question }</> }, answer)
}

/// What takes the whole width: there is no question beside it.
fn wide(content: Html) -> Html {
    html! { <div class="wide-part">{ content }</div> }
}

/// What can be done here, and the way back from the last step.
fn parts(shared: &Shared) -> Html {
    let part = |one: &Part| {
        let (one, pressed) = (*one, *one == shared.typed.ask.site.part);
        html! {
            <button type="button" name={format!("site-{}", one.code())} aria-pressed={pressed.to_string()}
                onclick={shared.on(move |_: MouseEvent| Act::Part(one).action())}>
                { shared.say(&format!("site-{}", one.code())) }
            </button>
        }
    };
    let back = shared.before.clone().map(|before| {
        button(shared, "site-undo", shared.say("site-undo"), move || {
            Action::Replace(Box::new((*before).clone()))
        })
    });
    html! {
        <>
            <div class="levels jobs" role="group" aria-label={shared.say("site-parts")}>{ for Part::ALL.iter().map(part) }</div>
            if let Some(back) = back { <div class="buttons">{ back }</div> }
        </>
    }
}
