//! A session that a link brought: shown before it begins. The device's own site stays as it is.

use super::{about, press};
use crate::page::focus;
use crate::page::keep::practice::at_desk;
use crate::page::shared::Shared;
use crate::practice::{Part, Run, Session};
use crate::site::passing::link::{LinkMistake, unpack};
use gloo::events::EventListener;
use yew::prelude::*;

/// How the fragment of such a link begins.
pub const MARK: &str = "#practice=";

/// What a link brought: a session, or the key of why there is none.
pub type Offer = Result<Session, &'static str>;

/// The session that the address carries.
#[hook]
pub fn use_offered() -> UseStateHandle<Option<Offer>> {
    let offered = use_state(read);
    {
        let offered = offered.clone();
        use_effect_with((), move |()| {
            let listener = EventListener::new(&gloo::utils::window(), "hashchange", move |_| {
                if let Some(offer) = read() {
                    offered.set(Some(offer));
                }
            });
            move || drop(listener)
        });
    }
    offered
}

fn read() -> Option<Offer> {
    let hash = gloo::utils::window().location().hash().ok()?;
    let link = hash.strip_prefix(MARK)?;
    Some(match unpack::<Session>(link) {
        Ok(session) => match session.flaw() {
            None => Ok(session),
            Some(flaw) => Err(flaw.code()),
        },
        Err(LinkMistake::Content(_)) => Err("practice-link-content"),
        Err(mistake) => Err(mistake.code()),
    })
}

/// What the link brought, to begin or to leave.
pub fn offered(shared: &Shared, run: &Run, offer: &Offer, state: &UseStateHandle<Option<Offer>>) -> Html {
    let leave = {
        let state = state.clone();
        move || {
            state.set(None);
            // Where the address cannot be set it brings the same session again, which is asked about.
            let _ = gloo::utils::window().location().replace("#practice");
        }
    };
    let session = match offer {
        Ok(session) => session,
        Err(key) => {
            return html! {
                <section class="remark" role="alert" data-link={*key}>
                    <h2>{ shared.say("link-refused") }</h2>
                    <p>{ shared.say(key) }</p>
                    <div class="buttons">{ press(shared, "practice-offer-leave", leave) }</div>
                </section>
            };
        }
    };
    let same = run.is_held() && run.session == *session;
    let begin = {
        let (session, leave) = (session.clone(), leave.clone());
        move || {
            at_desk(|desk| {
                desk.part = Part::Practise;
                desk.run = Run::begin(session.clone());
            });
            leave();
            focus::soon("practice-task".to_owned());
        }
    };
    let go_on = {
        let leave = leave.clone();
        move || {
            at_desk(|desk| desk.part = Part::Practise);
            leave();
        }
    };
    html! {
        <section aria-labelledby="practice-offer">
            <h2 id="practice-offer">{ shared.say("practice-offer") }</h2>
            <p>{ shared.say("practice-offer-hint") }</p>
            { about(shared, session) }
            if run.is_held() { <p class="unknown">{ shared.say(if same { "practice-offer-same" } else { "practice-offer-other" }) }</p> }
            <div class="buttons">
                if same { { press(shared, "practice-offer-go-on", go_on) } }
                { press(shared, "practice-offer-begin", begin) }
                { press(shared, "practice-offer-leave", leave) }
            </div>
        </section>
    }
}
