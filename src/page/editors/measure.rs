//! What concentrate is measured with.

use super::EditorProps;
use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field};
use crate::page::components::{Choice, LineField, NumberField, ShelfButtons};
use crate::page::shared::use_shared;
use crate::site::Dispenser;
use yew::prelude::*;

/// Name, kind and step of the measure asked about.
#[component]
pub fn MeasureEditor(props: &EditorProps) -> Html {
    let shared = use_shared();
    let Some(measure) = shared.typed.measure().cloned() else { return Html::default() };
    let option = |one: Dispenser| (one.code().to_owned(), shared.say(&format!("dispenser-{}", one.code())));
    html! {
        <>
            <div class="fields">
                <LineField line={Line::MeasureName} name="measure-name" key_="measure-name" value={measure.name} />
                <Choice name="measure-dispenser" label={shared.say("measure-dispenser")}
                    options={Dispenser::ALL.map(option).to_vec()} chosen={measure.dispenser.code().to_owned()}
                    onchoose={shared.on(|code: String| Action::Dispenser(Dispenser::from_code(&code).unwrap_or_default()))} />
                <NumberField field={Field::MeasureStep} trouble={props.mistakes.at(&Field::MeasureStep.name())} />
            </div>
            <ShelfButtons shelf={Shelf::Measure} />
        </>
    }
}
