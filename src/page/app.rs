//! The frame around the views: which one is open, what was typed, what the browser keeps.

use super::carried;
use super::components::{Text, open_saved, pick, text_field};
use super::focus;
use super::keep::store::Found;
use super::keep::{behind_frame, download, first_fill, lock, today, update};
use super::language::{Tongue, unchecked, use_tongue, use_words};
use super::place::{self, Place, use_place};
use super::rest::{Loaded, use_rest};
use super::shared::Shared;
use super::state::{self, State};
use super::views::fill_view;
use crate::form::action::Line;
use crate::form::station::Job;
use crate::form::{Action, Typed};
use crate::site::demo;
use crate::words::{Argument, Words};
use gloo::timers::callback::Timeout;
use std::rc::Rc;
use yew::prelude::*;

/// What the page opens with.
#[derive(Properties)]
pub struct Opening {
    /// What the device kept.
    pub found: Rc<Found>,
    /// What is typed at first.
    pub typed: Rc<Typed>,
    /// What it is said with at first.
    pub words: Rc<Words>,
}

/// The page opens once.
impl PartialEq for Opening {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.typed, &other.typed)
    }
}

/// The page.
#[component]
pub fn App(Opening { found, typed, words: first }: &Opening) -> Html {
    let drawn = use_frame_first();
    let state = state::use_typed(typed);
    let place = use_place();
    let kept = use_memo((), |()| (lock::held().is_some(), first_fill::is_kept()));
    let (locked, guided) = *kept;
    // Below the record the demo offers the guide, unless somebody has begun one or put it away.
    let offering = use_memo((), |()| (!guided).then(|| demo().name));
    let place = if locked && !place.is_asking() { Place::Fill } else { place };
    let fill = place == Place::Fill && state.now.typed.ask.station.job == Job::Fill;
    let linked = carried::is_wanted();
    // What a device set to its standards shows is worked out by the rest.
    let rest = use_rest(!fill || linked || locked || guided);
    let record = |shared: &Shared| {
        recorder(shared, rest, offering.as_deref() == Some(shared.typed.site.name.as_str()))
    };
    let tongue = use_tongue();
    let words = use_words(tongue, rest, first);
    let newer = update::use_waiting();
    let today = today::use_today();
    let dispatcher = state.now.dispatcher();
    let act = use_callback((), move |action: Action, ()| {
        if !locked || action.is_asking() {
            if matches!(action, Action::Write(..) | Action::Text(..)) {
                behind_frame::hold();
            }
            dispatcher.dispatch(action);
        }
    });
    let (typed, before) = (state.now.typed.clone(), state.now.before().cloned());
    let why = match rest {
        Loaded::Here(rest) => rest.why,
        Loaded::Waiting | Loaded::Failed => |_: &Shared, _: &'static str| Html::default(),
    };
    let meant = match rest {
        Loaded::Here(rest) => rest.meant,
        // It is in the label's own words meanwhile.
        Loaded::Waiting | Loaded::Failed => |_: &Shared, text: &str| text.to_owned(),
    };
    let shared =
        Shared { typed, before, words, limits: false, locked, lacking: Rc::default(), why, meant, act };
    let shared = match rest {
        Loaded::Here(rest) if locked => (rest.held)(shared),
        _ => shared,
    };
    let line = use_memo((Rc::as_ptr(&shared.words), today), |(_, today)| sheet_line(&shared, today));
    let line = (*line).clone();

    if !drawn {
        return html! { { top(&shared, place, tongue) } };
    }
    html! {
        <>
            { top(&shared, place, tongue) }
            <p class="sheet-line">{ line }</p>
            <div class="notices" role="status">
                { match rest {
                    Loaded::Here(rest) => html! {
                        <>
                            { (rest.carried)(&shared, **found == Found::Nothing) }
                            { (rest.aside)(&shared, state.behind, &state.look) }
                        </>
                    },
                    Loaded::Failed if linked => html! { <p role="alert">{ shared.say("view-failed") }</p> },
                    Loaded::Waiting | Loaded::Failed => Html::default(),
                } }
                { for notices(&shared, tongue, &state, newer, found) }
            </div>
            if let Loaded::Here(rest) = rest { { (rest.guide)(&shared, place) } }
            <main id="main" tabindex="-1">
                { match rest {
                    Loaded::Here(_) if locked && shared.typed.site.floors.is_empty() && !matches!(place, Place::Site | Place::Log | Place::Practice) => {
                        html! { <p role="status">{ shared.say("locked-empty") }</p> }
                    }
                    // The demo's dose is not the one that the link carries.
                    Loaded::Waiting if carried::brings() => html! { <p role="status">{ shared.say("view-loading") }</p> },
                    _ if fill && !locked => fill_view(&shared, record(&shared)),
                    Loaded::Here(rest) => match place {
                        Place::Fill if fill => fill_view(&shared, record(&shared)),
                        Place::Fill => (rest.station)(&shared),
                        Place::Flow => (rest.flow)(&shared),
                        Place::Shift => (rest.shift)(&shared),
                        Place::Cautions => (rest.cautions)(&shared),
                        Place::Log => (rest.log)(&shared),
                        Place::Site => (rest.site)(&shared),
                        Place::Practice => (rest.practice)(&shared),
                    },
                    Loaded::Waiting => html! { <p role="status">{ shared.say("view-loading") }</p> },
                    Loaded::Failed => html! { <p role="alert">{ shared.say("view-failed") }</p> },
                } }
            </main>
            <footer>
                <p>{ shared.say("privacy") }</p>
                <p class="defer">{ shared.say("caution-defer") }</p>
                if place::is_file() { <p data-part="from-file">{ shared.say("from-file") }</p> }
                if !locked {
                    { text_field(&shared, site_name(&shared)) }
                    { open_saved(&shared) }
                }
                <div class="buttons">
                    { start_again(&shared) }
                </div>
            </footer>
        </>
    }
}

/// Whether the frame stands; the view is drawn in a task of its own.
#[hook]
fn use_frame_first() -> bool {
    let drawn = use_state_eq(|| false);
    {
        let drawn = drawn.clone();
        use_effect_with((), move |()| drop(Timeout::new(0, move || drawn.set(true)).forget()));
    }
    *drawn
}

/// What writes the fill down; until it is loaded its place, as high as it will be, with what it waits for, and the place
/// of what `offers` the guide.
fn recorder(shared: &Shared, rest: Loaded, offers: bool) -> Html {
    let key = match rest {
        Loaded::Here(rest) => return (rest.record)(shared),
        Loaded::Waiting => "record-loading",
        Loaded::Failed => "view-failed",
    };
    html! {
        <>
            <section class="recording waits"><p>{ shared.say(key) }</p></section>
            if offers { <p class="first-fill-link" /> }
        </>
    }
}

fn top(shared: &Shared, place: Place, tongue: Tongue) -> Html {
    let skip = |event: MouseEvent| {
        event.prevent_default();
        focus::on("main");
    };
    html! {
        <>
            <a class="skip" href="#main" onclick={skip}>{ shared.say("skip") }</a>
            <header class="top">
                <p class="name">{ shared.say("name") }<span class="site">{ &shared.typed.site.name }</span></p>
                <nav aria-label={shared.say("views")}>
                    { for Place::ALL.into_iter().filter(|one| !shared.locked || one.is_asking()).map(|one| html! {
                        <a href={format!("#{}", one.code())} aria-current={(one == place).then_some("page")}>
                            { shared.say(&format!("view-{}", one.code())) }
                        </a>
                    }) }
                </nav>
                <div class="choices">
                    { tongue.picker(shared) }
                    { pick(shared, "units", "units", shared.system(), Action::System) }
                </div>
                if let Some([own, english]) = unchecked(&shared.words) {
                    <p class="hint" data-part="unchecked">{ own }{ " " }<span lang="en">{ english }</span></p>
                }
            </header>
        </>
    }
}

fn site_name(shared: &Shared) -> Text {
    Text {
        line: Line::SiteName,
        name: "site-name".to_owned(),
        key: "site-name",
        value: shared.typed.site.name.clone(),
        tall: false,
        mistake: None,
    }
}

/// What stands on every sheet of paper: the site, the date and the version.
fn sheet_line(shared: &Shared, today: &str) -> String {
    let version = Argument::text(env!("CARGO_PKG_VERSION"));
    shared.tell("sheet-line", &[("date", shared.day(today)), ("version", version)])
}

/// The demo in the place of the site, which is put aside and survives a reload.
fn start_again(shared: &Shared) -> Html {
    if shared.locked {
        return Html::default();
    }
    let own = shared.clone();
    let onclick = move |_: MouseEvent| {
        own.put_aside_for(Action::Replace(Box::default()));
    };
    html! { <button type="button" name="demo" {onclick}>{ shared.say("demo-back") }</button> }
}

/// What happened that the reader should know, with what can be done about it.
fn notices(shared: &Shared, tongue: Tongue, state: &State, newer: bool, found: &Found) -> Vec<Html> {
    let mut all = Vec::new();
    if let Some((news, again)) = tongue.news(shared) {
        // Heard by what loads languages.
        let act = again.then(|| ("language-again", "language-again", Callback::noop()));
        all.push(notice(shared, news, act));
    }
    if newer {
        let accept = Callback::from(|_| update::accept());
        all.push(notice(shared, shared.say("update-ready"), Some(("update", "update-use", accept))));
    }
    if !state.kept {
        all.push(notice(shared, shared.say("keep-denied"), None));
    }
    if let Found::Unreadable(text) = found {
        let text = text.clone();
        let save =
            Callback::from(move |_| download::offer("brimline-kept-aside.json", download::JSON, &text));
        all.push(notice(shared, shared.say("keep-unreadable"), Some(("aside", "keep-download", save))));
    }
    if let Some(before) = state.now.removed.clone() {
        let act = shared.act.clone();
        let back = Callback::from(move |_: MouseEvent| {
            act.emit(Action::Replace(Box::new((*before).clone())));
            // The offer goes; the view that came back takes the focus.
            focus::soon("main".to_owned());
        });
        all.push(notice(shared, shared.say("undo-offer"), Some(("undo", "undo", back))));
    }
    all
}

/// A sentence, and the button that it offers: its name, the key of its words, what it does.
fn notice(shared: &Shared, text: String, act: Option<(&'static str, &str, Callback<MouseEvent>)>) -> Html {
    html! {
        <p>
            { text }
            if let Some((name, key, onclick)) = act {
                { " " }<button type="button" {name} {onclick}>{ shared.say(key) }</button>
            }
        </p>
    }
}
