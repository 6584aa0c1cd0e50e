//! The list of areas as a file: saved, and opened in two steps. First it is shown how a file is read, and can
//! be corrected; only a button changes the site.

mod columns;
mod told;

use crate::form::Action;
use crate::page::components::{Chosen, OpenFile, Told, shown};
use crate::page::focus;
use crate::page::keep::download;
use crate::page::shared::Shared;
use crate::site::area_list::{Imported, Mapping, Table, export, import};
use crate::words::Argument;
use std::rc::Rc;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// A file that is open, and how it is read.
#[derive(Clone, PartialEq)]
struct Opened {
    name: String,
    table: Rc<Table>,
    mapping: Mapping,
    /// Whether its areas come behind those that are there, or take their place.
    behind: bool,
    /// A number of it with two readings, once somebody has said which.
    asked: Option<(String, f64, f64)>,
}

/// Where the file is.
#[derive(Clone, PartialEq)]
enum Stage {
    /// None was opened.
    None,
    /// It is looked at.
    Open(Opened),
    /// It was taken: how many areas, and what is to be mended.
    Taken(usize, Vec<String>),
    /// It was left.
    Left,
}

/// What the list needs.
#[derive(Properties, PartialEq)]
pub struct AreaListProps {
    /// What every part needs.
    pub shared: Shared,
}

/// The list of areas as a file for spreadsheets, and back.
#[component]
pub fn AreaList(props: &AreaListProps) -> Html {
    let shared = &props.shared;
    let stage = use_state(|| Stage::None);
    let to = {
        let stage = stage.clone();
        Callback::from(move |next| stage.set(next))
    };
    let onsave = {
        let shared = shared.clone();
        move |_: MouseEvent| {
            let text = export(&shared.typed.site, shared.system(), shared.marks());
            download::offer("brimline-areas.csv", "text/csv", &text);
        }
    };
    let onfile = {
        let (shared, to) = (shared.clone(), to.clone());
        move |(file, told): (Chosen, Callback<Told>)| match Table::open(&file.bytes) {
            Ok(table) => {
                let mapping = Mapping::guess(&table, shared.system());
                told.emit(Told::default());
                to.emit(Stage::Open(Opened {
                    name: file.name,
                    table: Rc::new(table),
                    mapping,
                    behind: false,
                    asked: None,
                }));
            }
            // What was open before stays open.
            Err(refusal) => told.emit(Told { lines: vec![shared.say(refusal.key())], mistake: true }),
        }
    };
    let read = match &*stage {
        Stage::Open(opened) => {
            Some((opened, import(&opened.table, &opened.mapping, &shared.typed.site, shared.marks())))
        }
        _ => None,
    };
    let (said, wrong) = told::said(shared, &stage, read.as_ref().map(|(_, read)| read));
    html! {
        <div class="list">
            <div class="buttons">
                <button type="button" name="areas-save" onclick={onsave}>{ shared.say("areas-save") }</button>
            </div>
            <OpenFile shared={shared.clone()} name="areas-open" accept=".csv,.tsv,.txt,text/csv,text/plain" {onfile} />
            <div>{ for read.as_ref().map(|(opened, read)| questions(shared, opened, read, &to)) }</div>
            // It stands there before its text does, so that a screen reader tells every change of it.
            <p class={wrong.then_some("mistake")} role="status">{ said }</p>
            { match (&*stage, &read) {
                (Stage::Taken(_, flaws), _) => told::listed(shared, flaws),
                (_, Some((opened, read))) => offer(shared, opened, read, !wrong, &to),
                _ => Html::default(),
            } }
        </div>
    }
}

/// How the file is read, to be corrected.
fn questions(shared: &Shared, opened: &Opened, read: &Imported, to: &Callback<Stage>) -> Html {
    let onhead = {
        let (opened, to) = (opened.clone(), to.clone());
        move |event: Event| {
            let mut opened = opened.clone();
            let headed = event.target_unchecked_into::<HtmlInputElement>().checked();
            opened.mapping.head(&opened.table, headed);
            to.emit(Stage::Open(opened));
        }
    };
    let onmapping = {
        let (opened, to) = (opened.clone(), to.clone());
        Callback::from(move |mapping| to.emit(Stage::Open(Opened { mapping, ..opened.clone() })))
    };
    let line = opened.mapping.line(&opened.table).to_string();
    html! {
        <section aria-labelledby="areas-columns">
            <h3 id="areas-columns">
                { shared.tell("csv-heading", &[("file", Argument::text(columns::short(&opened.name)))]) }
            </h3>
            <label class="switch">
                <input type="checkbox" id="areas-headed" name="areas-headed" checked={opened.mapping.headed} onchange={onhead} />
                <span>{ shared.tell("areas-headed", &[("line", Argument::text(line))]) }</span>
            </label>
            { columns::columns(shared, opened, &onmapping) }
            { told::two_readings(shared, opened, read, to) }
            { how(shared, opened, to) }
        </section>
    }
}

/// What becomes of the areas that are there.
fn how(shared: &Shared, opened: &Opened, to: &Callback<Stage>) -> Html {
    let count = shared.typed.site.areas.len();
    if count == 0 {
        return Html::default();
    }
    let options = [("replace", "areas-how-replace"), ("behind", "areas-how-behind")]
        .map(|(code, key)| (code.to_owned(), shared.say(key)));
    let chosen = if opened.behind { "behind" } else { "replace" };
    let onchoose = {
        let (opened, to) = (opened.clone(), to.clone());
        move |code: String| to.emit(Stage::Open(Opened { behind: code == "behind", ..opened.clone() }))
    };
    let label = shared.tell("areas-how", &[("n", number(count))]);
    list("areas-how", label, &options, chosen, None, Html::default(), &onchoose.into())
}

/// What is to be mended, and the buttons that take the file or leave it.
fn offer(shared: &Shared, opened: &Opened, read: &Imported, can: bool, to: &Callback<Stage>) -> Html {
    let flaws = told::flaws(shared, read);
    let ontake = {
        let (shared, to, areas, behind) = (shared.clone(), to.clone(), read.areas.clone(), opened.behind);
        let flaws = flaws.clone();
        move |_: MouseEvent| {
            let mut typed = (*shared.typed).clone();
            if !behind {
                typed.site.areas.clear();
            }
            typed.site.areas.extend(areas.iter().cloned());
            to.emit(Stage::Taken(areas.len(), flaws.clone()));
            shared.act.emit(Action::Replace(Box::new(typed)));
            // The buttons are gone.
            focus::soon("areas-open".to_owned());
        }
    };
    let onleave = {
        let to = to.clone();
        move |_: MouseEvent| {
            to.emit(Stage::Left);
            focus::soon("areas-open".to_owned());
        }
    };
    html! {
        <>
            if can { { told::listed(shared, &flaws) } { told::lacking(shared, &opened.mapping) } }
            <div class="buttons">
                if can && !read.areas.is_empty() {
                    <button type="button" name="areas-take" onclick={ontake}>
                        { shared.tell("areas-take", &[("n", number(read.areas.len()))]) }
                    </button>
                }
                <button type="button" name="areas-leave" onclick={onleave}>{ shared.say("areas-leave") }</button>
            </div>
        </>
    }
}

fn number(count: usize) -> Argument {
    Argument::number(count as f64, count.to_string())
}

/// A drop-down list that asks about the file, not the site; `beside` stands beside it.
fn list(
    name: &str,
    label: String,
    options: &[(String, String)],
    chosen: &str,
    hint: Option<String>,
    beside: Html,
    onchoose: &Callback<String>,
) -> Html {
    let onchange = onchoose.reform(|event: Event| event.target_unchecked_into::<HtmlSelectElement>().value());
    let name = AttrValue::from(name.to_owned());
    let described = hint.is_some().then(|| format!("{name}-hint"));
    html! {
        <div class="field">
            <label for={name.clone()}>{ label }</label>
            <div class="entry">
                <select id={name.clone()} name={name.clone()} {onchange} aria-describedby={described.clone()} ~value={shown(chosen)}>
                    { for options.iter().map(|(value, text)| html! {
                        <option value={value.clone()} selected={value == chosen}>{ text }</option>
                    }) }
                </select>
                { beside }
            </div>
            if let Some(hint) = hint { <p class="hint" id={described}>{ hint }</p> }
        </div>
    }
}
