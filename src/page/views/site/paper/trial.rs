//! The sheet of a trial: what is mixed for each patch, and boxes to write in what was seen.

use super::chart::both;
use super::facts;
use super::sheet::sheet as running;
use crate::answer::Value;
use crate::form::site::chart::Why;
use crate::form::site::patches::{Amounts, Mix, mixes};
use crate::page::components::computed_as;
use crate::page::shared::Shared;
use crate::page::views::fill::amount::counted;
use crate::site::{Film, Record, Trial};
use crate::trade::governing::Aim;
use crate::units::{Kind, unit};
use crate::words::Argument;
use yew::prelude::*;

/// The sheet.
pub fn sheet(shared: &Shared, trial: &Trial) -> Html {
    let site = &shared.typed.site;
    let name = |found: Option<&str>| found.map_or_else(|| shared.say("paper-gone"), str::to_owned);
    let floor = name(site.floors.iter().find(|one| one.id() == trial.floor).map(Record::name));
    let product = site.products.iter().find(|one| one.id() == trial.product);
    let label = product.map(|one| one.label.trim().to_owned()).unwrap_or_default();
    let title = shared.tell(
        "paper-trial-title",
        &[
            ("product", Argument::text(name(product.map(Record::name)))),
            ("floor", Argument::text(floor)),
            ("label", Argument::text(label)),
        ],
    );
    let batch = format!(
        "{}\u{202f}{}",
        trial.batch.text,
        unit(&trial.batch.unit).map(|unit| unit.symbol).unwrap_or_default()
    );
    let columns = ["paper-patch", "paper-gloss", "paper-film", "paper-slip", "paper-notes"];
    let rows = mixes(&shared.typed, trial, shared.marks());
    let content = html! {
        <>
            <h2 class="chart-title">{ facts::written(shared, &trial.name) }</h2>
            <p>{ title }</p>
            <p>{ shared.tell("paper-batch", &[("batch", Argument::text(batch))]) }{ " " }{ shared.say("caution-order") }</p>
            <table class="patches">
                <caption><span>{ shared.say("paper-patches-caption") }</span></caption>
                <thead><tr>{ for columns.map(|key| html! { <th scope="col">{ shared.say(key) }</th> }) }</tr></thead>
                <tbody>{ for rows.iter().enumerate().map(|(index, mix)| patch(shared, index + 1, mix)) }</tbody>
            </table>
            <p>{ shared.say("paper-film-hint") }</p>
            <div class="signed">
                <p><strong>{ shared.say("paper-initials") }</strong><span class="box">{ trial.by.trim() }</span></p>
                <p><strong>{ shared.say("paper-date") }</strong><span class="box">{ trial.date.trim() }</span></p>
            </div>
            if let Some(product) = product {
                <p>{ facts::wear(shared, &crate::site::Standard::default(), product) }</p>
            }
            <p class="defer">{ shared.say("caution-defer") }</p>
        </>
    };
    running(shared, shared.say("paper-patches"), content)
}

fn patch(shared: &Shared, number: usize, mix: &Mix) -> Html {
    let aim = match mix.patch.aim {
        Aim::Low => "paper-aim-low",
        Aim::Middle => "paper-aim-middle",
        Aim::High => "paper-aim-high",
    };
    let film = match mix.patch.film {
        Film::NotSeen => String::new(),
        Film::None => shared.say("paper-film-none"),
        Film::Slight => shared.say("paper-film-slight"),
        Film::Plain => shared.say("paper-film-plain"),
    };
    let box_of = |text: &str| html! { <td class="box">{ text.trim() }</td> };
    html! {
        <tr>
            <th scope="row">
                <span>{ shared.say(aim) }</span>
                { match &mix.amounts {
                    Ok(amounts) => told(shared, number, amounts),
                    Err(troubles) => html! {
                        <span class="why">{ facts::why(shared, &Why::Troubles(troubles.clone())) }</span>
                    },
                } }
            </th>
            { box_of(&mix.patch.gloss.text) }
            { box_of(&film) }
            { box_of(&mix.patch.slip.text) }
            { box_of(&mix.patch.note) }
        </tr>
    }
}

/// So much concentrate into so much water, both in both units: a batch is small, and its water is measured like its dose.
fn told(shared: &Shared, number: usize, amounts: &Amounts) -> Html {
    let as_dose =
        |value: Value| if value.kind == Kind::Fill { Value { kind: Kind::Dose, ..value } } else { value };
    let text = |value: Value| match value.kind {
        Kind::Count => counted(shared, "count-whole", value),
        _ => both(shared, as_dose(value)).join(" · "),
    };
    let name = |what: &str| format!("patch.{number}.{what}");
    html! {
        <>
            <span>{ computed_as(name("dose"), amounts.dose, text(amounts.dose)) }</span>
            <span>{ shared.say("paper-into") }{ " " }{ computed_as(name("water"), amounts.water, text(amounts.water)) }</span>
            { for amounts.ratio.map(|ratio| html! {
                <span>{ shared.tell("paper-makes", &[("n", shared.argument(ratio))]) }</span>
            }) }
            { for amounts.remarks.iter().map(|remark| html! {
                <span class="why">{ shared.words.remark(remark, shared.system()) }</span>
            }) }
        </>
    }
}
