//! A floor: what it is, how porous, what it should get.

use crate::chemistry::floor::thirst::{Guide, Reason};
use crate::chemistry::floor::tile::{self, IsoGroup, TileClass};
use crate::form::action::{Line, Shelf};
use crate::form::flow::thirst;
use crate::form::site::Act;
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Choice, Text, choice, fold, number_field, pick, shelf_buttons, text_field};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Floor;
use crate::source::Source;
use crate::trade::porosity::Porosity;
use crate::words::Argument;
use yew::prelude::*;

/// The floor asked about.
pub fn floor_editor(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(floor) = shared.typed.floor() else { return Html::default() };
    html! {
        <>
            <div class="wide">{ pick(shared, "floor-porosity", "porosity", floor.porosity, Action::Porosity) }</div>
            { fold(shared, outcome, "floor-class", &["floor-absorption", "floor-drop"], class) }
            { number_field(shared, outcome, Field::TargetLow, None) }
            { number_field(shared, outcome, Field::TargetHigh, None) }
            { fold(shared, outcome, "floor-more", &[], basics) }
        </>
    }
}

/// Its name and its finish.
fn basics(shared: &Shared, _: &Outcome) -> Html {
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
            { text_field(shared, name) }
            { finish_choice(shared, floor) }
            { shelf_buttons(shared, Shelf::Floor) }
        </>
    }
}

/// The finish on the floor: it narrows the pH that the floor bears.
fn finish_choice(shared: &Shared, floor: &Floor) -> Html {
    let offered = shared.typed.site.finishes.iter().filter(|one| !one.retired || one.id == floor.finish);
    let mut options: Vec<_> = offered.map(|one| (one.id.clone(), one.name.clone())).collect();
    options.insert(0, (String::new(), shared.say("floor-finish-none")));
    let list = Choice {
        name: "floor-finish".into(),
        label: shared.say("floor-finish"),
        options,
        chosen: floor.finish.clone(),
        hint: Some(shared.say("floor-finish-hint")),
    };
    choice(shared, list, |id| Act::FloorFinish(id).action())
}

/// What is known of the floor's thirst, and the class that it points to.
fn class(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(floor) = shared.typed.floor() else { return Html::default() };
    html! {
        <>
            <div class="fields">
                { pick(shared, "floor-surface", "surface", floor.surface, Action::Surface) }
                { number_field(shared, outcome, Field::Drop, None) }
                <div>
                    { number_field(shared, outcome, Field::Absorption, None) }
                    { standards(shared) }
                </div>
                { pick(shared, "floor-joints", "joints", floor.joints, Action::Joints) }
                { pick(shared, "floor-texture", "texture", floor.texture, Action::Texture) }
            </div>
            { thirst::class(&shared.typed, shared.marks()).map(|guide| points_to(shared, floor, &guide)).unwrap_or_default() }
        </>
    }
}

/// What the standards call a tile that takes up so much water, each with where its limits were read.
fn standards(shared: &Shared) -> Html {
    let Some(share) = thirst::absorption(&shared.typed, shared.marks()) else { return Html::default() };
    let line = |key: &str, class: &str, source: Source| {
        let (class, source) = (shared.say(class), shared.words.source(source));
        let told = [("class", Argument::text(class)), ("source", Argument::text(source))];
        html! { <p class="hint">{ shared.tell(key, &told) }</p> }
    };
    let percent = share.percent();
    html! {
        <>
            { for IsoGroup::of(percent).map(|group| line("absorption-iso", group.key(), group.source())) }
            { for TileClass::of(percent).map(|class| line("absorption-ansi", class.key(), tile::SOURCE)) }
        </>
    }
}

/// The reasons one by one, what they come to, and a button where that is another class than the chosen one.
fn points_to(shared: &Shared, floor: &Floor, guide: &Guide) -> Html {
    let name = |class: &str| Argument::text(shared.say(&format!("class-{class}")));
    let reason = |(reason, class): &(Reason, Porosity)| {
        let surface = ("surface", Argument::text(shared.say(floor.surface.key())));
        html! { <li>{ shared.tell(reason.key(), &[("class", name(class.code())), surface]) }</li> }
    };
    let other = guide.class != floor.porosity;
    let key = if other { "floor-class-says" } else { "floor-class-agrees" };
    let take = {
        let (act, class) = (shared.act.clone(), guide.class);
        move |_: MouseEvent| {
            act.emit(Action::Porosity(class));
            // This button goes; the class that it chose takes the focus.
            focus::soon("floor-porosity".to_owned());
        }
    };
    html! {
        <div>
            <ul class="hint">{ for guide.reasons.iter().map(reason) }</ul>
            <p>{ shared.tell(key, &[("class", name(guide.class.code()))]) }</p>
            if other {
                <div class="buttons">
                    <button type="button" name="floor-class-take" onclick={take}>{ shared.say("floor-class-take") }</button>
                </div>
            }
        </div>
    }
}
