//! A floor: what it is, how porous, what it should get.

use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, button, number_field, pick, shelf_buttons, text_field};
use crate::page::shared::Shared;
use crate::trade::porosity::Porosity;
use crate::words::Argument;
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
            { drop(shared, outcome) }
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

/// How long a drop stays, and the class that points to.
fn drop(shared: &Shared, outcome: &Outcome) -> Html {
    let field = Field::Drop;
    let read = field.entry(&shared.typed).and_then(|drop| drop.read(field.limit(), shared.marks()).ok());
    let class = read.map(Porosity::by_drop);
    let says = |class: Porosity| {
        let told = shared.say(&format!("porosity-{}", class.code()));
        html! {
            <p class="hint">
                { shared.tell("floor-drop-says", &[("class", Argument::text(told))]) }{ " " }
                { button(shared, "floor-drop-take", shared.say("floor-drop-take"), move || Action::Porosity(class)) }
            </p>
        }
    };
    html! { <div>{ number_field(shared, outcome, field, None) }{ for class.map(says) }</div> }
}
