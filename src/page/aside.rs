//! What other tabs did: which of two states goes on, and what waits aside until it is shown or removed.

use super::focus;
use super::keep::{kept, store, tabs};
use super::shared::Shared;
use crate::form::Action;
use yew::prelude::*;

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
        <p>
            { shared.say("elsewhere") }{ " " }
            <button type="button" name="elsewhere-load" onclick={take}>{ shared.say("elsewhere-load") }</button>{ " " }
            <button type="button" name="elsewhere-keep" onclick={keep}>{ shared.say("elsewhere-keep") }</button>
        </p>
    }
}

#[component]
fn Aside(props: &Props) -> Html {
    let shared = &props.shared;
    let looks = use_state(|| 0_u32);
    let removed = use_state(|| None::<(String, String)>);
    // Looked for when the page opens, when a tab is no longer behind, and when one was shown, removed or put back.
    let waiting = use_memo((props.behind, *looks), |_| tabs::waiting());
    let again = {
        let looks = looks.clone();
        move || {
            looks.set(*looks + 1);
            focus::soon("main".to_owned());
        }
    };
    if props.behind {
        return choice(shared, &props.look);
    }
    // A device that is set to its standards shows no other site.
    if shared.locked {
        return Html::default();
    }
    let back = (*removed).clone().map(|(name, text)| {
        let (removed, again) = (removed.clone(), again.clone());
        let onclick = move |_: MouseEvent| {
            if store::put(&name, &text) {
                removed.set(None);
                again();
            }
        };
        html! {
            <p>
                { shared.say("aside-removed") }{ " " }
                <button type="button" name="aside-back" {onclick}>{ shared.say("undo") }</button>
            </p>
        }
    });
    let offer = (*waiting).clone().map(|name| {
        let show = {
            let (act, name, again) = (shared.act.clone(), name.clone(), again.clone());
            move |_: MouseEvent| {
                if let Some(typed) = tabs::read(&name) {
                    act.emit(Action::Replace(Box::new(typed)));
                }
                store::remove(&name);
                again();
            }
        };
        let remove = move |_: MouseEvent| {
            removed.set(kept::text(&name).map(|text| (name.clone(), text)));
            store::remove(&name);
            again();
        };
        html! {
            <p>
                { shared.say("aside") }{ " " }
                <button type="button" name="aside-show" onclick={show}>{ shared.say("aside-show") }</button>{ " " }
                <button type="button" name="aside-remove" onclick={remove}>{ shared.say("aside-remove") }</button>
            </p>
        }
    });
    html! { <>{ offer.unwrap_or_default() }{ back.unwrap_or_default() }</> }
}
