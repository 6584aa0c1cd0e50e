//! What stands in the way of a standard, what it gives in each machine, and the way to publish it.

use super::title;
use crate::answer::Value;
use crate::form::action::Line;
use crate::form::site::proof::{Finding, InMachine, Proof, prove};
use crate::form::site::{Act, asked};
use crate::page::components::{Text, text_field};
use crate::page::focus;
use crate::page::keep::today;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::in_measure;
use crate::page::views::table;
use crate::site::{Measure, Standard, Standing};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The check of the standard asked about.
pub fn checked(shared: &Shared) -> Html {
    let Some(standard) = shared.typed.standard() else { return Html::default() };
    let today = today::now();
    let proof = prove(&shared.typed, standard, &today, shared.marks());
    let draft = standard.standing == Standing::Draft;
    html! {
        <section aria-labelledby="checked-heading">
            <h2 id="checked-heading">{ title(shared, standard) }</h2>
            if draft { { findings(shared, &proof) } }
            { doses(shared, standard, &proof) }
            if draft { { publish(shared, standard, &proof, today) } }
            <p class="defer">{ shared.say("caution-defer") }</p>
        </section>
    }
}

/// What a finding is called.
pub fn heading(shared: &Shared, code: &str) -> String {
    shared.words.find(&format!("{code}-title")).unwrap_or_else(|| shared.say(code))
}

fn findings(shared: &Shared, proof: &Proof) -> Html {
    if proof.findings.is_empty() {
        return html! { <p role="status">{ shared.say("finding-none") }</p> };
    }
    html! { <ul class="findings">{ for proof.findings.iter().map(|one| finding(shared, one)) }</ul> }
}

fn finding(shared: &Shared, finding: &Finding) -> Html {
    let code = finding.remark.code;
    let weight = if finding.blocks { "finding-blocks" } else { "finding-warns" };
    let reason = Text {
        line: Line::Override(code),
        name: format!("override-{code}"),
        key: "override",
        value: finding.reason.clone().unwrap_or_default(),
        tall: false,
        mistake: finding.reason.as_ref().filter(|_| finding.holds()).map(|_| shared.say("reason-short")),
    };
    html! {
        <li key={format!("{code}-{}", finding.machines.join("-"))}
            class={classes!("remark", (!finding.holds()).then_some("news"))} data-remark={code} data-blocks={finding.blocks.to_string()}>
            <h3>{ shared.tell(weight, &[("what", Argument::text(heading(shared, code)))]) }</h3>
            if shared.words.remark_title(&finding.remark).is_some() {
                <p>{ shared.words.remark(&finding.remark, shared.system()) }</p>
            }
            if !finding.machines.is_empty() {
                <p>{ shared.tell("finding-machines", &[("machines", Argument::text(finding.machines.join(", ")))]) }</p>
            }
            if !finding.blocks { { text_field(shared, reason) } }
        </li>
    }
}

/// What the standard gives in each machine: its setting, what it leaves and costs; and a full tank in each measure
/// that can measure it.
fn doses(shared: &Shared, standard: &Standard, proof: &Proof) -> Html {
    if proof.machines.is_empty() {
        return Html::default();
    }
    let setting = |machine: &InMachine| match machine.flow.choice {
        Some(choice) => (choice.index + 1).to_string(),
        None => shared.say("standard-no-setting"),
    };
    let told =
        |value: Option<Value>| value.map_or_else(|| shared.say("not-known"), |value| shared.show(value));
    let line = |machine: &InMachine| {
        html! {
            <tr>
                <th scope="row">{ &machine.name }</th>
                <td>{ setting(machine) }</td>
                <td>{ told(machine.residue) }</td>
                <td>{ told(machine.cost) }</td>
            </tr>
        }
    };
    let columns = ["column-machine", "column-setting", "column-left", "column-cost"];
    html! {
        <>
            { table(shared, "standard-in-machines", &columns, proof.machines.iter().map(line).collect()) }
            { full_tanks(shared, standard, proof) }
        </>
    }
}

/// A row a measure, a column a machine.
fn full_tanks(shared: &Shared, standard: &Standard, proof: &Proof) -> Html {
    let cell = |machine: &InMachine, measure: &Measure| {
        let fill = machine.doses.iter().find(|(id, _)| *id == measure.id).map(|(_, fill)| fill);
        let typed = asked::asked(&shared.typed, standard, &machine.id, &measure.id, 100);
        let there = Shared { typed: Rc::new(typed), ..shared.clone() };
        let dose = fill.and_then(|fill| Some(in_measure(&there, fill, fill.headline()?.1)));
        html! {
            <td data-dose={machine.id.clone()} data-measure={measure.id.clone()}>
                { dose.unwrap_or_else(|| shared.say("level-coarse")) }
            </td>
        }
    };
    let measures = asked::in_use(&shared.typed.site.measures);
    let caption = shared.say("standard-doses");
    html! {
        <div class="scroll" tabindex="0" role="region" aria-label={caption.clone()}>
            <table>
                <caption><span>{ caption }</span></caption>
                <thead>
                    <tr>
                        <th scope="col">{ shared.say("column-measure") }</th>
                        { for proof.machines.iter().map(|machine| html! { <th scope="col">{ &machine.name }</th> }) }
                    </tr>
                </thead>
                <tbody>
                    { for measures.map(|measure| html! {
                        <tr>
                            <th scope="row">{ &measure.name }</th>
                            { for proof.machines.iter().map(|machine| cell(machine, measure)) }
                        </tr>
                    }) }
                </tbody>
            </table>
        </div>
    }
}

fn publish(shared: &Shared, standard: &Standard, proof: &Proof, date: String) -> Html {
    // The day as it will be published.
    let first = standard.first_day().map(|first| first.to_string());
    let later = first.filter(|_| !standard.has_begun(&date));
    let day = |day: &String| [("day", shared.day(day))];
    let (act, proved) = (shared.act.clone(), proof.proved.clone());
    let onclick = move |_: MouseEvent| {
        act.emit(Act::Publish { date: date.clone(), proved: proved.clone() }.action());
        // The draft is a published standard now: its list takes the focus.
        focus::soon("site-standards".to_owned());
    };
    let blocked = proof.findings.iter().filter(|one| one.blocks).count();
    let open = proof.findings.iter().filter(|one| !one.blocks && one.holds()).count();
    let n = |count: usize| Argument::number(count as f64, count.to_string());
    html! {
        <>
            if blocked > 0 { <p role="status">{ shared.tell("publish-blocked", &[("n", n(blocked))]) }</p> }
            else if open > 0 { <p role="status">{ shared.tell("publish-open", &[("n", n(open))]) }</p> }
            { for later.iter().map(|later| html! { <p role="status" data-later="true">{ shared.tell("finding-later", &day(later)) }</p> }) }
            <div class="buttons">
                <button type="button" name="standard-publish" disabled={!proof.sound()} {onclick}>
                    { later.as_ref().map_or_else(|| shared.say("standard-publish"), |later| shared.tell("standard-publish-later", &day(later))) }
                </button>
            </div>
        </>
    }
}
