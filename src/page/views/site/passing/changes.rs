//! A site from elsewhere: whose it is, what it has that is different, and what is taken of it.

use super::Props;
use super::told;
use crate::form::site::Act;
use crate::page::components::{Chosen, OpenFile, Told};
use crate::page::keep::keys::{self, Pinned};
use crate::page::shared::Shared;
use crate::site::Site;
use crate::site::passing::{
    Change, Conflict, Decision, Handover, Merged, Opened, Pin, Reason, Side, Standing, WHOLE, admit, choose,
    compare, decide, read, verify,
};
use crate::words::Argument;
use std::collections::BTreeSet;
use std::rc::Rc;
use yew::prelude::*;

/// So many changes are shown: nobody reads more, and all are taken or none.
const SHOWN: usize = 200;

/// A site that was opened and waits.
#[derive(Clone, PartialEq)]
struct Waiting {
    site: Rc<Site>,
    standing: Standing,
    /// Changes that are left out, by their place.
    left: BTreeSet<usize>,
    /// Whether it is merged with what changed here, and not compared alone.
    merges: bool,
    decisions: Vec<Decision>,
    /// Whether it is taken as it is: what somebody signed is not mixed with anything else.
    whole: bool,
}

/// Opens a site, shows what is different, takes what is wanted.
#[component]
pub fn Taking(props: &Props) -> Html {
    let shared = &props.shared;
    let waiting = use_state(|| None::<Waiting>);
    let onfile = {
        let (shared, waiting) = (shared.clone(), waiting.clone());
        Callback::from(move |(file, tell): (Chosen, Callback<Told>)| {
            waiting.set(None);
            let said = match opened(&shared, &file.bytes) {
                Ok(Some(one)) => {
                    waiting.set(Some(one));
                    Told::default()
                }
                Ok(None) => Told { lines: vec![shared.say("handover-taken")], mistake: false },
                Err(line) => Told { lines: vec![shared.say("passing-refused"), line], mistake: true },
            };
            tell.emit(said);
        })
    };
    html! {
        <>
            <h2>{ shared.say("passing-take") }</h2>
            <OpenFile shared={shared.clone()} name="site-open" accept=".json,application/json" {onfile} />
            if let Some(one) = &*waiting { { shown(shared, one, &waiting) } }
        </>
    }
}

/// The site of a file, where this device may take it; `None` for the passing on of a key, which was followed.
fn opened(shared: &Shared, bytes: &[u8]) -> Result<Option<Waiting>, String> {
    let file = match read(bytes) {
        Ok(file) => file,
        Err(refusal) if refusal.reason == Reason::OtherKind => {
            return match Handover::read(bytes) {
                Ok(handover) => follow(shared, &handover).map(|()| None),
                Err(_) => Err(told::refusal(shared, &refusal)),
            };
        }
        Err(refusal) => return Err(told::refusal(shared, &refusal)),
    };
    let pin = match keys::pinned() {
        Pinned::No => None,
        Pinned::To(pin) => Some(pin),
        Pinned::Unreadable => return Err(shared.say("pin-unreadable")),
    };
    let standing = verify(&file);
    let site = taken(shared, file, pin.as_ref())?;
    let whole = pin.is_some();
    let base = keys::base();
    let merges = !whole && base != shared.typed.site && base != site;
    let site = Rc::new(site);
    Ok(Some(Waiting { site, standing, left: BTreeSet::new(), merges, decisions: Vec::new(), whole }))
}

fn taken(shared: &Shared, file: Opened, pin: Option<&Pin>) -> Result<Site, String> {
    admit(file, pin).map_err(|why| told::why(shared, &why))
}

/// Pins the device to the next key, where the one that it is pinned to says so.
fn follow(shared: &Shared, handover: &Handover) -> Result<(), String> {
    let Pinned::To(pin) = keys::pinned() else { return Err(shared.say("handover-not-pinned")) };
    let next = handover.follow(&pin).map_err(|why| told::why(shared, &why))?;
    if keys::pin_to(Some(&next.0)) { Ok(()) } else { Err(shared.say("keep-denied")) }
}

fn shown(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let whose = match one.standing {
        Standing::Signed { by } => {
            shared.tell(one.standing.code(), &[("by", Argument::text(by.fingerprint()))])
        }
        Standing::Unsigned | Standing::Altered => shared.say(one.standing.code()),
    };
    let mode = |merges: bool, key: &'static str| {
        let (waiting, one) = (waiting.clone(), one.clone());
        let pressed = one.merges == merges;
        let onclick = move |_: MouseEvent| waiting.set(Some(Waiting { merges, ..one.clone() }));
        html! { <button type="button" name={key} aria-pressed={pressed.to_string()} {onclick}>{ shared.say(key) }</button> }
    };
    let leave = {
        let waiting = waiting.clone();
        move |_: MouseEvent| waiting.set(None)
    };
    html! {
        <section id="site-other" aria-labelledby="site-other-heading">
            <h3 id="site-other-heading">{ &one.site.name }</h3>
            <p data-standing={one.standing.code()}>{ whose }</p>
            if !one.whole {
                <div class="levels">{ mode(false, "passing-compare") }{ mode(true, "passing-merge") }</div>
            }
            { if shared.locked { unread(shared, one, waiting) } else if one.merges { merged(shared, one, waiting) } else { compared(shared, one, waiting) } }
            <div class="buttons"><button type="button" name="site-leave" onclick={leave}>{ shared.say("site-leave") }</button></div>
        </section>
    }
}

/// Puts a site in the place of this one; `theirs` is what the next merge starts from.
fn take(shared: &Shared, site: Site, theirs: &Site) {
    // Without room for it the next two sites are compared and not merged.
    let _ = keys::keep_base(theirs);
    shared.act.emit(Act::TakeSite(Box::new(site)).action());
}

/// A device that is set to its standards knows the rest of its site by no view: the other is taken unread.
fn unread(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let takes = {
        let (shared, one, waiting) = (shared.clone(), one.clone(), waiting.clone());
        move |_: MouseEvent| {
            take(&shared, (*one.site).clone(), &one.site);
            waiting.set(None);
        }
    };
    html! {
        <div class="buttons">
            <button type="button" name="site-take" onclick={takes}>{ shared.say("site-take-whole") }</button>
        </div>
    }
}

/// Every difference, each to be taken or left.
fn compared(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let changes = compare(&shared.typed.site, &one.site);
    if changes.is_empty() {
        return html! { <p role="status">{ shared.say("passing-same") }</p> };
    }
    let one_whole = one.whole;
    let line = |(index, change): (usize, &Change)| {
        let (waiting, one) = (waiting.clone(), one.clone());
        let on = !one.left.contains(&index);
        // A standard or a trial is taken whole, or it would say what nobody wrote.
        let with = |(_, other): &(usize, &Change)| other.list == change.list && other.id == change.id;
        let together: Vec<usize> = if WHOLE.contains(&change.list.as_str()) {
            changes.iter().enumerate().filter(with).map(|(index, _)| index).collect()
        } else {
            vec![index]
        };
        let onchange = move |_: Event| {
            let mut next = one.clone();
            for index in &together {
                if on {
                    next.left.insert(*index);
                } else {
                    next.left.remove(index);
                }
            }
            waiting.set(Some(next));
        };
        let name = format!("change-{}", index + 1);
        html! {
            <li>
                <label class="switch">
                    <input type="checkbox" id={name.clone()} {name} checked={on} disabled={one_whole} {onchange} />
                    <span>{ told::change(shared, change) }</span>
                </label>
            </li>
        }
    };
    let takes = {
        let (shared, one, waiting, changes) = (shared.clone(), one.clone(), waiting.clone(), changes.clone());
        move |_: MouseEvent| {
            let wanted: Vec<Change> = changes
                .iter()
                .enumerate()
                .filter(|(index, _)| !one.left.contains(index))
                .map(|(_, change)| change.clone())
                .collect();
            let whole = one.whole || one.left.is_empty();
            let site =
                if whole { Ok((*one.site).clone()) } else { choose(&shared.typed.site, &one.site, &wanted) };
            match site {
                Ok(site) => {
                    take(&shared, site, &one.site);
                    waiting.set(None);
                }
                // There is no place of its own to say it in, and it must not pass unseen.
                Err(refusal) => gloo::dialogs::alert(&told::refusal(&shared, &refusal)),
            }
        }
    };
    let n = |count: usize| Argument::number(count as f64, shared.words.number(count as f64));
    html! {
        <>
            if one.whole { <p>{ shared.say("passing-whole") }</p> }
            <p role="status">{ shared.tell("passing-changes", &[("n", n(changes.len()))]) }</p>
            <ul class="changes">{ for changes.iter().enumerate().take(SHOWN).map(line) }</ul>
            if changes.len() > SHOWN { <p>{ shared.tell("passing-more", &[("n", n(changes.len() - SHOWN))]) }</p> }
            <div class="buttons">
                <button type="button" name="site-take" onclick={takes}>
                    { shared.tell("site-take", &[("n", n(changes.len() - one.left.len()))]) }
                </button>
            </div>
        </>
    }
}

/// What both changed, as one site; where they clash somebody decides.
fn merged(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let base = keys::base();
    let ours = &shared.typed.site;
    let Merged { site, conflicts, renamed } = decide(&base, ours, &one.site, &one.decisions);
    let changes = compare(ours, &site);
    let takes = {
        let (shared, one, waiting, site) = (shared.clone(), one.clone(), waiting.clone(), site.clone());
        move |_: MouseEvent| {
            take(&shared, site.clone(), &one.site);
            waiting.set(None);
        }
    };
    html! {
        <>
            <p>{ shared.say("passing-merge-hint") }</p>
            if !conflicts.is_empty() {
                <h4>{ shared.say("conflicts") }</h4>
                <ul class="findings">{ for conflicts.iter().map(|conflict| clash(shared, one, conflict, waiting)) }</ul>
            }
            if changes.is_empty() { <p role="status">{ shared.say("passing-same") }</p> }
            <ul class="changes">{ for changes.iter().take(SHOWN).map(|change| html! { <li>{ told::change(shared, change) }</li> }) }</ul>
            if !renamed.is_empty() { <p>{ shared.say("passing-renamed") }</p> }
            <div class="buttons">
                <button type="button" name="site-take" disabled={!conflicts.is_empty()} onclick={takes}>{ shared.say("site-take-merged") }</button>
            </div>
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
    use crate::site::passing::Clash;
    let field = match &conflict.clash {
        Clash::Field { field, .. } | Clash::Circle { field, .. } => {
            told::field(shared, &conflict.list, field)
        }
        _ => String::new(),
    };
    let told = shared.tell(
        conflict.code(),
        &[
            ("record", Argument::text(told::record(shared, &conflict.list, &conflict.name))),
            ("field", Argument::text(field)),
        ],
    );
    let values = match &conflict.clash {
        Clash::Field { ours, theirs, .. } | Clash::Circle { ours, theirs, .. } => {
            Some((told::value(shared, ours), told::value(shared, theirs)))
        }
        _ => None,
    };
    let side = |side: Side, key: &'static str, value: Option<&String>| {
        let (waiting, one, decision) = (waiting.clone(), one.clone(), conflict.take(side));
        let onclick = move |_: MouseEvent| {
            let mut next = one.clone();
            next.decisions.push(decision.clone());
            waiting.set(Some(next));
        };
        let text = value.map_or_else(|| shared.say(key), |value| format!("{}: {value}", shared.say(key)));
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
