//! The frame around the views: which one is open, what was typed, what the browser keeps.

use super::carried;
use super::components::{Text, open_saved, pick, text_field};
use super::keep::store::{self, Found};
use super::keep::{download, first_fill, lock, today, update};
use super::place::{self, Place, use_place};
use super::rest::{Loaded, use_rest};
use super::shared::Shared;
use super::views::fill_view;
use super::{focus, state};
use crate::form::action::Line;
use crate::form::station::Job;
use crate::form::{Action, Typed};
use crate::words::{Argument, Words};
use std::rc::Rc;
use yew::prelude::*;

/// The page.
#[component]
pub fn App() -> Html {
    let found = use_memo((), |()| store::open());
    let state = state::use_typed(&found);
    let place = use_place();
    let kept = use_memo((), |()| (lock::held().is_some(), first_fill::is_kept()));
    let (locked, guided) = *kept;
    let place = if locked && !place.is_asking() { Place::Fill } else { place };
    let fill = place == Place::Fill && state.now.typed.ask.station.job == Job::Fill;
    let linked = carried::is_wanted();
    // What a device set to its standards shows is worked out by the rest.
    let rest = use_rest(!fill || linked || locked || guided);
    let words = use_memo(matches!(rest, Loaded::Here(_)), |_| match rest {
        Loaded::Here(rest) => (rest.words)(),
        Loaded::Waiting | Loaded::Failed => Words::of_fill(),
    });
    let newer = update::use_waiting();
    let today = today::use_today();
    let dispatcher = state.now.dispatcher();
    let act = use_callback((), move |action: Action, ()| {
        if !locked || action.is_asking() {
            dispatcher.dispatch(action);
        }
    });
    let (typed, before) = (state.now.typed.clone(), state.now.before().cloned());
    let why = match rest {
        Loaded::Here(rest) => rest.why,
        Loaded::Waiting | Loaded::Failed => |_: &Shared, _: &'static str| Html::default(),
    };
    let shared = Shared { typed, before, words, limits: false, locked, lacking: Rc::default(), why, act };
    let shared = match rest {
        Loaded::Here(rest) if locked => (rest.held)(shared),
        _ => shared,
    };

    html! {
        <>
            { top(&shared, place) }
            <p class="sheet-line">{ sheet_line(&shared, &today) }</p>
            <div class="notices" role="status">
                { match rest {
                    Loaded::Here(rest) => (rest.carried)(&shared, *found == Found::Nothing),
                    Loaded::Failed if linked => html! { <p role="alert">{ shared.say("view-failed") }</p> },
                    Loaded::Waiting | Loaded::Failed => Html::default(),
                } }
                if state.elsewhere { { elsewhere(&shared) } }
                if newer { { newer_version(&shared) } }
                if !state.kept { <p>{ shared.say("keep-denied") }</p> }
                if let Found::Unreadable(text) = &*found { { put_aside(&shared, text.clone()) } }
                if let Some(before) = state.now.removed.clone() { { undo(&shared, before) } }
            </div>
            if let Loaded::Here(rest) = rest { { (rest.guide)(&shared, place) } }
            <main id="main" tabindex="-1">
                { match rest {
                    Loaded::Here(_) if locked && shared.typed.site.floors.is_empty() && !matches!(place, Place::Site | Place::Log | Place::Practice) => {
                        html! { <p role="status">{ shared.say("locked-empty") }</p> }
                    }
                    // The demo's dose is not the one that the link carries.
                    Loaded::Waiting if carried::brings() => html! { <p role="status">{ shared.say("view-loading") }</p> },
                    _ if fill && !locked => fill_view(&shared, recorder(&shared, rest)),
                    Loaded::Here(rest) => match place {
                        Place::Fill if fill => fill_view(&shared, recorder(&shared, Loaded::Here(rest))),
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

/// What writes the fill down, once it is loaded.
fn recorder(shared: &Shared, rest: Loaded) -> Html {
    match rest {
        Loaded::Here(rest) => (rest.record)(shared),
        Loaded::Waiting | Loaded::Failed => Html::default(),
    }
}

fn top(shared: &Shared, place: Place) -> Html {
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
                { pick(shared, "units", "units", shared.system(), Action::System) }
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
    shared.tell("sheet-line", &[("date", Argument::text(today)), ("version", version)])
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

/// What another tab changed is loaded, not overwritten.
fn elsewhere(shared: &Shared) -> Html {
    let load = |_: MouseEvent| drop(gloo::utils::window().location().reload());
    html! {
        <p>
            { shared.say("elsewhere") }{ " " }
            <button type="button" name="elsewhere-load" onclick={load}>{ shared.say("elsewhere-load") }</button>
        </p>
    }
}

fn newer_version(shared: &Shared) -> Html {
    html! {
        <p>
            { shared.say("update-ready") }{ " " }
            <button type="button" name="update" onclick={|_| update::accept()}>{ shared.say("update-use") }</button>
        </p>
    }
}

fn put_aside(shared: &Shared, text: String) -> Html {
    let onclick = move |_| download::offer("brimline-kept-aside.json", download::JSON, &text);
    html! {
        <p>
            { shared.say("keep-unreadable") }{ " " }
            <button type="button" name="aside" {onclick}>{ shared.say("keep-download") }</button>
        </p>
    }
}

fn undo(shared: &Shared, before: Rc<Typed>) -> Html {
    let act = shared.act.clone();
    let back = move |_: MouseEvent| {
        act.emit(Action::Replace(Box::new((*before).clone())));
        // The offer goes; the view that came back takes the focus.
        focus::soon("main".to_owned());
    };
    html! {
        <p>
            { shared.say("undo-offer") }{ " " }
            <button type="button" name="undo" onclick={back}>{ shared.say("undo") }</button>
        </p>
    }
}
