//! The cup and the tank, and the table of their numbers.

use crate::answer::{Answer, Value};
use crate::form::names;
use crate::number;
use crate::page::components::{computed_as, facts};
use crate::page::drawing::{cup_and_tank, to_scale};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::practice::{Mix, MixWay};
use crate::units::{Kind, unit};
use crate::words::Argument;
use yew::prelude::*;

/// As many digits as tell half a step of a fine cup apart.
const DIGITS: i32 = 4;

/// The rows, in the order of [`Mix::ways`].
const ROWS: [&str; 4] = ["numbers-less", "numbers-asked", "numbers-nearest", "numbers-more"];

const FACTS: &[&str] = &[
    names::NUMBERS_TOTAL,
    names::NUMBERS_WATER,
    names::NUMBERS_DOSE,
    names::NUMBERS_TANK_EDGE,
    names::NUMBERS_DOSE_EDGE,
];

/// Two drawings: both vessels to one scale, then the cup large with its steps.
pub fn mix(shared: &Shared, answer: &Answer, drawn: &Mix) -> Html {
    let picture = &drawn.picture;
    let in_cup = |si: f64| unit(picture.unit).map_or_else(String::new, |unit| shared.words.in_unit(si, unit));
    let steps = Argument::number(drawn.steps, shared.words.number(drawn.steps));
    let told = [
        ("n", steps),
        ("step", Argument::text(in_cup(picture.step))),
        ("rounded", Argument::text(in_cup(drawn.ways[2].product))),
        ("ratio", Argument::text(ratio(shared, drawn.ways[2].ratio))),
    ];
    let row = |(index, (key, way)): (usize, (&&str, &MixWay))| {
        let name = |what: &str| format!("numbers.row.{}.{what}", index + 1);
        let parts = Argument::text(ratio(shared, way.ratio));
        html! {
            <tr class={(index == 1).then_some("chosen")}>
                <th scope="row">{ shared.say(key) }</th>
                <td>{ computed_as(name("product"), Value { si: way.product, kind: Kind::Dose }, in_cup(way.product)) }</td>
                <td>{ computed_as(name("ratio"), Value::plain(way.ratio, Kind::Ratio), shared.tell("numbers-ratio", &[("n", parts)])) }</td>
                <td>{ computed_as(name("off"), Value { si: way.off, kind: Kind::Percent }, off(shared, way.off)) }</td>
            </tr>
        }
    };
    let rows = ROWS.iter().zip(&drawn.ways).enumerate().map(row).collect();
    html! {
        <>
            <div class="fields">
                <figure class="cup">
                    { to_scale(shared, drawn) }
                    <figcaption>{ shared.say("numbers-to-scale") }</figcaption>
                </figure>
                <figure class="cup">
                    { cup_and_tank(shared, picture, shared.system()) }
                    <figcaption>{ shared.say("numbers-enlarged") }{ " " }{ shared.tell("numbers-count", &told) }</figcaption>
                </figure>
            </div>
            { table(shared, "numbers-half", &["numbers-column-pour", "numbers-column-product", "numbers-column-ratio", "numbers-column-off"], rows) }
            { facts(shared, answer, FACTS) }
        </>
    }
}

fn ratio(shared: &Shared, parts: f64) -> String {
    number::write(parts, DIGITS, shared.marks())
}

/// With its sign, and nothing where there is no difference.
fn off(shared: &Shared, share: f64) -> String {
    let shown = shared.show(Value { si: share, kind: Kind::Percent });
    match share {
        _ if share.abs() < 1e-9 => "–".to_owned(),
        _ if share > 0.0 => format!("+{shown}"),
        _ => shown,
    }
}
