//! A measuring jug and a tank in section, the liquid where it will stand.

use crate::answer::Value;
use crate::page::shared::Shared;
use crate::units::unit;
use crate::words::Argument;
use yew::prelude::*;

/// What is drawn.
pub struct JugAndTank {
    /// The tank.
    pub tank: Value,
    /// Use solution in it.
    pub total: Value,
    /// Concentrate in the jug.
    pub dose: Value,
    /// One graduation of the jug, where it has any.
    pub step: Option<Value>,
    /// The unit on the jug, by its code.
    pub unit: Option<&'static str>,
}

const TOP: f64 = 30.0;
const HEIGHT: f64 = 170.0;
const BOTTOM: f64 = TOP + HEIGHT;
/// Where what stands under the vessels begins.
const NAMES: f64 = BOTTOM + 22.0;

/// The most graduations that can be told apart.
const MOST_MARKS: i32 = 25;

/// Both vessels, each to its own scale, with its numbers beside it.
pub fn jug_and_tank(shared: &Shared, drawn: &JugAndTank) -> Html {
    let on_jug = |si: f64| match drawn.unit.and_then(unit) {
        Some(unit) => shared.words.in_unit(si, unit),
        None => shared.show(Value { si, ..drawn.dose }),
    };
    let dose = on_jug(drawn.dose.si);
    let title = shared.tell(
        "drawing-fill",
        &[
            ("dose", Argument::text(dose.clone())),
            ("total", shared.argument(drawn.total)),
            ("tank", shared.argument(drawn.tank)),
        ],
    );
    let full = drawn.dose.si * 1.25;
    let level = |share: f64| BOTTOM - HEIGHT * share.clamp(0.0, 1.0);
    let (jug, tank) = (level(drawn.dose.si / full), level(drawn.total.si / drawn.tank.si));
    let layer = HEIGHT * drawn.dose.si / drawn.tank.si;
    html! {
        <svg class="drawing" role="img" aria-label={title} viewBox="0 0 280 250">
            { liquid(20.0, 80.0, jug, BOTTOM, "concentrate") }
            <path class="vessel" d="M14 24 20 30V200H100V30" />
            <path class="vessel" d="M100 60h18v70h-18" />
            { for marks(drawn, full).into_iter().map(|(share, long)| {
                let y = level(share).to_string();
                html! { <path class="mark" d={format!("M{} {y}H100", if long { 82 } else { 90 })} /> }
            }) }
            { pointer(jug, 4.0, 20.0) }
            { liquid(160.0, 100.0, tank, BOTTOM, "solution") }
            { liquid(160.0, 100.0, tank, tank + layer, "concentrate") }
            <path class="vessel" d="M160 30V200H260V30" />
            { for [0.25, 0.5, 0.75].map(|share| html! {
                <path class="mark" d={format!("M246 {}H260", level(share))} />
            }) }
            { pointer(tank, 144.0, 160.0) }
            { under(60.0, NAMES, [dose, shared.say("drawing-jug")]) }
            { under(208.0, NAMES, [
                shared.show(drawn.total),
                shared.tell("drawing-tank", &[("tank", shared.argument(drawn.tank))]),
            ]) }
        </svg>
    }
}

/// What stands in a vessel.
pub(super) fn liquid(left: f64, width: f64, top: f64, bottom: f64, class: &'static str) -> Html {
    html! {
        <rect class={classes!("liquid", class)} x={left.to_string()} width={width.to_string()} y={top.to_string()}
            height={(bottom - top).max(0.0).to_string()} />
    }
}

/// Marks the level beside the vessel.
fn pointer(level: f64, left: f64, wall: f64) -> Html {
    html! { <path class="pointer" d={format!("M{left} {level}H{wall}")} /> }
}

/// So many letters of a name have room under a vessel.
const ROOM: usize = 13;

/// What stands under a vessel: how much is in it, and what it is. A longer name is drawn narrower.
pub(super) fn under(middle: f64, top: f64, [amount, name]: [String; 2]) -> Html {
    let narrow = (name.chars().count() > ROOM).then_some("116");
    html! {
        <>
            <text x={middle.to_string()} y={top.to_string()} text-anchor="middle" font-weight="700">{ amount }</text>
            <text x={middle.to_string()} y={(top + 21.0).to_string()} text-anchor="middle"
                textLength={narrow} lengthAdjust="spacingAndGlyphs">{ name }</text>
        </>
    }
}

/// The graduations: share of the jug's height, and whether it is a long one.
fn marks(drawn: &JugAndTank, full: f64) -> Vec<(f64, bool)> {
    let Some(step) = drawn.step.filter(|step| step.si > 0.0) else { return Vec::new() };
    // Too many marks would blacken the jug: then only every second, fifth, tenth … is drawn.
    let every = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 1_000.0]
        .into_iter()
        .find(|every| full / (step.si * every) <= f64::from(MOST_MARKS));
    let Some(every) = every else { return Vec::new() };
    let pitch = step.si * every;
    // At most `MOST_MARKS` of them, by the choice of `every`.
    let count = (full / pitch).floor();
    let mark = |index: i32| (pitch * f64::from(index) / full, index % 5 == 0);
    (1..=MOST_MARKS).filter(|index| f64::from(*index) <= count).map(mark).collect()
}
