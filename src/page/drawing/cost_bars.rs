//! What a shift costs, part by part.

use crate::answer::Value;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

const WIDTH: f64 = 272.0;
const ROW: f64 = 54.0;

/// A bar a part, its name and its amount above it; the table beside it tells the same.
pub fn cost_bars(shared: &Shared, parts: &[(String, Value)]) -> Html {
    let most = parts.iter().map(|(_, cost)| cost.si).fold(f64::MIN_POSITIVE, f64::max);
    let told = parts.iter().map(|(name, cost)| format!("{name} {}", shared.show(*cost)));
    let parts_told = Argument::text(told.collect::<Vec<_>>().join(", "));
    let title = shared.tell("drawing-costs", &[("parts", parts_told)]);
    let bar = |(index, (name, cost)): (usize, &(String, Value))| {
        let y = ROW * index as f64;
        html! {
            <>
                <text x="4" y={(y + 20.0).to_string()}>{ name }</text>
                <text x="276" y={(y + 20.0).to_string()} text-anchor="end">{ shared.show(*cost) }</text>
                <rect class="bar" x="4" y={(y + 28.0).to_string()} height="16"
                    width={format!("{:.1}", (WIDTH * cost.si / most).max(1.0))} />
            </>
        }
    };
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox={format!("0 0 280 {}", ROW * parts.len() as f64)}>
            { for parts.iter().enumerate().map(bar) }
        </svg>
    }
}
