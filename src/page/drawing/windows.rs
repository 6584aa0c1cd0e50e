//! The windows that a dose must stay in, on one axis with the dose itself.

use crate::answer::Value;
use crate::page::shared::Shared;
use crate::words::Argument;
use yew::prelude::*;

/// One rule's window.
pub struct Row {
    /// What the rule is called.
    pub name: String,
    /// Its least.
    pub low: Value,
    /// Its most; none where it has none.
    pub high: Option<Value>,
    /// Whether it decides the dose.
    pub governs: bool,
}

/// What is drawn.
pub struct Windows {
    /// The windows.
    pub rows: Vec<Row>,
    /// The dose.
    pub dose: Value,
}

const LEFT: f64 = 10.0;
const WIDTH: f64 = 260.0;
const ROW: f64 = 74.0;
/// So many letters of a name have room above its bar.
const ROOM: usize = 24;

/// A bar a rule between its two ends, its name and numbers above it, and the dose as a line through
/// all of them.
pub fn windows(shared: &Shared, drawn: &Windows) -> Html {
    let ends = drawn.rows.iter().flat_map(|row| [Some(row.low), row.high]).flatten();
    let largest = ends.map(|end| end.si).fold(drawn.dose.si, f64::max) * 1.15;
    let across = |si: f64| LEFT + WIDTH * si / largest;
    let bottom = ROW * drawn.rows.len() as f64 + 8.0;
    let dose = across(drawn.dose.si);
    let told: Vec<String> =
        drawn.rows.iter().map(|row| shared.words.said_of(&name(shared, row), &window(shared, row))).collect();
    let dose_text = shared.tell("drawing-windows-dose", &[("dose", shared.argument(drawn.dose))]);
    let title = format!("{}. {dose_text}", told.join(". "));
    let bar = |(index, row): (usize, &Row)| {
        let y = ROW * index as f64 + 50.0;
        // A window without an end runs off the axis, and has no closing stroke there.
        let (left, right) = (across(row.low.si), row.high.map_or(LEFT + WIDTH, |high| across(high.si)));
        let close = row.high.map(|_| format!("M{right} {}v22", y - 4.0)).unwrap_or_default();
        let name = name(shared, row);
        // What would run off the drawing is drawn narrower.
        let narrow = (name.chars().count() > ROOM).then(|| WIDTH.to_string());
        html! {
            <>
                <text x={LEFT.to_string()} y={(y - 32.0).to_string()} textLength={narrow} lengthAdjust="spacingAndGlyphs"
                    font-weight={row.governs.then_some("700")}>{ name }</text>
                <text x={LEFT.to_string()} y={(y - 12.0).to_string()}>{ window(shared, row) }</text>
                <rect class={classes!("window", row.governs.then_some("chosen"))} x={left.to_string()} y={y.to_string()}
                    width={(right - left).max(2.0).to_string()} height="14" />
                <path class="vessel" d={format!("M{left} {}v22{close}", y - 4.0)} />
            </>
        }
    };
    // Through every bar, and not through the words between them.
    let through: Vec<String> =
        (0..drawn.rows.len()).map(|index| format!("M{dose} {}v26", ROW * index as f64 + 44.0)).collect();
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox={format!("0 0 280 {}", bottom + 30.0)}>
            { for drawn.rows.iter().enumerate().map(bar) }
            <path class="pointer" d={through.concat()} />
            <text x={dose.clamp(70.0, 210.0).to_string()} y={(bottom + 20.0).to_string()} text-anchor="middle">
                { dose_text.clone() }
            </text>
        </svg>
    }
}

fn name(shared: &Shared, row: &Row) -> String {
    let key = if row.governs { "drawing-window-governs" } else { "drawing-window" };
    shared.tell(key, &[("name", Argument::text(row.name.clone()))])
}

fn window(shared: &Shared, row: &Row) -> String {
    let open = Value { si: f64::INFINITY, ..row.low };
    shared.words.window(row.low, row.high.unwrap_or(open), shared.system())
}
