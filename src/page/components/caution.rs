//! A product's cautions: short beside an amount, whole on their own view.

use crate::chemistry::advice::Kind;
use crate::chemistry::ghs::{Hazard, Knowledge, Purpose, SignalWord};
use crate::chemistry::pairs::Pair;
use crate::form::cautions::phone;
use crate::form::cautions::{Panel, panel, panel_with};
use crate::page::focus;
use crate::page::pictogram::pictogram;
use crate::page::shared::Shared;
use crate::site::Product;
use crate::words::Argument;
use yew::prelude::*;

/// The signal word, its pictograms and the hazards, the most serious first.
fn hazards(shared: &Shared, product: &Product, panel: &Panel) -> Html {
    let signal = panel.elements.signal;
    html! {
        <>
            <p class="signal" data-signal={signal.key()}>
                { for panel.elements.pictograms.iter().map(|one| pictogram(*one, shared.say(one.key()))) }
                <strong>{ shared.say(signal.key()) }</strong>
            </p>
            <ul class="hazards">
                { for panel.elements.statements.iter().map(|hazard| html! {
                    <li><span class="code">{ hazard.code }</span>{ " " }{ shared.say(&hazard.key()) }</li>
                }) }
            </ul>
            if panel.knowledge == Knowledge::Partial {
                <p class="unknown">{ shared.say("caution-unknown") }</p>
            } else if panel.elements.statements.is_empty() && signal == SignalWord::None {
                <p>{ shared.tell("caution-none", &[("product", Argument::text(product.name.clone()))]) }</p>
            }
            if !panel.codes.unknown.is_empty() {
                <p class="unknown">
                    { shared.tell("caution-codes-unknown", &[("codes", Argument::text(panel.codes.unknown.join(", ")))]) }
                </p>
            }
        </>
    }
}

fn wear(shared: &Shared, panel: &Panel) -> Html {
    let ppe: Vec<String> = panel.advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    html! {
        <>
            <h3>{ shared.say("caution-wear") }</h3>
            if ppe.is_empty() { <p>{ shared.say("caution-wear-none") }</p> } else {
                <ul class="wear">{ for ppe.iter().map(|one| html! { <li>{ one }</li> }) }</ul>
            }
        </>
    }
}

/// What must never meet the product; `whole` adds what to do and where it is written.
fn never(shared: &Shared, product: &Product, panel: &Panel, whole: bool) -> Html {
    let kinds = product.kinds();
    let line = |pair: &&Pair| {
        html! {
            <li>
                <strong>{ shared.words.headed(&shared.say(pair.other_than(&kinds).key())) }</strong>
                { " " }{ shared.say(pair.happens) }
                if whole {
                    { " " }{ shared.say(pair.act) }
                    <span class="source">{ " " }{ shared.words.source(pair.source) }</span>
                }
            </li>
        }
    };
    html! {
        <>
            <h3>{ shared.say("caution-never") }</h3>
            if product.families.is_empty() { <p class="unknown">{ shared.say("caution-never-unknown") }</p> }
            <ul>{ for panel.never.iter().map(line) }<li>{ shared.say("caution-never-any") }</li></ul>
        </>
    }
}

/// Whom to call, as a link that dials where a number stands in it.
fn whom_to_call(shared: &Shared) -> Html {
    let text = shared.typed.site.emergency.trim();
    if text.is_empty() {
        return Html::default();
    }
    let told = shared.tell("caution-call", &[("number", Argument::text(text))]);
    match phone::number(text) {
        Some(number) => html! { <p class="emergency"><a href={format!("tel:{number}")}>{ told }</a></p> },
        None => html! { <p class="emergency">{ told }</p> },
    }
}

/// In the first seconds: whom to call, and the way to first aid.
pub fn first_help(shared: &Shared) -> Html {
    html! {
        <>
            { whom_to_call(shared) }
            <div class="buttons">
                <button type="button" name="first-aid-jump" onclick={|_: MouseEvent| focus::soon("first-aid".to_owned())}>
                    { shared.say("caution-first-aid") }
                </button>
            </div>
        </>
    }
}

/// That the parts ask for more than the label bears.
fn worse(shared: &Shared, more: &[&'static Hazard]) -> Html {
    if more.is_empty() {
        return Html::default();
    }
    let codes: Vec<&str> = more.iter().map(|hazard| hazard.code).collect();
    html! { <p class="unknown">{ shared.tell("caution-worse", &[("codes", Argument::text(codes.join(", ")))]) }</p> }
}

/// What counts in the first seconds: signal word, pictograms and what to wear; `more` is what its parts ask for
/// beyond its label.
pub fn at_once(shared: &Shared, product: &Product, more: &[&'static Hazard]) -> Html {
    let panel = panel_with(product, more);
    let signal = panel.elements.signal;
    let ppe: Vec<String> = panel.advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    html! {
        <div class="at-once">
            <p class="signal" data-signal={signal.key()}>
                { for panel.elements.pictograms.iter().map(|one| pictogram(*one, shared.say(one.key()))) }
                <strong>{ shared.say(signal.key()) }</strong>
            </p>
            <p>
                if ppe.is_empty() { { shared.say("caution-wear-none") } } else {
                    { shared.tell("step-wear", &[("ppe", Argument::text(ppe.join(", ")))]) }
                }
            </p>
            { worse(shared, more) }
        </div>
    }
}

/// Beside every amount: signal word, hazards, PPE, what must never meet it, order of addition.
pub fn caution_strip(shared: &Shared) -> Html {
    shared.typed.product().map(|product| caution_of(shared, product)).unwrap_or_default()
}

/// The same of any product.
pub fn caution_of(shared: &Shared, product: &Product) -> Html {
    let panel = panel(product);
    // Two products may stand beside each other: each is a place of its own name.
    let title = shared.tell("caution-of", &[("product", Argument::text(product.name.clone()))]);
    html! {
        <section class="caution" aria-label={title.clone()}>
            <h2>{ title.clone() }</h2>
            { hazards(shared, product, &panel) }
            { wear(shared, &panel) }
            { never(shared, product, &panel, false) }
            <p>{ shared.say("caution-order") }</p>
            <p class="defer">{ shared.say("caution-defer") }</p>
            <p><a href="#cautions">{ shared.say("caution-more") }</a></p>
        </section>
    }
}

/// Everything that is known about handling the product; `more` is what its parts ask for beyond its label.
pub fn caution_panel(shared: &Shared, more: &[&'static Hazard]) -> Html {
    let Some(product) = shared.typed.product().cloned() else { return Html::default() };
    let panel = panel_with(&product, more);
    let list = |kind: Kind| {
        let mut keys: Vec<&str> = panel.advice.of(kind).map(|measure| measure.key).collect();
        keys.dedup();
        html! { <ul>{ for keys.iter().map(|key| html! { <li>{ shared.say(key) }</li> }) }</ul> }
    };
    let always = |key: &str| html! { <p>{ shared.say(key) }</p> };
    html! {
        <section class="caution whole" aria-label={shared.say("cautions")}>
            <h2>{ shared.tell("caution-of", &[("product", Argument::text(product.name.clone()))]) }</h2>
            { hazards(shared, &product, &panel) }
            { wear(shared, &panel) }
            <h3 id="first-aid" tabindex="-1">{ shared.say("caution-first-aid") }</h3>
            <ul>
                { for panel.advice.first_aid().map(|measure| html! { <li>{ shared.say(measure.key) }</li> }) }
            </ul>
            { always("caution-first-aid-always") }
            { whom_to_call(shared) }
            { never(shared, &product, &panel, true) }
            <h3>{ shared.say("caution-handle") }</h3>
            { always("caution-order") }
            { list(Kind::Handle) }
            <h3>{ shared.say("caution-spill") }</h3>
            { always("caution-spill-always") }
            { list(Kind::Spill) }
            <h3>{ shared.say("caution-store") }</h3>
            { always("caution-store-always") }
            { list(Kind::Store) }
            <h3>{ shared.say("caution-dispose") }</h3>
            { list(Kind::Dispose) }
            { always("caution-dispose-always") }
            if !product.notes.trim().is_empty() {
                <h3>{ shared.say("caution-notes") }</h3>
                <p class="notes">{ &product.notes }</p>
            }
            if !panel.codes.precautions.is_empty() {
                <h3>{ shared.say("caution-precautions") }</h3>
                <ul class="precautions">
                    { for panel.codes.precautions.iter().filter(|one| one.purpose() != Purpose::General).map(|one| html! {
                        <li><span class="code">{ one.code }</span>{ " " }{ shared.say(&one.key()) }</li>
                    }) }
                </ul>
            }
            <p class="defer">{ shared.say("caution-defer") }</p>
        </section>
    }
}
