//! The records of the site, shelf by shelf.

use crate::form::Action;
use crate::form::action::{Line, Shelf};
use crate::form::site::library::found;
use crate::form::site::{Act, may_go};
use crate::page::components::{Text, button, text_field};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Record;
use crate::words::Argument;
use yew::prelude::*;

/// The shelves of the library; trials and standards have parts of their own.
const SHELVES: [Shelf; 6] =
    [Shelf::Machine, Shelf::Product, Shelf::Floor, Shelf::Finish, Shelf::Measure, Shelf::Area];

/// The shelf that is open, searched, and the ways to the others.
pub fn list(shared: &Shared) -> Html {
    let typed = &shared.typed;
    let open = typed.ask.site.shelf;
    let shelf = |one: Shelf| {
        let count = one.records(&typed.site).len();
        let n = Argument::number(count as f64, count.to_string());
        html! {
            <button type="button" name={format!("shelf-{}", one.code())} aria-pressed={(one == open).to_string()}
                onclick={shared.on(move |_: MouseEvent| Act::Shelf(one).action())}>
                { shared.tell(&format!("shelf-{}", one.code()), &[("n", n)]) }
            </button>
        }
    };
    let search = Text {
        line: Line::Search,
        name: "site-search".to_owned(),
        key: "site-search",
        value: typed.ask.site.search.clone(),
        tall: false,
        mistake: None,
    };
    let found = found(typed);
    html! {
        <>
            <div class="levels shelves" role="group" aria-label={shared.say("shelves")}>{ for SHELVES.map(shelf) }</div>
            { text_field(shared, search) }
            if found.is_empty() {
                <p role="status">{ shared.say(if typed.ask.site.search.trim().is_empty() { "shelf-empty" } else { "shelf-none" }) }</p>
            }
            <ul class="records">{ for found.into_iter().map(|(index, one)| line(shared, open, index, one)) }</ul>
            <div class="buttons">{ added(shared, open, "record") }</div>
            <p class="hint">{ shared.say("site-empty-hint") }</p>
            <div class="buttons">{ empty(shared) }</div>
        </>
    }
}

/// A site with nothing in it in the place of this one, which is put aside and survives a reload.
fn empty(shared: &Shared) -> Html {
    let own = shared.clone();
    let onclick = move |_: MouseEvent| {
        own.put_aside_for(Act::TakeSite(Box::default()).action());
    };
    html! { <button type="button" name="site-empty" {onclick}>{ shared.say("site-empty") }</button> }
}

/// The name of a record; one without a name is told by its kind and number.
pub fn name_of(shared: &Shared, shelf: Shelf, index: usize, record: &dyn Record) -> String {
    match record.name().trim() {
        "" => format!("{} {}", shared.say(shelf.code()), index + 1),
        name => name.to_owned(),
    }
}

fn line(shared: &Shared, shelf: Shelf, index: usize, record: &dyn Record) -> Html {
    let chosen = shelf.chosen(&shared.typed) == Some(record.id());
    let id = record.id().to_owned();
    let act = shared.act.clone();
    let open = move |_: MouseEvent| {
        act.emit(Action::Pick(shelf, id.clone()));
        focus::soon("record".to_owned());
    };
    html! {
        <li key={record.id().to_owned()}>
            <button type="button" name="record-open" data-id={record.id().to_owned()} aria-pressed={chosen.to_string()} onclick={open}>
                { name_of(shared, shelf, index, record) }
                if record.retired() { <span class="retired">{ shared.say("record-retired") }</span> }
            </button>
        </li>
    }
}

/// The way to a new one, which takes the focus where it is drawn.
fn added(shared: &Shared, shelf: Shelf, focused: &'static str) -> Html {
    let name = format!("{}-add", shelf.code());
    let act = shared.act.clone();
    let add = move |_: MouseEvent| {
        act.emit(match shelf {
            Shelf::Finish | Shelf::Trial | Shelf::Standard => Act::Add(shelf).action(),
            _ => Action::Add(shelf),
        });
        focus::soon(focused.to_owned());
    };
    html! { <button type="button" name={name.clone()} onclick={add}>{ shared.say(&name) }</button> }
}

/// Buttons that add a finish or a trial and remove the chosen one.
pub fn shelf_buttons(shared: &Shared, shelf: Shelf, focused: &'static str) -> Html {
    let chosen = shelf.chosen(&shared.typed).map(str::to_owned).filter(|id| may_go(&shared.typed, shelf, id));
    let remove = |id: String| {
        let name = format!("{}-remove", shelf.code());
        button(shared, name.clone(), shared.say(&name), move || Act::Discard(shelf, id.clone()).action())
    };
    html! { <div class="buttons">{ added(shared, shelf, focused) }{ chosen.map(remove).unwrap_or_default() }</div> }
}
