//! Passing the site on: as a file, signed, compared and merged; and the keys behind it.

mod changes;
mod keys;
mod told;

pub use changes::Taking;
pub use keys::Keys;
pub use told::refusal;

use crate::page::keep::{download, keys as kept};
use crate::page::shared::Shared;
use crate::site::passing::{sign, write};
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
    let onclick = {
        let (shared, refused) = (shared.clone(), refused.clone());
        move |_: MouseEvent| {
            let site = &shared.typed.site;
            let file = match kept::secret() {
                Some(secret) => sign(site, &secret),
                None => write(site),
            };
            match file {
                Ok(text) => {
                    download::offer("brimline-site.json", download::JSON, &text);
                    // What two sites have grown apart from, once one comes back. Without room two are compared.
                    let _ = kept::keep_base(site);
                    refused.set(None);
                }
                Err(refusal) => refused.set(Some(told::refusal(&shared, &refusal))),
            }
        }
    };
    html! {
        <>
            <div class="buttons">
                <button type="button" name="site-save" {onclick}>{ shared.say("site-save") }</button>
            </div>
            if let Some(refused) = &*refused {
                <div class="mistake" role="alert"><p>{ shared.say("passing-not-saved") }</p><p>{ refused }</p></div>
            }
        </>
    }
}
