//! The guide: one step at a time, above the view that it is about.

use super::asked::{asked, told};
use super::lead::{self, Control};
use super::offer::{STEP, number};
use crate::form::fill::{Fill, work};
use crate::page::components::Announcer;
use crate::page::focus;
use crate::page::keep::first_fill::{change, use_first_fill};
use crate::page::log::{Held, now, use_log};
use crate::page::place::Place;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::in_measure;
use crate::page::views::log::fields::press;
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
    let fill = work(&shared.typed, shared.marks());
    let seen = Seen {
        typed: &shared.typed,
        fill: &fill,
        fills: &held.view.fills,
        device: &held.device,
        now: When::read(&now()),
    };
    let at = At { shared, guide: &guide, seen };
    let (step, standing) = (guide.at, at.standing());
    let done = standing == Standing::Done;
    let title = shared.say(&format!("first-fill-{}", step.code()));
    let told = told(&at);
    let state = shared.say(if done { "first-fill-is-done" } else { "first-fill-not-done" });
    let place = shared.tell(
        "first-fill-at",
        &[("n", number(shared, step.place() + 1)), ("of", number(shared, Step::ALL.len()))],
    );
    let heard = [("at", &place), ("title", &title), ("standing", &told)];
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
                <p class="guide-title" id="first-fill-title">{ title }</p>
                <div id={STEP} tabindex="-1">
                    { asked(&at) }
                    <p class={if done { "said" } else { "hint" }}>{ told }</p>
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

/// Leads to a control, on whatever view it is.
fn to(shared: &Shared, step: Step, n: usize, (key, selector): Control) -> Html {
    let own = shared.clone();
    let onclick = move |_: MouseEvent| {
        lead::show(&own, step);
        lead::focus_on(selector);
    };
    let control = ("control", Argument::text(shared.say(key)));
    html! {
        <button type="button" name={format!("first-fill-to-{}", n + 1)} {onclick}>{ shared.tell("first-fill-to", &[control]) }</button>
    }
}

/// Forward, back, and out of it.
fn ways(shared: &Shared, step: Step, done: bool) -> Html {
    let moves = |with: fn(&mut FirstFill, bool)| {
        let own = shared.clone();
        move || {
            let mut to = None;
            change(|guide| {
                with(guide, done);
                to = (guide.stage == Stage::Running).then_some(guide.at);
            });
            if let Some(step) = to {
                lead::show(&own, step);
            }
            focus::soon(STEP.to_owned());
        }
    };
    let leaves = |with: fn(&mut FirstFill)| {
        move || {
            change(with);
            focus::soon("main".to_owned());
        }
    };
    let is_last = step.place() + 1 == Step::ALL.len();
    let next = match (done, is_last) {
        (false, _) => "first-fill-skip",
        (true, true) => "first-fill-finish",
        (true, false) => "first-fill-next",
    };
    let goes_on = moves(FirstFill::next);
    html! {
        <div class="buttons">
            <button type="button" name="first-fill-next" onclick={move |_: MouseEvent| goes_on()}>{ shared.say(next) }</button>
            if step.place() > 0 { { press(shared, "first-fill-back", moves(|guide, _| guide.back())) } }
            { press(shared, "first-fill-pause", leaves(FirstFill::pause)) }
            { press(shared, "first-fill-close", leaves(FirstFill::close)) }
        </div>
    }
}

/// After the last step: what was passed over, and the way back to it.
#[component]
fn Ended(props: &GuideProps) -> Html {
    let (shared, guide) = (&props.shared, use_first_fill());
    let skipped: Vec<Step> = guide.skipped().collect();
    let again = |step: &Step| {
        let (own, step) = (shared.clone(), *step);
        let onclick = move |_: MouseEvent| {
            change(|guide| guide.go_to(step));
            lead::show(&own, step);
            focus::soon(STEP.to_owned());
        };
        let name = format!("first-fill-{}", step.code());
        html! { <button type="button" name={name.clone()} {onclick}>{ shared.say(&name) }</button> }
    };
    let said =
        shared.say(if skipped.is_empty() { "first-fill-ended-all" } else { "first-fill-ended-skipped" });
    let close = || {
        change(FirstFill::close);
        focus::soon("main".to_owned());
    };
    html! {
        <section class="guide" aria-labelledby="first-fill-title" data-guide="ended">
            <div class="guide-step">
                <p class="guide-title" id="first-fill-title">{ shared.say("first-fill-ended") }</p>
                <div id={STEP} tabindex="-1"><p>{ &said }</p></div>
                if !skipped.is_empty() { <div class="buttons">{ for skipped.iter().map(again) }</div> }
                <p class="hint">{ shared.say("first-fill-ended-governs") }</p>
                <div class="buttons">{ press(shared, "first-fill-put-away", close) }</div>
            </div>
            <Announcer text={format!("{} {said}", shared.say("first-fill-ended"))} />
        </section>
    }
}
