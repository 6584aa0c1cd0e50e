//! Cautions: what a product does to people, floors and the machine.

use super::frame;
use crate::answer::Weight;
use crate::chemistry::floor::FloorVerdict;
use crate::chemistry::foam::{self, FoamVerdict};
use crate::form::action::Shelf;
use crate::form::cautions::{on_floor, remarks};
use crate::form::fill::work;
use crate::page::components::{caution_panel, picker, print_button, shelf_buttons, warnings};
use crate::page::editors::{label_field, product_cautions};
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
            </div>
            <details class="more">
                <summary>{ shared.say("product-edit") }</summary>
                { label_field(shared, &outcome) }
                { product_cautions(shared) }
                { shelf_buttons(shared, Shelf::Product) }
            </details>
        </>
    };
    frame(
        shared,
        "cautions",
        question,
        html! { <>{ fits(shared) }{ caution_panel(shared) }<div class="buttons">{ print_button(shared) }</div></> },
    )
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
    let verdict = on_floor(product, floor, shared.marks());
    let machine_key = match foam::verdict(product.foam, machine.vacuum) {
        FoamVerdict::Fits if remarks.iter().any(|remark| remark.code == "remark-flammable") => {
            "fits-machine-not"
        }
        foam => foam.key(),
    };
    let missing = match &verdict {
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
                <dd data-verdict={verdict.key()}>
                    { shared.say(verdict.key()) }
                    { for missing.iter().map(|missing| format!(" {}", shared.say(missing.key()))) }
                </dd>
            </dl>
        </section>
    }
}
