//! What both changed, as one site, and what somebody decides where they clash.

use super::listed::listed;
use super::{OTHER, Waiting};
use crate::page::focus;
use crate::page::keep::keys;
use crate::page::shared::Shared;
use crate::site::passing::{Clash, Conflict, Merged, Side, decide};
use crate::words::Argument;
use yew::prelude::*;

/// What both changed, as one site; where they clash somebody decides.
pub fn merged(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let base = keys::base();
    let Merged { site, conflicts, renamed } = decide(&base, &shared.typed.site, &one.site, &one.decisions);
    html! {
        <>
            <p>{ shared.say("passing-merge-hint") }</p>
            if !conflicts.is_empty() {
                <h4>{ shared.say("conflicts") }</h4>
                <ul class="findings">{ for conflicts.iter().map(|conflict| clash(shared, one, conflict, waiting)) }</ul>
            }
            if !renamed.is_empty() { <p>{ shared.say("passing-renamed") }</p> }
            { listed(shared, one, &site, !conflicts.is_empty(), waiting) }
        </>
    }
}

/// One thing that both changed, and the two ways to decide it.
fn clash(
    shared: &Shared,
    one: &Waiting,
    conflict: &Conflict,
    waiting: &UseStateHandle<Option<Waiting>>,
) -> Html {
    let sites = (&shared.typed.site, &*one.site);
    let field = match &conflict.clash {
        Clash::Field { field, .. } | Clash::Circle { field, .. } => {
            shared.words.field_name(&conflict.list, field)
        }
        _ => String::new(),
    };
    let told = shared.tell(
        conflict.code(),
        &[
            ("record", Argument::text(shared.words.record_of(sites, &conflict.list, &conflict.id))),
            ("list", Argument::text(shared.words.list_name(&conflict.list))),
            ("field", Argument::text(field)),
        ],
    );
    let values = match &conflict.clash {
        Clash::Field { field, ours, theirs, .. } | Clash::Circle { field, ours, theirs } => {
            let told = |site, value| shared.words.told(site, &conflict.list, field, value);
            Some((told(sites.0, ours), told(sites.1, theirs)))
        }
        _ => None,
    };
    let side = |side: Side, key: &'static str, value: Option<&String>| {
        let (waiting, one, decision) = (waiting.clone(), one.clone(), conflict.take(side));
        let onclick = move |_: MouseEvent| {
            let mut next = one.clone();
            next.decisions.push(decision.clone());
            waiting.set(Some(next));
            // Its buttons go with what is decided; the others stand below this heading.
            focus::in_place(OTHER.to_owned());
        };
        let text =
            value.map_or_else(|| shared.say(key), |value| shared.words.said_of(&shared.say(key), value));
        html! { <button type="button" name={key} {onclick}>{ text }</button> }
    };
    html! {
        <li class="remark" data-conflict={conflict.code()}>
            <p>{ told }</p>
            <div class="buttons">
                { side(Side::Ours, "conflict-ours", values.as_ref().map(|(ours, _)| ours)) }
                { side(Side::Theirs, "conflict-theirs", values.as_ref().map(|(_, theirs)| theirs)) }
            </div>
        </li>
    }
}
