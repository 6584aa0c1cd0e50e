//! Cautions: what a product does to people, floors and the machine.

use crate::answer::Weight;
use crate::chemistry::floor::FloorVerdict;
use crate::chemistry::foam;
use crate::form::action::Shelf;
use crate::form::cautions::{on_floor, remarks};
use crate::page::components::{CautionPanel, Picker, Remarks, ShelfButtons};
use crate::page::editors::{LabelField, Mistakes, ProductCautions};
use crate::page::shared::{Shared, use_shared};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The view.
#[component]
pub fn CautionsView() -> Html {
    let shared = use_shared();
    let mistakes = Mistakes::of(&crate::form::fill::work(&shared.typed, shared.marks()).outcome);
    html! {
        <div class="view cautions">
            <section class="question" aria-labelledby="cautions-heading">
                <h1 id="cautions-heading">{ shared.say("cautions-heading") }</h1>
                <div class="fields">
                    <Picker shelf={Shelf::Product} />
                    <Picker shelf={Shelf::Floor} />
                    <Picker shelf={Shelf::Machine} />
                </div>
                <details class="more">
                    <summary>{ shared.say("product-edit") }</summary>
                    <LabelField {mistakes} />
                    <ProductCautions />
                    <ShelfButtons shelf={Shelf::Product} />
                </details>
            </section>
            <section id="answer" class="answer" tabindex="-1" aria-label={shared.say("answer")}>
                { fits(&shared) }
                <CautionPanel />
            </section>
        </div>
    }
}

/// Whether the product fits the machine and the floor.
fn fits(shared: &Shared) -> Html {
    let (Some(product), Some(machine), Some(floor)) =
        (shared.typed.product(), shared.typed.machine(), shared.typed.floor())
    else {
        return Html::default();
    };
    // Here a warning is read in any case: nothing stands behind it.
    let warnings = remarks(&shared.typed, shared.marks()).into_iter().map(|mut remark| {
        if remark.weight == Weight::Stop {
            remark.weight = Weight::Warn;
        }
        remark
    });
    let named = |name: &str| [("floor", Argument::text(name)), ("machine", Argument::text(name))];
    let verdict = on_floor(product, floor, shared.marks());
    html! {
        <section class="fits">
            <Remarks remarks={Rc::new(warnings.collect::<Vec<_>>())} />
            <h2>{ shared.say("fits-heading") }</h2>
            <dl>
                <dt>{ &machine.name }</dt>
                <dd>{ shared.say(foam::verdict(product.foam, machine.vacuum).key()) }</dd>
                <dt>{ &floor.name }</dt>
                <dd data-verdict={verdict.key()}>
                    { shared.tell(verdict.key(), &named(&floor.name)) }
                    if let FloorVerdict::Unknown { missing } = &verdict {
                        { for missing.iter().map(|missing| html! { <>{ " " }{ shared.say(missing.key()) }</> }) }
                    }
                </dd>
            </dl>
        </section>
    }
}
