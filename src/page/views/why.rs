//! Why a view matters at work: a few plain sentences and a picture, behind a small control beside its heading.

use crate::page::drawing::why_drawing;
use crate::page::shared::Shared;
use std::cell::RefCell;
use std::collections::BTreeSet;
use web_sys::Element;
use yew::prelude::*;

thread_local! {
    /// The views on which it is unfolded: whoever comes back to one finds it as it was.
    static UNFOLDED: RefCell<BTreeSet<String>> = const { RefCell::new(BTreeSet::new()) };
}

/// What unfolds at the heading of a view. The jobs of the fill station are views of their own here.
pub fn why(shared: &Shared, view: &'static str) -> Html {
    let about = match view {
        "fill" => shared.typed.ask.station.job.code().replace('_', "-"),
        view => view.to_owned(),
    };
    let open = UNFOLDED.with_borrow(|all| all.contains(&about));
    let ontoggle = {
        let about = about.clone();
        move |event: Event| {
            let open = event.target_unchecked_into::<Element>().has_attribute("open");
            UNFOLDED.with_borrow_mut(|all| if open { all.insert(about.clone()) } else { all.remove(&about) });
        }
    };
    // Keyed: views stand in one place of the document, and one would take over what is unfolded on another.
    html! {
        <details class="matters" key={about.clone()} data-why={about.clone()} {open} {ontoggle}>
            <summary>{ shared.say("why") }</summary>
            <p>{ shared.say(&format!("why-{about}")) }</p>
            { why_drawing(shared, &about) }
        </details>
    }
}
