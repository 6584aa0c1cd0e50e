//! A film on a floor tile seen from the side, beside a sheet of paper to the same scale.

use super::narrow;
use crate::answer::Value;
use crate::page::shared::Shared;
use crate::practice::{Film, SHEET};
use crate::units::{Kind, Quantity};
use crate::words::Argument;
use yew::prelude::*;

const FLOOR: f64 = 140.0;
const LEFT: f64 = 6.0;
/// How wide the tile is drawn.
const TILE: f64 = 168.0;
/// Where the sheet stands, and how wide.
const PAPER: (f64, f64) = (200.0, 70.0);
/// The highest that a film is drawn.
const ROOM: f64 = 104.0;
/// How many times as large it is drawn upwards as across.
const TIMES: [f64; 6] = [1_000.0, 500.0, 200.0, 100.0, 50.0, 20.0];

/// The drawing, and how many times as large it is upwards as across.
pub fn film_on_tile(shared: &Shared, drawn: &Film) -> (Html, f64) {
    let across = TILE / drawn.tile;
    let most = drawn.thickness.max(SHEET.si());
    let times =
        TIMES.into_iter().find(|times| most * across * times <= ROOM).unwrap_or(TIMES[TIMES.len() - 1]);
    let up = |si: f64| (si * across * times).max(0.5);
    let (film, sheet) = (up(drawn.thickness), up(SHEET.si()));
    let show = |si: f64, kind: Kind| shared.show(Value { si, kind });
    let (thick, paper) = (show(drawn.thickness, Kind::Thickness), show(SHEET.si(), Kind::Thickness));
    let edge = show(drawn.tile, Kind::Width);
    let told = [
        ("thick", Argument::text(thick.clone())),
        ("paper", Argument::text(paper.clone())),
        ("edge", Argument::text(edge.clone())),
        ("times", Argument::text(shared.words.number(times))),
    ];
    let block = |class: &'static str, left: f64, width: f64, height: f64| {
        html! { <rect {class} x={left.to_string()} y={(FLOOR - height).to_string()} width={width.to_string()} height={height.to_string()} /> }
    };
    let over = |middle: f64, height: f64, text: String| {
        html! { <text x={middle.to_string()} y={(FLOOR - height - 8.0).to_string()} text-anchor="middle" font-weight="700">{ text }</text> }
    };
    let below = |middle: f64, room: f64, text: String| {
        let narrow = narrow(&text, room);
        html! {
            <text x={middle.to_string()} y={(FLOOR + 24.0).to_string()} text-anchor="middle" textLength={narrow} lengthAdjust="spacingAndGlyphs">{ text }</text>
        }
    };
    let (tile_middle, paper_middle) = (LEFT + TILE / 2.0, PAPER.0 + PAPER.1 / 2.0);
    let drawing = html! {
        <svg class="drawing" role="img" aria-label={shared.tell("numbers-drawing-film", &told)} viewBox="0 0 280 172">
            { block("solution", LEFT, TILE, film) }
            { block("framed", PAPER.0, PAPER.1, sheet) }
            <path class="vessel" d={format!("M{LEFT} {FLOOR}H{}M{} {FLOOR}h{}", LEFT + TILE, PAPER.0, PAPER.1)} />
            <path class="mark" d={format!("M{LEFT} {FLOOR}v10M{} {FLOOR}v10", LEFT + TILE)} />
            { over(tile_middle, film, thick) }
            { over(paper_middle, sheet, paper) }
            { below(tile_middle, TILE, shared.tell("numbers-tile-is", &[("edge", Argument::text(edge))])) }
            { below(paper_middle, PAPER.1 + 16.0, shared.say("numbers-paper")) }
        </svg>
    };
    (drawing, times)
}
