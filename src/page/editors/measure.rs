//! What concentrate is measured with.

use crate::form::action::{Line, Shelf};
use crate::form::fill::RATIOS;
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, button, number_field, pick, shelf_buttons, text_field};
use crate::page::shared::Shared;
use crate::site::Dispenser;
use yew::prelude::*;

/// Name and kind of the measure asked about, and the numbers that its kind needs.
pub fn measure_editor(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(measure) = shared.typed.measure() else { return Html::default() };
    let name = Text {
        line: Line::MeasureName,
        name: "measure-name".to_owned(),
        key: "measure-name",
        value: measure.name.clone(),
        tall: false,
        mistake: outcome
            .at("measure-name")
            .map(|what| shared.words.trouble(what, &shared.say("measure-name"), None, ("", ""))),
    };
    let field = |field: Field| number_field(shared, outcome, field, None);
    let own = match measure.dispenser {
        Dispenser::Scale => field(Field::MeasureWeight),
        Dispenser::Packet => html! { <>{ field(Field::MeasureStep) }{ field(Field::MeasureWeight) }</> },
        Dispenser::Metering => html! { <>{ ratios(shared, outcome) }{ field(Field::Bottle) }</> },
        Dispenser::Wall => field(Field::MeasureTotal),
        _ => field(Field::MeasureStep),
    };
    html! {
        <>
            <div class="fields">
                { text_field(shared, name) }
                { pick(shared, "measure-dispenser", "dispenser", measure.dispenser, Action::Dispenser) }
                { own }
            </div>
            if measure.dispenser == Dispenser::Wall { { tips(shared, outcome, measure.tips.len()) } }
            { shelf_buttons(shared, Shelf::Measure) }
        </>
    }
}

/// The ratios that the machine can set.
fn ratios(shared: &Shared, outcome: &Outcome) -> Html {
    let mistake =
        outcome.at(RATIOS).map(|what| shared.words.trouble(what, &shared.say(RATIOS), None, ("", "")));
    let value = shared.typed.machine().map(|machine| machine.ratios.clone()).unwrap_or_default();
    text_field(
        shared,
        Text { line: Line::Ratios, name: RATIOS.to_owned(), key: RATIOS, value, tall: false, mistake },
    )
}

/// The site's own table of metering tips.
fn tips(shared: &Shared, outcome: &Outcome, count: usize) -> Html {
    let tip = |index: usize| {
        let field = Field::Tip(index);
        number_field(shared, outcome, field, Some(format!("{} {}", shared.say(field.key()), index + 1)))
    };
    html! {
        <fieldset class="settings">
            <legend>{ shared.say("measure-tips") }</legend>
            <p class="hint">{ shared.say("measure-tips-hint") }</p>
            <div class="fields">{ for (0..count).map(tip) }</div>
            <div class="buttons">
                { button(shared, "tip-add", shared.say("tip-add"), || Action::AddTip) }
                if count > 1 { { button(shared, "tip-drop", shared.say("tip-drop"), || Action::DropTip) } }
            </div>
        </fieldset>
    }
}
