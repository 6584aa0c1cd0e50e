//! Tells a screen reader of a changed answer, once, when typing has come to rest.

use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// How long an answer must stand before it is announced.
const REST_MS: u32 = 900;

/// What to announce.
#[derive(Properties, PartialEq)]
pub struct AnnouncerProps {
    /// The sentence.
    pub text: String,
}

/// A live region.
#[component]
pub fn Announcer(props: &AnnouncerProps) -> Html {
    let said = use_state(String::new);
    {
        let said = said.clone();
        use_effect_with(props.text.clone(), move |text| {
            let text = text.clone();
            let timer = Timeout::new(REST_MS, move || said.set(text));
            move || drop(timer)
        });
    }
    html! { <p class="unseen" role="status">{ &*said }</p> }
}
