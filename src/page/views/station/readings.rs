//! What an instrument shows, to type in.

use crate::form::action::Line;
use crate::form::station::reading::BLOCKS;
use crate::form::station::{Job, Method, Mishap, Rest};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, number_field, pick, text_field};
use crate::page::editors::active_fields;
use crate::page::shared::Shared;
use yew::prelude::*;

/// The instrument, and the fields that it needs.
pub fn fields(shared: &Shared, outcome: &Outcome) -> Html {
    let method = shared.typed.ask.station.method;
    let of = |fields: &[Field]| -> Html {
        html! { { for fields.iter().map(|field| number_field(shared, outcome, *field, None)) } }
    };
    let own = match method {
        Method::Strip => {
            html! { <>{ of(&[Field::Strip]) }{ blocks(shared, outcome) }{ active_fields(shared, outcome) }</> }
        }
        Method::Drops => {
            html! { <>{ of(&[Field::Drops, Field::PerDrop]) }{ active_fields(shared, outcome) }</> }
        }
        Method::Refractometer => of(&[Field::Brix, Field::PerBrix]),
        Method::Conductivity => of(&[
            Field::Conductivity,
            Field::ConductivityWater,
            Field::ConductivityKnown,
            Field::KnownStrength,
        ]),
        Method::Catch => of(&[Field::Drawn, Field::Caught]),
    };
    html! {
        <>
            { pick(shared, "reading-method", "reading-method", method, Action::Method) }
            { own }
        </>
    }
}

/// Whether [`fields`] are shown and ask for the active substance.
pub fn ask_active(shared: &Shared) -> bool {
    let station = &shared.typed.ask.station;
    let shown = match station.job {
        Job::Fill => false,
        Job::TopUp => station.rest == Rest::AsRead,
        Job::Rescue => matches!(station.mishap, Mishap::Reading | Mishap::Forgotten),
        Job::Reading => true,
    };
    shown && matches!(station.method, Method::Strip | Method::Drops)
}

fn blocks(shared: &Shared, outcome: &Outcome) -> Html {
    let mistake =
        outcome.at(BLOCKS).map(|what| shared.words.trouble(what, &shared.say(BLOCKS), None, ("", "")));
    let value = shared.typed.ask.station.blocks.clone();
    text_field(
        shared,
        Text { line: Line::Blocks, name: BLOCKS.to_owned(), key: BLOCKS, value, tall: false, mistake },
    )
}
