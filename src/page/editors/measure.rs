//! What concentrate is measured with.

use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Choice, Text, choice, number_field, shelf_buttons, text_field};
use crate::page::shared::Shared;
use crate::site::Dispenser;
use yew::prelude::*;

/// Name, kind and step of the measure asked about.
pub fn measure_editor(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(measure) = shared.typed.measure() else { return Html::default() };
    let name = Text {
        line: Line::MeasureName,
        name: "measure-name".to_owned(),
        key: "measure-name",
        value: measure.name.clone(),
        tall: false,
        mistake: None,
    };
    let option = |one: Dispenser| (one.code().to_owned(), shared.say(&format!("dispenser-{}", one.code())));
    let dispenser = Choice {
        name: "measure-dispenser".into(),
        label: shared.say("measure-dispenser"),
        options: Dispenser::ALL.map(option).to_vec(),
        chosen: measure.dispenser.code().to_owned(),
        hint: None,
    };
    html! {
        <>
            <div class="fields">
                { text_field(shared, name) }
                { choice(shared, dispenser, |code| Action::Dispenser(Dispenser::from_code(&code).unwrap_or_default())) }
                { number_field(shared, outcome, Field::MeasureStep, None) }
            </div>
            { shelf_buttons(shared, Shelf::Measure) }
        </>
    }
}
