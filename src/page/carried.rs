//! A fill that a link brought: shown at once on a device that holds nothing yet, asked about on any other.

use super::keep::{store, today};
use super::shared::Shared;
use super::views::open_link;
use crate::form::site::carried::outdated;
use crate::form::site::in_force::choosing;
use crate::form::{Action, Typed};
use crate::words::Argument;
use gloo::events::EventListener;
use gloo::timers::callback::Interval;
use std::rc::Rc;
use yew::prelude::*;

/// Milliseconds between two looks at the clock: a device at a fill station is on through the night, and a new day may
/// have another standard while nobody does anything.
const EACH: u32 = 60_000;

/// How the fragment of such a link begins.
const MARK: &str = "#fill=";

/// What a link brought.
#[derive(Clone, PartialEq)]
enum Brought {
    /// Nothing, or it was taken or left.
    Nothing,
    /// A fill that waits.
    Fill(Rc<Typed>),
    /// Something that this device does not take, by the word key of why.
    Refused(&'static str),
}

/// What this part needs.
#[derive(Properties, PartialEq)]
struct Props {
    shared: Shared,
    /// Whether the device held nothing when the page was opened.
    first_visit: bool,
}

/// Whether there is something for this part to do: it is loaded with the rest of the page.
pub fn is_wanted() -> bool {
    brings() || store::has_own()
}

/// Whether the address brings a fill that is not read yet.
pub fn brings() -> bool {
    fragment().is_some()
}

/// Takes what a link brings, or asks; and the way back to the device’s own site.
pub fn carried(shared: &Shared, first_visit: bool) -> Html {
    html! { <Carried shared={shared.clone()} {first_visit} /> }
}

fn fragment() -> Option<String> {
    let hash = gloo::utils::window().location().hash().ok()?;
    hash.strip_prefix(MARK).map(str::to_owned)
}

/// Whether nothing but the demo is there, whatever the day.
fn is_untouched(typed: &Typed) -> bool {
    let mut demo = Typed::default();
    demo.ask.today.clone_from(&typed.ask.today);
    *typed == demo
}

/// An address that says what is open, and does not bring the fill once more when the page is loaded again.
fn settle() {
    // Where the address cannot be set it brings the same fill again, which is asked about.
    let _ = gloo::utils::window().location().replace("#fill");
}

/// The warning that the device's own site has a later version of what a link carries.
fn late(shared: &Shared, own: &Typed, carried: &Typed) -> Html {
    let Some(standard) = outdated(own, carried, &shared.typed.ask.today) else { return Html::default() };
    let version = ("version", Argument::text(standard.version.max(1).to_string()));
    let told = match standard.first_day() {
        Some(day) => shared.tell("link-outdated", &[version, ("day", shared.day(&day.to_string()))]),
        None => shared.tell("link-outdated-undated", &[version]),
    };
    html! { <><strong class="unknown" role="alert" data-link="link-outdated">{ told }</strong>{ " " }</> }
}

#[component]
fn Carried(props: &Props) -> Html {
    let shared = &props.shared;
    let brought = use_state(|| Brought::Nothing);
    let again = use_force_update();
    let own = store::has_own();
    // What waits aside, where a link is shown in its place.
    let aside = use_memo(own, |own| own.then(store::own).flatten());
    let here = (*aside).as_ref().unwrap_or(&shared.typed);
    let latest = use_mut_ref(|| shared.typed.clone());
    latest.borrow_mut().clone_from(&shared.typed);
    {
        let (brought, act, first_visit) = (brought.clone(), shared.act.clone(), props.first_visit);
        let locked = shared.locked;
        use_effect_with((), move |()| {
            let opened = move || {
                let Some(link) = fragment() else { return };
                match open_link(&link) {
                    // A device that holds nothing but the demo loses nothing.
                    Ok(typed) if first_visit && is_untouched(&latest.borrow()) => {
                        act.emit(Action::Replace(Box::new(typed)));
                        settle();
                    }
                    Ok(typed) => match choosing(&latest.borrow(), &typed) {
                        // The code on the wall chooses what this device goes by anyway.
                        Some(picks) if locked => {
                            for pick in picks {
                                act.emit(pick);
                            }
                            settle();
                        }
                        _ => brought.set(Brought::Fill(Rc::new(typed))),
                    },
                    Err(key) => brought.set(Brought::Refused(key)),
                }
            };
            opened();
            let listener = EventListener::new(&gloo::utils::window(), "hashchange", move |_| opened());
            move || drop(listener)
        });
    }
    {
        let act = shared.act.clone();
        use_effect_with((), move |()| {
            let ticking = Interval::new(EACH, move || act.emit(Action::Today(today::now())));
            move || drop(ticking)
        });
    }
    let leave = {
        let brought = brought.clone();
        move |_: MouseEvent| {
            brought.set(Brought::Nothing);
            settle();
        }
    };
    let back = {
        let (act, again) = (shared.act.clone(), again.clone());
        move |_: MouseEvent| {
            if let Some(typed) = store::take_own() {
                act.emit(Action::Replace(Box::new(typed)));
            }
            again.force_update();
        }
    };
    let asked = match &*brought {
        Brought::Nothing => Html::default(),
        Brought::Refused(key) => html! {
            <p role="alert" data-link={*key}>
                { shared.say("link-refused") }{ " " }{ shared.say(key) }{ " " }
                <button type="button" name="link-leave" onclick={leave.clone()}>{ shared.say("link-leave") }</button>
            </p>
        },
        Brought::Fill(typed) => {
            let take = {
                let (shared, typed, brought) = (shared.clone(), typed.clone(), brought.clone());
                move |_: MouseEvent| {
                    if !shared.put_aside_for(Action::Replace(Box::new((*typed).clone()))) {
                        return;
                    }
                    brought.set(Brought::Nothing);
                    settle();
                }
            };
            html! {
                <p>
                    { late(shared, here, typed) }
                    { shared.say("link-asks") }{ " " }<strong>{ &typed.site.name }</strong>{ " " }
                    if shared.locked { { shared.say("link-locked") } } else {
                        <button type="button" name="link-take" onclick={take}>{ shared.say("link-take") }</button>{ " " }
                    }
                    <button type="button" name="link-leave" onclick={leave.clone()}>{ shared.say("link-leave") }</button>
                </p>
            }
        }
    };
    html! {
        <>
            { asked }
            if own && !shared.locked {
                <p>
                    { late(shared, here, &shared.typed) }
                    { shared.say("link-shown") }{ " " }
                    <button type="button" name="link-back" onclick={back}>{ shared.say("link-back") }</button>
                </p>
            }
        </>
    }
}
