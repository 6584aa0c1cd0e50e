//! The other jobs at the fill station: top up, put right, read the strength.

mod done;
mod readings;

use super::{fill, frame};
use crate::form::action::Shelf;
use crate::form::saved::View;
use crate::form::station::rescue::OTHER;
use crate::form::station::{Done, Job, Mishap, Rest, reading, rescue, top_up};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Choice, choice, fold, glance, named, number_field, pick, picker};
use crate::page::editors::{label_field, machine_basics, measure_editor, product_basics, product_rules};
use crate::page::shared::Shared;
use yew::prelude::*;

/// The view of a job.
pub fn station_view(shared: &Shared) -> Html {
    match shared.typed.ask.station.job {
        Job::Fill => Html::default(),
        Job::TopUp => top_up(shared),
        Job::Rescue => rescue(shared),
        Job::Reading => reading(shared),
    }
}

/// Top up.
pub fn top_up(shared: &Shared) -> Html {
    let done = top_up::work(&shared.typed, shared.marks());
    let station = &shared.typed.ask.station;
    let own = html! {
        <>
            { number_field(shared, &done.outcome, Field::Left, Some(shared.say("station-left-now"))) }
            { pick(shared, "station-rest", "station-rest", station.rest, Action::Rest) }
            <div>{ number_field(shared, &done.outcome, Field::Level, Some(shared.say("station-level"))) }{ fill::levels(shared) }</div>
            if station.rest == Rest::AsRead { { readings::fields(shared, &done.outcome) } }
        </>
    };
    view(shared, &done, View::TopUp, own)
}

/// Put right.
pub fn rescue(shared: &Shared) -> Html {
    let done = rescue::work(&shared.typed, shared.marks());
    let station = &shared.typed.ask.station;
    let left = || number_field(shared, &done.outcome, Field::Left, Some(shared.say("station-left-now")));
    let own = match station.mishap {
        Mishap::Amount => {
            html! { <>{ left() }{ number_field(shared, &done.outcome, Field::PutIn, None) }</> }
        }
        Mishap::Reading | Mishap::Forgotten => {
            html! { <>{ left() }{ readings::fields(shared, &done.outcome) }</> }
        }
        Mishap::WrongProduct => other_product(shared),
    };
    let own = html! {
        <>
            { pick(shared, "station-mishap", "station-mishap", station.mishap, Action::Mishap) }
            { own }
        </>
    };
    view(shared, &done, View::Rescue, own)
}

/// Read the strength.
pub fn reading(shared: &Shared) -> Html {
    let done = reading::work(&shared.typed, shared.marks());
    let own = readings::fields(shared, &done.outcome);
    view(shared, &done, View::Reading, own)
}

/// The product that was put in by mistake.
fn other_product(shared: &Shared) -> Html {
    let chosen = shared.typed.ask.station.other.clone();
    let own = shared.typed.product().map(|product| product.id.clone());
    let mut options = named(shared, Shelf::Product);
    options.retain(|(id, _)| Some(id) != own.as_ref());
    if !options.iter().any(|(id, _)| *id == chosen) {
        options.insert(0, (chosen.clone(), shared.say("station-other-none")));
    }
    let list = Choice {
        name: OTHER.into(),
        label: shared.say(OTHER),
        options,
        chosen,
        hint: Some(shared.say("station-other-hint")),
    };
    choice(shared, list, Action::Other)
}

/// The frame of a job: what all of them ask, what this one asks, and its answer.
fn view(shared: &Shared, done: &Done, view: View, own: Html) -> Html {
    let outcome = &done.outcome;
    let question = html! {
        <>
            { fill::jobs(shared) }
            { glance(shared, done::at_a_glance(shared, done)) }
            <div class="fields">
                { picker(shared, Shelf::Machine) }
                { number_field(shared, outcome, Field::Tank, None) }
                { picker(shared, Shelf::Product) }
                { label_field(shared, outcome) }
                { own }
                { picker(shared, Shelf::Measure) }
                { picker(shared, Shelf::Floor) }
            </div>
            { more(shared, outcome) }
        </>
    };
    frame(shared, "fill", question, done::answer(shared, done, view))
}

fn more(shared: &Shared, outcome: &Outcome) -> Html {
    html! {
        <>
            { machine_basics(shared, outcome) }
            { product_basics(shared, outcome) }
            { product_rules(shared, outcome, !readings::ask_active(shared)) }
            { fold(shared, outcome, "measure-more", fill::MEASURE, |shared, outcome| html! {
                <>{ fill::aim(shared) }{ measure_editor(shared, outcome) }</>
            }) }
        </>
    }
}
