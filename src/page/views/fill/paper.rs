//! A fill to tick off and to hang up: the steps, and the dose at every level.

use super::amount::{counted, in_measure, measured};
use crate::answer::Value;
use crate::form::cautions::panel;
use crate::form::fill::Fill;
use crate::form::fill::levels::{Level, levels};
use crate::form::names;
use crate::page::components::{Steps, computed, computed_as, unfolds};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::site::{Dispenser, Product};
use crate::units::Kind;
use crate::words::Argument;
use yew::prelude::*;

/// What to do, in order. The water is measured before the concentrate, whatever rounds.
pub fn steps(shared: &Shared, fill: &Fill) -> Html {
    let answer = &fill.outcome.answer;
    let Some((_, dose)) = fill.headline() else { return Html::default() };
    let (Some(product), Some(water)) = (shared.typed.product(), answer.get(names::FILL_WATER)) else {
        return Html::default();
    };
    let wear = wear(shared, product);
    let amount = Argument::text(in_measure(shared, fill, dose));
    let product = Argument::text(product.name.clone());
    let close = [shared.say("step-close"), shared.say("step-label")];
    let own = match fill.dispenser {
        Dispenser::Metering => {
            vec![
                set(shared, fill, dose),
                shared.tell("step-fill-plain", &[("water", shared.argument(water))]),
            ]
        }
        Dispenser::Wall => {
            let total = answer.get(names::FILL_TOTAL).unwrap_or(water);
            vec![set(shared, fill, dose), shared.tell("step-fill-up", &[("total", shared.argument(total))])]
        }
        _ => {
            let solid = matches!(dose.kind, Kind::Count | Kind::Mass);
            vec![
                shared.tell("step-water", &[("water", shared.argument(water))]),
                shared.tell("step-measure", &[("amount", amount), ("product", product)]),
                shared.say(if solid { "step-dissolve" } else { "step-add" }),
                shared.say("step-rinse"),
            ]
        }
    };
    let rinses = fill.dispenser != Dispenser::Packet && dose.kind != Kind::Count;
    let own = own.into_iter().filter(|step| rinses || *step != shared.say("step-rinse"));
    let steps: Vec<String> = std::iter::once(wear).chain(own).chain(close).collect();
    html! { <Steps title={shared.say("steps")} {steps} /> }
}

/// Which setting or tip to turn to.
fn set(shared: &Shared, fill: &Fill, dose: Value) -> String {
    shared.tell("step-set", &[("setting", Argument::text(in_measure(shared, fill, dose)))])
}

/// What to wear for a product.
pub fn wear(shared: &Shared, product: &Product) -> String {
    let ppe: Vec<String> = panel(product).advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    match ppe.as_slice() {
        [] => shared.say("step-wear-none"),
        ppe => shared.tell("step-wear", &[("ppe", Argument::text(ppe.join("; ")))]),
    }
}

/// The dose at every level, for the wall.
pub fn level_table(shared: &Shared, dispenser: Dispenser) -> Html {
    if dispenser.draws() {
        return Html::default();
    }
    unfolds(shared, "levels-table", "levels", shared.clone(), move |shared| at_each_level(shared, dispenser))
}

fn at_each_level(shared: &Shared, dispenser: Dispenser) -> Html {
    let line = |(index, level): (usize, Level)| {
        let name = |what: &str| format!("fill.level.{}.{what}", index + 1);
        let out = level.rounded.map(|rounded| {
            let text = match rounded.kind {
                Kind::Count => counted(shared, "count-whole", rounded),
                _ => measured(shared, dispenser, level.count, rounded),
            };
            computed_as(name("rounded"), rounded, text)
        });
        html! {
            <tr>
                <th scope="row">{ shared.words.entry(&level.entry) }</th>
                <td>{ computed(shared, name("water"), level.water) }</td>
                <td>{ out.unwrap_or_else(|| shared.say("level-coarse").into()) }</td>
                <td>{ computed(shared, name("dose"), level.dose) }</td>
            </tr>
        }
    };
    let rows = levels(&shared.typed, shared.marks()).into_iter().enumerate().map(line).collect();
    let columns = ["column-level", "column-water", "column-concentrate", "column-exact"];
    html! {
        <>
            <p class="hint">{ shared.say("levels-hint") }</p>
            { table(shared, "levels", &columns, rows) }
        </>
    }
}
