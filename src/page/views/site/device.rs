//! This device: set to its standards, and set free again.

use crate::page::keep::lock;
use crate::page::shared::Shared;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The fewest characters of a passcode.
const SHORTEST: usize = 4;

/// What the device is set to.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What every part needs.
    pub shared: Shared,
}

/// Sets the device to its standards, or asks for the passcode that sets it free.
#[component]
pub fn Device(props: &Props) -> Html {
    let shared = &props.shared;
    let code = use_state(String::new);
    let told = use_state(|| None::<&'static str>);
    let busy = use_state(|| false);
    let shown = use_state(|| false);
    let typed = {
        let (code, told) = (code.clone(), told.clone());
        move |event: InputEvent| {
            code.set(event.target_unchecked_into::<HtmlInputElement>().value());
            told.set(None);
        }
    };
    let locked = shared.locked;
    let done = {
        let (code, told, busy) = (code.clone(), told.clone(), busy.clone());
        move |event: SubmitEvent| {
            event.prevent_default();
            if *busy {
                return;
            }
            if !locked && code.chars().count() < SHORTEST {
                return told.set(Some("device-short"));
            }
            busy.set(true);
            let (code, told, busy) = (code.clone(), told.clone(), busy.clone());
            yew::platform::spawn_local(async move {
                let result = match lock::held() {
                    Some(lock) => lock::open(&lock, &code).await,
                    None => lock::set(&code).await.map(|()| true),
                };
                busy.set(false);
                match result {
                    // The page starts again as what it is now.
                    Ok(true) => drop(gloo::utils::window().location().reload()),
                    Ok(false) => told.set(Some("device-wrong")),
                    Err(lock::Unable) => told.set(Some("device-unable")),
                }
            });
        }
    };
    let sees = {
        let shown = shown.clone();
        Callback::from(move |_: MouseEvent| shown.set(!*shown))
    };
    let kind = if *shown { "text" } else { "password" };
    let mistake = told.map(|_| "device-told");
    html! {
        <section aria-labelledby="device-heading">
            <h2 id="device-heading">{ shared.say(if locked { "device-locked" } else { "device-free" }) }</h2>
            <p>{ shared.say(if locked { "device-locked-hint" } else { "device-free-hint" }) }</p>
            <form onsubmit={done}>
                <div class="field">
                    <label for="device-code">{ shared.say("device-code") }</label>
                    <div class="entry">
                        <input type={kind} id="device-code" name="device-code" autocomplete="off" value={(*code).clone()}
                            oninput={typed} aria-describedby={mistake} aria-invalid={mistake.map(|_| "true")} />
                        <button type="button" name="device-show" aria-pressed={shown.to_string()} onclick={sees}>{ shared.say("device-show") }</button>
                    </div>
                    <p class="mistake" id="device-told" role="status">{ for told.map(|key| shared.say(key)) }</p>
                </div>
                <div class="buttons">
                    <button type="submit" name="device-set" disabled={*busy}>
                        { shared.say(if *busy { "device-busy" } else if locked { "device-leave" } else { "device-set" }) }
                    </button>
                </div>
            </form>
            <p class="hint">{ shared.say("device-honest") }</p>
        </section>
    }
}
