//! What concentrate is measured with.

use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, number_field, pick, shelf_buttons, text_field};
use crate::page::shared::Shared;
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
    html! {
        <>
            <div class="fields">
                { text_field(shared, name) }
                { pick(shared, "measure-dispenser", "dispenser", measure.dispenser, Action::Dispenser) }
                { number_field(shared, outcome, Field::MeasureStep, None) }
            </div>
            { shelf_buttons(shared, Shelf::Measure) }
        </>
    }
}
