//! The label of a workplace container: what it must say, printed at its real size.

use crate::chemistry::ghs::mixture::Rule;
use crate::chemistry::ghs::{Knowledge, SignalWord};
use crate::form::cautions::container::{Bears, Holds, Label, label};
use crate::form::{Action, fill, names};
use crate::page::components::{pick, print_part};
use crate::page::pictogram::pictogram;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// When a label is needed and when not, the label itself, and a button that prints it alone.
pub fn container(shared: &Shared) -> Html {
    let Some(label) = label(&shared.typed, shared.marks()) else { return Html::default() };
    let (key, bears) = match &label.bears {
        Bears::Concentrate => ("container-bears-concentrate", Vec::new()),
        Bears::ConcentrateInstead => ("container-bears-instead", Vec::new()),
        Bears::Screened(rules) => ("container-bears-screened", rules.clone()),
    };
    let rule = |rule: &&Rule| {
        html! {
            <li>{ shared.say(rule.code) }<span class="source">{ " " }{ shared.words.source(rule.source) }</span></li>
        }
    };
    html! {
        <>
            <p>{ shared.say("container-when") }</p>
            <p>{ shared.say("container-when-not") }</p>
            { pick(shared, "container-holds", "container-holds", label.holds, Action::Holds) }
            if !label.strength { <p class="unknown">{ shared.say("container-no-strength") }</p> }
            <div data-part="container">{ drawn(shared, &label) }</div>
            <p class="hint" data-bears={key}>{ shared.say(key) }</p>
            if !bears.is_empty() { <ul>{ for bears.iter().map(rule) }</ul> }
            <p class="source">{ shared.say("container-source") }</p>
            if label.strength { <div class="buttons">{ print_part(shared, "container-print", "container") }</div> }
        </>
    }
}

/// The label alone.
pub fn container_label(shared: &Shared) -> Html {
    label(&shared.typed, shared.marks()).map(|label| drawn(shared, &label)).unwrap_or_default()
}

fn drawn(shared: &Shared, label: &Label) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let answer = fill::work(&shared.typed, shared.marks()).outcome.answer;
    let written = Argument::text(product.label.clone());
    let holds = match (label.holds, answer.get(names::FILL_RATIO)) {
        (Holds::Concentrate, _) => shared.say("container-holds-concentrate"),
        (Holds::UseSolution, Some(ratio)) => {
            shared.tell("container-dilution", &[("n", shared.argument(ratio)), ("label", written)])
        }
        // What bears no strength is no label.
        (Holds::UseSolution, None) => return Html::default(),
    };
    let ppe: Vec<String> = label.advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    let signal = label.elements.signal;
    html! {
        <div class="container-label" role="group" aria-label={shared.say("container-label")}>
            <p class="container-name">{ &product.name }</p>
            <p>{ holds }</p>
            <p class="signal">
                { for label.elements.pictograms.iter().map(|one| pictogram(*one, shared.say(one.key()))) }
                if signal != SignalWord::None { <strong>{ shared.say(signal.key()) }</strong> }
            </p>
            <ul class="hazards">
                { for label.elements.statements.iter().map(|hazard| html! { <li>{ shared.say(&hazard.key()) }</li> }) }
            </ul>
            if matches!(label.bears, Bears::Screened(_)) { <p>{ shared.say("container-estimate") }</p> }
            if label.worse { <p>{ shared.say("container-worse") }</p> }
            if label.knowledge == Knowledge::Partial { <p>{ shared.say("container-unknown") }</p> }
            if !ppe.is_empty() { <p>{ shared.tell("step-wear", &[("ppe", Argument::text(ppe.join(", ")))]) }</p> }
            <p class="container-foot">{ shared.say("container-foot") }</p>
        </div>
    }
}
