//! A control chart: single values with their limits, and below them how far each lies from the one before.

use crate::answer::Value;
use crate::form::log::asked::{Doses, Point};
use crate::page::shared::Shared;
use crate::trade::control::Rule;
use crate::units::{Kind, VolumeFraction};
use yew::prelude::*;

const LEFT: f64 = 4.0;
const WIDTH: f64 = 540.0;
const HEIGHT: f64 = 150.0;
const GAP: f64 = 44.0;

/// The chart; its numbers stand in the table beside it. A point that stands out is ringed and carries its number.
pub fn control_chart(shared: &Shared, found: &Doses) -> Html {
    let Some(limits) = found.limits else { return Html::default() };
    let points = &found.points;
    let lower = limits.lower.max(0.0);
    let values = || points.iter().map(|point| point.ratio);
    let most = values().fold(limits.upper, f64::max);
    let least = values().fold(lower, f64::min);
    let reach = (most - least).max(1e-9);
    let x =
        |at: usize| LEFT + 12.0 + (WIDTH - 24.0) * at as f64 / points.len().saturating_sub(1).max(1) as f64;
    let y = |value: f64| 24.0 + (HEIGHT - 34.0) * (most - value) / reach;
    let widest = points.iter().filter_map(|point| point.range).fold(limits.range_upper, f64::max).max(1e-9);
    let y2 = |range: f64| HEIGHT + GAP + (HEIGHT - 34.0) * (1.0 - range / widest);
    let percent = |value: f64| shared.show(Value::new(VolumeFraction::new(value), Kind::Percent));
    let line = |height: f64, class: &'static str, text: String| {
        html! {
            <>
                <path {class} d={format!("M{LEFT} {height:.1}H{}", LEFT + WIDTH)} />
                <text x={(LEFT + WIDTH + 6.0).to_string()} y={format!("{:.1}", height + 5.0)}>{ text }</text>
            </>
        }
    };
    let path = |all: &[(f64, f64)]| -> String {
        let step = |(index, (x, y)): (usize, &(f64, f64))| {
            format!("{}{x:.1} {y:.1}", if index == 0 { 'M' } else { 'L' })
        };
        all.iter().enumerate().map(step).collect()
    };
    let main: Vec<(f64, f64)> =
        points.iter().enumerate().map(|(at, point)| (x(at), y(point.ratio))).collect();
    let moving: Vec<(f64, f64)> =
        points.iter().enumerate().filter_map(|(at, point)| Some((x(at), y2(point.range?)))).collect();
    let dot = |(at, point): (usize, &Point)| {
        let far = !point.rules.is_empty();
        // Eight on one side are many: the first of them carries its number, and the table tells of all.
        let after = at.checked_sub(1).is_some_and(|before| points[before].rules == [Rule::Run]);
        let told = far && !(after && point.rules == [Rule::Run]);
        let (cx, cy) = (x(at), y(point.ratio));
        html! {
            <>
                <circle class={classes!("dot", far.then_some("far"))} r={if far { "6" } else { "3" }} cx={format!("{cx:.1}")} cy={format!("{cy:.1}")} />
                if told { <text x={format!("{cx:.1}")} y={format!("{:.1}", cy - 9.0)} text-anchor="middle">{ at + 1 }</text> }
            </>
        }
    };
    let title = format!(
        "{} {}",
        shared.say("ask-doses-picture"),
        found
            .told
            .answer
            .remarks
            .iter()
            .map(|remark| shared.words.remark(remark, shared.system()))
            .collect::<Vec<_>>()
            .join(" ")
    );
    html! {
        <div class="scroll latest" tabindex="0" role="region" aria-label={shared.say("ask-doses-picture")}>
        <svg class="drawing wide-drawing" role="img" aria-label={title} viewBox={format!("0 0 640 {}", 2.0 * HEIGHT + GAP)}>
            <text x={LEFT.to_string()} y="14">{ shared.say("ask-doses-values") }</text>
            { line(y(limits.upper), "pointer", percent(limits.upper)) }
            { line(y(limits.centre), "mark", percent(limits.centre)) }
            { line(y(lower), "pointer", percent(lower)) }
            <path class="line" d={path(&main)} />
            { for points.iter().enumerate().map(dot) }
            <text x={LEFT.to_string()} y={(HEIGHT + GAP - 12.0).to_string()}>{ shared.say("ask-doses-ranges") }</text>
            { line(y2(limits.range_upper), "pointer", percent(limits.range_upper)) }
            { line(y2(limits.range), "mark", percent(limits.range)) }
            <path class="line" d={path(&moving)} />
        </svg>
        </div>
    }
}
