//! Everything on the site held against everything: which products must never meet, and which fit which floor.

use crate::chemistry::floor::{FloorVerdict, Reason};
use crate::chemistry::pairs::{Meeting, Pair, Severity};
use crate::form::cautions::{UsePh, ground, mixing};
use crate::page::shared::Shared;
use crate::page::views::captioned;
use crate::site::Product;
use crate::words::Argument;
use yew::prelude::*;

/// A cell of the table: what is known, in two or three words.
fn meeting_key(meeting: &Meeting) -> &'static str {
    match meeting {
        Meeting::Never(pairs) => match pairs.iter().map(|pair| pair.severity).max() {
            Some(Severity::Gas) => "meet-gas",
            Some(Severity::Harms) | None => "meet-harms",
            Some(Severity::Spoils) => "meet-spoils",
        },
        Meeting::Unknown => "meet-unknown",
        Meeting::NoPairListed => "meet-none",
    }
}

/// Each product of the site with each other one, and under the table what would happen and what to do.
pub fn mixing_table(shared: &Shared) -> Html {
    let products = &shared.typed.site.products;
    let rows = mixing::matrix(&shared.typed).into_iter().enumerate().map(|(index, row)| {
        let cell = |(other, meeting): (usize, &Meeting)| {
            if other == index {
                return html! { <td>{ "–" }</td> };
            }
            let key = meeting_key(meeting);
            let grave = matches!(meeting, Meeting::Never(_));
            html! { <td data-meet={key}>if grave { <strong>{ shared.say(key) }</strong> } else { { shared.say(key) } }</td> }
        };
        html! { <tr><th scope="row"><span class="number">{ index + 1 }</span>{ &products[index].name }</th>{ for row.iter().enumerate().map(cell) }</tr> }
    });
    // Numbers keep the columns narrow; each is told by its name as well.
    let heads = products.iter().enumerate().map(|(index, product)| {
        html! { <th scope="col" aria-label={product.name.clone()}>{ index + 1 }</th> }
    });
    let caption = shared.say("meet-table");
    let line = |pair: &&Pair| {
        html! {
            <li>
                <strong>{ format!("{}, {}", shared.say(pair.a.key()), shared.say(pair.b.key())) }</strong>
                { ": " }{ shared.say(pair.happens) }{ " " }{ shared.say(pair.act) }
                <span class="source">{ " " }{ shared.words.source(pair.source) }</span>
            </li>
        }
    };
    html! {
        <>
            <p class="hint">{ shared.say("meet-hint") }</p>
            <div class="scroll" tabindex="0" role="region" aria-label={caption.clone()}>
                <table>
                    <caption><span>{ caption }</span></caption>
                    <thead><tr><td></td>{ for heads }</tr></thead>
                    <tbody>{ for rows }</tbody>
                </table>
            </div>
            <ul>{ for mixing::pairs_on_site(&shared.typed).iter().map(line) }</ul>
        </>
    }
}

/// Each product of the site on each of its floors.
pub fn floor_table(shared: &Shared) -> Html {
    let site = &shared.typed.site;
    // The pH of each is worked out once, at its own dilution.
    let mut own = (*shared.typed).clone();
    let mut ph_of = |product: &Product| {
        own.ask.product.clone_from(&product.id);
        UsePh::of(&own, shared.marks())
    };
    let phs: Vec<UsePh> = site.products.iter().map(&mut ph_of).collect();
    let tables = site.floors.iter().map(|floor| {
        let ground = ground(site, floor, shared.marks());
        let row = |(product, ph): (&Product, &UsePh)| {
            let verdict = ph.verdict(product, ground);
            let why: Vec<String> = match &verdict {
                FloorVerdict::Fits => Vec::new(),
                FloorVerdict::DoesNotFit { reasons } => {
                    reasons.iter().map(|reason| reason_text(shared, reason)).collect()
                }
                FloorVerdict::Unknown { missing } => {
                    missing.iter().map(|missing| shared.say(missing.key())).collect()
                }
            };
            html! {
                <tr>
                    <th scope="row">{ &product.name }</th>
                    <td data-verdict={verdict.key()}>{ shared.say(verdict.short()) }</td>
                    <td>{ why.join(" ") }</td>
                </tr>
            }
        };
        captioned(
            shared,
            floor.name.clone(),
            &["column-product", "column-fits", "column-why"],
            site.products.iter().zip(&phs).map(row).collect(),
        )
    });
    html! { <><p class="hint">{ shared.say("fits-hint") }</p>{ for tables }</> }
}

/// Why a product does not fit, in words.
fn reason_text(shared: &Shared, reason: &Reason) -> String {
    match reason {
        Reason::Family(_) => shared.say(reason.key()),
        Reason::TooAcid(window) | Reason::TooAlkaline(window) => {
            let number = |ph: f64| Argument::number(ph, shared.words.number(ph));
            shared.tell(reason.key(), &[("low", number(window.low)), ("high", number(window.high))])
        }
    }
}
