//! The estimate of the use solution's pH.

use crate::answer::Value;
use crate::chemistry::floor::{Ground, Window};
use crate::form::cautions::floors::PhOf;
use crate::form::cautions::leaving::{Leaving, leaving};
use crate::form::cautions::ph::{Ph, work};
use crate::form::cautions::{UsePh, ground};
use crate::form::{Field, names};
use crate::page::components::{assumptions, computed, number_field};
use crate::page::drawing::ph_curve;
use crate::page::shared::Shared;
use crate::units::{Kind, VolumeFraction};
use crate::words::Argument;
use yew::prelude::*;

/// The tap water, the band, what it means for the floor, and the picture.
pub fn ph(shared: &Shared) -> Html {
    let found = work(&shared.typed, shared.marks());
    let number = |field: Field| number_field(shared, &found.outcome, field, None);
    html! {
        <>
            <div class="fields">{ for [Field::Alkalinity, Field::TapPh, Field::Density].map(number) }</div>
            { told(shared, &found) }
            { assumptions(shared, &found.outcome.answer.remarks) }
            <p class="source">{ shared.tell("ph-source", &[("source", Argument::text(shared.words.source(crate::chemistry::acid_base::SOURCE)))]) }</p>
        </>
    }
}

fn told(shared: &Shared, found: &Ph) -> Html {
    let product = shared.typed.product();
    if product.is_none_or(|product| product.parts.is_empty()) {
        return html! { <p class="unknown">{ shared.say("ph-no-parts") }</p> };
    }
    if !found.unknown.is_empty() {
        let parts = Argument::text(found.unknown.join(", "));
        return html! { <p class="unknown">{ shared.tell("ph-unknown-parts", &[("parts", parts)]) }</p> };
    }
    let answer = &found.outcome.answer;
    let (Some(low), Some(high)) = (answer.get(names::PH_LOW), answer.get(names::PH_HIGH)) else {
        return html! { <p class="unknown">{ shared.say("ph-not-yet") }</p> };
    };
    let used = UsePh::of(&shared.typed, shared.marks());
    let ground = shared.typed.floor().map(|floor| ground(&shared.typed.site, floor, shared.marks()));
    let stronger = product.zip(ground).and_then(|(product, ground)| {
        PhOf::in_machine(&shared.typed, shared.marks()).fit(product, ground).stronger()
    });
    let one = shared.show(low) == shared.show(high);
    let window = ground.and_then(Ground::window);
    html! {
        <>
            <p>
                { shared.say("ph-band") }{ " " }
                { computed(shared, names::PH_LOW, low) }
                if !one { { " – " }{ computed(shared, names::PH_HIGH, high) } }
            </p>
            if used.printed { <p>{ shared.say(if used.against.is_some() { "ph-differs" } else { "ph-maker" }) }</p> }
            if let Some(stronger) = stronger { <p data-neat={stronger}>{ shared.say(stronger) }</p> }
            { for window.and_then(|window| leaves(shared, window)) }
            if let Some(strength) = found.strength { { ph_curve(shared, &found.curve, strength, window) } <p class="hint">{ shared.say("drawing-ph-key") }</p> }
        </>
    }
}

/// At what dilution the estimate leaves what the floor bears.
fn leaves(shared: &Shared, window: Window) -> Option<Html> {
    let ph = |ph: f64| Argument::number(ph, shared.words.number(ph));
    let told = |key: &str| shared.tell(key, &[("low", ph(window.low)), ("high", ph(window.high))]);
    let ratio = |name: &'static str, strength: VolumeFraction| {
        computed(shared, name, Value::plain(strength.parts_of_water(), Kind::Ratio))
    };
    Some(match leaving(&shared.typed, window, shared.marks())? {
        Leaving::Never => html! { <p>{ told("ph-leaves-never") }</p> },
        Leaving::Always => html! { <p>{ told("ph-leaves-always") }</p> },
        Leaving::From { may, surely, acid } => html! {
            <p>
                { told(if acid { "ph-leaves-acid" } else { "ph-leaves-alkaline" }) }{ " " }
                { ratio(names::PH_LEAVES, may) }{ ". " }
                if let Some(surely) = surely {
                    { shared.say("ph-leaves-surely") }{ " " }{ ratio(names::PH_LEAVES_SURELY, surely) }{ "." }
                }
            </p>
        },
    })
}
