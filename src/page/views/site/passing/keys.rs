//! The supervisor’s key: made, backed up, brought back, replaced; and the key that a device is pinned to.

use super::Props;
use crate::page::components::{Chosen, OpenFile, Told};
use crate::page::keep::download;
use crate::page::keep::keys::{self, Pinned};
use crate::page::shared::Shared;
use crate::site::passing::{Chain, Handover, Pin, PublicKey, Secret, backup};
use crate::words::Argument;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The media type of a key’s backup.
const TEXT: &str = "text/plain";

/// The keys of this device.
#[component]
pub fn Keys(props: &Props) -> Html {
    let shared = &props.shared;
    // What is kept is asked again after each step.
    let seen = use_state(|| 0_u32);
    let again = {
        let seen = seen.clone();
        Callback::from(move |()| seen.set(*seen + 1))
    };
    html! {
        <>
            <h2>{ shared.say("key-heading") }</h2>
            <p>{ shared.say("key-hint") }</p>
            { own(shared, &again) }
            <h2>{ shared.say("pin-heading") }</h2>
            <p>{ shared.say("pin-hint") }</p>
            <Pinning shared={shared.clone()} again={again.clone()} />
        </>
    }
}

/// A button that does something with the keys, and then has them shown anew.
fn step(
    shared: &Shared,
    name: &'static str,
    again: &Callback<()>,
    does: impl Fn(&Shared) -> bool + 'static,
) -> Html {
    let (own, again) = (shared.clone(), again.clone());
    let onclick = move |_: MouseEvent| {
        if !does(&own) {
            gloo::dialogs::alert(&own.say("key-unable"));
        }
        again.emit(());
    };
    html! { <button type="button" {name} {onclick}>{ shared.say(name) }</button> }
}

fn back_up(secret: &Secret) {
    download::offer("brimline-key.txt", TEXT, &backup::write(secret));
}

fn offer_chain(chain: &Chain) {
    download::offer("brimline-next-key.json", download::JSON, &chain.write());
}

/// The key that this device signs with.
fn own(shared: &Shared, again: &Callback<()>) -> Html {
    let made = |_: &Shared| keys::new_secret().is_some_and(|secret| keys::keep_secret(&secret));
    let restored = {
        let (shared, again) = (shared.clone(), again.clone());
        Callback::from(move |(file, tell): (Chosen, Callback<Told>)| {
            let said = match backup::read(&String::from_utf8_lossy(&file.bytes)) {
                Ok(secret) if keys::keep_secret(&secret) => (shared.say("key-restored"), false),
                Ok(_) => (shared.say("key-unable"), true),
                Err(mistake) => (shared.say(mistake.code()), true),
            };
            tell.emit(Told { lines: vec![said.0], mistake: said.1 });
            again.emit(());
        })
    };
    let open = html! { <OpenFile shared={shared.clone()} name="key-open" accept=".txt,text/plain" onfile={restored} /> };
    let Some(secret) = keys::secret() else {
        return html! { <><div class="buttons">{ step(shared, "key-make", again, made) }</div>{ open }</> };
    };
    let public = secret.public();
    let kept = secret.clone();
    let handed = keys::chain().filter(|chain| chain.newest() == Some(public));
    // The old key says which one comes next: devices that are pinned to it follow.
    let replaced = move |_: &Shared| {
        let Some(next) = keys::new_secret() else { return false };
        let step = Handover::new(&secret, &next.public());
        // One file has all steps: a device that knows any of the keys before takes them at once.
        let chain = keys::chain().map_or_else(|| Chain::of(step.clone()), |chain| chain.then(step.clone()));
        if !keys::keep_chain(&chain) || !keys::keep_secret(&next) {
            return false;
        }
        offer_chain(&chain);
        back_up(&next);
        true
    };
    html! {
        <>
            <p>{ shared.tell("key-own", &[("key", Argument::text(public.fingerprint()))]) }</p>
            <p class="key" id="key-public">{ public.text() }</p>
            <div class="buttons">
                { step(shared, "key-back-up", again, move |_| { back_up(&kept); true }) }
                { step(shared, "key-replace", again, replaced) }
                { handed.map(|chain| step(shared, "key-handovers", again, move |_| { offer_chain(&chain); true })).unwrap_or_default() }
                { step(shared, "key-pin-own", again, move |_| keys::pin_to(Some(Pin::to(public)))) }
            </div>
            <p class="hint">{ shared.say("key-replace-hint") }</p>
            { open }
        </>
    }
}

/// What the pin needs.
#[derive(Properties, PartialEq)]
struct PinProps {
    shared: Shared,
    again: Callback<()>,
}

/// The key that this device is pinned to.
#[component]
fn Pinning(props: &PinProps) -> Html {
    let shared = &props.shared;
    let text = use_state(String::new);
    let wrong = use_state(|| false);
    let oninput = {
        let (text, wrong) = (text.clone(), wrong.clone());
        move |event: InputEvent| {
            text.set(event.target_unchecked_into::<HtmlInputElement>().value());
            wrong.set(false);
        }
    };
    let pins = {
        let (text, wrong, again) = (text.clone(), wrong.clone(), props.again.clone());
        move |_: MouseEvent| match PublicKey::read(text.trim()) {
            Some(key) if keys::pin_to(Some(Pin::to(key))) => {
                text.set(String::new());
                again.emit(());
            }
            _ => wrong.set(true),
        }
    };
    let told = match keys::pinned() {
        Pinned::No => shared.say("pin-none"),
        Pinned::To(pin) => {
            let key = ("key", Argument::text(pin.key.fingerprint()));
            let edition = ("edition", Argument::text(pin.edition.to_string()));
            shared.tell(if pin.edition == 0 { "pin-to" } else { "pin-to-edition" }, &[key, edition])
        }
        Pinned::Unreadable => shared.say("pin-unreadable"),
    };
    let free = (keys::pinned() != Pinned::No)
        .then(|| step(shared, "pin-free", &props.again, |_| keys::pin_to(None)));
    let mistake = wrong.then_some("pin-key-mistake");
    html! {
        <>
            <p id="pin-told">{ told }</p>
            <div class={classes!("field", mistake.map(|_| "wrong"))}>
                <label for="pin-key">{ shared.say("pin-key") }</label>
                <input type="text" id="pin-key" name="pin-key" autocomplete="off" value={(*text).clone()} {oninput}
                    aria-describedby={mistake} aria-invalid={mistake.map(|_| "true")} />
                if *wrong { <p class="mistake" id="pin-key-mistake">{ shared.say("pin-key-wrong") }</p> }
            </div>
            <div class="buttons">
                <button type="button" name="pin-set" onclick={pins}>{ shared.say("pin-set") }</button>
                if let Some(free) = free { { free } }
            </div>
        </>
    }
}
