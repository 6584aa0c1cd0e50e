//! What a task looks like when it is over: a drawing, and the same in words beside it.

use crate::answer::Value;
use crate::number;
use crate::page::drawing::{
    RateBars, bottles, cup_and_tank, foam, range, rate_bars, scales, strip, tanks, ticket, wear,
};
use crate::page::shared::Shared;
use crate::practice::{Exercise, Fill, Picture, Range, Rates};
use crate::units::{Kind, unit};
use crate::words::Argument;
use yew::prelude::*;

/// As many digits as tell half a step of a fine cup apart.
const DIGITS: i32 = 4;

/// The picture of an exercise.
pub fn picture(shared: &Shared, exercise: &Exercise, drawn: &Picture) -> Html {
    let system = exercise.system;
    let (drawing, key) = match drawn {
        Picture::Fill(one) => return fill(shared, exercise, one),
        Picture::Tanks(one) => (tanks(shared, one, system), "practice-picture-tanks"),
        Picture::Rates(one) => (rates(shared, one), "practice-picture-rates"),
        Picture::Strip(one) if one.tank.is_none() => (strip(shared, one, system), "practice-picture-mix"),
        Picture::Strip(one) => (strip(shared, one, system), "practice-picture-strip"),
        Picture::Range(one) => return figure(range(shared, one, system), allowed(shared, one)),
        Picture::Scales(one) => (scales(shared, one), "practice-picture-scales"),
        Picture::Ticket(one) => (ticket(shared, one, exercise), ticket_key(one.wrong.is_some())),
        Picture::Wear(one) => (wear(shared, one), "practice-picture-wear"),
        Picture::Bottles(one) => (bottles(shared, one), one.happens),
        Picture::Foam(one) => (foam(shared, one, system), one.key()),
    };
    figure(drawing, html! { <p>{ shared.say(key) }</p> })
}

fn figure(drawing: Html, told: Html) -> Html {
    html! { <figure class="cup" data-picture="">{ drawing }<figcaption>{ told }</figcaption></figure> }
}

const fn ticket_key(is_wrong: bool) -> &'static str {
    if is_wrong { "practice-ticket-is-wrong" } else { "practice-ticket-is-right" }
}

/// What a label allows; a strength is told in parts too.
fn allowed(shared: &Shared, drawn: &Range) -> Html {
    let one = drawn.asked.or_else(|| (drawn.low == drawn.high).then_some(drawn.low));
    let strength = one.filter(|one| one.kind == Kind::Percent);
    let parts = strength.map(|one| {
        let parts = |number: f64| Argument::text(number::write(number, DIGITS, shared.marks()));
        let told = [("n", parts(1.0 / one.si - 1.0)), ("all", parts(1.0 / one.si))];
        shared.tell("practice-picture-range-parts", &told)
    });
    html! { <p>{ shared.say("practice-picture-range") }{ " " }{ for parts }</p> }
}

fn rates(shared: &Shared, drawn: &Rates) -> Html {
    let rate = |si: f64| Value { si, kind: Kind::Rate };
    let bars = drawn.rates.iter().map(|si| rate(*si)).collect();
    let (low, high) = (rate(drawn.low), rate(drawn.high));
    rate_bars(shared, &RateBars { rates: bars, chosen: drawn.right, low, high })
}

/// The cup and the tank, and what half a step of the cup does to the ratio.
fn fill(shared: &Shared, exercise: &Exercise, drawn: &Fill) -> Html {
    let ratio = |parts: f64| Argument::text(number::write(parts, DIGITS, shared.marks()));
    let step = unit(drawn.unit).map_or_else(String::new, |unit| shared.words.in_unit(drawn.step, unit));
    let told = [
        ("ratio", ratio(drawn.ratio)),
        ("less", ratio(drawn.less)),
        ("more", ratio(drawn.more)),
        ("step", Argument::text(step)),
    ];
    let words = html! {
        <>
            <p>{ shared.tell("practice-picture-ratio", &told) }</p>
            <p>{ shared.tell("practice-picture-half", &told) }</p>
        </>
    };
    figure(cup_and_tank(shared, drawn, exercise.system), words)
}
