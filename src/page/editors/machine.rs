//! A machine: name and own limits, how it moves, its flow settings.

use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, button, fold, number_field, shelf_buttons, switch, text_field};
use crate::page::shared::Shared;
use yew::prelude::*;

/// Name, the maker's own window, vacuum, reuse.
pub fn machine_basics(shared: &Shared, outcome: &Outcome) -> Html {
    if shared.typed.machine().is_none() {
        return Html::default();
    }
    fold(shared, outcome, "machine-more", &["machine-least", "machine-most", "machine-reuse"], basics)
}

fn basics(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(machine) = shared.typed.machine() else { return Html::default() };
    let name = Text {
        line: Line::MachineName,
        name: "machine-name".to_owned(),
        key: "machine-name",
        value: machine.name.clone(),
        tall: false,
        mistake: None,
    };
    html! {
        <>
            <div class="fields">
                { text_field(shared, name) }
                { for [Field::Least, Field::Most, Field::Reuse].map(|field| number_field(shared, outcome, field, None)) }
                { switch(shared, "machine-vacuum", shared.say("machine-vacuum"), machine.vacuum, Action::Vacuum) }
            </div>
            { shelf_buttons(shared, Shelf::Machine) }
        </>
    }
}

/// How the machine moves.
pub fn machine_motion(shared: &Shared, outcome: &Outcome) -> Html {
    html! {
        { for [Field::Path, Field::Overlap, Field::Speed].map(|field| number_field(shared, outcome, field, None)) }
    }
}

/// What a whole shift asks of a machine: its recovery tank, its battery, and where it works on its own.
pub fn machine_round(shared: &Shared, outcome: &Outcome) -> Html {
    if shared.typed.machine().is_none() {
        return Html::default();
    }
    let inside = ["machine-recovery", "machine-pick-up", "machine-battery", "machine-charge", "machine-lane"];
    fold(shared, outcome, "machine-round", &inside, round)
}

fn round(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(machine) = shared.typed.machine() else { return Html::default() };
    let needs = Text {
        line: Line::Needs,
        name: "machine-needs".to_owned(),
        key: "machine-needs",
        value: machine.needs.clone(),
        tall: true,
        mistake: None,
    };
    let number = |field: Field| number_field(shared, outcome, field, None);
    let alone = html! {
        <>
            { for [Field::LaneLeast, Field::LaneMost].map(number) }
            { text_field(shared, needs) }
        </>
    };
    html! {
        <div class="fields">
            { for [Field::Recovery, Field::PickUp, Field::Battery, Field::Charge].map(number) }
            { switch(shared, "machine-sweeps", shared.say("machine-sweeps"), machine.sweeps, Action::Sweeps) }
            { switch(shared, "machine-unattended", shared.say("machine-unattended"), machine.unattended, Action::Unattended) }
            if machine.unattended { { alone } }
        </div>
    }
}

/// The flow of each setting.
pub fn machine_settings(shared: &Shared, outcome: &Outcome) -> Html {
    let count = shared.typed.machine().map_or(0, |machine| machine.settings.len());
    let setting = |index: usize| {
        let field = Field::Setting(index);
        number_field(shared, outcome, field, Some(format!("{} {}", shared.say(field.key()), index + 1)))
    };
    html! {
        <fieldset class="settings">
            <legend>{ shared.say("machine-settings") }</legend>
            <p class="hint">{ shared.say("machine-settings-hint") }</p>
            <div class="fields">{ for (0..count).map(setting) }</div>
            <div class="buttons">
                { button(shared, "setting-add", shared.say("setting-add"), || Action::AddSetting) }
                if count > 1 {
                    { button(shared, "setting-drop", shared.say("setting-drop"), || Action::DropSetting) }
                }
            </div>
        </fieldset>
    }
}
