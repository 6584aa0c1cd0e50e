//! Strip and coat: how much of what, and when.

use crate::answer::{Remark, Value};
use crate::form::action::{Line, Shelf};
use crate::form::site::Act;
use crate::form::site::finish::{
    Coat, FIRST_COAT, FIRST_COAT_AT, Finishing, STRIP_DILUTION, STRIPPER, When, stripper,
};
use crate::form::{Field, names};
use crate::page::components::{
    Choice, Text, assumptions, caution_of, choice, computed_as, facts, named, number_field, picker,
    text_field, warnings,
};
use crate::page::shared::Shared;
use crate::page::views::table;
use crate::units::{Duration, Kind};
use crate::words::Argument;
use yew::prelude::*;

/// The remarks of one code or more, where they belong.
pub fn said(shared: &Shared, found: &Finishing, codes: &[&str]) -> Html {
    let remarks = found.outcome.answer.remarks.iter().filter(|remark| codes.contains(&remark.code));
    warnings(shared, &remarks.cloned().collect::<Vec<Remark>>())
}

/// The floor, the stripper, the room, the first coat, and what follows.
pub fn coat(shared: &Shared, found: &Finishing) -> Html {
    let typed = &shared.typed;
    let number = |field| number_field(shared, &found.outcome, field, None);
    let mistake = |name: &str| {
        found.outcome.at(name).map(|what| shared.words.trouble(what, &shared.say(name), None, ("", "")))
    };
    let text = |line, name: &'static str, value: &str| {
        let (value, mistake) = (value.to_owned(), mistake(name));
        text_field(shared, Text { line, name: name.to_owned(), key: name, value, tall: false, mistake })
    };
    let ask = &typed.ask.site;
    html! {
        <>
            <div class="fields">
                { picker(shared, Shelf::Floor) }
                { number(Field::CoatArea) }
                { strippers(shared) }
                { text(Line::StripDilution, STRIP_DILUTION, &ask.strip_dilution) }
                { number(Field::StripRate) }
                { number(Field::StripDwell) }
                { picker(shared, Shelf::Machine) }
            </div>
            { before(shared) }
            { said(shared, found, STRIPPING) }
            { facts(shared, &found.outcome.answer, STRIP) }
            <div class="fields">
                { text(Line::FirstCoat, FIRST_COAT, &ask.first_coat) }
                { text(Line::FirstCoatAt, FIRST_COAT_AT, &ask.first_coat_at) }
            </div>
            if found.estimated { { air(shared, found) } }
            { facts(shared, &found.outcome.answer, COAT) }
            { coats(shared, found) }
            { said(shared, found, &["remark-never-dries", "remark-cure-unknown"]) }
            { assumptions(shared, &found.outcome.answer.remarks) }
        </>
    }
}

const STRIPPING: &[&str] =
    &["remark-strip-no-stripper", "remark-strip-floor", "remark-strip-floor-unknown", "remark-strip-dries"];

const STRIP: &[&str] = &[
    names::STRIP_SOLUTION,
    names::STRIP_CONCENTRATE,
    names::STRIP_LOW,
    names::STRIP_HIGH,
    names::STRIP_WATER,
    names::STRIP_TANKS,
    names::STRIP_TANK_DOSE,
    names::STRIP_LAST,
    names::STRIP_LAST_DOSE,
    names::FINISH_RINSE,
];

const COAT: &[&str] = &[
    names::FINISH_VOLUME,
    names::FINISH_COAT,
    names::COAT_DRY_FROM,
    names::COAT_DRY_TO,
    names::FINISH_READY,
];

/// Which product strips.
fn strippers(shared: &Shared) -> Html {
    let product = shared.typed.product().map(|product| product.name.clone()).unwrap_or_default();
    let mut options = named(shared, Shelf::Product);
    options
        .insert(0, (String::new(), shared.tell("stripper-asked", &[("product", Argument::text(product))])));
    let list = Choice {
        name: STRIPPER.into(),
        label: shared.say(STRIPPER),
        options,
        chosen: shared.typed.ask.site.stripper.clone(),
        hint: None,
    };
    choice(shared, list, |id| Act::Stripper(id).action())
}

/// What to know before anyone strips.
fn before(shared: &Shared) -> Html {
    let rules = [
        "strip-wear",
        "strip-slippery",
        "strip-signs",
        "strip-air",
        "strip-try",
        "strip-order",
        "strip-governs",
    ];
    html! {
        <section class="caution" aria-label={shared.say("strip-heading")}>
            <h4>{ shared.say("strip-heading") }</h4>
            <ul>{ for rules.map(|rule| html! { <li>{ shared.say(rule) }</li> }) }</ul>
            <details class="more">
                <summary>{ shared.say("strip-cautions") }</summary>
                { for stripper(&shared.typed).map(|product| caution_of(shared, product)) }
            </details>
        </section>
    }
}

/// What dries the coat.
fn air(shared: &Shared, found: &Finishing) -> Html {
    let number = |field| number_field(shared, &found.outcome, field, None);
    html! {
        <fieldset>
            <legend>{ shared.say("finish-air") }</legend>
            <div class="fields">{ for [Field::Air, Field::Humidity, Field::Draught].map(number) }</div>
        </fieldset>
    }
}

/// When each coat may go on, and when a machine may first come.
fn coats(shared: &Shared, found: &Finishing) -> Html {
    if found.coats.is_empty() {
        return html! { <p>{ shared.say("coats-empty") }</p> };
    }
    let cell = |name: String, when: &When| {
        html! { <td>{ computed_as(name, Value::new(when.after, Kind::Time), spoken(shared, when)) }</td> }
    };
    let row = |(index, coat): (usize, &Coat)| {
        let name = |what: &str| format!("finish.coat.{}.{what}", index + 1);
        html! {
            <tr>
                <th scope="row">{ index + 1 }</th>
                if found.estimated { { cell(name("from"), &coat.from) } }
                { cell(name("to"), &coat.to) }
            </tr>
        }
    };
    let mut columns = vec!["column-coat"];
    columns.extend(found.estimated.then_some("column-soonest"));
    columns.push("column-count-on");
    html! {
        <>
            { table(shared, "coats-table", &columns, found.coats.iter().enumerate().map(row).collect()) }
            if let Some(scrub) = &found.scrub {
                <p><strong>{ shared.tell("coats-scrub", &[("when", Argument::text(spoken(shared, scrub)))]) }</strong></p>
            }
            <p>{ shared.say("coats-touch") }</p>
        </>
    }
}

/// By the clock on the wall where that is known, and how long after the first coat.
fn spoken(shared: &Shared, when: &When) -> String {
    let after = if when.after > Duration::ZERO {
        shared.tell("coats-after", &[("time", shared.argument(Value::new(when.after, Kind::Time)))])
    } else {
        shared.say("coats-first")
    };
    let Some(at) = when.at else { return after };
    let weekday = shared.say(&format!("weekday-{}", at.date.weekday()));
    let told =
        [("weekday", Argument::text(weekday)), ("moment", Argument::text(shared.moment(&at.to_string())))];
    let moment = shared.tell("coats-moment", &told);
    if when.after > Duration::ZERO {
        shared.tell("coats-both", &[("moment", Argument::text(moment)), ("after", Argument::text(after))])
    } else {
        moment
    }
}
