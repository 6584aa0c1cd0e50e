//! Where the guide is offered: on Practice, and by a quiet link while the demo is shown.

use super::{Props, lead};
use crate::page::focus;
use crate::page::keep::first_fill::{change, use_first_fill};
use crate::page::log::now;
use crate::page::shared::Shared;
use crate::page::views::log::fields::press;
use crate::practice::first_fill::{FirstFill, Stage, Step};
use crate::site::demo;
use crate::words::Argument;
use yew::prelude::*;

/// What takes the focus when a step is shown.
pub const STEP: &str = "first-fill-step";

/// A whole number as an argument.
pub fn number(shared: &Shared, n: usize) -> Argument {
    Argument::number(n as f64, shared.words.number(n as f64))
}

fn begin(shared: &Shared) {
    change(|guide| *guide = FirstFill::begin(&now()));
    lead::show(shared, Step::default());
    focus::soon(STEP.to_owned());
}

fn resume(shared: &Shared, guide: &FirstFill) {
    change(FirstFill::resume);
    lead::show(shared, guide.at);
    focus::soon(STEP.to_owned());
}

/// On Practice.
#[component]
pub fn Offer(props: &Props) -> Html {
    let (shared, guide) = (&props.shared, use_first_fill());
    let at = [("n", number(shared, guide.at.place() + 1)), ("of", number(shared, Step::ALL.len()))];
    let starts = {
        let own = shared.clone();
        move || begin(&own)
    };
    let goes_on = {
        let (own, guide) = (shared.clone(), guide.clone());
        move |_: MouseEvent| resume(&own, &guide)
    };
    html! {
        <section class="first-fill-offer" aria-labelledby="first-fill-offer">
            <h2 id="first-fill-offer">{ shared.say("first-fill") }</h2>
            <p>{ shared.say("first-fill-about") }{ " " }{ shared.say("first-fill-safe") }</p>
            if guide.is_held() { <p>{ shared.tell("first-fill-runs", &at) }</p> }
            <div class="buttons">
                if guide.is_held() {
                    <button type="button" name="first-fill-resume" onclick={goes_on}>{ shared.tell("first-fill-resume", &at) }</button>
                    { press(shared, "first-fill-again", starts) }
                } else {
                    { press(shared, "first-fill-begin", starts) }
                }
            </div>
        </section>
    }
}

/// One quiet line below Fill's answer, while the demo is shown and nobody put the guide away.
#[component]
pub fn Link(props: &Props) -> Html {
    let (shared, guide) = (&props.shared, use_first_fill());
    let of_demo = use_memo((), |()| demo().name);
    // Its name is what stands at the head of the page: who types over a tank to try it out still sees the demo.
    let is_demo = shared.typed.site.name == *of_demo;
    if shared.locked || !is_demo || !matches!(guide.stage, Stage::Idle | Stage::Paused) {
        return Html::default();
    }
    let (own, kept) = (shared.clone(), guide.clone());
    let onclick = move |_: MouseEvent| if kept.is_held() { resume(&own, &kept) } else { begin(&own) };
    let told = if guide.is_held() {
        shared.tell("first-fill-link-resume", &[("n", number(shared, guide.at.place() + 1))])
    } else {
        shared.say("first-fill-link")
    };
    html! {
        <p class="first-fill-link">
            <button type="button" class="link" name="first-fill-link" {onclick}>{ told }</button>
        </p>
    }
}
