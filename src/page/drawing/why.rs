//! Small pictures of why a view matters. They show a thought and no figures, so nothing in them is to scale: they are no
//! `drawing`.

mod filling;
mod working;

use super::narrow;
use crate::page::shared::Shared;
use yew::prelude::*;

/// The picture of a view or of a job at the fill station, by its code with dashes; blank where there is none.
pub fn why_drawing(shared: &Shared, about: &str) -> Html {
    let (height, drawn) = match about {
        "fill" => (150, filling::doses(shared)),
        "top-up" => (130, filling::rest(shared)),
        "rescue" => (150, filling::too_strong(shared)),
        "reading" => (150, filling::strip(shared)),
        "flow" => (112, working::films(shared)),
        "shift" => (122, working::levels(shared)),
        "cautions" => (112, working::goggles()),
        "log" => (112, working::doses(shared)),
        "site" => (146, working::one_rule(shared)),
        "practice" => (134, working::paper_and_stone(shared)),
        _ => return Html::default(),
    };
    html! {
        <svg class="thought" role="img" aria-label={shared.say(&format!("why-{about}-drawing"))} viewBox={format!("0 0 280 {height}")}>
            { drawn }
        </svg>
    }
}

/// Words in a drawing, about their middle; what has more letters than there is room for is drawn narrower.
fn word(shared: &Shared, [middle, y, room]: [u32; 3], key: &str) -> Html {
    let text = shared.say(key);
    let narrow = narrow(&text, f64::from(room));
    html! {
        <text x={middle.to_string()} y={y.to_string()} text-anchor="middle" textLength={narrow} lengthAdjust="spacingAndGlyphs">{ text }</text>
    }
}

/// A word that begins or ends at a place.
fn word_at(shared: &Shared, anchor: &'static str, x: u32, y: u32, key: &str) -> Html {
    html! { <text x={x.to_string()} y={y.to_string()} text-anchor={anchor}>{ shared.say(key) }</text> }
}

/// A dot.
fn dot(x: u32, y: u32, r: u32, class: &'static str) -> Html {
    html! { <circle {class} cx={x.to_string()} cy={y.to_string()} r={r.to_string()} /> }
}

/// A tank of this width with its mix, and the product in it as the layer that it would be at the bottom.
fn tank(left: u32, wide: u32, [top, level, layer, bottom]: [u32; 4]) -> Html {
    let right = left + wide;
    html! {
        <>
            <path class="solution" d={format!("M{left} {level}H{right}V{bottom}H{left}Z")} />
            <path class="concentrate" d={format!("M{left} {layer}H{right}V{bottom}H{left}Z")} />
            <path class="vessel" d={format!("M{left} {top}V{bottom}H{right}V{top}")} />
        </>
    }
}

/// An arrow, by its path and the point of its head.
fn arrow(line: &'static str, head: &'static str) -> Html {
    html! { <><path class="line" d={line} /><path class="line" d={head} /></> }
}
