//! A small shift as one strip of mix: a block an area, and a tick where the tank is filled.

use crate::answer::Value;
use crate::page::shared::Shared;
use crate::practice::Strip;
use crate::units::{Kind, System};
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 4.0;
const WIDTH: f64 = 272.0;
const TOP: f64 = 30.0;
const HEIGHT: f64 = 36.0;
/// More fills than these are drawn without their numbers.
const NUMBERED: usize = 12;

/// The strip, from the first of the mix on the left to the last of it on the right.
pub fn strip(shared: &Shared, drawn: &Strip, system: System) -> Html {
    let fill = |si: f64| shared.words.value(Value { si, kind: Kind::Fill }, system);
    let total: f64 = drawn.areas.iter().sum();
    let x = |si: f64| LEFT + WIDTH * si / total;
    let mut from = 0.0;
    let mut blocks = Vec::new();
    for area in &drawn.areas {
        blocks.push((x(from), WIDTH * area / total, fill(*area)));
        from += area;
    }
    let starts: Vec<f64> = drawn.tank.map(|tank| starts(total, tank)).unwrap_or_default();
    let amounts = blocks.iter().map(|(.., text)| text.clone()).collect::<Vec<_>>().join("; ");
    let told = [
        ("areas", Argument::text(amounts)),
        ("total", Argument::text(fill(total))),
        ("n", Argument::number(starts.len() as f64, shared.words.number(starts.len() as f64))),
    ];
    let title =
        shared.tell(if starts.is_empty() { "practice-drawing-mix" } else { "practice-drawing-strip" }, &told);
    let bottom = TOP + HEIGHT;
    let tick = |at: &f64| format!("M{:.1} {}V{bottom}", x(*at), TOP - 8.0);
    let ticks = starts.iter().map(tick).collect::<Vec<_>>().concat();
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox={format!("0 0 280 {}", bottom + 30.0)}>
            { for blocks.into_iter().map(|(left, wide, text)| html! {
                <>
                    <rect class="level framed" x={format!("{left:.1}")} y={TOP.to_string()} width={format!("{wide:.1}")} height={HEIGHT.to_string()} />
                    if wide > 62.0 { <text x={format!("{:.1}", left + wide / 2.0)} y={(TOP + 24.0).to_string()} text-anchor="middle">{ text }</text> }
                </>
            }) }
            <path class="line" d={ticks} />
            if starts.len() <= NUMBERED { { for starts.iter().enumerate().map(|(index, at)| html! {
                <text x={format!("{:.1}", (x(*at) + 1.0).min(LEFT + WIDTH - 18.0))} y={(TOP - 12.0).to_string()}>{ index + 1 }</text>
            }) } }
            <text x={(LEFT + WIDTH).to_string()} y={(bottom + 22.0).to_string()} text-anchor="end" font-weight="700">{ fill(total) }</text>
        </svg>
    }
}

/// How much was used before each fill of the tank.
fn starts(total: f64, tank: f64) -> Vec<f64> {
    let mut out = Vec::new();
    let mut at = 0.0;
    // What rounding leaves is no fill.
    while at < total * (1.0 - 1e-9) {
        out.push(at);
        at += tank;
    }
    out
}
