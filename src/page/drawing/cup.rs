//! A measuring cup with its steps and a tank, each to its own scale; the product is also drawn as the layer that it would
//! be at the bottom of the tank.

use super::jug::{liquid, under};
use crate::answer::Value;
use crate::page::shared::Shared;
use crate::practice::Fill;
use crate::units::{Kind, System, unit};
use crate::words::Argument;
use yew::prelude::*;

const TOP: f64 = 30.0;
const HEIGHT: f64 = 150.0;
const BOTTOM: f64 = TOP + HEIGHT;
/// The most steps that can be told apart.
const MOST_MARKS: u32 = 30;

/// The picture. Half a step more and less is a band around the level in the cup.
pub fn cup_and_tank(shared: &Shared, drawn: &Fill, system: System) -> Html {
    let on_cup = |si: f64| unit(drawn.unit).map_or_else(String::new, |unit| shared.words.in_unit(si, unit));
    let fill = |si: f64| shared.words.value(Value { si, kind: Kind::Fill }, system);
    let (dose, total, tank) = (on_cup(drawn.dose), fill(drawn.total), fill(drawn.tank));
    let told = [
        ("dose", Argument::text(dose.clone())),
        ("step", Argument::text(on_cup(drawn.step))),
        ("total", Argument::text(total.clone())),
        ("tank", Argument::text(tank.clone())),
        ("ratio", Argument::text(shared.words.number(drawn.ratio))),
    ];
    let brim = drawn.dose * 1.25;
    let level = |share: f64| BOTTOM - HEIGHT * share.clamp(0.0, 1.0);
    let (cup, solution) = (level(drawn.dose / brim), level(drawn.total / drawn.tank));
    let half = drawn.step / 2.0;
    let (above, below) = (level((drawn.dose + half) / brim), level((drawn.dose - half) / brim));
    let layer = HEIGHT * drawn.dose / drawn.tank;
    html! {
        <svg class="drawing" role="img" aria-label={shared.tell("practice-drawing", &told)} viewBox="0 0 280 230">
            { liquid(20.0, 80.0, cup, BOTTOM, "concentrate") }
            <rect class="band" x="20" y={above.to_string()} width="80" height={(below - above).max(1.0).to_string()} />
            <path class="line" d={format!("M20 {cup}H100")} />
            <path class="vessel" d={format!("M14 24 20 30V{BOTTOM}H100V30")} />
            { for marks(drawn, brim).into_iter().map(|share| {
                html! { <path class="mark" d={format!("M100 {}H112", level(share))} /> }
            }) }
            { liquid(160.0, 100.0, solution, BOTTOM, "solution") }
            { liquid(160.0, 100.0, BOTTOM - layer, BOTTOM, "concentrate") }
            <path class="vessel" d={format!("M160 30V{BOTTOM}H260V30")} />
            { under(60.0, BOTTOM + 20.0, [dose, shared.say("practice-drawing-cup")]) }
            { under(208.0, BOTTOM + 20.0, [total, shared.tell("drawing-tank", &[("tank", Argument::text(tank))])]) }
        </svg>
    }
}

/// The steps of the cup as shares of its height; every second, fifth … where there are too many.
fn marks(drawn: &Fill, brim: f64) -> Vec<f64> {
    let steps = brim / drawn.step;
    let every = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0]
        .into_iter()
        .find(|every| steps / every <= f64::from(MOST_MARKS));
    let Some(every) = every else { return Vec::new() };
    (1..=MOST_MARKS).map(|n| f64::from(n) * every / steps).filter(|share| *share <= 1.0).collect()
}
