//! The sheet of a trial: what is mixed for each patch, and boxes to write in what was seen.

use super::chart::both;
use super::facts;
use super::sheet::sheet as running;
use crate::answer::Value;
use crate::form::site::chart::Why;
use crate::form::site::finish::candidates::Suits;
use crate::form::site::finish::end_key;
use crate::form::site::finish::trial::{Mix, Tried, work};
use crate::page::components::computed_as;
use crate::page::shared::Shared;
use crate::page::views::site::finish::titled;
use crate::site::{Film, Patch, Record, Trial};
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
    let batch = shared.words.entry(&trial.batch);
    let columns = ["paper-patch", "paper-gloss", "paper-film", "paper-slip", "paper-notes"];
    let tried = work(&shared.typed, shared.marks());
    // Where nothing can be mixed the records stand all the same, with the reason.
    let rows = trial.patches.iter().enumerate().filter_map(|(index, seen)| {
        let mix = tried.mixes.iter().find(|mix| mix.patch == index);
        (mix.is_some() || tried.mixes.is_empty()).then(|| patch(shared, &tried, seen, mix))
    });
    let content = html! {
        <>
            <h2 class="chart-title">{ facts::written(shared, &trial.name) }</h2>
            <p>{ title }</p>
            <p>{ shared.tell("paper-batch", &[("batch", Argument::text(batch))]) }{ " " }{ shared.say("caution-order") }</p>
            <table class="patches">
                <caption><span>{ shared.say("paper-patches-caption") }</span></caption>
                <thead><tr>{ for columns.map(|key| html! { <th scope="col">{ shared.say(key) }</th> }) }</tr></thead>
                <tbody>{ for rows }</tbody>
            </table>
            <p>{ shared.say("paper-film-hint") }</p>
            <div class="signed">
                <p><strong>{ shared.say("paper-initials") }</strong><span class="box">{ trial.by.trim() }</span></p>
                <p><strong>{ shared.say("paper-date") }</strong><span class="box">{ shared.words.day(trial.date.trim()) }</span></p>
            </div>
            if let Some(product) = product {
                <p>{ facts::wear(shared, &crate::site::Standard::default(), product) }</p>
            }
            <p class="defer">{ shared.say("caution-defer") }</p>
        </>
    };
    running(shared, shared.say("paper-patches"), content)
}

fn patch(shared: &Shared, tried: &Tried, seen: &Patch, mix: Option<&Mix>) -> Html {
    let film = match seen.film {
        Film::NotSeen => String::new(),
        Film::None => shared.say("paper-film-none"),
        Film::Slight => shared.say("paper-film-slight"),
        Film::Plain => shared.say("paper-film-plain"),
    };
    let box_of = |text: &str| html! { <td class="box">{ text.trim() }</td> };
    html! {
        <tr>
            <th scope="row">
                { match mix {
                    Some(mix) => told(shared, mix),
                    None => html! {
                        <>
                            <span>{ shared.say(end_key(seen.aim)) }</span>
                            <span class="why">{ facts::why(shared, &Why::Troubles(tried.outcome.troubles.clone())) }</span>
                        </>
                    },
                } }
            </th>
            { box_of(&seen.gloss.text) }
            { box_of(&film) }
            { box_of(&seen.slip.text) }
            { box_of(&seen.note) }
        </tr>
    }
}

/// So much concentrate into so much water, as the page says it, both in both units: a batch is small, and its water is
/// measured like its dose.
fn told(shared: &Shared, mix: &Mix) -> Html {
    let text = |value: Value| both(shared, value).join(" · ");
    let name = |what: &str| format!("finish.patch.{}.{what}", mix.patch + 1);
    let amount = |what: &str, value: Value| html! { { computed_as(name(what), value, text(value)) } };
    let harms = mix.candidate.suits == Suits::DoesNotFit;
    html! {
        <>
            <span>{ titled(shared, "trial-patch", mix) }</span>
            <span>{ mix.rounded.map_or_else(|| shared.say("trial-too-little").into(), |value| amount("rounded", value)) }</span>
            { for mix.water.map(|water| html! {
                <span>{ shared.say("paper-into") }{ " " }{ amount("water", water) }</span>
            }) }
            { for mix.makes.map(|makes| html! {
                <span>{ shared.tell("paper-makes", &[("n", shared.argument(makes))]) }</span>
            }) }
            if harms { <span class="why">{ shared.say(mix.candidate.suits.key()) }</span> }
        </>
    }
}
