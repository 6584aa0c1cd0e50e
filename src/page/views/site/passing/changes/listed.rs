//! What a site from elsewhere has that is different, each to be taken or left.

use super::super::told;
use super::{Waiting, over, take};
use crate::page::shared::Shared;
use crate::site::Site;
use crate::site::passing::{Change, NoNumber, WHOLE, What, choose, compare, no_numbers};
use crate::words::Argument;
use yew::prelude::*;

/// So many changes are shown: nobody reads more, and all are taken or none.
const SHOWN: usize = 200;

/// What tells a change from the others, whatever was decided about them.
fn key(change: &Change) -> String {
    let field = match &change.what {
        What::Field { field, .. } => field.as_str(),
        _ => change.code(),
    };
    format!("{}/{}/{field}", change.list, change.id)
}

/// Every difference to the own site, each to be taken or left; what is no number is left unless somebody ticks it.
/// `newer` is the site that came, or what came out of both; `blocked` is whether something is still to be decided.
pub fn listed(
    shared: &Shared,
    one: &Waiting,
    newer: &Site,
    blocked: bool,
    waiting: &UseStateHandle<Option<Waiting>>,
) -> Html {
    let ours = &shared.typed.site;
    let changes = compare(ours, newer);
    if changes.is_empty() && !blocked {
        return html! { <p role="status">{ shared.say("passing-same") }</p> };
    }
    let wrong: Vec<Vec<NoNumber>> =
        changes.iter().map(|change| no_numbers(change, newer, shared.marks())).collect();
    // A standard or a trial is taken whole, or it would say what nobody wrote.
    let together = |index: usize| -> Vec<usize> {
        let of: &Change = &changes[index];
        let same = |other: &Change| other.list == of.list && other.id == of.id;
        if WHOLE.contains(&of.list.as_str()) {
            (0..changes.len()).filter(|other| same(&changes[*other])).collect()
        } else {
            vec![index]
        }
    };
    let ticked: Vec<bool> = (0..changes.len())
        .map(|index| {
            let usual = together(index).into_iter().all(|other| wrong[other].is_empty());
            one.whole || usual != one.turned.contains(&key(&changes[index]))
        })
        .collect();
    let line = |(index, change): (usize, &Change)| {
        let told = shared.words.change((ours, newer), change, &wrong[index]);
        let told = if wrong[index].is_empty() {
            html! { <>{ told }</> }
        } else {
            html! { <strong>{ told }</strong> }
        };
        if one.whole {
            return html! { <li>{ told }</li> };
        }
        let (waiting, one) = (waiting.clone(), one.clone());
        let keys: Vec<String> = together(index).into_iter().map(|other| key(&changes[other])).collect();
        let onchange = move |_: Event| {
            let mut next = one.clone();
            for key in &keys {
                if !next.turned.remove(key) {
                    next.turned.insert(key.clone());
                }
            }
            waiting.set(Some(next));
        };
        let name = format!("change-{}", index + 1);
        html! {
            <li>
                <label class="switch">
                    <input type="checkbox" id={name.clone()} {name} checked={ticked[index]} {onchange} />
                    <span>{ told }</span>
                </label>
            </li>
        }
    };
    let count = ticked.iter().filter(|ticked| **ticked).count();
    let takes = {
        let (shared, one, waiting, newer) = (shared.clone(), one.clone(), waiting.clone(), newer.clone());
        let wanted: Vec<Change> = changes
            .iter()
            .zip(&ticked)
            .filter(|(_, ticked)| **ticked)
            .map(|(change, _)| change.clone())
            .collect();
        let whole = count == changes.len();
        move |_: MouseEvent| {
            let site = if whole { Ok(newer.clone()) } else { choose(&shared.typed.site, &newer, &wanted) };
            match site {
                Ok(site) => {
                    take(&shared, site, &one);
                    over(&waiting);
                }
                // There is no place of its own to say it in, and it must not pass unseen.
                Err(refusal) => gloo::dialogs::alert(&told::refusal(&shared, &refusal)),
            }
        }
    };
    let n = |count: usize| Argument::number(count as f64, shared.words.number(count as f64));
    let heading = if one.whole { "passing-changes-whole" } else { "passing-changes" };
    html! {
        <>
            if one.whole { <p>{ shared.say("passing-whole") }</p> }
            <p role="status">{ shared.tell(heading, &[("n", n(changes.len()))]) }</p>
            if wrong.iter().any(|wrong| !wrong.is_empty()) {
                <p class="unknown">{ shared.say(if one.whole { "passing-no-number-whole" } else { "passing-no-number" }) }</p>
            }
            <ul class="changes">{ for changes.iter().enumerate().take(SHOWN).map(line) }</ul>
            if changes.len() > SHOWN { <p>{ shared.tell("passing-more", &[("n", n(changes.len() - SHOWN))]) }</p> }
            <div class="buttons">
                <button type="button" name="site-take" disabled={blocked} onclick={takes}>
                    { shared.tell("site-take", &[("n", n(count))]) }
                </button>
            </div>
        </>
    }
}
