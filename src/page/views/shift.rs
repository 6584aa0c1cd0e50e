//! Shift: areas in, fills, gallons and hours out.

mod areas;
mod events;
mod list;
mod shown;
mod totals;

pub use areas::area_line;

use super::frame;
use crate::answer::Value;
use crate::form::action::{Line, Shelf};
use crate::form::saved::View;
use crate::form::shift::{Shift, efficiency, work};
use crate::form::{Action, Field, Outcome, names};
use crate::number::{Marks, write};
use crate::page::components::{
    Amount, Text, amount, answer_tools, assumptions, button, caution_of, caution_strip, computed_as, facts,
    fold, glance, later, number_field, picker, stop, text_field, troubles, troubles_beside, warnings,
    workings,
};
use crate::page::drawing::{tank_level, timeline};
use crate::page::editors::{label_field, machine_basics, machine_motion, machine_round, machine_settings};
use crate::page::shared::Shared;
use crate::units::{Kind, VolumeFraction};
use crate::words::Argument;
use events::Drawn;
use std::rc::Rc;
use yew::prelude::*;

/// The view.
pub fn shift_view(shared: &Shared) -> Html {
    html! { <ShiftPage shared={shared.clone()} /> }
}

#[derive(Properties, PartialEq)]
struct ShiftPageProps {
    shared: Shared,
}

/// A component, since it remembers how much of its lists is drawn.
#[component]
fn ShiftPage(props: &ShiftPageProps) -> Html {
    let shared = &props.shared;
    let shown = shown::use_shown();
    let shift = Rc::new(work(&shared.typed, shared.marks()));
    let drawn = Drawn { shared: shared.clone(), shift: shift.clone(), shown };
    let outcome = &shift.outcome;
    let number = |field: Field| number_field(shared, outcome, field, None);
    let question = html! {
        <>
            { glance(shared, at_a_glance(shared, &shift)) }
            <div class="fields">
                { picker(shared, Shelf::Machine) }
                { number(Field::Tank) }
                { picker(shared, Shelf::Product) }
                { label_field(shared, outcome) }
                { picker(shared, Shelf::Measure) }
                { number(Field::Efficiency) }
                { number(Field::Refill) }
                { number(Field::Change) }
                if shared.typed.site.areas.iter().any(|area| area.loose) { { number(Field::DryMop) } }
            </div>
            { areas::areas(&drawn) }
            { fold(shared, outcome, "shift-more", &[], |shared, outcome| html! {
                <>
                    <div class="fields">{ machine_motion(shared, outcome) }</div>
                    { measured(shared) }
                    { machine_settings(shared, outcome) }
                </>
            }) }
            { machine_round(shared, outcome) }
            { fold(shared, outcome, "shift-prices", &["cost-", "stock-", "product-container", "product-price", "product-lead"], prices) }
            { machine_basics(shared, outcome) }
        </>
    };
    frame(shared, "shift", question, answer(&drawn))
}

/// The currency, and what things are bought at.
fn prices(shared: &Shared, outcome: &Outcome) -> Html {
    let money = Text {
        line: Line::Currency,
        name: "site-currency".to_owned(),
        key: "site-currency",
        value: shared.typed.site.currency.clone(),
        tall: false,
        mistake: None,
    };
    html! {
        <div class="fields">
            { text_field(shared, money) }
            { for PRICES.iter().map(|field| number_field(shared, outcome, *field, None)) }
        </div>
    }
}

/// The site's own efficiency, from an area that was timed.
fn measured(shared: &Shared) -> Html {
    let found = efficiency(&shared.typed, shared.marks());
    let number = |field: Field| number_field(shared, &found.outcome, field, None);
    let says = |share: VolumeFraction| {
        let told = shared.argument(Value::new(share, Kind::Percent));
        let text = write(share.percent(), 3, Marks { group: '\u{0}', ..shared.marks() });
        let take = move || Action::Write(Field::Efficiency, text.clone());
        html! {
            <p class="hint">
                { shared.tell("efficiency-says", &[("share", told)]) }{ " " }
                { button(shared, "efficiency-take", shared.say("efficiency-take"), take) }
            </p>
        }
    };
    html! {
        <fieldset class="settings">
            <legend>{ shared.say("efficiency") }</legend>
            <p class="hint">{ shared.say("efficiency-hint") }</p>
            <div class="fields">{ number(Field::TimedArea) }{ number(Field::TimedTime) }</div>
            { found.measured.map(says).unwrap_or_default() }
        </fieldset>
    }
}

fn at_a_glance(shared: &Shared, shift: &Shift) -> String {
    let answer = &shift.outcome.answer;
    match answer.get(names::SHIFT_SOLUTION) {
        _ if answer.stopped() => shared.say("glance-stop"),
        Some(_) => {
            let value = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
            let facts = [("fills", value(names::SHIFT_FILLS)), ("total", value(names::SHIFT_TOTAL_TIME))];
            shared.tell("shift-glance", &facts)
        }
        None => shared.say("glance-trouble"),
    }
}

fn answer(drawn: &Drawn) -> Html {
    let Drawn { shared, shift, .. } = drawn;
    let answer = &shift.outcome.answer;
    if answer.stopped() {
        return html! { <>{ stop(shared, &answer.remarks) }{ caution_strip(shared) }</> };
    }
    let (Some(solution), Some(fills)) = (answer.get(names::SHIFT_SOLUTION), answer.get(names::SHIFT_FILLS))
    else {
        return troubles(shared, &shift.outcome);
    };
    let value = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
    let sentence = shared.tell(
        if shift.rounds.len() > 1 { "shift-sentence-machines" } else { "shift-sentence" },
        &[
            ("fills", value(names::SHIFT_FILLS)),
            ("water", value(names::SHIFT_WATER)),
            ("concentrate", value(names::SHIFT_CONCENTRATE)),
            ("run", value(names::SHIFT_RUN_TIME)),
            ("labour", value(names::SHIFT_LABOUR)),
            ("machines", Argument::number(shift.rounds.len() as f64, shift.rounds.len().to_string())),
            ("total", value(names::SHIFT_TOTAL_TIME)),
        ],
    );
    let count = shared.tell("shift-fills", &[("n", value(names::SHIFT_FILLS))]);
    let volume = Amount {
        name: names::SHIFT_SOLUTION,
        value: solution,
        text: shared.show(solution),
        title: shared.say("shift-amount"),
        sentence,
        others: computed_as(names::SHIFT_FILLS, fills, count),
    };
    html! {
        <>
            { troubles_beside(shared, &shift.outcome) }
            { amount(volume) }
            { warnings(shared, &answer.remarks) }
            { later("shift-shown", drawn.clone(), in_pictures) }
            { later("shift-listed", drawn.clone(), listed) }
            { later("shift-priced", drawn.clone(), priced) }
            { totals::comparison(shared, shift) }
            { later("shift-behind", drawn.clone(), behind) }
        </>
    }
}

/// The shift over time, and each tank.
fn in_pictures(Drawn { shared, shift, .. }: &Drawn) -> Html {
    html! {
        <>
            { timeline(shared, &shift.rounds) }
            { for shift.rounds.iter().map(|round| tank_level(shared, round, events::machine_name(shared, shift, round))) }
        </>
    }
}

/// The shift as tables.
fn listed(drawn: &Drawn) -> Html {
    let Drawn { shared, shift, .. } = drawn;
    html! {
        <>
            { events::machines(shared, shift) }
            { events::fills(drawn) }
            { events::areas(drawn) }
            { events::steps(drawn) }
            { facts(shared, &shift.outcome.answer, FACTS) }
            { cautions(shared, shift) }
        </>
    }
}

/// What it costs, now and over time, and what to keep of it.
fn priced(Drawn { shared, shift, .. }: &Drawn) -> Html {
    html! {
        <>
            <h2>{ shared.say("cost-heading") }</h2>
            { totals::costs(shared, shift) }
            <h2>{ shared.say("year-heading") }</h2>
            { totals::over_time(shared, shift) }
            { totals::stock(shared, shift) }
        </>
    }
}

/// What stands behind it, and what can be done with it.
fn behind(Drawn { shared, shift, .. }: &Drawn) -> Html {
    let answer = &shift.outcome.answer;
    html! {
        <>
            { assumptions(shared, &answer.remarks) }
            { workings(shared, &answer.steps) }
            { answer_tools(shared, View::Shift) }
        </>
    }
}

/// The cautions of every product that the shift takes.
fn cautions(shared: &Shared, shift: &Shift) -> Html {
    let used = |index: &usize| shift.rows.iter().any(|row| row.product == *index);
    let products = shared.typed.site.products.iter().enumerate().filter(|(index, _)| used(index));
    html! { { for products.map(|(_, product)| caution_of(shared, product)) } }
}

/// What things are bought at, and what to keep of them.
const PRICES: &[Field] =
    &[Field::Container, Field::Price, Field::Lead, Field::Wage, Field::WaterPrice, Field::Spread];

const FACTS: &[&str] = &[
    names::SHIFT_AREA,
    names::SHIFT_RUN_TIME,
    names::SHIFT_TOTAL_TIME,
    names::SHIFT_WATER,
    names::SHIFT_CONCENTRATE,
    names::SHIFT_WASTE,
    names::SHIFT_LABOUR,
    names::SHIFT_CHANGES,
    names::SHIFT_CHARGES,
];
