//! Choosing, adding and removing a record of the site.

use super::choice::{Choice, button, choice};
use crate::form::Action;
use crate::form::action::Shelf;
use crate::form::site::may_go;
use crate::form::site::references::{Referrer, referrers};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Record;
use crate::words::Argument;
use yew::prelude::*;

/// Id and name of each record that is in use, and of the one chosen; one without a name is told by its kind and number.
pub fn named(shared: &Shared, shelf: Shelf) -> Vec<(String, String)> {
    let records = shelf.records(&shared.typed.site);
    let chosen = shelf.chosen(&shared.typed);
    let offered = |(_, record): &(usize, &dyn Record)| !record.retired() || chosen == Some(record.id());
    let name = |(index, record): (usize, &dyn Record)| {
        let name = match record.name().trim() {
            "" => format!("{} {}", shared.say(shelf.code()), index + 1),
            name => name.to_owned(),
        };
        (record.id().to_owned(), name)
    };
    records.into_iter().enumerate().filter(offered).map(name).collect()
}

/// A drop-down list of the site's records; areas have a list of their own.
pub fn picker(shared: &Shared, shelf: Shelf) -> Html {
    let typed = &shared.typed;
    let name = shelf.code();
    let chosen = shelf.chosen(typed).unwrap_or_default().to_owned();
    let mut options = named(shared, shelf);
    let mut hint = None;
    let (lacking, told) = &*shared.lacking;
    if shelf == Shelf::Measure && !lacking.is_empty() {
        // An operator cannot fill in what a measure lacks.
        options.retain(|(id, _)| *id == chosen || !lacking.contains(id));
        hint = Some(told.clone());
    }
    let list = Choice { name: name.into(), label: shared.say(name), options, chosen, hint };
    choice(shared, list, move |id| Action::Pick(shelf, id))
}

/// Buttons that add a record and remove the chosen one.
pub fn shelf_buttons(shared: &Shared, shelf: Shelf) -> Html {
    if shared.locked {
        return Html::default();
    }
    let name = shelf.code();
    let (add, remove) = (format!("{name}-add"), format!("{name}-remove"));
    let added = {
        let act = shared.act.clone();
        move |_: MouseEvent| {
            act.emit(Action::Add(shelf));
            // The new record is empty: the first thing to type is its name.
            focus::soon(format!("{name}-name"));
        }
    };
    let chosen = shelf.chosen(&shared.typed).unwrap_or_default();
    html! {
        <>
        <div class="buttons">
            <button type="button" name={add.clone()} onclick={added}>{ shared.say(&add) }</button>
            if may_go(&shared.typed, shelf, chosen) {
                { button(shared, remove.clone(), shared.say(&remove), move || Action::Remove(shelf, 0)) }
            }
        </div>
        { used_by(shared, shelf, chosen) }
        </>
    }
}

/// Who uses a record: while somebody does, it can be taken out of use and not removed.
pub fn used_by(shared: &Shared, shelf: Shelf, id: &str) -> Html {
    let used = referrers(&shared.typed.site, shelf, id);
    if used.is_empty() {
        return Html::default();
    }
    let told = |one: &Referrer| format!("{} ({})", one.name, shared.say(one.shelf.code()));
    let by = Argument::text(used.iter().map(told).collect::<Vec<_>>().join("; "));
    html! { <p class="hint">{ shared.tell("record-used", &[("by", by)]) }</p> }
}
