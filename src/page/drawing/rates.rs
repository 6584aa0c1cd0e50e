//! What each setting lays down, held against what the floor should get.

use crate::answer::Value;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// What is drawn.
pub struct RateBars {
    /// The application rate of each setting.
    pub rates: Vec<Value>,
    /// Index of the setting to use; none where none fits.
    pub chosen: Option<usize>,
    /// The least that the floor should get.
    pub low: Value,
    /// The most that the floor should get.
    pub high: Value,
}

const LEFT: f64 = 30.0;
const WIDTH: f64 = 245.0;
const ROW: f64 = 30.0;

/// A bar a setting; the target is the band between two upright lines.
pub fn rate_bars(shared: &Shared, drawn: &RateBars) -> Html {
    let largest = drawn.rates.iter().map(|rate| rate.si).fold(drawn.high.si, f64::max) * 1.05;
    let across = |si: f64| LEFT + WIDTH * si / largest;
    let (low, high) = (across(drawn.low.si), across(drawn.high.si));
    let bottom = ROW * drawn.rates.len() as f64 + 8.0;
    let number = drawn.chosen.map(|index| (index + 1).to_string());
    let key = if number.is_some() { "drawing-rates" } else { "drawing-rates-none" };
    let title = shared.tell(
        key,
        &[
            ("n", Argument::text(number.unwrap_or_default())),
            ("low", shared.argument(drawn.low)),
            ("high", shared.argument(drawn.high)),
        ],
    );
    let bar = |(index, rate): (usize, &Value)| {
        let y = ROW * index as f64 + 8.0;
        let chosen = drawn.chosen == Some(index);
        html! {
            <>
                <text x="8" y={(y + 16.0).to_string()}>{ index + 1 }</text>
                <rect class={classes!("bar", chosen.then_some("chosen"))} x={LEFT.to_string()} y={y.to_string()}
                    width={(across(rate.si) - LEFT).to_string()} height="20" />
            </>
        }
    };
    let target = format!("{} – {}", shared.words.bare(drawn.low, shared.system()), shared.show(drawn.high));
    html! {
        <>
        <svg class="drawing" role="img" aria-label={title.clone()} viewBox={format!("0 0 280 {}", bottom + 8.0)}>
            <rect class="band" x={low.to_string()} y="0" width={(high - low).to_string()} height={bottom.to_string()} />
            { for drawn.rates.iter().enumerate().map(bar) }
            <path class="pointer" d={format!("M{low} 0V{bottom}M{high} 0V{bottom}")} />
        </svg>
        <p class="legend">{ shared.words.headed(&shared.say("drawing-rates-band")) }{ " " }{ target }</p>
        </>
    }
}
