//! A floor: what it is, how porous, what it should get.

use crate::chemistry::floor::Surface;
use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Choice, Text, choice, number_field, shelf_buttons, text_field};
use crate::page::shared::Shared;
use crate::trade::porosity::Porosity;
use yew::prelude::*;

/// The floor asked about.
pub fn floor_editor(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(floor) = shared.typed.floor() else { return Html::default() };
    let porosity = |one: Porosity| (one.code().to_owned(), shared.say(&format!("porosity-{}", one.code())));
    let porosity = Choice {
        name: "floor-porosity".into(),
        label: shared.say("floor-porosity"),
        options: Porosity::ALL.map(porosity).to_vec(),
        chosen: floor.porosity.code().to_owned(),
        hint: Some(shared.say("floor-porosity-hint")),
    };
    let surface = |one: Surface| (one.key().to_owned(), shared.say(one.key()));
    let surface = Choice {
        name: "floor-surface".into(),
        label: shared.say("floor-surface"),
        options: Surface::ALL.map(surface).to_vec(),
        chosen: floor.surface.key().to_owned(),
        hint: None,
    };
    let now = floor.surface;
    let chosen = move |key: String| {
        Action::Surface(Surface::ALL.into_iter().find(|one| one.key() == key).unwrap_or(now))
    };
    let name = Text {
        line: Line::FloorName,
        name: "floor-name".to_owned(),
        key: "floor-name",
        value: floor.name.clone(),
        tall: false,
        mistake: None,
    };
    html! {
        <>
            { choice(shared, porosity, |code| Action::Porosity(Porosity::from_code(&code).unwrap_or_default())) }
            { number_field(shared, outcome, Field::TargetLow, None) }
            { number_field(shared, outcome, Field::TargetHigh, None) }
            <details class="more">
                <summary>{ shared.say("floor-more") }</summary>
                { text_field(shared, name) }
                { choice(shared, surface, chosen) }
                { shelf_buttons(shared, Shelf::Floor) }
            </details>
        </>
    }
}
