//! A site from elsewhere: whose it is, what it has that is different, and what is taken of it.

mod listed;
mod merged;

use super::Props;
use super::told;
use crate::form::site::Act;
use crate::page::components::{Chosen, OpenFile, Told};
use crate::page::focus;
use crate::page::keep::keys::{self, Pinned};
use crate::page::shared::Shared;
use crate::site::Site;
use crate::site::passing::{
    Chain, Decision, Followed, Opened, Pin, Reason, Standing, admit, compare, read, verify,
};
use crate::words::Argument;
use listed::listed;
use merged::merged;
use std::collections::BTreeSet;
use std::rc::Rc;
use yew::prelude::*;

/// A site that was opened and waits.
#[derive(Clone, PartialEq)]
struct Waiting {
    site: Rc<Site>,
    standing: Standing,
    /// Changes that somebody ticked or unticked, by their key.
    turned: BTreeSet<String>,
    /// Whether it is merged with what changed here, and not compared alone.
    merges: bool,
    decisions: Vec<Decision>,
    /// Whether it is taken as it is: what somebody signed is not mixed with anything else.
    whole: bool,
}

/// The ids of the heading of this part, and of that of the site that waits.
const TAKING: &str = "passing-take";
const OTHER: &str = "site-other-heading";

/// What waited was taken or left. Its buttons go; the heading of the part takes the focus.
fn over(waiting: &UseStateHandle<Option<Waiting>>) {
    waiting.set(None);
    focus::soon(TAKING.to_owned());
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
                Ok(Brought::Site(one)) => {
                    waiting.set(Some(*one));
                    Told::default()
                }
                Ok(Brought::Handovers(lines)) => Told { lines, mistake: false },
                Err(line) => Told { lines: vec![shared.say("passing-refused"), line], mistake: true },
            };
            tell.emit(said);
        })
    };
    html! {
        <>
            <h2 id={TAKING} tabindex="-1">{ shared.say("passing-take") }</h2>
            <OpenFile shared={shared.clone()} name="site-open" accept=".json,application/json" {onfile} />
            if let Some(one) = &*waiting { { shown(shared, one, &waiting) } }
        </>
    }
}

/// What a file brought.
enum Brought {
    /// A site that waits.
    Site(Box<Waiting>),
    /// The passing on of keys, which was followed: what is told of it.
    Handovers(Vec<String>),
}

/// The site of a file, where this device may take it.
fn opened(shared: &Shared, bytes: &[u8]) -> Result<Brought, String> {
    let file = match read(bytes) {
        Ok(file) => file,
        Err(refusal) if refusal.reason == Reason::OtherKind => {
            return match Chain::read(bytes) {
                Ok(chain) => follow(shared, &chain).map(Brought::Handovers),
                Err(refusal) => Err(told::refusal(shared, &refusal)),
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
    if let Standing::Signed { by, edition } = standing
        && keys::secret().is_some_and(|secret| secret.public() == by)
    {
        // Another device with this key gave it out: what is signed here comes after it.
        let _ = keys::count(edition);
    }
    if let Some(pin) = pin {
        let seen = pin.saw(standing, compare(&shared.typed.site, &site).is_empty());
        if seen != pin && !keys::count(seen.edition) {
            return Err(shared.say("keep-denied"));
        }
    }
    let whole = pin.is_some();
    let base = keys::base();
    let merges = !whole && base != shared.typed.site && base != site;
    let site = Rc::new(site);
    let waits = Waiting { site, standing, turned: BTreeSet::new(), merges, decisions: Vec::new(), whole };
    Ok(Brought::Site(Box::new(waits)))
}

fn taken(shared: &Shared, file: Opened, pin: Option<&Pin>) -> Result<Site, String> {
    admit(file, pin).map_err(|why| told::why(shared, &why))
}

/// Pins the device to the newest key, where the one that it is pinned to says so, and tells each step. The device of
/// that key itself keeps the chain, so that the next handover is added to it.
fn follow(shared: &Shared, chain: &Chain) -> Result<Vec<String>, String> {
    let Pinned::To(pin) = keys::pinned() else {
        let own = keys::secret().map(|secret| secret.public());
        let led = chain.newest().filter(|newest| Some(*newest) == own);
        return match led.map(|newest| chain.follow(&Pin::to(newest))) {
            Some(Ok(_)) if keys::keep_chain(chain) => Ok(vec![shared.say("handover-kept")]),
            Some(Err(why)) => Err(told::why(shared, &why)),
            _ => Err(shared.say("handover-not-pinned")),
        };
    };
    let Followed { pin, steps } = chain.follow(&pin).map_err(|why| told::why(shared, &why))?;
    if steps.is_empty() {
        return Ok(vec![shared.say("handover-there")]);
    }
    if !keys::pin_to(Some(pin)) {
        return Err(shared.say("keep-denied"));
    }
    let told = steps.iter().map(|step| {
        let keys = [
            ("from", Argument::text(step.from.fingerprint())),
            ("to", Argument::text(step.to.fingerprint())),
        ];
        shared.tell("handover-step", &keys)
    });
    Ok(std::iter::once(shared.say("handover-taken")).chain(told).collect())
}

fn shown(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let whose = match one.standing {
        Standing::Signed { by, edition } => {
            let key = ("by", Argument::text(by.fingerprint()));
            let number = ("edition", Argument::text(edition.to_string()));
            shared.tell(
                if edition == 0 { "passing-signed-uncounted" } else { one.standing.code() },
                &[key, number],
            )
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
        move |_: MouseEvent| over(&waiting)
    };
    html! {
        <section id="site-other" aria-labelledby={OTHER}>
            <h3 id={OTHER} tabindex="-1">{ &one.site.name }</h3>
            <p data-standing={one.standing.code()}>{ whose }</p>
            if !one.whole {
                <div class="levels">{ mode(false, "passing-compare") }{ mode(true, "passing-merge") }</div>
            }
            { if shared.locked { unread(shared, one, waiting) } else if one.merges { merged(shared, one, waiting) } else { listed(shared, one, &one.site, false, waiting) } }
            <div class="buttons"><button type="button" name="site-leave" onclick={leave}>{ shared.say("site-leave") }</button></div>
        </section>
    }
}

/// Puts a site in the place of this one; the site that came is what the next merge starts from.
fn take(shared: &Shared, site: Site, one: &Waiting) {
    // Without room for it the next two sites are compared and not merged.
    let _ = keys::keep_base(&one.site);
    if let Standing::Signed { edition, .. } = one.standing
        && !keys::count(edition)
    {
        // A pinned device that cannot keep how far it has come would let itself be led back.
        return gloo::dialogs::alert(&shared.say("keep-denied"));
    }
    shared.act.emit(Act::TakeSite(Box::new(site)).action());
}

/// A device that is set to its standards knows the rest of its site by no view: the other is taken unread.
fn unread(shared: &Shared, one: &Waiting, waiting: &UseStateHandle<Option<Waiting>>) -> Html {
    let takes = {
        let (shared, one, waiting) = (shared.clone(), one.clone(), waiting.clone());
        move |_: MouseEvent| {
            take(&shared, (*one.site).clone(), &one);
            over(&waiting);
        }
    };
    html! {
        <div class="buttons">
            <button type="button" name="site-take" onclick={takes}>{ shared.say("site-take-whole") }</button>
        </div>
    }
}
