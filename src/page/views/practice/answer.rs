//! The controls of an answer: a number with its unit, choices, or an order.

use crate::page::components::{Typing, shown};
use crate::page::focus;
use crate::page::keep::practice::at_desk;
use crate::page::shared::Shared;
use crate::practice::{Amount, Exercise, Key, Run};
use crate::units::{UNITS, unit};
use crate::words::Argument;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// Leads back to the answer, to be given once more: to what was typed or chosen, and not away from what is told below it.
pub fn retry(run: &Run, exercise: &Exercise) {
    let of_choice = |one: u32| format!("practice-choice-{one}");
    match &exercise.key {
        Key::Amount(_) => focus::in_place("practice-answer".to_owned()),
        Key::Choice { .. } | Key::Several { .. } => {
            focus::in_place(of_choice(run.reply.chosen.first().copied().unwrap_or_default()));
        }
        Key::Order { .. } => {
            let first = run.reply.choices(exercise).first().copied().unwrap_or_default();
            focus::in_place(format!("practice-order-{first}-up"));
        }
    }
}

/// The controls, by what is asked for. What is over can be changed no more.
pub fn answer(shared: &Shared, run: &Run, exercise: &Exercise) -> Html {
    match &exercise.key {
        Key::Amount(amount) => number(shared, run, amount),
        Key::Choice { .. } => choices(shared, run, exercise, true),
        Key::Several { .. } => choices(shared, run, exercise, false),
        Key::Order { .. } => order(shared, run, exercise),
    }
}

fn number(shared: &Shared, run: &Run, amount: &Amount) -> Html {
    let (label, closed) = (shared.say("practice-answer"), run.is_closed());
    let chosen = if run.reply.unit.is_empty() { amount.unit } else { &run.reply.unit };
    let dimension = unit(amount.unit).map(|unit| unit.dimension);
    let alike: Vec<_> = UNITS.iter().filter(|unit| Some(unit.dimension) == dimension).collect();
    let onchange = |event: Event| {
        let code = event.target_unchecked_into::<HtmlSelectElement>().value();
        at_desk(|desk| desk.run.reply.unit = code);
    };
    let beside = if alike.len() < 2 || amount.unit == "one" {
        html! { <span class="unit">{ shared.words.symbol_of(amount.unit) }</span> }
    } else {
        html! {
            <select class="unit" name="practice-answer-unit" disabled={closed} {onchange} ~value={shown(chosen)}
                aria-label={shared.tell("unit-of", &[("field", Argument::text(&*label))])}>
                { for alike.into_iter().map(|unit| html! {
                    <option value={unit.code} selected={unit.code == chosen}>{ shared.words.symbol(unit) }</option>
                }) }
            </select>
        }
    };
    html! {
        <Typing id="practice-answer" {label} mistake={None::<String>} number=true readonly={closed} {beside}
            value={run.reply.text.clone()} oninput={|text| at_desk(|desk| desk.run.reply.text = text)} />
    }
}

fn choices(shared: &Shared, run: &Run, exercise: &Exercise, one_only: bool) -> Html {
    let row = |(one, text): (u32, String)| {
        let id = format!("practice-choice-{one}");
        let name = if one_only { "practice-choice".to_owned() } else { id.clone() };
        let kind = if one_only { "radio" } else { "checkbox" };
        let exercise = exercise.clone();
        let onchange = move |event: Event| {
            let on = event.target_unchecked_into::<HtmlInputElement>().checked();
            at_desk(|desk| desk.run.reply.choose(&exercise, one, on));
        };
        html! {
            <label class="switch">
                <input type={kind} {id} {name} value={one.to_string()} checked={run.reply.chosen.contains(&one)} disabled={run.is_closed()} {onchange} />
                <span>{ text }</span>
            </label>
        }
    };
    html! {
        <fieldset>
            <legend>{ shared.say("practice-answer") }</legend>
            { for (0..).zip(shared.words.choices(exercise)).map(row) }
        </fieldset>
    }
}

fn order(shared: &Shared, run: &Run, exercise: &Exercise) -> Html {
    let texts = shared.words.choices(exercise);
    let button = |one: usize, up: bool| {
        let name = format!("practice-order-{one}-{}", if up { "up" } else { "down" });
        let onclick = {
            let (exercise, name) = (exercise.clone(), name.clone());
            move |_: MouseEvent| {
                at_desk(|desk| desk.run.reply.shift(&exercise, one, up));
                // A line that moved takes its buttons along, and the focus with them.
                focus::soon(name.clone());
            }
        };
        let what = Argument::text(texts.get(one).cloned().unwrap_or_default());
        let label = shared.tell(if up { "practice-up-of" } else { "practice-down-of" }, &[("what", what)]);
        html! {
            <button type="button" id={name.clone()} {name} aria-label={label} disabled={run.is_closed()} {onclick}>
                { shared.say(if up { "practice-up" } else { "practice-down" }) }
            </button>
        }
    };
    html! {
        <fieldset>
            <legend>{ shared.say("practice-order-hint") }</legend>
            <ol class="ordered" aria-live="polite">
                { for run.reply.choices(exercise).into_iter().map(|one| html! {
                    <li key={one} data-step={one.to_string()}>
                        <p>{ texts.get(one).cloned().unwrap_or_default() }</p>
                        <div class="buttons">{ button(one, true) }{ button(one, false) }</div>
                    </li>
                }) }
            </ol>
        </fieldset>
    }
}
