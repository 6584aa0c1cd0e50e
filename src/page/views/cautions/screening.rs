//! What the use solution itself would be classified as.

use crate::answer::Value;
use crate::chemistry::ghs::SignalWord;
use crate::chemistry::ghs::mixture::{Endpoint, Finding, Reached, Verdict};
use crate::form::cautions::screening::work;
use crate::page::pictogram::pictogram;
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::units::{Kind, Quantity, unit};
use crate::words::Argument;
use yew::prelude::*;

/// The label that follows, and endpoint by endpoint the class, the rule that decided, and what is not known.
pub fn screening(shared: &Shared) -> Html {
    let Some(found) = work(&shared.typed, shared.marks()) else {
        return html! { <p class="unknown">{ shared.say("screen-none") }</p> };
    };
    let label = &found.label;
    let rows = Endpoint::ALL.iter().filter_map(|endpoint| found.of(*endpoint)).map(|one| row(shared, one));
    let codes = |hazards: &[&'static crate::chemistry::ghs::Hazard]| {
        Argument::text(hazards.iter().map(|hazard| hazard.code).collect::<Vec<_>>().join(", "))
    };
    html! {
        <>
            <p class="hint">{ shared.say("screen-hint") }</p>
            <p class="signal" data-signal={label.signal.key()}>
                { for label.pictograms.iter().map(|one| pictogram(*one, shared.say(one.key()))) }
                if label.signal != SignalWord::None { <strong>{ shared.say(label.signal.key()) }</strong> }
            </p>
            <ul class="hazards">
                { for label.statements.iter().map(|hazard| html! {
                    <li><span class="code">{ hazard.code }</span>{ " " }{ shared.say(&hazard.key()) }</li>
                }) }
            </ul>
            { table(shared, "screen-table", &["column-what", "column-class", "column-why"], rows.collect()) }
            if !found.kept.is_empty() {
                <p>{ shared.tell("screen-kept", &[("codes", codes(&found.kept))]) }</p>
            }
            if !found.not_covered.is_empty() {
                <p class="unknown">{ shared.tell("screen-not-covered", &[("codes", codes(&found.not_covered))]) }</p>
            }
            <p>{ shared.say("screen-limits") }</p>
        </>
    }
}

fn row(shared: &Shared, finding: &Finding) -> Html {
    let category = |class: crate::chemistry::ghs::mixture::Class| {
        Argument::number(f64::from(class.category), class.category.to_string())
    };
    let class = match finding.verdict() {
        Verdict::Class(class) => shared.tell("screen-class", &[("n", category(class))]),
        Verdict::AtLeast(class) => shared.tell("screen-at-least", &[("n", category(class))]),
        Verdict::NotClassified => shared.say("screen-not-classified"),
        Verdict::Unknown => shared.say("screen-unknown"),
    };
    let treated = finding.treated_as.filter(|_| !finding.is_certain());
    let percent = |share: crate::units::MassFraction| {
        let share = Value { si: share.si(), kind: Kind::Percent };
        shared.argument(share)
    };
    let reached = match finding.reached {
        Reached::Nothing => String::new(),
        Reached::Share { reached, least } => {
            shared.tell("screen-share", &[("reached", percent(reached)), ("least", percent(least))])
        }
        Reached::Ph(ph) => shared.tell("screen-ph", &[("ph", Argument::number(ph, shared.words.number(ph)))]),
        Reached::Estimate(estimate) => {
            let told = unit("mg_per_kg").map(|unit| shared.words.in_unit(estimate.si(), unit));
            shared.tell("screen-estimate", &[("ate", Argument::text(told.unwrap_or_default()))])
        }
    };
    html! {
        <tr data-endpoint={finding.endpoint.key()}>
            <th scope="row">{ shared.say(finding.endpoint.key()) }</th>
            <td>
                { class }
                if let Some(treated) = treated { { " " }{ shared.tell("screen-treat", &[("n", category(treated))]) } }
            </td>
            <td>
                { shared.say(finding.rule.code) }{ " " }{ reached }
                { for finding.doubts.iter().map(|doubt| html! { <>{ " " }{ shared.say(doubt.key()) }</> }) }
                <span class="source">{ " " }{ shared.words.source(finding.rule.source) }</span>
            </td>
        </tr>
    }
}
