//! The label of a workplace container: what it must say, printed at its real size.

use crate::chemistry::ghs::{Knowledge, SignalWord};
use crate::form::cautions::panel;
use crate::form::{fill, names};
use crate::page::pictogram::pictogram;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// When a label is needed and when not, the label itself, and a button that prints it alone.
pub fn container(shared: &Shared) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let panel = panel(product);
    let answer = fill::work(&shared.typed, shared.marks()).outcome.answer;
    let ratio = answer.get(names::FILL_RATIO).map(|ratio| {
        shared.tell(
            "container-dilution",
            &[("n", shared.argument(ratio)), ("label", Argument::text(product.label.clone()))],
        )
    });
    let ppe: Vec<String> = panel.advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    let signal = panel.elements.signal;
    let alone = |_: MouseEvent| {
        let root = gloo::utils::document_element();
        // The label alone is printed while this stands; where it cannot be set the whole view is.
        let _ = root.set_attribute("data-print", "container");
        let _ = gloo::utils::window().print();
        let _ = root.remove_attribute("data-print");
    };
    html! {
        <>
            <p>{ shared.say("container-when") }</p>
            <p>{ shared.say("container-when-not") }</p>
            <div class="container-label" role="group" aria-label={shared.say("container-label")}>
                <p class="container-name">{ &product.name }</p>
                <p>{ ratio }</p>
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
            <p class="hint">{ shared.say("container-strength") }</p>
            <p class="source">{ shared.say("container-source") }</p>
            <div class="buttons">
                <button type="button" name="container-print" onclick={alone}>{ shared.say("container-print") }</button>
            </div>
        </>
    }
}
