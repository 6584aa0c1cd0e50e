//! The sheet of a standard: everything it asks, why, and what it replaced.

use super::facts;
use super::sheet::{edition, pairs, sheet, since, standing};
use crate::answer::Value;
use crate::form::Field;
use crate::form::site::chart::contact;
use crate::form::site::history::replaced;
use crate::page::shared::Shared;
use crate::page::views::site::standards::left_out;
use crate::page::views::table;
use crate::site::{Record, Standard};
use crate::units::{Frequency, Kind};
use crate::words::Argument;
use yew::prelude::*;

/// The sheet.
pub fn sheet_of(shared: &Shared, standard: &Standard) -> Html {
    let of = shared.words.said_of(&shared.say("paper-sheet"), &edition(shared, standard));
    let content = html! {
        <>
            <h2 class="chart-title">{ facts::written(shared, &standard.name) }</h2>
            { standing(shared, standard) }
            { asks(shared, standard) }
            { left_out(shared, standard) }
            <h3>{ shared.say("paper-reason") }</h3>
            <p class="notes">{ facts::written(shared, &standard.reason) }</p>
            <h3>{ shared.say("paper-overrides") }</h3>
            { overrides(shared, standard) }
            { history(shared, standard) }
            <p class="defer">{ shared.say("caution-defer") }</p>
        </>
    };
    sheet(shared, of, content)
}

fn asks(shared: &Shared, standard: &Standard) -> Html {
    let site = &shared.typed.site;
    let product = site.products.iter().find(|one| one.id() == standard.product);
    let floor = site.floors.iter().find(|one| one.id() == standard.floor);
    let text = |key: &str, text: String| (shared.say(key), html! { <>{ text }</> });
    let name = |name: Option<&str>| name.map_or_else(|| shared.say("paper-gone"), str::to_owned);
    let often = standard.frequency.read::<Frequency>(Field::StandardFrequency.limit(), shared.marks());
    let often = often.map_or_else(
        |_| facts::written(shared, &standard.frequency.text),
        |often| shared.show(Value::new(often, Kind::Frequency)),
    );
    let mut all = vec![
        text("floor", name(floor.map(Record::name))),
        text("product", name(product.map(Record::name))),
        text("paper-ratio", facts::ratio(shared, standard)),
        text(
            "product-label",
            product.map_or_else(|| shared.say("paper-gone"), |one| facts::written(shared, &one.label)),
        ),
        (shared.say("paper-order"), facts::order(shared, standard)),
    ];
    if let Some(product) = product {
        all.push(text("caution-wear", facts::wear(shared, standard, product)));
        all.push(text(
            "paper-contact-title",
            facts::contact(shared, &contact(standard, product, shared.marks())),
        ));
    }
    all.extend([
        text("paper-rinse-title", facts::rinse(shared, standard)),
        text("paper-pad", facts::written(shared, &standard.pad)),
        text("standard-frequency", often),
        text("paper-version", edition(shared, standard)),
        text("paper-effective", facts::written(shared, &shared.words.day(since(standard)))),
        text("paper-published", facts::written(shared, &shared.words.day(standard.published.trim()))),
        text("paper-author", facts::written(shared, &standard.author)),
    ]);
    pairs(all)
}

/// Warnings that do not count here, each with its reason.
fn overrides(shared: &Shared, standard: &Standard) -> Html {
    if standard.overrides.is_empty() {
        return html! { <p>{ shared.say("paper-overrides-none") }</p> };
    }
    let line = |finding: &str, reason: &str| {
        let title = shared.words.finding_name(finding);
        html! { <li><strong>{ shared.words.headed(&title) }</strong>{ " " }{ facts::written(shared, reason) }</li> }
    };
    html! { <ul>{ for standard.overrides.iter().map(|one| line(&one.finding, &one.reason)) }</ul> }
}

/// The standards whose place it took.
fn history(shared: &Shared, standard: &Standard) -> Html {
    let before = replaced(&shared.typed.site, standard);
    if before.is_empty() {
        let first = shared.say("paper-history-none");
        return html! { <><h3>{ shared.say("paper-history") }</h3><p>{ first }</p></> };
    }
    let product = |one: &Standard| {
        let found = shared.typed.site.products.iter().find(|product| product.id() == one.product);
        found.map_or_else(|| shared.say("paper-gone"), |product| product.name.clone())
    };
    let rows = before.into_iter().map(|one| {
        let what = shared.tell(
            "paper-product-at",
            &[("product", Argument::text(product(one))), ("dilution", Argument::text(one.dilution.trim()))],
        );
        html! {
            <tr>
                <th scope="row">{ one.version.max(1) }</th>
                <td>{ facts::written(shared, &shared.words.day(since(one))) }</td>
                <td>{ what }</td>
                <td>{ facts::written(shared, &one.reason) }</td>
            </tr>
        }
    });
    table(
        shared,
        "paper-history",
        &["paper-number", "paper-effective", "column-what", "paper-reason"],
        rows.collect(),
    )
}
