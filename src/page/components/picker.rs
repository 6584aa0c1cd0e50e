//! Choosing, adding and removing a record of the site.

use super::choice::{Choice, button, choice};
use crate::form::Action;
use crate::form::action::Shelf;
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Record;
use yew::prelude::*;

/// The name of a shelf in field names and word keys.
fn shelf_name(shelf: Shelf) -> &'static str {
    match shelf {
        Shelf::Machine => "machine",
        Shelf::Product => "product",
        Shelf::Floor => "floor",
        Shelf::Measure => "measure",
        Shelf::Area => "area",
    }
}

fn records<T: Record>(all: &[T]) -> Vec<&dyn Record> {
    all.iter().map(|record| record as &dyn Record).collect()
}

/// Id and name of each record; one without a name is told by its kind and number.
pub fn named(shared: &Shared, shelf: Shelf) -> Vec<(String, String)> {
    let site = &shared.typed.site;
    let records = match shelf {
        Shelf::Machine => records(&site.machines),
        Shelf::Product => records(&site.products),
        Shelf::Floor => records(&site.floors),
        Shelf::Measure => records(&site.measures),
        Shelf::Area => records(&site.areas),
    };
    let name = |(index, record): (usize, &dyn Record)| {
        let name = match record.name().trim() {
            "" => format!("{} {}", shared.say(shelf_name(shelf)), index + 1),
            name => name.to_owned(),
        };
        (record.id().to_owned(), name)
    };
    records.into_iter().enumerate().map(name).collect()
}

/// A drop-down list of the site's records; areas have a list of their own.
pub fn picker(shared: &Shared, shelf: Shelf) -> Html {
    let typed = &shared.typed;
    let chosen = match shelf {
        Shelf::Machine => typed.machine().map(Record::id),
        Shelf::Product => typed.product().map(Record::id),
        Shelf::Floor => typed.floor().map(Record::id),
        Shelf::Measure => typed.measure().map(Record::id),
        Shelf::Area => None,
    };
    let name = shelf_name(shelf);
    let list = Choice {
        name: name.into(),
        label: shared.say(name),
        options: named(shared, shelf),
        chosen: chosen.unwrap_or_default().to_owned(),
        hint: None,
    };
    choice(shared, list, move |id| Action::Pick(shelf, id))
}

/// Buttons that add a record and remove the chosen one.
pub fn shelf_buttons(shared: &Shared, shelf: Shelf) -> Html {
    let name = shelf_name(shelf);
    let (add, remove) = (format!("{name}-add"), format!("{name}-remove"));
    let added = {
        let act = shared.act.clone();
        move |_: MouseEvent| {
            act.emit(Action::Add(shelf));
            // The new record is empty: the first thing to type is its name.
            focus::soon(format!("{name}-name"));
        }
    };
    html! {
        <div class="buttons">
            <button type="button" name={add.clone()} onclick={added}>{ shared.say(&add) }</button>
            if named(shared, shelf).len() > 1 {
                { button(shared, remove.clone(), shared.say(&remove), move || Action::Remove(shelf, 0)) }
            }
        </div>
    }
}
