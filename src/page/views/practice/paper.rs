//! A session on paper: the tasks with room for answers, and the key on sheets of its own.

use super::count;
use crate::page::components::print_part;
use crate::page::shared::Shared;
use crate::page::views::site::sheet;
use crate::practice::{Exercise, Key, Session};
use crate::words::Argument;
use yew::prelude::*;

/// Both, each with a button that prints it alone.
pub fn paper(shared: &Shared, session: &Session, exercises: &[Exercise]) -> Html {
    let named =
        [("check", Argument::text(session.check())), ("seed", Argument::text(session.seed.to_string()))];
    let [tasks_title, key_title] =
        ["practice-paper-tasks", "practice-paper-key"].map(|key| shared.tell(key, &named));
    html! {
        <details class="more">
            <summary>{ shared.say("practice-paper") }</summary>
            <div class="buttons">
                { print_part(shared, "practice-tasks-print", "practice-tasks") }
                { print_part(shared, "practice-key-print", "practice-key") }
                { print_part(shared, "practice-both-print", "practice-both") }
            </div>
            <div data-part="practice-both">
                <div data-part="practice-tasks">{ sheet(shared, tasks_title.clone(), tasks(shared, &tasks_title, exercises)) }</div>
                <div class="next-sheet" data-part="practice-key">{ sheet(shared, key_title.clone(), key(shared, &key_title, exercises)) }</div>
            </div>
        </details>
    }
}

fn tasks(shared: &Shared, title: &str, exercises: &[Exercise]) -> Html {
    html! {
        <>
            <h2>{ title }</h2>
            <div class="signed">
                <p>{ shared.say("practice-paper-initials") }<span class="box" /></p>
                <p>{ shared.say("practice-paper-date") }<span class="box" /></p>
            </div>
            <p>{ shared.say("practice-governs") }</p>
            <ol class="paper-tasks">{ for exercises.iter().map(|one| task(shared, one)) }</ol>
        </>
    }
}

fn task(shared: &Shared, exercise: &Exercise) -> Html {
    let choices = shared.words.choices(exercise);
    let answer = match &exercise.key {
        Key::Amount(amount) => html! {
            <p class="line">{ shared.words.headed(&shared.say("practice-answer")) }{ " " }<span class="rule" />{ " " }{ shared.words.symbol_of(amount.unit) }</p>
        },
        Key::Choice { .. } | Key::Several { .. } | Key::Order { .. } => html! {
            <>
                if matches!(exercise.key, Key::Order { .. }) { <p>{ shared.say("practice-paper-order") }</p> }
                <ul class="boxes">{ for choices.into_iter().map(|text| html! { <li><span class="tick-box" />{ text }</li> }) }</ul>
            </>
        },
    };
    html! { <li><p>{ shared.words.exercise(exercise) }</p>{ answer }</li> }
}

fn key(shared: &Shared, title: &str, exercises: &[Exercise]) -> Html {
    let line = |one: &Exercise| {
        html! {
            <li>
                <p><strong>{ shared.words.right_answer(one) }</strong></p>
                { for shared.words.workings(one).into_iter().map(|line| html! { <p>{ line.text }</p> }) }
            </li>
        }
    };
    html! {
        <>
            <h2>{ title }</h2>
            <p>{ shared.tell("practice-paper-key-of", &[("n", count(shared, exercises.len()))]) }</p>
            <ol class="paper-tasks">{ for exercises.iter().map(line) }</ol>
        </>
    }
}
