//! Choose: a draft standard from a patch, and the finish onto its floor.

use super::trial::titled;
use crate::form::site::Act;
use crate::form::site::finish::candidates::Suits;
use crate::form::site::finish::trial::{Mix, Tried};
use crate::page::components::button;
use crate::page::focus;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// Where the standards stand, which take the focus when a draft was begun.
const STANDARDS: &str = "site-standards";

/// The patches to choose from.
pub fn choose(shared: &Shared, tried: &Tried) -> Html {
    if tried.mixes.is_empty() {
        return html! { <><p>{ shared.say("choose-none") }</p>{ on_floor(shared) }</> };
    }
    html! {
        <>
            <p>{ shared.say("choose-hint") }</p>
            <ul class="plain">{ for tried.mixes.iter().map(|mix| html! { <li>{ one(shared, mix) }</li> }) }</ul>
            { on_floor(shared) }
        </>
    }
}

fn one(shared: &Shared, mix: &Mix) -> Html {
    let Some(trial) = shared.typed.trial().filter(|_| mix.candidate.suits != Suits::DoesNotFit) else {
        return html! { { titled(shared, "choose-refused", mix) } };
    };
    let draft = Act::Draft {
        floor: trial.floor.clone(),
        product: trial.product.clone(),
        dilution: mix.dilution.clone(),
    };
    let act = shared.act.clone();
    let onclick = move |_: MouseEvent| {
        act.emit(draft.clone().action());
        focus::soon(STANDARDS.to_owned());
    };
    let name = format!("choose-patch-{}", mix.patch + 1);
    html! { <button type="button" {name} {onclick}>{ titled(shared, "choose-patch", mix) }</button> }
}

/// Says that the finish lies on the floor: from then on it narrows what the floor bears.
fn on_floor(shared: &Shared) -> Html {
    let (Some(finish), Some(floor)) = (shared.typed.finish(), shared.typed.floor()) else {
        return Html::default();
    };
    let told =
        [("finish", Argument::text(finish.name.clone())), ("floor", Argument::text(floor.name.clone()))];
    if floor.finish == finish.id {
        return html! { <p>{ shared.tell("choose-lies", &told) }</p> };
    }
    let id = finish.id.clone();
    html! {
        <>
            <p class="hint">{ shared.say("choose-on-floor-hint") }</p>
            { button(shared, "choose-on-floor", shared.tell("choose-on-floor", &told), move || Act::FloorFinish(id.clone()).action()) }
        </>
    }
}
