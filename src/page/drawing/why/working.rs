//! On the floor and behind it: how wet, how far, who is kept safe, what is written down.

use super::{arrow, dot, tank, word, word_at};
use crate::page::shared::Shared;
use yew::prelude::*;

/// A thin film that dries, and a thick one that stays.
pub fn films(shared: &Shared) -> Html {
    html! {
        <>
            { for [(32, "24 40 32 28 40 40"), (70, "62 40 70 28 78 40"), (108, "100 40 108 28 116 40")].map(|(x, head)| html! {
                <><path class="pointer" d={format!("M{x} 68V32")} /><path class="mark" d={format!("M{head}")} /></>
            }) }
            <path class="vessel" d="M10 78H130" />
            <path class="solution" d="M150 50H270V77H150Z" />
            <path class="line" d="M150 50H270" />
            <path class="vessel" d="M150 78H270" />
            { word(shared, [70, 104, 130], "why-flow-thin") }
            { word(shared, [210, 104, 130], "why-flow-thick") }
        </>
    }
}

/// The tank over a shift: filled, filled again, and filled as far as is still needed.
pub fn levels(shared: &Shared) -> Html {
    let level = "M10 18 98 80V18L186 80V46L270 88";
    html! {
        <>
            <path class="level" d={format!("{level}V90H10Z")} />
            <path class="line" d={level} />
            <path class="vessel" d="M10 8V90H270" />
            { word_at(shared, "start", 10, 114, "why-shift-start") }
            { word_at(shared, "end", 270, 114, "why-shift-end") }
        </>
    }
}

/// Drops that hit the pane before the eye.
pub fn goggles() -> Html {
    html! {
        <>
            { for [(26, 34), (56, 60), (30, 84), (84, 42)].map(|(x, y)| dot(x, y, 6, "concentrate")) }
            { for [(116, 38), (110, 56), (116, 74)].map(|(x, y)| dot(x, y, 3, "concentrate")) }
            <path class="vessel" d="M262 14H136Q126 14 126 24V88Q126 98 136 98H262" />
            <path class="framed" d="M158 56Q204 14 250 56Q204 98 158 56Z" />
            { dot(204, 56, 15, "concentrate") }
            { dot(204, 56, 6, "bar chosen") }
        </>
    }
}

/// Ten doses along a line.
pub fn doses(shared: &Shared) -> Html {
    let dots =
        [(22, 72), (48, 66), (74, 78), (100, 70), (126, 75), (152, 67), (204, 74), (230, 69), (256, 76)];
    html! {
        <>
            <path class="line" d="M10 72H270" />
            <path class="pointer" d="M10 48H270M10 96H270" />
            { for dots.map(|(x, y)| dot(x, y, 5, "dot")) }
            { dot(178, 18, 7, "dot far") }
            { word(shared, [82, 24, 144], "why-log-far") }
        </>
    }
}

/// One sheet, and three tanks that are alike.
pub fn one_rule(shared: &Shared) -> Html {
    html! {
        <>
            <path class="framed" d="M10 22H66V104H10Z" />
            <path class="line" d="M20 40H56M20 56H56M20 72H44" />
            { arrow("M74 64H102", "M92 56 104 64 92 72") }
            { for [116, 170, 224].map(|left| tank(left, 44, [28, 42, 88, 104])) }
            { word(shared, [40, 134, 78], "why-site-rule") }
            { word(shared, [192, 134, 170], "why-site-same") }
        </>
    }
}

/// A number that is crossed out, and a pit that is not.
pub fn paper_and_stone(shared: &Shared) -> Html {
    html! {
        <>
            <path class="framed" d="M22 12H106V92H22Z" />
            <text x="64" y="58" text-anchor="middle" font-weight="700">{ "1 : 6" }</text>
            <path class="line" d="M34 68 94 36" />
            { dot(212, 26, 7, "concentrate") }
            <path class="framed level" d="M160 56H190Q196 74 204 64Q212 80 220 66Q228 74 234 56H264V92H160Z" />
            { word(shared, [64, 120, 124], "why-practice-paper") }
            { word(shared, [212, 120, 130], "why-practice-floor") }
        </>
    }
}
