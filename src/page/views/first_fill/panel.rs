//! The guide: one step at a time, above the view that it is about.

use super::asked::{asked, told, warned};
use super::ended::Ended;
use super::lead;
use super::offer::{STEP, number};
use super::ways::{to, ways};
use crate::form::fill::Fill;
use crate::page::asked;
use crate::page::components::Announcer;
use crate::page::focus;
use crate::page::keep::first_fill::use_first_fill;
use crate::page::log::{Held, now, use_log};
use crate::page::place::Place;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::in_measure;
use crate::practice::first_fill::{FirstFill, Seen, Stage, Standing, Step};
use crate::site::log::When;
use crate::words::Argument;
use gloo::events::EventListener;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::Element;
use yew::prelude::*;

/// What the guide needs.
#[derive(Clone, PartialEq, Properties)]
pub struct GuideProps {
    /// What every part needs.
    pub shared: Shared,
    /// The view that is open.
    pub place: Place,
}

/// The guide; blank while nobody is guided.
#[component]
pub fn Guide(props: &GuideProps) -> Html {
    match use_first_fill().stage {
        Stage::Running => html! { <Running ..props.clone() /> },
        Stage::Ended => html! { <Ended ..props.clone() /> },
        Stage::Idle | Stage::Paused | Stage::Closed => Html::default(),
    }
}

/// Escape leads back to the step, from any place outside the guide.
#[hook]
fn use_way_back() {
    use_effect_with((), |()| {
        let window = gloo::utils::window();
        let listener = EventListener::new(&window, "keydown", |event| {
            let Some(event) = event.dyn_ref::<KeyboardEvent>().filter(|event| event.key() == "Escape") else {
                return;
            };
            let element = event.target().and_then(|target| target.dyn_into::<Element>().ok());
            let inside = element.is_some_and(|one| one.closest(".guide").ok().flatten().is_some());
            if !inside {
                focus::on(STEP);
            }
        });
        move || drop(listener)
    });
}

/// What a step draws from.
pub struct At<'a> {
    /// What every part needs.
    pub shared: &'a Shared,
    /// Where the person is.
    pub guide: &'a FirstFill,
    /// What the page shows.
    pub seen: Seen<'a>,
}

impl At<'_> {
    /// The amount as Fill shows it.
    pub fn amount(&self) -> String {
        let fill: &Fill = self.seen.fill;
        fill.headline().map(|(_, value)| in_measure(self.shared, fill, value)).unwrap_or_default()
    }

    /// How far the step is.
    pub fn standing(&self) -> Standing {
        self.guide.standing(self.guide.at, &self.seen)
    }
}

#[component]
fn Running(props: &GuideProps) -> Html {
    use_way_back();
    let (shared, guide, held): (_, _, Rc<Held>) = (&props.shared, use_first_fill(), use_log());
    let fill = asked::fill(shared);
    let seen = Seen {
        typed: &shared.typed,
        fill: &fill,
        fills: &held.view.fills,
        device: &held.device,
        now: When::read(&now()),
    };
    let at = At { shared, guide: &guide, seen };
    let (step, standing) = (guide.at, at.standing());
    let done = standing.is_done();
    let title = shared.say(&format!("first-fill-{}", step.code()));
    let (told, warned) = (told(&at), warned(&at));
    let state = shared.say(match standing {
        Standing::Done => "first-fill-is-done",
        Standing::Warned => "first-fill-is-warned",
        _ => "first-fill-not-done",
    });
    let place = shared.tell(
        "first-fill-at",
        &[("n", number(shared, step.place() + 1)), ("of", number(shared, Step::ALL.len()))],
    );
    let standing_heard = if warned.is_empty() { told.clone() } else { format!("{told} {warned}") };
    let heard = [("at", &place), ("title", &title), ("standing", &standing_heard)];
    let heard = shared.tell("first-fill-told", &heard.map(|(name, text)| (name, Argument::text(&**text))));
    let back = {
        let own = shared.clone();
        move |event: MouseEvent| {
            event.prevent_default();
            lead::show(&own, step);
            focus::on(STEP);
        }
    };
    html! {
        <section class="guide" aria-labelledby="first-fill-title" data-guide={step.code()} data-standing={standing.code()}>
            <a class="guide-bar" href={format!("#{}", lead::place(step).code())} onclick={back}>
                <span>{ place }</span>{ " " }<span>{ state }</span>
            </a>
            <div class="guide-step">
                <div id={STEP} tabindex="-1">
                    <p class="guide-title" id="first-fill-title">{ title }</p>
                    { asked(&at) }
                    <p class={if standing == Standing::Done { "said" } else { "hint" }}>{ told }</p>
                    if !warned.is_empty() { <p class="unknown">{ warned }</p> }
                </div>
                <div class="buttons">
                    { for lead::controls(step, shared.locked).iter().enumerate().map(|(n, control)| to(shared, step, n, *control)) }
                </div>
                { ways(shared, step, done) }
                <p class="hint">{ shared.say("first-fill-escape") }</p>
            </div>
            <Announcer text={heard} />
        </section>
    }
}
