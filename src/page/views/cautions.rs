//! Cautions: what a product does to people, floors and the machine.

mod container;
mod floors;
mod foam;
mod ph;
mod residue;
mod screening;
mod sheet;
mod site_wide;

pub use container::container_label;

use super::frame;
use crate::answer::Weight;
use crate::chemistry::foam::{FoamVerdict, verdict};
use crate::form::action::{Line, Shelf};
use crate::form::cautions::floors::{Fit, PhOf};
use crate::form::cautions::screening::mistakes;
use crate::form::cautions::worse::beyond_label;
use crate::form::cautions::{by_danger, ground, remarks_by_estimate};
use crate::form::fill::work;
use crate::page::components::{
    Text, at_once, caution_panel, first_help, fold, picker, print_button, shelf_buttons, text_field, unfolds,
    warnings,
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
            { fold(shared, &outcome, "product-edit", &[], |shared, outcome| html! {
                <>
                    { label_field(shared, outcome) }
                    { product_cautions(shared) }
                    { product_parts(shared, &mistakes(&shared.typed, shared.marks())) }
                    { shelf_buttons(shared, Shelf::Product) }
                </>
            }) }
            { fold(shared, &outcome, "cautions-sheet", &[], |shared, _| html! { <sheet::SheetReader shared={shared.clone()} /> }) }
        </>
    };
    let question = if shared.locked {
        html! { <div class="fields">{ picker(shared, Shelf::Machine) }{ picker(shared, Shelf::Floor) }</div> }
    } else {
        question
    };
    frame(
        shared,
        "cautions",
        question,
        html! {
            <>
                { fits(shared) }
                { caution_panel(shared, &beyond_label(&shared.typed, shared.marks())) }
                { part(shared, "cautions-mixing", site_wide::mixing_table) }
                { part(shared, "cautions-screen", screening::screening) }
                { part(shared, "cautions-floors", floors::floor_table) }
                { part(shared, "cautions-ph", ph::ph) }
                { part(shared, "cautions-foam", foam::foam_help) }
                { part(shared, "cautions-residue", residue::residue) }
                { part(shared, "cautions-container", container::container) }
                <div class="buttons">{ print_button(shared) }</div>
            </>
        },
    )
}

/// A part of the answer that unfolds on demand.
fn part(shared: &Shared, key: &'static str, draw: fn(&Shared) -> Html) -> Html {
    unfolds(shared, "more", key, shared.clone(), draw)
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
    let mut remarks = remarks_by_estimate(typed, shared.marks());
    for remark in &mut remarks {
        remark.weight = remark.weight.max(Weight::Warn);
    }
    by_danger(&mut remarks);
    let on_floor =
        PhOf::in_machine(typed, shared.marks()).fit(product, ground(&typed.site, floor, shared.marks()));
    let machine_key = match verdict(product.foam, machine.vacuum) {
        FoamVerdict::Fits if remarks.iter().any(|remark| remark.code == "remark-flammable") => {
            "fits-machine-not"
        }
        foam => foam.key(),
    };
    // What harms it stands in the warnings above.
    let why = match &on_floor {
        Fit::DoesNotFit { .. } => String::new(),
        _ => floors::why(shared, &on_floor),
    };
    html! {
        <section class="fits">
            { at_once(shared, product, &beyond_label(typed, shared.marks())) }
            { first_help(shared) }
            { warnings(shared, &remarks) }
            <h2>{ shared.say("fits-heading") }</h2>
            <dl>
                <dt>{ &machine.name }</dt>
                <dd data-foam={machine_key}>{ shared.say(machine_key) }</dd>
                <dt>{ &floor.name }</dt>
                <dd data-verdict={on_floor.key()}>
                    { shared.say(on_floor.key()) }{ " " }{ why }
                </dd>
            </dl>
        </section>
    }
}
