//! What may clean the floor with its new finish, ranked.

use crate::answer::Value;
use crate::form::site::finish::candidates::{Candidate, Suits, work};
use crate::form::site::finish::end_key;
use crate::page::components::computed;
use crate::page::shared::Shared;
use crate::page::views::captioned;
use crate::units::Kind;
use crate::words::Argument;
use yew::prelude::*;

const COLUMNS: [&str; 7] = [
    "column-product",
    "column-fits",
    "column-why",
    "column-ph",
    "column-residue",
    "column-cost",
    "column-contact",
];

/// The table.
pub fn fits(shared: &Shared) -> Html {
    let typed = &shared.typed;
    let ranked = work(typed, shared.marks());
    if ranked.is_empty() {
        return html! { <p>{ shared.say("fits-none") }</p> };
    }
    let finish = typed.finish().map_or_else(|| shared.say("fits-no-finish"), |finish| finish.name.clone());
    let floor = typed.floor().map(|floor| floor.name.clone()).unwrap_or_default();
    let caption =
        shared.tell("fits-table", &[("finish", Argument::text(finish)), ("floor", Argument::text(floor))]);
    html! {
        <>
            <p class="hint">{ shared.say("fits-ranked-hint") }</p>
            { captioned(shared, caption, &COLUMNS, ranked.iter().enumerate().map(|one| row(shared, one)).collect()) }
        </>
    }
}

fn row(shared: &Shared, (index, one): (usize, &Candidate)) -> Html {
    let unknown = || html! { { shared.say("fits-unknown") } };
    let cell = |what: &str, value: Option<Value>| {
        let name = format!("finish.fit.{}.{what}", index + 1);
        html! { <td>{ value.map_or_else(unknown, |value| computed(shared, name, value)) }</td> }
    };
    html! {
        <tr class={(one.suits == Suits::Fits).then_some("fit")}>
            <th scope="row">{ &one.name }<br /><span class="code">{ dilution(shared, one) }</span></th>
            <td data-suits={one.suits.key()}><strong>{ shared.say(one.suits.key()) }</strong></td>
            <td>{ reasons(shared, one) }</td>
            <td>{ ph(shared, one).map_or_else(unknown, |text| html! { { text } }) }</td>
            { cell("residue", one.residue.map(|left| Value::new(left, Kind::Residue))) }
            { cell("cost", one.cost.map(|cost| Value::new(cost, Kind::AreaPrice))) }
            { cell("contact", one.contact.map(|time| Value::new(time, Kind::Time))) }
        </tr>
    }
}

/// Why not, what is not known, and what else to mind.
pub fn reasons(shared: &Shared, one: &Candidate) -> Html {
    if one.reasons.is_empty() {
        return html! { { shared.say("fits-clear") } };
    }
    let line = |remark| html! { <li>{ shared.words.remark(remark, shared.system()) }</li> };
    html! { <ul>{ for one.reasons.iter().map(line) }</ul> }
}

/// As the label writes it, and in parts of water where that is another way to say it.
fn dilution(shared: &Shared, one: &Candidate) -> String {
    let text = match one.strength {
        Some(share) if !one.dilution.starts_with("1:") && share.parts_of_water() >= 1.0 => shared.tell(
            "fits-ratio",
            &[
                ("dilution", Argument::text(one.dilution.clone())),
                ("ratio", shared.argument(Value::plain(share.parts_of_water(), Kind::Ratio))),
            ],
        ),
        _ => one.dilution.clone(),
    };
    match one.aim {
        Some(aim) => {
            let end = Argument::text(shared.say(end_key(aim)));
            shared.tell("fits-dilution", &[("end", end), ("dilution", Argument::text(text))])
        }
        None => text,
    }
}

fn ph(shared: &Shared, one: &Candidate) -> Option<String> {
    let range = one.ph?;
    let end = |ph: f64| Value::plain((ph * 100.0).round() / 100.0, Kind::Ph);
    let text = shared.words.window(end(range.low), end(range.high), shared.system());
    Some(if one.ph_estimated {
        shared.tell("fits-ph-estimate", &[("ph", Argument::text(text))])
    } else {
        text
    })
}
