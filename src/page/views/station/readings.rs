//! What an instrument shows, to type in.

use crate::form::action::Line;
use crate::form::site::in_force::uncounted;
use crate::form::station::reading::BLOCKS;
use crate::form::station::{Job, Method, Mishap, Rest};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Choice, Text, choice, number_field, pick, text_field, trouble_label};
use crate::page::editors::active_fields;
use crate::page::shared::Shared;
use crate::words::Argument;
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
            { methods(shared, method) }
            { own }
        </>
    }
}

/// The instruments. On a device that is set to its standards nobody can type in what the concentrate holds: those that
/// ask for it are not offered there, and the line under the list says why.
fn methods(shared: &Shared, chosen: Method) -> Html {
    let name = "reading-method";
    let why = shared.typed.ask.held.then(|| uncounted(&shared.typed, shared.marks())).flatten();
    let Some(why) = why else { return pick(shared, name, name, chosen, Action::Method) };
    let text = |method: Method| shared.say(&format!("{name}-{}", method.code()));
    let (counting, others): (Vec<Method>, Vec<Method>) =
        Method::ALL.iter().partition(|method| method.counts_active());
    let missing = trouble_label(shared, &why);
    let told = counting.into_iter().map(|method| format!("{} ({missing})", text(method)));
    let told = Argument::text(told.collect::<Vec<_>>().join("; "));
    let list = Choice {
        name: name.into(),
        label: shared.say(name),
        options: others.into_iter().map(|method| (method.code().to_owned(), text(method))).collect(),
        chosen: chosen.code().to_owned(),
        hint: Some(shared.tell("measure-lacking", &[("measures", told)])),
    };
    choice(shared, list, move |code| Action::Method(Method::from_code(&code).unwrap_or(chosen)))
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
    shown && station.method.counts_active()
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
