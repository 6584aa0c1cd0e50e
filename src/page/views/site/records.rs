//! One record of the site, to type over, to copy, to take out of use.

use super::library::name_of;
use crate::form::action::{Line, Shelf};
use crate::form::site::library::check;
use crate::form::site::{Act, may_go};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{
    Choice, Text, button, choice, named, number_field, pick, switch, text_field, troubles_under, used_by,
};
use crate::page::editors::{
    label_field, machine_settings, measure_editor, product_cautions, product_parts, product_rules,
};
use crate::page::shared::Shared;
use crate::page::views::shift::area_line;
use crate::site::Record;
use yew::prelude::*;

/// The record asked about.
pub fn record(shared: &Shared) -> Html {
    let shelf = shared.typed.ask.site.shelf;
    let records = shelf.records(&shared.typed.site);
    let chosen = shelf.chosen(&shared.typed);
    let Some((index, record)) = records.iter().enumerate().find(|(_, record)| Some(record.id()) == chosen)
    else {
        return html! { <p>{ shared.say("record-none") }</p> };
    };
    let outcome = check(&shared.typed, shelf, shared.marks());
    let shared = &Shared { limits: true, ..shared.clone() };
    html! {
        <section id="record" tabindex="-1" aria-labelledby="record-heading">
            <h2 id="record-heading">{ name_of(shared, shelf, index, *record) }</h2>
            { troubles_under(shared, &outcome, "record-troubles") }
            { editor(shared, shelf, &outcome, index) }
            { ways(shared, shelf, *record) }
        </section>
    }
}

/// Copy, out of use and back, and away where nothing refers to it.
fn ways(shared: &Shared, shelf: Shelf, record: &dyn Record) -> Html {
    let id = || record.id().to_owned();
    let (copied, retired, gone) = (id(), id(), id());
    let out = !record.retired();
    html! {
        <>
            <div class="buttons">
                { button(shared, "record-copy", shared.say("record-copy"), move || Act::Copy(shelf, copied.clone()).action()) }
                { button(shared, "record-retire", shared.say(if out { "record-retire" } else { "record-back" }),
                    move || Act::Retire(shelf, retired.clone(), out).action()) }
                if may_go(&shared.typed, shelf, record.id()) {
                    { button(shared, "record-remove", shared.say("record-remove"),
                        move || Act::Discard(shelf, gone.clone()).action()) }
                }
            </div>
            { used_by(shared, shelf, record.id()) }
        </>
    }
}

fn text(line: Line, key: &'static str, value: &str, tall: bool) -> Text {
    Text { line, name: key.to_owned(), key, value: value.to_owned(), tall, mistake: None }
}

/// The name of a record; another one that bears it is told.
fn name(shared: &Shared, outcome: &Outcome, line: Line, key: &'static str, value: &str) -> Html {
    let mistake = outcome.at(key).map(|what| shared.words.trouble(what, &shared.say(key), None, ("", "")));
    text_field(shared, Text { mistake, ..text(line, key, value, false) })
}

fn editor(shared: &Shared, shelf: Shelf, outcome: &Outcome, index: usize) -> Html {
    match shelf {
        Shelf::Machine => machine(shared, outcome),
        Shelf::Product => product(shared, outcome),
        Shelf::Floor => floor(shared, outcome),
        Shelf::Finish => finish(shared, outcome),
        Shelf::Measure => measure_editor(shared, outcome),
        Shelf::Area => {
            html! { <ol start={(index + 1).to_string()}>{ area_line(shared, outcome, index) }</ol> }
        }
        Shelf::Trial | Shelf::Standard => Html::default(),
    }
}

/// Every number of a record, in the order of the fields; those of lists have places of their own.
fn numbers(shared: &Shared, outcome: &Outcome, start: &str, but: &[Field]) -> Html {
    let ours = Field::SINGLE.iter().filter(|field| field.key().starts_with(start) && !but.contains(field));
    html! { { for ours.map(|field| number_field(shared, outcome, *field, None)) } }
}

fn machine(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(machine) = shared.typed.machine() else { return Html::default() };
    html! {
        <>
            <div class="fields">
                { name(shared, outcome, Line::MachineName, "machine-name", &machine.name) }
                { numbers(shared, outcome, "machine-", &[]) }
                { text_field(shared, text(Line::Ratios, "machine-ratios", &machine.ratios, false)) }
                { text_field(shared, text(Line::Needs, "machine-needs", &machine.needs, true)) }
                { switch(shared, "machine-vacuum", shared.say("machine-vacuum"), machine.vacuum, Action::Vacuum) }
                { switch(shared, "machine-sweeps", shared.say("machine-sweeps"), machine.sweeps, Action::Sweeps) }
                { switch(shared, "machine-unattended", shared.say("machine-unattended"), machine.unattended, Action::Unattended) }
            </div>
            { machine_settings(shared, outcome) }
        </>
    }
}

fn product(shared: &Shared, outcome: &Outcome) -> Html {
    // The rules beside the label have a fold of their own.
    let ruled = [Field::Minimum, Field::Contact, Field::Active, Field::Density];
    let density = shared.typed.product().is_some_and(|product| product.active.unit != "percent_ww");
    html! {
        <>
            <div class="fields">
                { label_field(shared, outcome) }
                { numbers(shared, outcome, "product-", &ruled) }
                if density { { number_field(shared, outcome, Field::Density, None) } }
            </div>
            { product_rules(shared, outcome, true) }
            { product_cautions(shared) }
            { product_parts(shared, outcome) }
        </>
    }
}

fn floor(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(floor) = shared.typed.floor() else { return Html::default() };
    let mut finishes = named(shared, Shelf::Finish);
    finishes.insert(0, (String::new(), shared.say("floor-finish-none")));
    let finish = Choice {
        name: "floor-finish".into(),
        label: shared.say("floor-finish"),
        options: finishes,
        chosen: floor.finish.clone(),
        hint: shared.words.find("floor-finish-hint"),
    };
    html! {
        <div class="fields">
            { name(shared, outcome, Line::FloorName, "floor-name", &floor.name) }
            { pick(shared, "floor-surface", "surface", floor.surface, Action::Surface) }
            { choice(shared, finish, |id| Act::FloorFinish(id).action()) }
            { pick(shared, "floor-porosity", "porosity", floor.porosity, Action::Porosity) }
            { pick(shared, "floor-texture", "texture", floor.texture, Action::Texture) }
            { pick(shared, "floor-joints", "joints", floor.joints, Action::Joints) }
            { numbers(shared, outcome, "floor-", &[]) }
        </div>
    }
}

/// All that a finish’s sheet says.
pub fn finish(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(finish) = shared.typed.finish() else { return Html::default() };
    html! {
        <div class="fields">
            { name(shared, outcome, Line::FinishName, "finish-name", &finish.name) }
            { numbers(shared, outcome, "finish-", &[]) }
            { text_field(shared, text(Line::FinishSource, "finish-source", &finish.source, false)) }
            { switch(shared, "finish-burnish", shared.say("finish-burnish"), finish.burnish,
                |on| Act::Burnish(on).action()) }
        </div>
    }
}
