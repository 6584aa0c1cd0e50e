//! Readings over time, with their line and two standard errors of its rise about it.

use crate::form::log::asked::DriftRow;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 14.0;
const WIDTH: f64 = 250.0;
const HEIGHT: f64 = 160.0;

/// So many readings are drawn, the latest.
const DRAWN: usize = 200;

/// The plot; its numbers stand in the table beside it.
pub fn drift_line(shared: &Shared, row: &DriftRow) -> Html {
    let Some(line) = row.line else { return Html::default() };
    let drawn = &row.readings[row.readings.len().saturating_sub(DRAWN)..];
    let (Some(first), Some(last)) = (drawn.first(), drawn.last()) else { return Html::default() };
    let days = (last.day - first.day).max(1e-9);
    // The line goes through the mean of all readings.
    let middle = row.readings.iter().map(|one| one.day).sum::<f64>() / row.readings.len() as f64;
    let at = |day: f64, by: f64| line.mean + (line.slope + by * line.error.unwrap_or(0.0)) * (day - middle);
    let ends = [first.day, last.day];
    let heights = ends.iter().flat_map(|day| [at(*day, -2.0), at(*day, 2.0)]);
    let all = || drawn.iter().map(|one| one.si).chain(heights.clone());
    let (lowest, most) =
        (all().fold(f64::INFINITY, f64::min).max(0.0), all().fold(f64::MIN_POSITIVE, f64::max));
    let reach = (most - lowest).max(1e-12);
    let x = |day: f64| LEFT + 6.0 + (WIDTH - 12.0) * (day - first.day) / days;
    let y = |si: f64| 30.0 + (HEIGHT - 40.0) * (most - si) / reach;
    let point = |day: f64, by: f64| format!("{:.1} {:.1}", x(day), y(at(day, by)));
    let band = format!(
        "M{}L{}L{}L{}Z",
        point(ends[0], 2.0),
        point(ends[1], 2.0),
        point(ends[1], -2.0),
        point(ends[0], -2.0)
    );
    let counted = [
        ("n", Argument::text(row.readings.len().to_string())),
        ("product", Argument::text(row.product.clone())),
    ];
    html! {
        <svg class="drawing" role="img" aria-label={shared.tell("ask-drift-picture", &counted)} viewBox={format!("0 0 280 {}", HEIGHT + 26.0)}>
            <path class="band" d={band} />
            <path class="vessel" d={format!("M{LEFT} 4V{HEIGHT}H{}", LEFT + WIDTH)} />
            <path class="pointer" d={format!("M{}L{}", point(ends[0], 0.0), point(ends[1], 0.0))} />
            { for drawn.iter().map(|one| html! { <circle class="dot" r="4" cx={format!("{:.1}", x(one.day))} cy={format!("{:.1}", y(one.si))} /> }) }
            <text x={(LEFT + 8.0).to_string()} y="18">{ shared.show(row.value(most)) }</text>
            <text x={(LEFT + 8.0).to_string()} y={(HEIGHT - 6.0).to_string()}>{ shared.show(row.value(lowest)) }</text>
            <text x={LEFT.to_string()} y={(HEIGHT + 20.0).to_string()}>{ first.when.get(..10).unwrap_or_default().to_owned() }</text>
            <text x={(LEFT + WIDTH).to_string()} y={(HEIGHT + 20.0).to_string()} text-anchor="end">{ last.when.get(..10).unwrap_or_default().to_owned() }</text>
        </svg>
    }
}
