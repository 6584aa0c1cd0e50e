//! The nine GHS pictograms as drawings: a black symbol on white in a red frame set on a point.
//!
//! Presentation attributes only, since the page's content policy forbids styles in the markup; the
//! class `ghs-frame` lets the style sheet turn the frame black on paper.

mod shapes;

use yew::prelude::*;

use crate::chemistry::ghs;
use shapes::SHAPES;

/// One painted path: its data, and for lines the width.
enum Mark {
    /// Filled black.
    Ink(&'static str),
    /// Filled black, with the inner loop left open.
    Hollow(&'static str),
    /// Filled white.
    Paper(&'static str),
    /// A black line.
    Line(&'static str, &'static str),
    /// A white line.
    Gap(&'static str, &'static str),
}

/// A GHS pictogram; `label` is its name in the reader's language, for those who cannot see it.
pub fn pictogram(code: ghs::Pictogram, label: String) -> Html {
    let marks = SHAPES[code as usize].iter().map(paint);
    html! {
        <svg class="ghs" role="img" aria-label={label} viewBox="0 0 100 100" width="56" height="56">
            <path class="ghs-frame" d="M50 4 96 50 50 96 4 50Z" fill="#fff" stroke="#d50000" stroke-width="5" />
            { for marks }
        </svg>
    }
}

/// The path of one mark.
fn paint(mark: &Mark) -> Html {
    match *mark {
        Mark::Ink(d) => html! { <path fill="#000" {d} /> },
        Mark::Hollow(d) => html! { <path fill="#000" fill-rule="evenodd" {d} /> },
        Mark::Paper(d) => html! { <path fill="#fff" {d} /> },
        Mark::Line(d, width) => stroke(d, width, "#000"),
        Mark::Gap(d, width) => stroke(d, width, "#fff"),
    }
}

fn stroke(d: &'static str, width: &'static str, colour: &'static str) -> Html {
    html! { <path fill="none" stroke={colour} stroke-width={width} stroke-linecap="round" {d} /> }
}
