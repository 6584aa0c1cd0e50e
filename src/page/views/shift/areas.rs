//! The areas of a shift, to type and to order.

use crate::form::action::{Line, Shelf};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Choice, Text, choice, named, number_field, switch, text_field};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Area;
use crate::words::Argument;
use yew::prelude::*;

/// The list of areas, in the order of work.
pub fn areas(shared: &Shared, outcome: &Outcome) -> Html {
    let areas = shared.typed.site.areas.iter().enumerate();
    let added = {
        let (act, number) = (shared.act.clone(), shared.typed.site.areas.len() + 1);
        move |_: MouseEvent| {
            act.emit(Action::Add(Shelf::Area));
            focus::soon(format!("area-{number}-name"));
        }
    };
    html! {
        <section class="areas" aria-labelledby="areas-heading">
            <h2 id="areas-heading">{ shared.say("areas-heading") }</h2>
            <ol>{ for areas.map(|(index, area)| line(shared, outcome, index, area)) }</ol>
            <div class="buttons">
                <button type="button" id="area-add" name="area-add" onclick={added}>
                    { shared.say("area-add") }
                </button>
            </div>
        </section>
    }
}

fn line(shared: &Shared, outcome: &Outcome, index: usize, area: &Area) -> Html {
    let number = index + 1;
    let of = |key: &str| shared.tell(key, &[("area", Argument::text(area.name.clone()))]);
    let name = Text {
        line: Line::AreaName(index),
        name: format!("area-{number}-name"),
        key: "area-name",
        value: area.name.clone(),
        tall: false,
        mistake: None,
    };
    let mut floors = named(shared, Shelf::Floor);
    if !floors.iter().any(|(id, _)| *id == area.floor) {
        // Its floor was removed: none is shown as chosen.
        floors.insert(0, (area.floor.clone(), shared.say("area-floor-none")));
    }
    let floor = Choice {
        name: format!("area-{number}-floor").into(),
        label: shared.say("area-floor"),
        options: floors,
        chosen: area.floor.clone(),
        hint: None,
    };
    // Of equal buttons a screen reader must tell which area each is for.
    let button = |what: &'static str, key: &str, action: Action| {
        let act = shared.act.clone();
        let onclick = move |_: MouseEvent| {
            act.emit(action.clone());
            // A removed area takes its button along.
            if what == "remove" {
                focus::soon("area-add".to_owned());
            }
        };
        html! {
            <button type="button" name={format!("area-{number}-{what}")} aria-label={of(&format!("{key}-of"))} {onclick}>
                { shared.say(key) }
            </button>
        }
    };
    html! {
        <li class="area" key={area.id.clone()}>
            { switch(shared, format!("area-{number}-included"), of("area-included"), area.included,
                move |on| Action::Include(index, on)) }
            <div class="fields">
                { text_field(shared, name) }
                { number_field(shared, outcome, Field::AreaSize(index), None) }
                { choice(shared, floor, move |id| Action::AreaFloor(index, id)) }
            </div>
            <div class="buttons">
                if index > 0 { { button("up", "area-up", Action::MoveUp(index)) } }
                { button("remove", "area-remove", Action::Remove(Shelf::Area, index)) }
            </div>
        </li>
    }
}
