//! One amount on two scales, one above the other on the same line.

use super::LETTER;
use crate::number;
use crate::page::shared::Shared;
use crate::practice::Scales;
use crate::units::{Unit, unit};
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 10.0;
/// Half a number of six letters fits behind its end.
const WIDTH: f64 = 240.0;
const LINE: f64 = 80.0;
/// At least so many marks of a scale are drawn.
const MARKS: f64 = 3.0;

/// The told unit above the line, the asked one below it, and the amount through both.
pub fn scales(shared: &Shared, drawn: &Scales) -> Html {
    let (Some(from), Some(to)) = (unit(drawn.from), unit(drawn.to)) else { return Html::default() };
    let end = drawn.si * 1.2;
    let at = LEFT + WIDTH / 1.2;
    let (above, below) = (shared.words.in_unit(drawn.si, from), shared.words.in_unit_full(drawn.si, to));
    let told = [("from", Argument::text(&*above)), ("to", Argument::text(&*below))];
    html! {
        <svg class="drawing" role="img" aria-label={shared.tell("practice-drawing-scales", &told)} viewBox="0 0 280 164">
            <text x={at.min(200.0).to_string()} y="20" text-anchor="middle" font-weight="700">{ above }</text>
            <text x={at.min(200.0).to_string()} y="154" text-anchor="middle" font-weight="700">{ below }</text>
            <path class="vessel" d={format!("M{LEFT} {LINE}H{}", LEFT + WIDTH)} />
            { for [(from, -1.0), (to, 1.0)].map(|(unit, side)| scale(shared, unit, (end, at), side)) }
            <path class="pointer" d={format!("M{at} 28V{}", 136.0)} />
        </svg>
    }
}

/// The marks of one scale with their numbers, above the line (-1) or below it (1). A number that the amount's own line
/// would cross is left out, and every other one where they are wider than the steps between them.
fn scale(shared: &Shared, unit: &Unit, (end, at): (f64, f64), side: f64) -> Html {
    let most = unit.from_si(end);
    let step = step_for(most);
    let marks =
        (0..).map(|index: u32| f64::from(index) * step).take_while(|mark| *mark <= most * (1.0 + 1e-9));
    let widest = number::write(most, 4, shared.marks()).chars().count() as f64 * LETTER;
    let every = if widest > WIDTH * step / most { 2 } else { 1 };
    let text_at = LINE + if side < 0.0 { -18.0 } else { 32.0 };
    html! {
        { for marks.enumerate().map(|(index, mark)| {
            let x = LEFT + WIDTH * mark / most;
            let told = index % every == 0 && (x - at).abs() > 16.0;
            html! {
                <>
                    <path class="mark" d={format!("M{x:.1} {LINE}v{}", 12.0 * side)} />
                    if told { <text x={format!("{x:.1}")} y={text_at.to_string()} text-anchor="middle">{ number::write(mark, 4, shared.marks()) }</text> }
                </>
            }
        }) }
    }
}

/// The largest of 1, 2, 5 and their tens of which three go into `most`.
fn step_for(most: f64) -> f64 {
    let ten = 10.0_f64.powf((most / MARKS).log10().floor());
    [5.0, 2.0]
        .into_iter()
        .map(|one| one * ten)
        .find(|step| step * MARKS <= most * (1.0 + 1e-9))
        .unwrap_or(ten)
}
