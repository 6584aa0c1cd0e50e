//! pH against the dose, with what the floor bears.

use crate::answer::Value;
use crate::chemistry::acid_base::Point;
use crate::chemistry::floor::Window;
use crate::page::shared::Shared;
use crate::units::{Kind, Quantity, VolumeFraction};
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 30.0;
const WIDTH: f64 = 244.0;
const TOP: f64 = 10.0;
const HEIGHT: f64 = 150.0;

/// A band of pH from plain water to twice the dose, an upright line at the dose, and the floor's window shaded.
pub fn ph_curve(shared: &Shared, points: &[Point], strength: VolumeFraction, window: Option<Window>) -> Html {
    let end = points.last().map_or(1.0, |point| point.strength.si());
    let x = |strength: VolumeFraction| LEFT + WIDTH * strength.si() / end.max(f64::MIN_POSITIVE);
    let y = |ph: f64| TOP + HEIGHT * (1.0 - ph.clamp(0.0, 14.0) / 14.0);
    let spot = |point: &Point, ph: f64| format!("{:.1} {:.1}", x(point.strength), y(ph));
    let there = points.iter().map(|point| spot(point, point.low));
    let back = points.iter().rev().map(|point| spot(point, point.high));
    let outline = format!("M{}Z", there.chain(back).collect::<Vec<_>>().join("L"));
    let bottom = TOP + HEIGHT;
    let (first, last) = (points.first(), points.last());
    let number = |ph: f64| Argument::number(ph, shared.words.number((ph * 10.0).round() / 10.0));
    let title = shared.tell(
        "drawing-ph",
        &[
            ("from", number(first.map_or(7.0, |point| point.low))),
            ("low", number(last.map_or(7.0, |point| point.low))),
            ("high", number(last.map_or(7.0, |point| point.high))),
        ],
    );
    let borne = window.map(|window| {
        let (top, height) = (y(window.high), y(window.low) - y(window.high));
        html! {
            <rect class="band" x={LEFT.to_string()} y={format!("{top:.1}")} width={WIDTH.to_string()} height={format!("{height:.1}")} />
        }
    });
    let mark = |ph: f64| {
        html! {
            <>
                <path class="mark" d={format!("M{} {:.1}h4", LEFT - 4.0, y(ph))} />
                <text x={(LEFT - 7.0).to_string()} y={format!("{:.1}", y(ph) + 6.0)} text-anchor="end">{ ph }</text>
            </>
        }
    };
    let share = |strength| shared.show(Value::new(strength, Kind::Percent));
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox={format!("0 0 280 {}", bottom + 30.0)}>
            { for borne }
            <path class="level framed" d={outline} />
            <path class="pointer" d={format!("M{:.1} {TOP}V{bottom}", x(strength))} />
            <path class="vessel" d={format!("M{LEFT} {TOP}V{bottom}H{}", LEFT + WIDTH)} />
            { for [1.0, 4.0, 7.0, 10.0, 13.0].map(mark) }
            <text x="2" y={(bottom + 22.0).to_string()}>{ "pH" }</text>
            <text x={format!("{:.1}", x(strength))} y={(bottom + 22.0).to_string()} text-anchor="middle">{ share(strength) }</text>
            <text x={(LEFT + WIDTH).to_string()} y={(bottom + 22.0).to_string()} text-anchor="end">
                { share(VolumeFraction::new(end)) }
            </text>
        </svg>
    }
}
