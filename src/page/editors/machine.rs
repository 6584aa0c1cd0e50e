//! A machine: name and own limits, how it moves, its flow settings.

use super::EditorProps;
use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field};
use crate::page::components::{LineField, NumberField, ShelfButtons, Switch};
use crate::page::shared::use_shared;
use yew::prelude::*;

fn number(props: &EditorProps, field: Field) -> Html {
    html! { <NumberField {field} trouble={props.mistakes.at(&field.name())} /> }
}

/// Name, the maker's own window, vacuum, reuse.
#[component]
pub fn MachineBasics(props: &EditorProps) -> Html {
    let shared = use_shared();
    let Some(machine) = shared.typed.machine().cloned() else { return Html::default() };
    html! {
        <details class="more">
            <summary>{ shared.say("machine-more") }</summary>
            <div class="fields">
                <LineField line={Line::MachineName} name="machine-name" key_="machine-name" value={machine.name} />
                { number(props, Field::Least) }
                { number(props, Field::Most) }
                { number(props, Field::Reuse) }
                <Switch name="machine-vacuum" key_="machine-vacuum" on={machine.vacuum}
                    onswitch={shared.on(Action::Vacuum)} />
            </div>
            <ShelfButtons shelf={Shelf::Machine} />
        </details>
    }
}

/// Path, overlap, speed and, where the shift needs it, efficiency.
#[derive(Properties, PartialEq)]
pub struct MotionProps {
    /// The mistakes of its view.
    #[prop_or_default]
    pub mistakes: super::Mistakes,
    /// Whether to ask for the efficiency.
    #[prop_or_default]
    pub efficiency: bool,
}

/// How the machine moves.
#[component]
pub fn MachineMotion(props: &MotionProps) -> Html {
    let fields = [Field::Path, Field::Overlap, Field::Speed];
    let efficiency = props.efficiency.then_some(Field::Efficiency);
    html! {
        { for fields.into_iter().chain(efficiency).map(|field| html! {
            <NumberField {field} trouble={props.mistakes.at(&field.name())} />
        }) }
    }
}

/// The flow of each setting.
#[component]
pub fn MachineSettings(props: &EditorProps) -> Html {
    let shared = use_shared();
    let count = shared.typed.machine().map_or(0, |machine| machine.settings.len());
    html! {
        <fieldset class="settings">
            <legend>{ shared.say("machine-settings") }</legend>
            <p class="hint">{ shared.say("machine-settings-hint") }</p>
            <div class="fields">
                { for (0..count).map(|index| {
                    let field = Field::Setting(index);
                    let label = format!("{} {}", shared.say(field.key()), index + 1);
                    html! { <NumberField {field} {label} trouble={props.mistakes.at(&field.name())} /> }
                }) }
            </div>
            <div class="buttons">
                <button type="button" name="setting-add" onclick={shared.on(|_| Action::AddSetting)}>
                    { shared.say("setting-add") }
                </button>
                if count > 1 {
                    <button type="button" name="setting-drop" onclick={shared.on(|_| Action::DropSetting)}>
                        { shared.say("setting-drop") }
                    </button>
                }
            </div>
        </fieldset>
    }
}
