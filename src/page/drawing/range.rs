//! What a label allows as a bar on one axis, from nothing on.

use crate::answer::Value;
use crate::page::shared::Shared;
use crate::practice::Range;
use crate::units::System;
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 6.0;
const WIDTH: f64 = 268.0;
const AXIS: f64 = 70.0;

/// The bar, and the end that the task asks for as a line. A label with one number is one line.
pub fn range(shared: &Shared, drawn: &Range, system: System) -> Html {
    let show = |value: Value| shared.words.value(value, system);
    let x = |si: f64| LEFT + WIDTH * si / (drawn.high.si * 1.25);
    let (low, high) = (x(drawn.low.si), x(drawn.high.si));
    let is_point = drawn.low == drawn.high;
    let text = if is_point {
        show(drawn.low)
    } else {
        format!("{} – {}", shared.words.bare(drawn.low, system), show(drawn.high))
    };
    let asked = drawn.asked.map(show);
    let told =
        [("range", Argument::text(&*text)), ("asked", Argument::text(asked.clone().unwrap_or_default()))];
    let key = if asked.is_some() { "practice-drawing-range-asked" } else { "practice-drawing-range" };
    let middle = f64::midpoint(low, high).clamp(70.0, 210.0);
    html! {
        <svg class="drawing" role="img" aria-label={shared.tell(key, &told)} viewBox="0 0 280 108">
            <text x={middle.to_string()} y="24" text-anchor="middle" font-weight="700">{ text }</text>
            <rect class="window chosen" x={low.to_string()} y="40" width={(high - low).max(3.0).to_string()} height="22" />
            <path class="vessel" d={format!("M{LEFT} {AXIS}H{}M{LEFT} {}v16", LEFT + WIDTH, AXIS - 8.0)} />
            { for drawn.asked.map(|one| html! { <path class="pointer" d={format!("M{0} 32V{1}", x(one.si), AXIS + 10.0)} /> }) }
            <text x={LEFT.to_string()} y={(AXIS + 28.0).to_string()}>{ "0" }</text>
            { for asked.zip(drawn.asked).filter(|_| !is_point).map(|(text, one)| html! {
                <text x={x(one.si).clamp(60.0, 220.0).to_string()} y={(AXIS + 28.0).to_string()} text-anchor="middle">{ text }</text>
            }) }
        </svg>
    }
}
