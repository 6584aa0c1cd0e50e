//! Fill: how much concentrate goes into this fill.

pub mod amount;
pub mod paper;
mod pictures;
mod sure;

use super::frame;
use crate::form::action::Shelf;
use crate::form::cautions::banned;
use crate::form::fill::Fill;
use crate::form::saved::View;
use crate::form::station::Job;
use crate::form::{Action, Field, names};
use crate::page::asked;
use crate::page::components::{
    answer_tools, assumptions, caution_strip, facts, fold, glance, later, number_field, pick, picker, stop,
    troubles, troubles_beside, warnings, workings,
};
use crate::page::editors::{
    active_fields, by_mass, label_field, machine_basics, measure_editor, product_basics, product_rules,
    tank_before,
};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Dispenser;
use crate::trade::label::Rule;
use yew::prelude::*;

/// The view; `record` writes the fill down, once that is loaded.
pub fn fill_view(shared: &Shared, record: Html) -> Html {
    let fill = asked::fill(shared);
    let question = html! { <>{ jobs(shared) }{ question(shared, &fill) }</> };
    frame(shared, "fill", question, answer(shared, &fill, record))
}

/// The four jobs at the fill station.
pub fn jobs(shared: &Shared) -> Html {
    let job = |one: &Job| {
        let (one, pressed) = (*one, *one == shared.typed.ask.station.job);
        let name = format!("job-{}", one.code());
        let onclick = {
            let (act, name) = (shared.act.clone(), name.clone());
            move |_: MouseEvent| {
                act.emit(Action::Job(one));
                // Another view is drawn, with buttons of its own.
                focus::in_place(name.clone());
            }
        };
        html! {
            <button type="button" id={name.clone()} name={name.clone()} aria-pressed={pressed.to_string()} {onclick}>
                { shared.say(&name) }
            </button>
        }
    };
    html! {
        <div class="levels jobs" role="group" aria-label={shared.say("jobs")}>{ for Job::ALL.iter().map(job) }</div>
    }
}

fn question(shared: &Shared, fill: &Fill) -> Html {
    let outcome = &fill.outcome;
    html! {
        <>
            { glance(shared, at_a_glance(shared, fill)) }
            <div class="fields">
                { picker(shared, Shelf::Machine) }
                { number_field(shared, outcome, Field::Tank, None) }
                { picker(shared, Shelf::Product) }
                { label_field(shared, outcome) }
                <div>{ number_field(shared, outcome, Field::Level, None) }{ levels(shared) }</div>
                if fill.label.as_ref().is_some_and(|label| label.rule.is_range()) { { aim(shared) } }
                { picker(shared, Shelf::Measure) }
                { needed(shared, fill) }
                { picker(shared, Shelf::Floor) }
            </div>
            { machine_basics(shared, outcome) }
            { product_basics(shared, outcome) }
            { product_rules(shared, outcome, !needs_active(shared, fill)) }
            { fold(shared, outcome, "fill-more", MEASURE, |shared, outcome| html! {
                <>
                    { tank_before(shared) }
                    { pick(shared, "fill-filling", "filling", shared.typed.ask.filling, Action::Filling) }
                    { measure_editor(shared, outcome) }
                </>
            }) }
        </>
    }
}

/// The inputs of a measure, or how their names begin.
pub const MEASURE: &[&str] = &["measure-", "machine-ratios", "machine-bottle"];

/// What the label, a minimum or the measure asks of the product beside its dilution.
fn needed(shared: &Shared, fill: &Fill) -> Html {
    let powder = fill.label.as_ref().is_some_and(|label| matches!(label.rule, Rule::Powder(_)));
    let weighs = fill.dispenser == Dispenser::Scale;
    // Weighed powder needs no density; powder in a scoop and a liquid on a scale do.
    let density = powder != weighs && !(powder && fill.dispenser == Dispenser::Packet);
    let active = needs_active(shared, fill);
    html! {
        <>
            if active { { active_fields(shared, &fill.outcome) } }
            if density && !(active && by_mass(shared)) {
                { number_field(shared, &fill.outcome, Field::Density, None) }
            }
        </>
    }
}

/// Whether a rule in ppm asks for the active substance.
fn needs_active(shared: &Shared, fill: &Fill) -> bool {
    let minimum = shared.typed.product().is_some_and(|product| !product.minimum.text.trim().is_empty());
    minimum || fill.label.as_ref().is_some_and(|label| matches!(label.rule, Rule::Active(_)))
}

/// The four levels that a tank's marks show.
pub fn levels(shared: &Shared) -> Html {
    let entry = &shared.typed.ask.level;
    let level = |share: &'static str| {
        let pressed = entry.text == share && entry.unit == "percent";
        let act = shared.act.clone();
        let onclick = move |_| {
            act.emit(Action::Unit(Field::Level, "percent".to_owned()));
            act.emit(Action::Write(Field::Level, share.to_owned()));
        };
        html! {
            <button type="button" name={format!("level-{share}")} {onclick} aria-pressed={pressed.to_string()}>
                { shared.say(&format!("fill-level-{share}")) }
            </button>
        }
    };
    html! {
        <div class="levels" role="group" aria-label={shared.say("fill-levels")}>
            { for ["25", "50", "75", "100"].map(level) }
        </div>
    }
}

/// Where in the label's range, where anybody has a say in it.
pub fn aim(shared: &Shared) -> Html {
    if shared.typed.is_fixed() {
        return Html::default();
    }
    pick(shared, "fill-aim", "aim", shared.typed.ask.aim, Action::Aim)
}

fn answer(shared: &Shared, fill: &Fill, record: Html) -> Html {
    let answer = &fill.outcome.answer;
    if answer.stopped() {
        return html! { <>{ stop(shared, &answer.remarks) }{ record }{ caution_strip(shared) }</> };
    }
    let Some(main) = amount::main(shared, fill) else { return troubles(shared, &fill.outcome) };
    html! {
        <>
            { troubles_beside(shared, &fill.outcome) }
            { main }
            { warnings(shared, &answer.remarks) }
            { record }
            { by_standard(shared) }
            { later("fill-shown", shared.clone(), in_pictures) }
            { sure::sure(shared, fill) }
            { paper::level_table(shared, fill.dispenser) }
            { later("fill-behind", shared.clone(), behind) }
        </>
    }
}

/// The answer to look at.
fn in_pictures(shared: &Shared) -> Html {
    let fill = asked::fill(shared);
    let answer = &fill.outcome.answer;
    html! {
        <>
            { pictures::drawing(shared, &fill) }
            if !banned(&answer.remarks) { { paper::steps(shared, &fill) } }
            { pictures::rules(shared, &fill) }
            { facts(shared, answer, FACTS) }
        </>
    }
}

/// What stands behind the answer.
fn behind(shared: &Shared) -> Html {
    let fill = asked::fill(shared);
    let answer = &fill.outcome.answer;
    html! {
        <>
            { caution_strip(shared) }
            { assumptions(shared, &answer.remarks) }
            { workings(shared, &answer.steps) }
            { answer_tools(shared, View::Fill) }
        </>
    }
}

/// What the standard in force says to whoever works by it.
fn by_standard(shared: &Shared) -> Html {
    let Some(standard) = shared.typed.governing() else { return Html::default() };
    let rinse = if standard.rinse { shared.say("standard-rinse-do") } else { String::new() };
    let lines = [
        ("standard-ppe", standard.ppe.clone()),
        ("standard-contact", shared.words.entry(&standard.contact)),
        ("standard-rinse", rinse),
        ("standard-pad", standard.pad.clone()),
        ("standard-order", standard.order.clone()),
        ("standard-reason", standard.reason.clone()),
        ("standard-author", standard.author.clone()),
    ];
    let said: Vec<_> = lines.into_iter().filter(|(_, text)| !text.trim().is_empty()).collect();
    if said.is_empty() {
        return Html::default();
    }
    html! {
        <section class="remark news" data-standard={standard.id.clone()}>
            <h2>{ shared.say("standard-says") }</h2>
            <dl class="standard">{ for said.into_iter().map(|(key, text)| html! { <><dt>{ shared.say(key) }</dt><dd>{ text }</dd></> }) }</dl>
        </section>
    }
}

const FACTS: &[&str] = &[
    names::FILL_COUNT,
    names::FILL_WATER,
    names::FILL_TOTAL,
    names::FILL_RATIO,
    names::FILL_ROUNDED_RATIO,
    names::FILL_STRENGTH,
    names::LABEL_LOW,
    names::LABEL_HIGH,
    names::MACHINE_LOW,
    names::MACHINE_HIGH,
    names::MINIMUM_LOW,
    names::STANDARD_LOW,
    names::STANDARD_HIGH,
    names::FILL_MASS_ROUNDED,
    names::FILL_MASS,
    names::POWDER_LOW,
    names::POWDER_HIGH,
    names::FILL_SETTING,
    names::FILL_BOTTLE_FILLS,
    names::FILL_BOTTLE_TIME,
    names::FILL_ACTIVE,
    names::FILL_CHLORINE,
    names::FILL_CONTACT,
];

fn at_a_glance(shared: &Shared, fill: &Fill) -> String {
    let answer = &fill.outcome.answer;
    match fill.headline() {
        _ if answer.stopped() => shared.say("glance-stop"),
        Some((_, value)) => amount::in_measure(shared, fill, value),
        None => shared.say("glance-trouble"),
    }
}
