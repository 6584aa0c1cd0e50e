//! Practice: tasks from the site's own records, handed out to a class, and what the class made of them.

mod answer;
mod choose;
mod class;
mod copy;
mod hand_out;
mod learned;
mod numbers;
mod offered;
mod paper;
mod picture;
mod result;
mod tables;
mod task;

use super::first_fill::Offer;
use super::frame;
use super::log::fields::press;
use crate::page::keep::practice::{Held, at_desk, use_held};
use crate::page::shared::Shared;
use crate::practice::{Part, Session};
use crate::words::Argument;
use yew::prelude::*;

/// What a part with a state of its own needs.
#[derive(Clone, Properties, PartialEq)]
pub struct Props {
    /// What every part needs.
    pub shared: Shared,
    /// What is chosen, under way and gathered.
    pub held: Held,
}

/// What the view needs.
#[derive(Properties, PartialEq)]
struct ViewProps {
    shared: Shared,
}

/// The view.
pub fn practice_view(shared: &Shared) -> Html {
    html! { <Practice shared={shared.clone()} /> }
}

#[component]
fn Practice(props: &ViewProps) -> Html {
    let (shared, held) = (&props.shared, use_held());
    let offered = offered::use_offered();
    let exercises = use_memo(held.desk.run.session.clone(), Session::exercises);
    let all = Props { shared: shared.clone(), held: held.clone() };
    let run = &held.desk.run;
    let part = if open(shared, held.desk.part) { held.desk.part } else { Part::Practise };
    let content = match (&*offered, part) {
        (Some(offer), _) => offered::offered(shared, run, offer, &offered),
        (None, Part::Practise) => match run.exercise(&exercises) {
            _ if !run.is_held() => {
                html! { <><Offer shared={shared.clone()} /><choose::Choose ..all.clone() /></> }
            }
            Some(exercise) => task::task(shared, run, exercise, exercises.len()),
            None => html! { <result::Result ..all.clone() /> },
        },
        (None, Part::Numbers) => html! { <numbers::NumbersPart ..all.clone() /> },
        (None, Part::HandOut) => html! { <hand_out::HandOut ..all.clone() /> },
        (None, Part::Class) => html! { <class::ClassPart ..all.clone() /> },
    };
    let question = html! {
        <>
            <p>{ shared.say("practice-about") }</p>
            if held.refused { <p class="unknown">{ shared.say("keep-denied") }</p> }
            // What a link brought comes first: it is begun or left, and then the parts are there.
            if offered.is_none() { { parts(shared, part) } }
        </>
    };
    frame(shared, "practice", question, html! { <div class="wide-part">{ content }</div> })
}

/// Whether a part is open on this device. One that is set to its standards practises and shows the numbers; what a class
/// did is no business of whoever stands there.
fn open(shared: &Shared, part: Part) -> bool {
    !shared.locked || matches!(part, Part::Practise | Part::Numbers)
}

fn parts(shared: &Shared, now: Part) -> Html {
    let part = |one: &Part| {
        let (one, pressed) = (*one, *one == now);
        let key = format!("practice-{}", one.code());
        let onclick = move |_: MouseEvent| at_desk(|desk| desk.part = one);
        html! {
            <button type="button" name={key.clone()} aria-pressed={pressed.to_string()} {onclick}>{ shared.say(&key) }</button>
        }
    };
    html! {
        <div class="levels jobs" role="group" aria-label={shared.say("practice-parts")}>{ for Part::ALL.iter().filter(|one| open(shared, **one)).map(part) }</div>
    }
}

/// A whole number as an argument.
fn count(shared: &Shared, n: usize) -> Argument {
    Argument::number(n as f64, shared.words.number(n as f64))
}

/// What a session is: topics, level, how many, what it is made of, and the number that it is drawn by.
fn about(shared: &Shared, session: &Session) -> Html {
    let topics = session.topics.iter().map(|one| shared.say(&format!("practice-topic-{}", one.code())));
    let level = format!("practice-level-{}", session.level.code());
    let stock = &session.stock;
    let made = [
        ("site", Argument::text(stock.name.trim())),
        ("machines", count(shared, stock.machines.len())),
        ("products", count(shared, stock.products.len())),
        ("floors", count(shared, stock.floors.len())),
        ("measures", count(shared, stock.measures.len())),
    ];
    let n = usize::try_from(session.count).unwrap_or_default();
    let (seed, check) = (session.seed.to_string(), session.check());
    html! {
        <dl class="pairs" data-session={check.clone()}>
            <div><dt>{ shared.say("practice-topics") }</dt><dd>{ topics.collect::<Vec<_>>().join("; ") }</dd></div>
            <div><dt>{ shared.say("practice-level") }</dt><dd>{ shared.say(&level) }{ ". " }{ shared.say(&format!("{level}-is")) }</dd></div>
            <div><dt>{ shared.say("practice-count") }</dt><dd>{ shared.tell("practice-tasks", &[("n", count(shared, n))]) }</dd></div>
            <div><dt>{ shared.say("practice-stock") }</dt><dd>{ shared.tell("practice-made-of", &made) }</dd></div>
            <div><dt>{ shared.say("practice-seed") }</dt><dd>{ seed }{ " (" }{ shared.tell("practice-check-is", &[("check", Argument::text(check))]) }{ ")" }</dd></div>
        </dl>
    }
}
