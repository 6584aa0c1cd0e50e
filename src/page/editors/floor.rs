//! A floor: what it is, how porous, what it should get.

use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, number_field, pick, shelf_buttons, text_field};
use crate::page::shared::Shared;
use yew::prelude::*;

/// The floor asked about.
pub fn floor_editor(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(floor) = shared.typed.floor() else { return Html::default() };
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
            { pick(shared, "floor-porosity", "porosity", floor.porosity, Action::Porosity) }
            { number_field(shared, outcome, Field::TargetLow, None) }
            { number_field(shared, outcome, Field::TargetHigh, None) }
            <details class="more">
                <summary>{ shared.say("floor-more") }</summary>
                { text_field(shared, name) }
                { pick(shared, "floor-surface", "surface", floor.surface, Action::Surface) }
                { shelf_buttons(shared, Shelf::Floor) }
            </details>
        </>
    }
}
