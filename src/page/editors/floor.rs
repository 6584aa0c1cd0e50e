//! A floor: what it is, how porous, what it should get.

use super::EditorProps;
use crate::chemistry::floor::Surface;
use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field};
use crate::page::components::{Choice, LineField, NumberField, ShelfButtons};
use crate::page::shared::use_shared;
use crate::trade::porosity::Porosity;
use yew::prelude::*;

/// The floor asked about.
#[component]
pub fn FloorEditor(props: &EditorProps) -> Html {
    let shared = use_shared();
    let Some(floor) = shared.typed.floor().cloned() else { return Html::default() };
    let porosity = |one: Porosity| (one.code().to_owned(), shared.say(&format!("porosity-{}", one.code())));
    let surface = |one: Surface| (one.key().to_owned(), shared.say(one.key()));
    let surface_of = |key: String| {
        Surface::ALL
            .into_iter()
            .find(|one| one.key() == key)
            .map_or(Action::Surface(Surface::BareConcrete), Action::Surface)
    };
    let number = |field: Field| html! { <NumberField {field} trouble={props.mistakes.at(&field.name())} /> };
    html! {
        <>
            <Choice name="floor-porosity" label={shared.say("floor-porosity")} hint={shared.say("floor-porosity-hint")}
                options={Porosity::ALL.map(porosity).to_vec()} chosen={floor.porosity.code().to_owned()}
                onchoose={shared.on(|code: String| Action::Porosity(Porosity::from_code(&code).unwrap_or_default()))} />
            { number(Field::TargetLow) }
            { number(Field::TargetHigh) }
            <details class="more">
                <summary>{ shared.say("floor-more") }</summary>
                <div class="fields">
                    <LineField line={Line::FloorName} name="floor-name" key_="floor-name" value={floor.name} />
                    <Choice name="floor-surface" label={shared.say("floor-surface")}
                        options={Surface::ALL.map(surface).to_vec()} chosen={floor.surface.key().to_owned()}
                        onchoose={shared.on(surface_of)} />
                </div>
                <ShelfButtons shelf={Shelf::Floor} />
            </details>
        </>
    }
}
