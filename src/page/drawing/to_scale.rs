//! A tank and the product in it as two cubes to one scale, seen from the front.

use super::jug::{liquid, under};
use crate::answer::Value;
use crate::page::shared::Shared;
use crate::practice::Mix;
use crate::units::{Kind, unit};
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 6.0;
const BOTTOM: f64 = 156.0;
/// The edge of the tank.
const TANK: f64 = 140.0;
/// Where the middle of the product stands.
const PRODUCT: f64 = 212.0;

/// The drawing: the whole of the product as the layer that it is in the tank, and beside it as a cube of its own.
pub fn to_scale(shared: &Shared, drawn: &Mix) -> Html {
    let picture = &drawn.picture;
    let edge = TANK * drawn.dose_edge / drawn.tank_edge;
    let fill = |si: f64| shared.show(Value { si, kind: Kind::Fill });
    let width = |si: f64| Argument::text(shared.show(Value { si, kind: Kind::Width }));
    let dose = unit(picture.unit).map_or_else(String::new, |unit| shared.words.in_unit(picture.dose, unit));
    let tank = fill(picture.tank);
    let told = [
        ("tank", Argument::text(tank.clone())),
        ("total", Argument::text(fill(picture.total))),
        ("dose", Argument::text(dose.clone())),
        ("tank_edge", width(drawn.tank_edge)),
        ("dose_edge", width(drawn.dose_edge)),
    ];
    let (total, layer) = (TANK * picture.total / picture.tank, TANK * picture.dose / picture.tank);
    let (left, top) = (PRODUCT - edge / 2.0, BOTTOM - edge);
    html! {
        <svg class="drawing" role="img" aria-label={shared.tell("numbers-drawing-scale", &told)} viewBox="0 0 280 208">
            { liquid(LEFT, TANK, BOTTOM - total, BOTTOM, "solution") }
            { liquid(LEFT, TANK, BOTTOM - layer, BOTTOM, "concentrate") }
            <path class="vessel" d={format!("M{LEFT} {}V{BOTTOM}H{}V{}", BOTTOM - TANK, LEFT + TANK, BOTTOM - TANK)} />
            { liquid(left, edge, top, BOTTOM, "concentrate") }
            <rect class="framed" x={left.to_string()} y={top.to_string()} width={edge.to_string()} height={edge.to_string()} />
            { under(LEFT + TANK / 2.0, BOTTOM + 22.0, [fill(picture.total), shared.tell("drawing-tank", &[("tank", Argument::text(tank))])]) }
            { under(PRODUCT, BOTTOM + 22.0, [dose, shared.say("practice-drawing-cup")]) }
        </svg>
    }
}
