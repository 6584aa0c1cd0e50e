//! The frame around the views: which one is open, what was typed, what the browser keeps.

use super::components::{Choice, OpenSaved};
use super::keep::download;
use super::keep::store::{self, Found};
use super::shared::Shared;
use super::views::{CautionsView, FillView, FlowView, ShiftView};
use crate::form::{Action, Typed, action::reduce};
use crate::units::System;
use crate::words::Words;
use gloo::events::EventListener;
use std::rc::Rc;
use yew::prelude::*;

/// The views, by the fragment of the address.
#[derive(Clone, Copy, PartialEq)]
enum Place {
    Fill,
    Flow,
    Shift,
    Cautions,
}

impl Place {
    const ALL: [Self; 4] = [Self::Fill, Self::Flow, Self::Shift, Self::Cautions];

    fn code(self) -> &'static str {
        match self {
            Self::Fill => "fill",
            Self::Flow => "flow",
            Self::Shift => "shift",
            Self::Cautions => "cautions",
        }
    }

    fn now() -> Self {
        let hash = gloo::utils::window().location().hash().unwrap_or_default();
        Self::ALL.into_iter().find(|place| hash.trim_start_matches('#') == place.code()).unwrap_or(Self::Fill)
    }
}

/// What was typed, and one step back from what cannot be typed again.
#[derive(Clone, PartialEq)]
struct State {
    typed: Rc<Typed>,
    before: Option<Rc<Typed>>,
}

impl Reducible for State {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let takes_away = matches!(action, Action::Remove(..) | Action::Replace(_) | Action::DropSetting);
        let undone = matches!(&action, Action::Replace(whole) if self.before.as_deref() == Some(whole));
        let before = match (undone, takes_away) {
            (true, _) => None,
            (false, true) => Some(self.typed.clone()),
            (false, false) => self.before.clone(),
        };
        Rc::new(Self { typed: Rc::new(reduce((*self.typed).clone(), action)), before })
    }
}

/// The page.
#[component]
pub fn App() -> Html {
    let words = use_memo((), |()| Words::english());
    let found = use_memo((), |()| store::open());
    let state = {
        let found = found.clone();
        use_reducer_eq(move || State {
            typed: Rc::new(match &*found {
                Found::Typed(typed) => (**typed).clone(),
                _ => Typed::default(),
            }),
            before: None,
        })
    };
    let kept = use_state(|| *found != Found::Denied);
    {
        let kept = kept.clone();
        use_effect_with(state.typed.clone(), move |typed| {
            let took = store::keep(typed).is_ok();
            if took != *kept {
                kept.set(took);
            }
        });
    }
    let place = use_place();
    let act = {
        let dispatcher = state.dispatcher();
        use_callback((), move |action: Action, ()| dispatcher.dispatch(action))
    };
    let shared = Shared { typed: state.typed.clone(), words, act };

    html! {
        <ContextProvider<Shared> context={shared.clone()}>
            <a class="skip" href="#main" onclick={|event: MouseEvent| { event.prevent_default(); skip_to_main(); }}>
                { shared.say("skip") }
            </a>
            <header class="top">
                <p class="name">{ shared.say("name") }</p>
                <nav aria-label={shared.say("views")}>
                    { for Place::ALL.into_iter().map(|one| html! {
                        <a href={format!("#{}", one.code())} aria-current={(one == place).then_some("page")}>
                            { shared.say(&format!("view-{}", one.code())) }
                        </a>
                    }) }
                </nav>
                <UnitsChoice />
            </header>
            <Notices found={(*found).clone()} kept={*kept} before={state.before.clone()} />
            <main id="main" tabindex="-1">
                { match place {
                    Place::Fill => html! { <FillView /> },
                    Place::Flow => html! { <FlowView /> },
                    Place::Shift => html! { <ShiftView /> },
                    Place::Cautions => html! { <CautionsView /> },
                } }
            </main>
            <footer>
                <p>{ &state.typed.site.name }</p>
                <p>{ shared.say("privacy") }</p>
                <p class="defer">{ shared.say("caution-defer") }</p>
                <OpenSaved />
                <div class="buttons">
                    <button type="button" name="demo"
                        onclick={shared.on(|_| Action::Replace(Box::default()))}>{ shared.say("demo-back") }</button>
                </div>
            </footer>
        </ContextProvider<Shared>>
    }
}

fn skip_to_main() {
    use wasm_bindgen::JsCast;
    let main = gloo::utils::document().get_element_by_id("main");
    if let Some(main) = main.and_then(|main| main.dyn_into::<web_sys::HtmlElement>().ok()) {
        let _ = main.focus();
    }
}

/// Follows the fragment of the address.
#[hook]
fn use_place() -> Place {
    let place = use_state(Place::now);
    {
        let place = place.clone();
        use_effect_with((), move |()| {
            let listener =
                EventListener::new(&gloo::utils::window(), "hashchange", move |_| place.set(Place::now()));
            move || drop(listener)
        });
    }
    *place
}

#[component]
fn UnitsChoice() -> Html {
    let shared = super::shared::use_shared();
    let option = |system: System| (system.code().to_owned(), shared.say(&format!("units-{}", system.code())));
    let onchoose = shared.on(|code: String| Action::System(System::from_code(&code).unwrap_or_default()));
    html! {
        <Choice name="units" label={shared.say("units")} options={System::ALL.map(option).to_vec()}
            chosen={shared.system().code().to_owned()} {onchoose} />
    }
}

#[derive(Properties, PartialEq)]
struct NoticesProps {
    found: Found,
    kept: bool,
    before: Option<Rc<Typed>>,
}

/// What the user should know about the page itself.
#[component]
fn Notices(props: &NoticesProps) -> Html {
    let shared = super::shared::use_shared();
    let update = use_update();
    html! {
        <div class="notices" role="status">
            if *update {
                <p>
                    { shared.say("update-ready") }{ " " }
                    <button type="button" name="update" onclick={|_| accept_update()}>{ shared.say("update-use") }</button>
                </p>
            }
            if !props.kept { <p>{ shared.say("keep-denied") }</p> }
            if let Found::Unreadable(text) = &props.found {
                <p>
                    { shared.say("keep-unreadable") }{ " " }
                    <button type="button" name="aside" onclick={
                        let text = text.clone();
                        move |_| download::offer("brimline-kept-aside.json", &text)
                    }>{ shared.say("keep-download") }</button>
                </p>
            }
            if let Some(before) = props.before.clone() {
                <p>
                    { shared.say("undo-offer") }{ " " }
                    <button type="button" name="undo"
                        onclick={shared.on(move |_| Action::Replace(Box::new((*before).clone())))}>
                        { shared.say("undo") }
                    </button>
                </p>
            }
        </div>
    }
}

/// Whether a new version waits; `boot.js` tells.
#[hook]
fn use_update() -> UseStateHandle<bool> {
    let waits = || {
        js_sys::Reflect::get(&gloo::utils::window(), &"brimlineUpdate".into())
            .is_ok_and(|flag| flag.is_truthy())
    };
    let update = use_state(waits);
    {
        let update = update.clone();
        use_effect_with((), move |()| {
            let listener =
                EventListener::new(&gloo::utils::window(), "brimline-update", move |_| update.set(true));
            move || drop(listener)
        });
    }
    update
}

fn accept_update() {
    if let Ok(event) = web_sys::Event::new("brimline-accept-update") {
        let _ = gloo::utils::window().dispatch_event(&event);
    }
}
