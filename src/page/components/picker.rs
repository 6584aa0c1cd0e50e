//! Choosing, adding and removing a record of the site.

use super::Choice;
use crate::form::Action;
use crate::form::action::Shelf;
use crate::page::shared::{Shared, use_shared};
use crate::site::Record;
use yew::prelude::*;

/// Which kind of record.
#[derive(Properties, PartialEq)]
pub struct PickerProps {
    /// The kind.
    pub shelf: Shelf,
}

/// The name of a shelf in field names and word keys.
pub fn shelf_name(shelf: Shelf) -> &'static str {
    match shelf {
        Shelf::Machine => "machine",
        Shelf::Product => "product",
        Shelf::Floor => "floor",
        Shelf::Measure => "measure",
        Shelf::Area => "area",
    }
}

/// Id and name of each record; one without a name is told by its kind and number.
pub fn named<T: Record>(shared: &Shared, shelf: Shelf, all: &[T]) -> Vec<(String, String)> {
    let name = |(index, record): (usize, &T)| {
        let name = match record.name().trim() {
            "" => format!("{} {}", shared.say(shelf_name(shelf)), index + 1),
            name => name.to_owned(),
        };
        (record.id().to_owned(), name)
    };
    all.iter().enumerate().map(name).collect()
}

/// A drop-down list of the site's records.
#[component]
pub fn Picker(props: &PickerProps) -> Html {
    let shared = use_shared();
    let shelf = props.shelf;
    let (site, typed) = (&shared.typed.site, &shared.typed);
    let id = |record: Option<&dyn Record>| record.map(|record| record.id().to_owned()).unwrap_or_default();
    let (options, chosen) = match shelf {
        Shelf::Machine => {
            (named(&shared, shelf, &site.machines), id(typed.machine().map(|r| r as &dyn Record)))
        }
        Shelf::Product => {
            (named(&shared, shelf, &site.products), id(typed.product().map(|r| r as &dyn Record)))
        }
        Shelf::Floor => (named(&shared, shelf, &site.floors), id(typed.floor().map(|r| r as &dyn Record))),
        Shelf::Measure => {
            (named(&shared, shelf, &site.measures), id(typed.measure().map(|r| r as &dyn Record)))
        }
        Shelf::Area => return Html::default(),
    };
    let name = shelf_name(shelf);
    html! {
        <Choice {name} label={shared.say(name)} {options} {chosen}
            onchoose={shared.on(move |id| Action::Pick(shelf, id))} />
    }
}

/// Buttons that add a record and remove the chosen one.
#[component]
pub fn ShelfButtons(props: &PickerProps) -> Html {
    let shared = use_shared();
    let shelf = props.shelf;
    let name = shelf_name(shelf);
    let site = &shared.typed.site;
    let count = match shelf {
        Shelf::Machine => site.machines.len(),
        Shelf::Product => site.products.len(),
        Shelf::Floor => site.floors.len(),
        Shelf::Measure => site.measures.len(),
        Shelf::Area => site.areas.len(),
    };
    html! {
        <div class="buttons">
            <button type="button" name={format!("{name}-add")} onclick={shared.on(move |_| Action::Add(shelf))}>
                { shared.say(&format!("{name}-add")) }
            </button>
            if count > 1 {
                <button type="button" name={format!("{name}-remove")}
                    onclick={shared.on(move |_| Action::Remove(shelf, 0))}>
                    { shared.say(&format!("{name}-remove")) }
                </button>
            }
        </div>
    }
}
