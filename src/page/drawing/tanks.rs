//! One tank before and after each step, side by side and to one scale.

use super::jug::liquid;
use super::narrow;
use crate::answer::Value;
use crate::page::shared::Shared;
use crate::practice::{State, Tanks};
use crate::units::{Kind, System};
use crate::words::Argument;
use yew::prelude::*;

const TOP: f64 = 10.0;
const HEIGHT: f64 = 130.0;
const BOTTOM: f64 = TOP + HEIGHT;
const WIDTH: f64 = 280.0;
const WALL: f64 = 74.0;

/// A tank a step: what is in it, and the layer that its product would be at the bottom.
pub fn tanks(shared: &Shared, drawn: &Tanks, system: System) -> Html {
    let fill = |si: f64| shared.words.value(Value { si, kind: Kind::Fill }, system);
    let dose = |si: f64| shared.words.value(Value { si, kind: Kind::Dose }, system);
    let told = |state: &State| {
        let facts =
            [("when", shared.say(state.when)), ("mix", fill(state.mix)), ("product", dose(state.product))];
        shared.tell("practice-drawing-state", &facts.map(|(name, text)| (name, Argument::text(text))))
    };
    let of = Argument::text(fill(drawn.tank));
    let states = Argument::text(drawn.states.iter().map(told).collect::<Vec<_>>().join("; "));
    let title = shared.tell("practice-drawing-tanks", &[("tank", of), ("states", states)]);
    let room = WIDTH / drawn.states.len() as f64;
    let one = |(index, state): (usize, &State)| {
        let middle = room * (index as f64 + 0.5);
        let left = middle - WALL / 2.0;
        let high = |si: f64| HEIGHT * (si / drawn.tank).clamp(0.0, 1.0);
        let line = |down: f64, text: String, weight: Option<&'static str>| {
            let narrow = narrow(&text, room - 6.0);
            html! { <text x={middle.to_string()} y={(BOTTOM + down).to_string()} text-anchor="middle" font-weight={weight} textLength={narrow} lengthAdjust="spacingAndGlyphs">{ text }</text> }
        };
        html! {
            <>
                { liquid(left, WALL, BOTTOM - high(state.mix), BOTTOM, "solution") }
                { liquid(left, WALL, BOTTOM - high(state.product), BOTTOM, "concentrate") }
                <path class="vessel" d={format!("M{left} {TOP}V{BOTTOM}h{WALL}V{TOP}")} />
                { line(22.0, fill(state.mix), Some("700")) }
                { line(44.0, dose(state.product), None) }
                { line(66.0, shared.say(state.when), None) }
            </>
        }
    };
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox={format!("0 0 {WIDTH} {}", BOTTOM + 76.0)}>
            { for drawn.states.iter().enumerate().map(one) }
        </svg>
    }
}
