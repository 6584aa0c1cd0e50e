//! A section that unfolds on demand. Folded, what it holds is drawn behind the frame; unfolded, at once: somebody may be
//! typing there.

use super::later::{Draw, Later};
use crate::form::Outcome;
use crate::page::shared::Shared;
use crate::words::Argument;
use web_sys::Element;
use yew::prelude::*;

/// Inputs that an answer does not need, and whether there is something to mend among them; nothing where this device is
/// set to its standards. `key` is the word key of its heading; `names` are the inputs inside, or how their names begin.
/// `draw` is given what is to be mended, and no figures.
pub fn fold(
    shared: &Shared,
    outcome: &Outcome,
    key: &'static str,
    names: &[&str],
    draw: impl Fn(&Shared, &Outcome) -> Html + 'static,
) -> Html {
    if shared.locked {
        return Html::default();
    }
    let inside = |name: &str| names.iter().any(|start| name.starts_with(start));
    let wrong = outcome.troubles.iter().any(|trouble| inside(&trouble.name));
    let mut heading = shared.say(key);
    if wrong {
        heading = shared.tell("fold-wrong", &[("heading", Argument::text(heading))]);
    }
    // Inside, an input asks what is to be mended; the answer is long, and nobody looks for it there.
    let (shared, outcome) =
        (shared.clone(), Outcome { troubles: outcome.troubles.clone(), ..Outcome::default() });
    let draw = Draw::new(move || draw(&shared, &outcome));
    html! { <Fold {key} class="more" {heading} {wrong} {draw} /> }
}

/// What anybody may unfold; `key` is the word key of its heading.
pub fn unfolds<T: 'static>(
    shared: &Shared,
    class: &'static str,
    key: &'static str,
    of: T,
    draw: impl Fn(&T) -> Html + 'static,
) -> Html {
    html! { <Fold key={key} {class} heading={shared.say(key)} draw={Draw::new(move || draw(&of))} /> }
}

#[derive(Properties, PartialEq)]
struct FoldProps {
    class: &'static str,
    heading: String,
    #[prop_or_default]
    wrong: bool,
    draw: Draw,
}

/// Whether it is unfolded.
struct Fold(bool);

impl Component for Fold {
    type Message = bool;
    type Properties = FoldProps;

    fn create(_ctx: &Context<Self>) -> Self {
        Self(false)
    }

    fn update(&mut self, _ctx: &Context<Self>, open: bool) -> bool {
        std::mem::replace(&mut self.0, open) != open
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        let FoldProps { class, heading, wrong, draw } = ctx.props();
        // The browser tells that it was unfolded some time after it did, and somebody may be typing by then.
        let ontoggle = ctx.link().callback(|event: Event| is_open(&event));
        let onfocusin = ctx.link().callback(|event: FocusEvent| is_open(&event));
        html! {
            <details class={*class} {ontoggle} {onfocusin}>
                <summary class={wrong.then_some("wrong")}>{ heading }</summary>
                <Later now={self.0} draw={draw.clone()} />
            </details>
        }
    }
}

/// Whether the section that an event happened in is unfolded.
fn is_open(event: &Event) -> bool {
    event.target_unchecked_into::<Element>().closest("details[open]").is_ok_and(|open| open.is_some())
}
