//! Cautions: what a product does to people, floors and the machine.

mod container;
mod foam;
mod ph;
mod residue;
mod screening;
mod sheet;
mod site_wide;

use super::frame;
use crate::answer::Weight;
use crate::chemistry::floor::FloorVerdict;
use crate::chemistry::foam::{FoamVerdict, verdict};
use crate::form::action::{Line, Shelf};
use crate::form::cautions::{UsePh, ground, remarks};
use crate::form::fill::work;
use crate::page::components::{
    Text, caution_panel, picker, print_button, shelf_buttons, text_field, warnings,
};
use crate::page::editors::{label_field, product_cautions, product_parts, tank_before};
use crate::page::shared::Shared;
use yew::prelude::*;

/// The view.
pub fn cautions_view(shared: &Shared) -> Html {
    let outcome = work(&shared.typed, shared.marks()).outcome;
    let question = html! {
        <>
            <div class="fields">
                { picker(shared, Shelf::Product) }
                { picker(shared, Shelf::Floor) }
                { picker(shared, Shelf::Machine) }
                { tank_before(shared) }
                { text_field(shared, emergency(shared)) }
            </div>
            <details class="more">
                <summary>{ shared.say("product-edit") }</summary>
                { label_field(shared, &outcome) }
                { product_cautions(shared) }
                { product_parts(shared, &outcome) }
                { shelf_buttons(shared, Shelf::Product) }
            </details>
            <details class="more">
                <summary>{ shared.say("cautions-sheet") }</summary>
                <sheet::SheetReader shared={shared.clone()} />
            </details>
        </>
    };
    frame(
        shared,
        "cautions",
        question,
        html! {
            <>
                { fits(shared) }
                { caution_panel(shared) }
                { part(shared, "cautions-ph", ph::ph(shared)) }
                { part(shared, "cautions-screen", screening::screening(shared)) }
                { part(shared, "cautions-foam", foam::foam_help(shared)) }
                { part(shared, "cautions-residue", residue::residue(shared)) }
                { part(shared, "cautions-mixing", site_wide::mixing_table(shared)) }
                { part(shared, "cautions-floors", site_wide::floor_table(shared)) }
                { part(shared, "cautions-container", container::container(shared)) }
                <div class="buttons">{ print_button(shared) }</div>
            </>
        },
    )
}

/// A part of the answer that unfolds on demand.
fn part(shared: &Shared, key: &str, content: Html) -> Html {
    html! { <details class="more"><summary>{ shared.say(key) }</summary>{ content }</details> }
}

fn emergency(shared: &Shared) -> Text {
    Text {
        line: Line::Emergency,
        name: "site-emergency".to_owned(),
        key: "site-emergency",
        value: shared.typed.site.emergency.clone(),
        tall: false,
        mistake: None,
    }
}

/// Whether the product fits the machine and the floor.
fn fits(shared: &Shared) -> Html {
    let typed = &shared.typed;
    let (Some(product), Some(machine), Some(floor)) = (typed.product(), typed.machine(), typed.floor())
    else {
        return Html::default();
    };
    // Here a warning is read in any case: nothing stands behind it.
    let mut remarks = remarks(typed, shared.marks());
    for remark in &mut remarks {
        remark.weight = remark.weight.max(Weight::Warn);
    }
    let ground = ground(&typed.site, floor, shared.marks());
    let on_floor = UsePh::of(typed, shared.marks()).verdict(product, ground);
    let machine_key = match verdict(product.foam, machine.vacuum) {
        FoamVerdict::Fits if remarks.iter().any(|remark| remark.code == "remark-flammable") => {
            "fits-machine-not"
        }
        foam => foam.key(),
    };
    let missing = match &on_floor {
        FloorVerdict::Unknown { missing } => missing.as_slice(),
        _ => &[],
    };
    html! {
        <section class="fits">
            { warnings(shared, &remarks) }
            <h2>{ shared.say("fits-heading") }</h2>
            <dl>
                <dt>{ &machine.name }</dt>
                <dd data-foam={machine_key}>{ shared.say(machine_key) }</dd>
                <dt>{ &floor.name }</dt>
                <dd data-verdict={on_floor.key()}>
                    { shared.say(on_floor.key()) }
                    { for missing.iter().map(|missing| format!(" {}", shared.say(missing.key()))) }
                </dd>
            </dl>
        </section>
    }
}
