//! The shift over time: a strip a machine, a block for each thing done.

use crate::answer::Value;
use crate::form::shift::Round;
use crate::page::shared::Shared;
use crate::trade::shift::{Act, Event, Fill};
use crate::units::{Duration, Kind, Quantity};
use crate::words::Argument;
use yew::prelude::*;

const LEFT: f64 = 4.0;
const WIDTH: f64 = 272.0;
const STRIP: f64 = 34.0;
/// A strip with the name of its machine above it.
const ROW: f64 = 84.0;
/// A block narrower than this has no room for its mark.
const ROOM: f64 = 13.0;

/// Floors that are cleaned are filled and carry the area's number; what else takes time is framed and
/// carries the first letter of its word; a tick stands where the tank is filled. The table of steps tells
/// the same.
pub fn timeline(shared: &Shared, rounds: &[Round]) -> Html {
    let end = rounds.iter().map(|round| round.plan.total).fold(Duration::ZERO, Duration::max);
    let height = ROW * rounds.len() as f64 + 26.0;
    let whole = shared.argument(Value::new(end, Kind::Time));
    let machines = Argument::number(rounds.len() as f64, rounds.len().to_string());
    let title = shared.tell("drawing-timeline", &[("n", machines), ("time", whole)]);
    let strip = |(index, round): (usize, &Round)| strip(shared, round, ROW * index as f64, end);
    html! {
        <>
        <svg class="drawing wide" role="img" aria-label={title} viewBox={format!("0 0 280 {height}")}>
            { for rounds.iter().enumerate().map(strip) }
            <text x={LEFT.to_string()} y={(height - 6.0).to_string()}>{ "0" }</text>
            <text x={(LEFT + WIDTH).to_string()} y={(height - 6.0).to_string()} text-anchor="end">
                { shared.show(Value::new(end, Kind::Time)) }
            </text>
        </svg>
        { legend(shared, rounds) }
        </>
    }
}

/// What the numbers and the letters stand for, of what is drawn.
fn legend(shared: &Shared, rounds: &[Round]) -> Html {
    let mut words: Vec<String> = Vec::new();
    for event in rounds.iter().flat_map(|round| &round.plan.events).filter(|event| event.act != Act::Clean) {
        let word = shared.say(act_key(event.act));
        if !words.contains(&word) {
            words.push(word);
        }
    }
    html! { <p class="legend">{ shared.tell("timeline-legend", &[("others", Argument::text(words.join("; ")))]) }</p> }
}

fn strip(shared: &Shared, round: &Round, top: f64, end: Duration) -> Html {
    let at = |time: Duration| WIDTH * time.si() / end.si().max(f64::MIN_POSITIVE);
    let y = top + 44.0;
    let wide = |event: &&Event| at(event.lasts) >= ROOM;
    let block = |event: &Event| {
        let (x, width) = (LEFT + at(event.from), at(event.lasts));
        let mark = match event.act {
            Act::Clean => (round.rows[event.task] + 1).to_string(),
            act => shared.say(act_key(act)).chars().next().map(String::from).unwrap_or_default(),
        };
        html! {
            <>
                <rect class={if event.act == Act::Clean { "level framed" } else { "framed" }} x={format!("{x:.1}")}
                    y={y.to_string()} width={format!("{width:.1}")} height={STRIP.to_string()} />
                <text x={format!("{:.1}", x + width / 2.0)} y={(y + 23.0).to_string()} text-anchor="middle">{ mark }</text>
            </>
        }
    };
    // A thousand narrow blocks are one line of the drawing.
    let narrow = |cleans: bool| {
        let some = |event: &&Event| !wide(event) && (event.act == Act::Clean) == cleans;
        let drawn = |event: &Event| {
            let (x, width) = (LEFT + at(event.from), at(event.lasts));
            format!("M{x:.1} {y}h{width:.1}v{STRIP}h-{width:.1}z")
        };
        round.plan.events.iter().filter(some).map(drawn).collect::<Vec<_>>().concat()
    };
    let tick = |fill: &Fill| format!("M{:.1} {}V{}", LEFT + at(fill.at), y - 9.0, y + STRIP);
    let ticks = round.plan.fills.iter().map(tick).collect::<Vec<_>>().concat();
    let name = shared.typed.site.machines.get(round.machine).map(|machine| machine.name.clone());
    html! {
        <>
            <text x={LEFT.to_string()} y={(top + 24.0).to_string()}>{ name.unwrap_or_default() }</text>
            <path class="level framed" d={narrow(true)} />
            <path class="framed" d={narrow(false)} />
            { for round.plan.events.iter().filter(wide).map(block) }
            <path class="line" d={ticks} />
        </>
    }
}

/// What is done, as a word key.
pub fn act_key(act: Act) -> &'static str {
    match act {
        Act::Wait => "act-wait",
        Act::Mop => "act-mop",
        Act::Clean => "act-clean",
        Act::Go => "act-go",
        Act::Refill(_) => "act-refill",
        Act::Change(_) => "act-change",
        Act::Charge => "act-charge",
    }
}
