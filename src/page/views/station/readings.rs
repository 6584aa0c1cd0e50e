//! What an instrument shows, to type in.

use crate::form::action::Line;
use crate::form::station::Method;
use crate::form::station::reading::BLOCKS;
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

fn blocks(shared: &Shared, outcome: &Outcome) -> Html {
    let mistake =
        outcome.at(BLOCKS).map(|what| shared.words.trouble(what, &shared.say(BLOCKS), None, ("", "")));
    let value = shared.typed.ask.station.blocks.clone();
    text_field(
        shared,
        Text { line: Line::Blocks, name: BLOCKS.to_owned(), key: BLOCKS, value, tall: false, mistake },
    )
}
