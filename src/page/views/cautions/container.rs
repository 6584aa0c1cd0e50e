//! The label of a workplace container: what it must say, printed at its real size.

use crate::chemistry::ghs::{Knowledge, SignalWord};
use crate::form::cautions::panel;
use crate::form::{fill, names};
use crate::page::components::print_part;
use crate::page::pictogram::pictogram;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// When a label is needed and when not, the label itself, and a button that prints it alone.
pub fn container(shared: &Shared) -> Html {
    html! {
        <>
            <p>{ shared.say("container-when") }</p>
            <p>{ shared.say("container-when-not") }</p>
            <div data-part="container">{ label(shared) }</div>
            <p class="hint">{ shared.say("container-strength") }</p>
            <p class="source">{ shared.say("container-source") }</p>
            <div class="buttons">{ print_part(shared, "container-print", "container") }</div>
        </>
    }
}

/// The label of a container with use solution of the product asked about, as strong as Fill works it out.
pub fn label(shared: &Shared) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let panel = panel(product);
    let answer = fill::work(&shared.typed, shared.marks()).outcome.answer;
    let written = Argument::text(product.label.clone());
    let strength = match answer.get(names::FILL_RATIO) {
        Some(ratio) => {
            shared.tell("container-dilution", &[("n", shared.argument(ratio)), ("label", written)])
        }
        None => shared.tell("container-dilution-unknown", &[("label", written)]),
    };
    let ppe: Vec<String> = panel.advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    let signal = panel.elements.signal;
    html! {
        <div class="container-label" role="group" aria-label={shared.say("container-label")}>
            <p class="container-name">{ &product.name }</p>
            <p>{ strength }</p>
            <p class="signal">
                { for panel.elements.pictograms.iter().map(|one| pictogram(*one, shared.say(one.key()))) }
                if signal != SignalWord::None { <strong>{ shared.say(signal.key()) }</strong> }
            </p>
            <ul class="hazards">
                { for panel.elements.statements.iter().map(|hazard| html! { <li>{ shared.say(&hazard.key()) }</li> }) }
            </ul>
            if panel.knowledge == Knowledge::Partial { <p>{ shared.say("container-unknown") }</p> }
            if !ppe.is_empty() { <p>{ shared.tell("step-wear", &[("ppe", Argument::text(ppe.join(", ")))]) }</p> }
            <p class="container-foot">{ shared.say("container-foot") }</p>
        </div>
    }
}
