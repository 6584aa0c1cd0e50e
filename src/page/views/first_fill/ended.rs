//! After the last step: what was passed over, and the way back to it.

use super::lead;
use super::offer::STEP;
use super::panel::GuideProps;
use crate::page::components::Announcer;
use crate::page::focus;
use crate::page::keep::first_fill::{change, use_first_fill};
use crate::page::views::log::fields::press;
use crate::practice::first_fill::{FirstFill, Step};
use yew::prelude::*;

/// The end of the guide.
#[component]
pub fn Ended(props: &GuideProps) -> Html {
    let (shared, guide) = (&props.shared, use_first_fill());
    let skipped: Vec<Step> = guide.skipped().collect();
    let again = |step: &Step| {
        let (own, step) = (shared.clone(), *step);
        let onclick = move |_: MouseEvent| {
            change(|guide| guide.go_to(step));
            lead::show(&own, step);
            focus::soon(STEP.to_owned());
        };
        let name = format!("first-fill-{}", step.code());
        html! { <button type="button" name={name.clone()} {onclick}>{ shared.say(&name) }</button> }
    };
    let said =
        shared.say(if skipped.is_empty() { "first-fill-ended-all" } else { "first-fill-ended-skipped" });
    let close = || {
        change(FirstFill::close);
        focus::soon("main".to_owned());
    };
    html! {
        <section class="guide" aria-labelledby="first-fill-title" data-guide="ended">
            <div class="guide-step">
                <div id={STEP} tabindex="-1">
                    <p class="guide-title" id="first-fill-title">{ shared.say("first-fill-ended") }</p>
                    <p>{ &said }</p>
                </div>
                if !skipped.is_empty() { <div class="buttons">{ for skipped.iter().map(again) }</div> }
                <p class="hint">{ shared.say("first-fill-ended-governs") }</p>
                <div class="buttons">{ press(shared, "first-fill-put-away", close) }</div>
            </div>
            <Announcer text={format!("{} {said}", shared.say("first-fill-ended"))} />
        </section>
    }
}
