//! Foam: how high it stands in a bottle, or where it goes in a machine.

use super::narrow;
use crate::answer::Value;
use crate::chemistry::foam::LITTLE;
use crate::page::shared::Shared;
use crate::practice::Foam;
use crate::units::{Kind, Quantity, System};
use crate::words::Argument;
use yew::prelude::*;

/// The picture.
pub fn foam(shared: &Shared, drawn: &Foam, system: System) -> Html {
    match *drawn {
        Foam::Shaken { first, later } => shaken(shared, first, later, system),
        Foam::Machine { foams, vacuum } => machine(shared, foams, vacuum),
    }
}

/// Two bottles to one scale, at once and after a minute, with the line that low foam stays below.
fn shaken(shared: &Shared, first: f64, later: f64, system: System) -> Html {
    const LIQUID: f64 = 118.0;
    // Under a bottle, to the edge of the picture on its outer side.
    const ROOM: f64 = 134.0;
    let show = |si: f64| shared.words.value(Value { si, kind: Kind::Width }, system);
    let scale = 90.0 / first.max(LITTLE.si() * 1.5);
    let told = [("first", show(first)), ("later", show(later)), ("limit", show(LITTLE.si()))];
    let title =
        shared.tell("practice-drawing-shaken", &told.map(|(name, text)| (name, Argument::text(text))));
    let limit = LIQUID - LITTLE.si() * scale;
    let bottle = |left: f64, height: f64, when: &str| {
        let when = shared.say(when);
        let narrow = narrow(&when, ROOM);
        html! {
            <>
                <rect class="solution" x={left.to_string()} y={LIQUID.to_string()} width="80" height="42" />
                <rect class="framed" x={left.to_string()} y={(LIQUID - height * scale).to_string()} width="80" height={(height * scale).to_string()} />
                <path class="vessel" d={format!("M{left} 16V160h80V16")} />
                <text x={(left + 40.0).to_string()} y="182" text-anchor="middle" font-weight="700">{ show(height) }</text>
                <text x={(left + 40.0).to_string()} y="204" text-anchor="middle" textLength={narrow} lengthAdjust="spacingAndGlyphs">{ when }</text>
            </>
        }
    };
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox="0 0 280 212">
            { bottle(30.0, first, "practice-foam-at-once") }
            { bottle(170.0, later, "practice-foam-after") }
            <path class="pointer" d={format!("M16 {limit}H264")} />
        </svg>
    }
}

/// A tank, a hose and the motor of the vacuum; foam rises in the tank, and into the hose where there is one.
fn machine(shared: &Shared, foams: Option<bool>, vacuum: bool) -> Html {
    let key = match (foams, vacuum) {
        (Some(false), _) => "practice-drawing-foam-none",
        (_, false) => "practice-drawing-foam-no-vacuum",
        (None, true) => "practice-drawing-foam-unknown",
        (Some(true), true) => "practice-drawing-foam-vacuum",
    };
    let high = if foams == Some(false) { 96.0 } else { 34.0 };
    let bubbles = (0..4)
        .flat_map(|row| (0..5).map(move |one| (f64::from(one) * 24.0 + 32.0, 92.0 - f64::from(row) * 16.0)));
    let up = [(154.0, 26.0), (178.0, 26.0), (202.0, 40.0)].into_iter().filter(|_| vacuum);
    let circle =
        |(x, y): (f64, f64)| html! { <circle class="framed" cx={x.to_string()} cy={y.to_string()} r="7" /> };
    html! {
        <svg class="drawing" role="img" aria-label={shared.say(key)} viewBox="0 0 280 186">
            <rect class="solution" x="20" y="100" width="120" height="56" />
            <path class="vessel" d="M20 16V156H140V46" />
            if high < 90.0 { { for bubbles.chain(up).map(circle) } }
            if vacuum {
                <path class="vessel" d="M140 16H216V84M140 38H192V84" />
                <circle class="vessel" cx="204" cy="112" r="28" />
                <text x="204" y="118" text-anchor="middle">{ shared.say("practice-foam-motor") }</text>
            }
            if foams.is_none() { <text x="80" y="134" text-anchor="middle" font-weight="700">{ "?" }</text> }
            <text x="80" y="178" text-anchor="middle">{ shared.say("practice-foam-tank") }</text>
        </svg>
    }
}
