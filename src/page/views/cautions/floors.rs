//! Which product of the site fits which of its floors, and at what dilution.

use crate::answer::Value;
use crate::chemistry::floor::Reason;
use crate::form::cautions::floors::{Fit, PhOf, Stronger, all};
use crate::form::cautions::{UsePh, ground};
use crate::page::components::computed;
use crate::page::shared::Shared;
use crate::page::views::captioned;
use crate::site::Product;
use crate::units::Kind;
use crate::words::Argument;
use yew::prelude::*;

/// Each product of the site on each of its floors.
pub fn floor_table(shared: &Shared) -> Html {
    let site = &shared.typed.site;
    // The pH of each is worked out once, at its own dilution.
    let known = all(&shared.typed, shared.marks());
    let tables = site.floors.iter().enumerate().map(|(at, floor)| {
        let ground = ground(site, floor, shared.marks());
        let row = |(index, (product, ph)): (usize, (&Product, &PhOf))| {
            let fit = ph.fit(product, ground);
            html! {
                <tr>
                    <th scope="row">{ &product.name }</th>
                    <td data-verdict={fit.key()}>{ shared.say(fit.short()) }</td>
                    <td>{ ph_cell(shared, ph, &format!("cautions.fits.{}.{}", at + 1, index + 1)) }</td>
                    <td>{ why(shared, &fit) }</td>
                </tr>
            }
        };
        captioned(
            shared,
            floor.name.clone(),
            &["column-product", "column-fits", "column-ph", "column-why"],
            site.products.iter().zip(&known).enumerate().map(row).collect(),
        )
    });
    html! { <div class="flowing"><p class="hint">{ shared.say("fits-hint") }</p>{ for tables }</div> }
}

/// The pH of the use solution, its dilution, and whether somebody measured it.
fn ph_cell(shared: &Shared, ph: &PhOf, name: &str) -> Html {
    let UsePh { range, sure, printed, against } = ph.used;
    let Some(range) = range else { return html! { { shared.say("floor-ph-unknown") } } };
    let (low, high) = (Value::plain(range.low, Kind::Ph), Value::plain(range.high, Kind::Ph));
    let one = shared.show(low) == shared.show(high);
    let from = match (printed, sure) {
        (true, _) => "floor-ph-printed",
        (false, true) => "floor-ph-estimated",
        (false, false) => "floor-ph-not-sure",
    };
    let at = ph.strength.map(|strength| {
        let ratio = Value::plain(strength.parts_of_water(), Kind::Ratio);
        shared.tell("floor-ph-at", &[("n", shared.argument(ratio))])
    });
    html! {
        <>
            { computed(shared, format!("{name}.ph_low"), low) }
            if !one { { " – " }{ computed(shared, format!("{name}.ph_high"), high) } }
            { ", " }{ shared.say(from) }
            if let Some(at) = at { { ", " }{ at } }
            if let Some(other) = against {
                { ", " }
                { shared.tell("floor-ph-differs", &[("low", number(shared, other.low)), ("high", number(shared, other.high))]) }
            }
        </>
    }
}

fn number(shared: &Shared, ph: f64) -> Argument {
    shared.argument(Value::plain(ph, Kind::Ph))
}

/// Why a product does not fit, or only diluted, or what is to be found out.
pub fn why(shared: &Shared, fit: &Fit) -> String {
    let of = match fit {
        Fit::OnlyDiluted { stronger, .. } => Some(*stronger),
        _ => None,
    };
    let reasons =
        |all: &[Reason]| all.iter().map(|reason| reason_text(shared, reason, of)).collect::<Vec<_>>();
    let mut told: Vec<String> = fit.stronger().map(|key| shared.say(key)).into_iter().collect();
    match fit {
        Fit::Fits => (),
        Fit::OnlyDiluted { reasons: all, .. } | Fit::DoesNotFit { reasons: all } => told.extend(reasons(all)),
        Fit::Unknown { missing } => told.extend(missing.iter().map(|missing| shared.say(missing.key()))),
    }
    told.join(" ")
}

/// Why a product does not fit, in words: of the use solution, or of what is stronger.
fn reason_text(shared: &Shared, reason: &Reason, of: Option<Stronger>) -> String {
    match reason {
        Reason::Family(_) => shared.say(reason.key()),
        Reason::TooAcid(window) | Reason::TooAlkaline(window) => {
            let number = |ph: f64| Argument::number(ph, shared.words.number(ph));
            shared.tell(too_far(reason, of), &[("low", number(window.low)), ("high", number(window.high))])
        }
    }
}

/// What is said to lie outside the window.
const fn too_far(reason: &Reason, of: Option<Stronger>) -> &'static str {
    match (of, reason) {
        (Some(Stronger::Concentrate), Reason::TooAcid(_)) => "floor-concentrate-too-acid",
        (Some(Stronger::Concentrate), Reason::TooAlkaline(_)) => "floor-concentrate-too-alkaline",
        (Some(Stronger::LabelEnd), Reason::TooAcid(_)) => "floor-strong-end-too-acid",
        (Some(Stronger::LabelEnd), Reason::TooAlkaline(_)) => "floor-strong-end-too-alkaline",
        _ => reason.key(),
    }
}
