//! Log: what was filled, by whom and how; corrected, asked, saved and taken over.

mod asked;
pub(super) mod fields;
mod form;
mod head;
mod history;
mod initials;
mod keep;
mod list;
mod paper;
mod record;
mod seek;
mod shift;
mod told;
pub(super) mod waiting;

use super::frame;
use crate::form::log::{Draft, Part, choices};
use crate::page::keep::log_draft::{self, use_draft};
use crate::page::keep::today;
use crate::page::log::{Held, Stage, use_log};
use crate::page::shared::Shared;
use crate::site::log::{Current, When};
use crate::trade::calendar::Date;
use std::rc::Rc;
use std::sync::Arc;
use yew::prelude::*;

/// What a table of fills says of each, on the screen and on paper: when, and what [`cells`] draws.
const COLUMNS: [&str; 6] = [
    "log-column-when",
    "log-column-product",
    "log-column-planned",
    "log-column-measured",
    "log-column-machine",
    "log-column-who",
];

/// All cells of a fill but the first, which heads its row.
///
/// * `under`: what stands under the planned amount, too.
fn cells(one: &Current, under: Html) -> Html {
    let fill = &one.fill;
    let mut under = Some(under);
    let cell = |(at, text): (usize, &Arc<str>)| {
        let under = (at == 1).then(|| under.take()).flatten();
        html! { <td>{ &**text }{ for under }</td> }
    };
    let texts =
        [&fill.product.name, &fill.concentrate.text, &fill.measured.text, &fill.machine.name, &one.who];
    texts.into_iter().enumerate().map(cell).collect()
}

/// What a part with a state of its own needs.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What every part needs.
    pub shared: Shared,
}

/// The view.
pub fn log_view(shared: &Shared) -> Html {
    html! { <Log shared={shared.clone()} /> }
}

/// What stands below Fill's answer.
pub fn record_part(shared: &Shared) -> Html {
    html! { <record::Recording shared={shared.clone()} /> }
}

/// Today by the device's clock.
fn day() -> Option<Date> {
    Date::read(&today::now())
}

/// Now by the device's clock.
fn now() -> Option<When> {
    When::read(&crate::page::log::now())
}

/// What all parts of the view draw from.
#[derive(Clone, PartialEq)]
struct Seen {
    shared: Shared,
    held: Rc<Held>,
    draft: Rc<Draft>,
}

#[component]
fn Log(props: &Props) -> Html {
    let (held, draft) = (use_log(), use_draft());
    let found = use_memo(ByAddress(held.view.clone()), |view| choices(&view.0.fills));
    let places = use_memo((ByAddress(held.view.clone()), draft.sought.clone()), |(view, sought)| {
        Rc::new(sought.places(&view.0.fills))
    });
    let seen = Seen { shared: props.shared.clone(), held, draft };
    let shared = &seen.shared;
    let content = match seen.draft.part {
        _ if !matches!(seen.held.stage, Stage::Open) => Html::default(),
        Part::Fills => html! {
            <>
                { shift::left(&seen) }
                { form::forms(&seen) }
                { seek::seek(&seen, &found, places.len()) }
                <list::List seen={seen.clone()} places={(*places).clone()} />
                { paper::month(&seen) }
            </>
        },
        Part::Shift => shift::shift(&seen),
        Part::Questions => html! { <>{ seek::seek(&seen, &found, places.len()) }{ asked::asked(&seen) }</> },
        Part::Keep => html! { <keep::Keep seen={seen.clone()} /> },
    };
    let question =
        html! { <>{ head::head(&seen) }{ waiting::waiting(shared, &seen.held) }{ parts(&seen) }</> };
    frame(shared, "log", question, html! { <div class="wide-part">{ content }</div> })
}

/// Two views are the same where they are the same place in memory: nobody compares a hundred thousand fills.
struct ByAddress(Rc<crate::site::log::View>);

impl PartialEq for ByAddress {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

fn parts(seen: &Seen) -> Html {
    let part = |one: &Part| {
        let (one, pressed) = (*one, *one == seen.draft.part);
        let onclick = move |_: MouseEvent| log_draft::change(|draft| draft.part = one);
        html! {
            <button type="button" name={format!("log-{}", one.code())} aria-pressed={pressed.to_string()} {onclick}>
                { seen.shared.say(&format!("log-{}", one.code())) }
            </button>
        }
    };
    html! {
        <div class="levels jobs" role="group" aria-label={seen.shared.say("log-parts")}>
            { for Part::ALL.iter().map(part) }
        </div>
    }
}
