//! What stands in the way of a standard, what it gives in each machine, and the way to publish it.

use super::title;
use crate::form::Action;
use crate::form::action::Line;
use crate::form::site::proof::{Finding, InMachine, Proof, prove};
use crate::form::site::{Act, asked};
use crate::page::components::{Text, text_field};
use crate::page::focus;
use crate::page::keep::today;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::{headline, in_measure};
use crate::page::views::table;
use crate::site::{Standard, Standing};
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
            if draft { { publish(shared, &proof, today) } }
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
        mistake: None,
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

/// A full tank of each machine in each measure that can measure it, with its setting.
fn doses(shared: &Shared, standard: &Standard, proof: &Proof) -> Html {
    let rows: Vec<Html> = proof.machines.iter().flat_map(|machine| rows(shared, standard, machine)).collect();
    if rows.is_empty() {
        return Html::default();
    }
    let columns =
        ["column-machine", "column-measure", "column-full", "column-setting", "column-left", "column-cost"];
    table(shared, "standard-doses", &columns, rows)
}

fn rows(shared: &Shared, standard: &Standard, machine: &InMachine) -> Vec<Html> {
    let setting = machine
        .flow
        .choice
        .map_or_else(|| shared.say("standard-no-setting"), |choice| (choice.index + 1).to_string());
    let told = |value: Option<crate::answer::Value>| {
        value.map_or_else(|| shared.say("not-known"), |value| shared.show(value))
    };
    let (left, cost) = (told(machine.residue), told(machine.cost));
    let row = |(index, (measure, fill)): (usize, &(String, crate::form::fill::Fill))| {
        let typed = asked::asked(&shared.typed, standard, &machine.id, measure, 100);
        let name = typed.measure().map(|measure| measure.name.clone()).unwrap_or_default();
        let there = Shared { typed: Rc::new(typed), ..shared.clone() };
        let dose = headline(fill).map(|(_, value)| in_measure(&there, fill, value)).unwrap_or_default();
        html! {
            <tr>
                <th scope="row">{ &machine.name }</th>
                <td>{ name }</td>
                <td data-dose={machine.id.clone()} data-measure={measure.clone()}>{ dose }</td>
                <td>{ &setting }</td>
                <td>{ &left }</td>
                <td>{ if index == 0 { cost.clone() } else { "\u{2033}".to_owned() } }</td>
            </tr>
        }
    };
    machine.doses.iter().enumerate().map(row).collect()
}

fn publish(shared: &Shared, proof: &Proof, date: String) -> Html {
    let (act, proved) = (shared.act.clone(), proof.proved.clone());
    let onclick = move |_: MouseEvent| {
        act.emit(Action::Site(Act::Publish { date: date.clone(), proved: proved.clone() }));
        // The draft is a published standard now: its list takes the focus.
        focus::soon("site-standards".to_owned());
    };
    let blocked = proof.findings.iter().filter(|one| one.blocks).count();
    let open = proof.findings.iter().filter(|one| !one.blocks && one.reason.is_none()).count();
    let n = |count: usize| Argument::number(count as f64, count.to_string());
    html! {
        <>
            if blocked > 0 { <p role="status">{ shared.tell("publish-blocked", &[("n", n(blocked))]) }</p> }
            else if open > 0 { <p role="status">{ shared.tell("publish-open", &[("n", n(open))]) }</p> }
            <div class="buttons">
                <button type="button" name="standard-publish" disabled={!proof.sound()} {onclick}>
                    { shared.say("standard-publish") }
                </button>
            </div>
        </>
    }
}
