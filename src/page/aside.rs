//! What other tabs did: which of two states goes on, and what waits aside until it is shown or removed.

use super::components::later;
use super::focus;
use super::keep::{tabs, texts};
use super::shared::Shared;
use crate::form::{Action, Typed};
use crate::site::passing::compare;
use crate::words::Argument;
use yew::prelude::*;

/// So many differences are told: enough to know which state it is.
const TOLD: usize = 3;

/// What this part needs.
#[derive(Properties, PartialEq)]
struct Props {
    shared: Shared,
    /// Whether another tab has kept something that this one does not show.
    behind: bool,
    /// Looks again whether it has.
    look: Callback<()>,
}

/// Asks which of two states goes on, or offers what waits; nothing where there is neither.
pub fn aside(shared: &Shared, behind: bool, look: &Callback<()>) -> Html {
    html! { <Aside shared={shared.clone()} {behind} look={look.clone()} /> }
}

/// Which of both goes on: what this tab shows, or what another one kept since.
fn choice(shared: &Shared, look: &Callback<()>) -> Html {
    let take = |_: MouseEvent| drop(gloo::utils::window().location().reload());
    let keep = {
        let (no_room, look) = (shared.say("link-no-room"), look.clone());
        move |_: MouseEvent| {
            if tabs::put_other_aside() {
                look.emit(());
                focus::soon("main".to_owned());
            } else {
                gloo::dialogs::alert(&no_room);
            }
        }
    };
    html! {
        <div class="notice">
            <p>
                { shared.say("elsewhere") }{ " " }
                <button type="button" name="elsewhere-load" onclick={take}>{ shared.say("elsewhere-load") }</button>{ " " }
                <button type="button" name="elsewhere-keep" onclick={keep}>{ shared.say("elsewhere-keep") }</button>
            </p>
            { later("elsewhere-different", shared.clone(), |shared| {
                tabs::devices_own().map(|there| different(shared, &there)).unwrap_or_default()
            }) }
        </div>
    }
}

/// What is different in a state that is not shown; nothing where its site is the same.
fn different(shared: &Shared, there: &Typed) -> Html {
    let here = &shared.typed.site;
    let changes = compare(here, &there.site);
    if changes.is_empty() {
        return Html::default();
    }
    let more = changes.len().saturating_sub(TOLD);
    let more = (more > 0).then(|| {
        let n = Argument::number(more as f64, shared.words.number(more as f64));
        html! { <li>{ shared.tell("passing-more", &[("n", n)]) }</li> }
    });
    html! {
        <>
            <p>{ shared.say("aside-different") }</p>
            <ul>
                { for changes.iter().take(TOLD).map(|change| html! {
                    <li>{ shared.words.change((here, &there.site), change, &[]) }</li>
                }) }
                { more.unwrap_or_default() }
            </ul>
        </>
    }
}

#[component]
fn Aside(props: &Props) -> Html {
    let shared = &props.shared;
    let removed = use_state(|| None::<(String, String)>);
    let to_main = || focus::soon("main".to_owned());
    if props.behind {
        return choice(shared, &props.look);
    }
    // A device that is set to its standards shows no other site.
    if shared.locked {
        return Html::default();
    }
    let back = (*removed).clone().map(|(name, text)| {
        let removed = removed.clone();
        let onclick = move |_: MouseEvent| {
            if texts::put(&name, &text) {
                removed.set(None);
                to_main();
            }
        };
        html! {
            <p>
                { shared.say("aside-removed") }{ " " }
                <button type="button" name="aside-back" {onclick}>{ shared.say("undo") }</button>
            </p>
        }
    });
    let offer = tabs::waiting(&shared.typed).map(|(name, there)| {
        let show = {
            let (shared, name, there) = (shared.clone(), name.clone(), there.clone());
            move |_: MouseEvent| {
                if tabs::turn_to(&name, &shared.typed) {
                    shared.act.emit(Action::Replace(Box::new(there.clone())));
                    to_main();
                } else {
                    gloo::dialogs::alert(&shared.say("link-no-room"));
                }
            }
        };
        let remove = {
            let removed = removed.clone();
            move |_: MouseEvent| {
                removed.set(texts::get(&name).map(|text| (name.clone(), text)));
                texts::remove(&name);
                to_main();
            }
        };
        html! {
            <div class="notice">
                <p>
                    { shared.say("aside") }{ " " }
                    <button type="button" name="aside-show" onclick={show}>{ shared.say("aside-show") }</button>{ " " }
                    <button type="button" name="aside-remove" onclick={remove}>{ shared.say("aside-remove") }</button>
                </p>
                { later("aside-different", (shared.clone(), there), |(shared, there)| different(shared, there)) }
            </div>
        }
    });
    html! { <>{ offer.unwrap_or_default() }{ back.unwrap_or_default() }</> }
}
