//! The areas of a shift, to type and to order.

use super::events::Drawn;
use super::list::AreaList;
use crate::coded::Coded;
use crate::form::action::{Line, Shelf};
use crate::form::shift::{Better, Shift, Turns, best_order};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{
    Choice, Text, button, choice, fold, later, named, number_field, switch, text_field,
};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::trade::alone::Around;
use crate::trade::order::{OrderMistake, Place};
use crate::trade::soil::Soil;
use crate::words::Argument;
use yew::prelude::*;

/// The list of areas, in the order of work.
pub fn areas(Drawn { shared, shift, shown }: &Drawn) -> Html {
    let outcome = &shift.outcome;
    let areas = &shared.typed.site.areas;
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
            { shown.turn(shared, areas.len()) }
            <ol>
                { for shown.areas(areas.len(), outcome).into_iter().filter(|index| !areas[*index].retired).map(|index| area_line(shared, outcome, index)) }
            </ol>
            { later("areas-order", (shared.clone(), shift.clone()), |(shared, shift)| order(shared, shift)) }
            { fold(shared, outcome, "areas-list", &[], |shared, _| html! { <AreaList shared={shared.clone()} /> }) }
            <div class="buttons">
                <button type="button" id="area-add" name="area-add" onclick={added}>
                    { shared.say("area-add") }
                </button>
            </div>
        </section>
    }
}

/// One area, to type over.
pub fn area_line(shared: &Shared, outcome: &Outcome, index: usize) -> Html {
    let Some(area) = shared.typed.site.areas.get(index) else { return Html::default() };
    let number = index + 1;
    let of = |key: &str| shared.tell(key, &[("area", Argument::text(area.name.clone()))]);
    let name = Text {
        line: Line::AreaName(index),
        name: format!("area-{number}-name"),
        key: "area-name",
        value: area.name.clone(),
        tall: false,
        mistake: outcome
            .at(&format!("area-{number}-name"))
            .map(|what| shared.words.trouble(what, &shared.say("area-name"), None, ("", ""))),
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
    let product = own_record(shared, Shelf::Product, ("area-product", number), &area.product);
    // Of equal buttons a screen reader must tell which area each is for.
    let of_area = |what: &'static str, key: &str, action: Action| {
        let act = shared.act.clone();
        let onclick = move |_: MouseEvent| {
            act.emit(action.clone());
            match what {
                // A removed area takes its button along.
                "remove" => focus::soon("area-add".to_owned()),
                // A moved one takes it one place up, where the first has none.
                _ if index > 1 => focus::soon(format!("area-{index}-up")),
                _ => focus::soon("area-1-name".to_owned()),
            }
        };
        html! {
            <button type="button" id={format!("area-{number}-{what}")} name={format!("area-{number}-{what}")} aria-label={of(&format!("{key}-of"))} {onclick}>
                { shared.say(key) }
            </button>
        }
    };
    let inside = ["machine", "frequency", "lane", "way", "opens", "closes"]
        .map(|what| format!("area-{number}-{what}"));
    html! {
        <li class="area" key={area.id.clone()}>
            { switch(shared, format!("area-{number}-included"), of("area-included"), area.included,
                move |on| Action::Include(index, on)) }
            <div class="fields">
                { text_field(shared, name) }
                { number_field(shared, outcome, Field::AreaSize(index), None) }
                { choice(shared, floor, move |id| Action::AreaFloor(index, id)) }
                { choice(shared, product, move |id| Action::AreaProduct(index, id)) }
            </div>
            { fold(shared, outcome, "area-more", &inside.each_ref().map(String::as_str), move |shared, outcome| more(shared, outcome, index)) }
            <div class="buttons">
                if index > 0 { { of_area("up", "area-up", Action::MoveUp(index)) } }
                { of_area("remove", "area-remove", Action::Remove(Shelf::Area, index)) }
            </div>
        </li>
    }
}

/// What else can be said of an area.
fn more(shared: &Shared, outcome: &Outcome, index: usize) -> Html {
    let Some(area) = shared.typed.site.areas.get(index) else { return Html::default() };
    let number = index + 1;
    let machine = own_record(shared, Shelf::Machine, ("area-machine", number), &area.machine);
    let place = of_codes(shared, ("area-place", "place"), number, area.place);
    let soil = of_codes(shared, ("area-soil", "soil"), number, area.soil);
    let around = of_codes(shared, ("area-around", "around"), number, area.around);
    let alone = shared.typed.machine_of(area).is_some_and(|machine| machine.unattended);
    let field = |field: Field| number_field(shared, outcome, field, None);
    html! {
        <div class="fields">
            { choice(shared, machine, move |id| Action::AreaMachine(index, id)) }
            { field(Field::AreaFrequency(index)) }
            { choice(shared, soil, move |code| Action::AreaSoil(index, Soil::from_code(&code).unwrap_or_default())) }
            { switch(shared, format!("area-{number}-loose"), shared.say("area-loose"), area.loose,
                move |loose| Action::AreaLoose(index, loose)) }
            if alone {
                { field(Field::AreaLane(index)) }
                { choice(shared, around, move |code| Action::AreaAround(index, Around::from_code(&code).unwrap_or_default())) }
            }
            { field(Field::AreaWay(index)) }
            { choice(shared, place, move |code| Action::AreaPlace(index, Place::from_code(&code).unwrap_or_default())) }
            { field(Field::AreaOpens(index)) }
            { field(Field::AreaCloses(index)) }
        </div>
    }
}

/// A choice of an area that has codes: `key` is the word key of its label, and `words` begins those of the choices.
fn of_codes<T: Coded>(shared: &Shared, (key, words): (&str, &str), number: usize, chosen: T) -> Choice {
    let option = |code: &&str| ((*code).to_owned(), shared.say(&format!("{words}-{code}")));
    Choice {
        name: key.replacen('-', &format!("-{number}-"), 1).into(),
        label: shared.say(key),
        options: T::CODES.iter().map(option).collect(),
        chosen: chosen.code().to_owned(),
        hint: None,
    }
}

/// The machine or the product of an area: its own, or the one above.
fn own_record(shared: &Shared, shelf: Shelf, (key, number): (&str, usize), chosen: &str) -> Choice {
    let mut options = named(shared, shelf);
    if !chosen.is_empty() && !options.iter().any(|(id, _)| id == chosen) {
        // It was removed: none is shown as chosen.
        options.insert(0, (chosen.to_owned(), shared.say(&format!("{key}-none"))));
    }
    options.insert(0, (String::new(), shared.say(&format!("{key}-asked"))));
    Choice {
        name: key.replacen('-', &format!("-{number}-"), 1).into(),
        label: shared.say(key),
        options,
        chosen: chosen.to_owned(),
        hint: None,
    }
}

/// The best order, where it is another one, and how good it is.
fn order(shared: &Shared, shift: &Shift) -> Html {
    let number = |number: usize| Argument::number(number as f64, number.to_string());
    let said = match best_order(&shared.typed, shift, shared.marks()) {
        None => return Html::default(),
        Some(Err(mistake)) => {
            let key = match mistake {
                OrderMistake::TwoFirst => "order-two-first",
                OrderMistake::TwoLast => "order-two-last",
                OrderMistake::Late(_) | OrderMistake::NoTime => "order-no-time",
            };
            return html! { <p class="mistake">{ shared.say(key) }</p> };
        }
        Some(Ok(Turns { areas, order, better })) => {
            let key = match (better, order.exact) {
                (Better::Not, true) => "order-best",
                (Better::Not, false) => "order-good",
                (Better::Fewer, _) => "order-better",
                (Better::Sooner, _) => "order-sooner",
                (Better::Keeps, _) => "order-keeps",
            };
            let numbers = [("changes", number(order.changes)), ("least", number(order.least))];
            (shared.tell(key, &numbers), (better != Better::Not).then_some(areas))
        }
    };
    let (told, turns) = said;
    let take = |turns: Vec<usize>| {
        button(shared, "areas-order", shared.say("areas-order"), move || Action::Order(turns.clone()))
    };
    html! { <><p class="hint">{ told }</p><div class="buttons">{ for turns.map(take) }</div></> }
}
