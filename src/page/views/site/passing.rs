//! Passing the site on: as a file, signed, compared and merged; and the keys behind it.

mod changes;
mod keys;
mod told;

pub use changes::Taking;
pub use keys::Keys;
pub use told::refusal;

use crate::page::keep::{download, keys as kept};
use crate::page::shared::Shared;
use crate::site::passing::{Unread, next_edition, sign, unread, write};
use crate::words::Argument;
use yew::prelude::*;

/// The way to a file, and the keys.
pub fn giving(shared: &Shared) -> Html {
    html! {
        <>
            <h2>{ shared.say("passing-give") }</h2>
            <p>{ shared.say("passing-give-hint") }</p>
            <Saving shared={shared.clone()} />
            <Keys shared={shared.clone()} />
        </>
    }
}

/// The way from a file.
pub fn taking(shared: &Shared) -> Html {
    html! { <Taking shared={shared.clone()} /> }
}

/// What a part with a state of its own needs.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What every part needs.
    pub shared: Shared,
}

/// The site as a file, signed where this device has a key.
#[component]
fn Saving(props: &Props) -> Html {
    let shared = &props.shared;
    let refused = use_state(|| None::<String>);
    let saved = use_state(|| None::<u32>);
    let wrong =
        use_memo((shared.typed.clone(), shared.marks()), |(typed, marks)| unread(&typed.site, *marks));
    let onclick = {
        let (shared, refused, saved) = (shared.clone(), refused.clone(), saved.clone());
        let wrong = !wrong.is_empty();
        move |_: MouseEvent| {
            let site = &shared.typed.site;
            let secret = kept::secret();
            saved.set(None);
            if wrong && secret.is_some() {
                return refused.set(Some(shared.say("passing-unread-signed")));
            }
            let edition = secret.map(|secret| (secret, next_edition(kept::edition(), 0)));
            let file = match &edition {
                Some((secret, edition)) => sign(site, secret, *edition),
                None => write(site),
            };
            match file {
                // A number that is not kept would be given twice.
                Ok(_) if edition.as_ref().is_some_and(|(_, edition)| !kept::count(*edition)) => {
                    refused.set(Some(shared.say("key-unable")));
                }
                Ok(text) => {
                    download::offer("brimline-site.json", download::JSON, &text);
                    // What two sites have grown apart from, once one comes back. Without room two are compared.
                    let _ = kept::keep_base(site);
                    refused.set(None);
                    saved.set(edition.map(|(_, edition)| edition));
                }
                Err(refusal) => refused.set(Some(told::refusal(&shared, &refusal))),
            }
        }
    };
    html! {
        <>
            { numbers(shared, &wrong) }
            <div class="buttons">
                <button type="button" name="site-save" {onclick}>{ shared.say("site-save") }</button>
            </div>
            if let Some(edition) = *saved {
                <p role="status" id="site-saved">
                    { shared.tell("passing-saved", &[("edition", Argument::text(edition.to_string()))]) }
                </p>
            }
            if let Some(refused) = &*refused {
                <div class="mistake" role="alert"><p>{ shared.say("passing-not-saved") }</p><p>{ refused }</p></div>
            }
        </>
    }
}

/// So many places are shown at once.
const SHOWN: usize = 20;

/// The numbers that do not read, before anybody gives them on.
fn numbers(shared: &Shared, wrong: &[Unread]) -> Html {
    if wrong.is_empty() {
        return Html::default();
    }
    let site = &shared.typed.site;
    let line = |one: &Unread| {
        let told = [
            ("record", Argument::text(shared.words.record_of((site, site), &one.list, &one.id))),
            ("field", Argument::text(shared.words.field_name(&one.number.of, &one.number.field))),
            ("text", Argument::text(one.number.text.trim())),
        ];
        html! { <li>{ shared.tell("passing-unread", &told) }</li> }
    };
    let more = wrong.len().saturating_sub(SHOWN);
    html! {
        <div class="unknown" id="site-unread">
            <ul>{ for wrong.iter().take(SHOWN).map(line) }</ul>
            if more > 0 {
                <p>{ shared.tell("passing-more", &[("n", Argument::number(more as f64, more.to_string()))]) }</p>
            }
            if kept::secret().is_some() { <p>{ shared.say("passing-unread-signed") }</p> }
        </div>
    }
}
