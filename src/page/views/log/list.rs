//! The fills, the newest first. Only the rows in sight are drawn, so that a hundred thousand scroll as ten do.

use super::history::History;
use super::{COLUMNS, Seen, cells, told};
use crate::site::log::{Current, Id};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// The height of a row, CSS pixels; the style sheet has it too.
const ROW: usize = 60;
/// Rows drawn beyond what is in sight, above and below.
const BEYOND: usize = 12;

/// What the list draws.
#[derive(Properties, PartialEq)]
pub struct ListProps {
    /// What all parts draw from.
    pub seen: Seen,
    /// The places of the fills in the view, the newest first.
    pub places: Rc<Vec<usize>>,
}

/// The table of fills.
#[component]
pub fn List(props: &ListProps) -> Html {
    let ListProps { seen, places } = props;
    let shared = &seen.shared;
    let (pane, panel) = (use_node_ref(), use_node_ref());
    let top = use_state_eq(|| 0_usize);
    let sight = use_state_eq(|| 12_usize);
    let unfolded = use_state_eq(|| None::<Id>);
    let fills = &seen.held.view.fills;
    let open = unfolded.as_ref().and_then(|id| places.iter().position(|place| fills[*place].id == *id));
    let height = use_state_eq(|| 0_usize);
    let wanted = use_mut_ref(|| None::<String>);
    {
        let (panel, height, wanted) = (panel.clone(), height.clone(), wanted.clone());
        // After each drawing: what stands in the unfolded row comes later than the row, and so does a row that was
        // too far away to be drawn.
        use_effect(move || {
            let is_there = |id: &String| gloo::utils::document().get_element_by_id(id).is_some();
            if wanted.borrow().as_ref().is_some_and(is_there)
                && let Some(id) = wanted.take()
            {
                enter(&id);
            }
            let tall = panel.cast::<HtmlElement>().map(|panel| panel.offset_height());
            if let Some(tall) = tall {
                height.set(usize::try_from(tall).unwrap_or_default());
            }
        });
    }
    let looks = {
        let (pane, top, sight) = (pane.clone(), top.clone(), sight.clone());
        let (open, tall) = (open, *height);
        Callback::from(move |()| {
            let Some(pane) = pane.cast::<HtmlElement>() else { return };
            let y = usize::try_from(pane.scroll_top()).unwrap_or_default();
            let before = open.is_some_and(|open| y > (open + 1) * ROW);
            top.set(y.saturating_sub(if before { tall } else { 0 }) / ROW);
            sight.set(usize::try_from(pane.client_height()).unwrap_or_default() / ROW + 1);
        })
    };
    {
        let looks = looks.clone();
        use_effect_with(places.len(), move |_| looks.emit(()));
    }
    if places.is_empty() {
        let key = if fills.is_empty() { "log-empty" } else { "log-none-found" };
        return html! { <p>{ shared.say(key) }</p> };
    }
    let count = places.len();
    let from = top.saturating_sub(BEYOND).min(count.saturating_sub(1));
    let to = (*top + *sight + BEYOND).min(count);
    let shows = open.filter(|open| (from..to).contains(open));
    // As an attribute: the page's own policy forbids styles in the markup.
    let gap = |key: &'static str, rows: usize, extra: usize| {
        let height = (rows * ROW + extra).to_string();
        html! { <tr {key} class="gap" aria-hidden="true"><td colspan="6" {height}></td></tr> }
    };
    let above = open.filter(|open| *open < from).map_or(0, |_| *height);
    let below = open.filter(|open| *open >= to).map_or(0, |_| *height);
    let move_to = {
        let (pane, looks) = (pane.clone(), looks.clone());
        let tall = *height;
        let (is_drawn, wanted) = (from..to, wanted.clone());
        let (fills, places) = (seen.held.view.clone(), places.clone());
        Callback::from(move |at: usize| {
            let id = row_id(&fills.fills[places[at]].id);
            if is_drawn.contains(&at) {
                return enter(&id);
            }
            let Some(pane) = pane.cast::<HtmlElement>() else { return };
            *wanted.borrow_mut() = Some(id);
            let below = open.filter(|open| *open < at).map_or(0, |_| tall);
            pane.set_scroll_top(i32::try_from(at * ROW + below).unwrap_or(i32::MAX));
            looks.emit(());
        })
    };
    // One list with a key a row, so that a row that stays keeps its place in the document, and the focus.
    let mut rows = vec![gap("above", from, above)];
    for at in from..to {
        let one = &fills[places[at]];
        let is_open = shows == Some(at);
        rows.push(drawn(seen, one, at, is_open, &unfolded, &move_to, count));
        if is_open {
            rows.push(html! {
                <tr key={format!("{}-panel", row_id(&one.id))} class="panel"><td colspan="6">
                    <div ref={panel.clone()}><History seen={seen.clone()} id={one.id.clone()} /></div>
                </td></tr>
            });
        }
    }
    rows.push(gap("below", count - to, below));
    let number = |n: usize| super::told::count(shared, n);
    let head = |key: &&'static str| {
        let under = (*key == "log-column-planned").then_some("log-column-measured");
        let under =
            under.map(|key| html! { <span class="on-phone" aria-hidden="true">{ shared.say(key) }</span> });
        html! { <th scope="col">{ shared.say(key) }{ for under }</th> }
    };
    html! {
        <div class="scroll log-pane" ref={pane} tabindex="0" role="region" aria-label={shared.say("log-table")} onscroll={looks.reform(|_: Event| ())}>
            <table class="log-table" aria-rowcount={(count + 1).to_string()} aria-describedby="log-keys">
                <caption><span>{ shared.tell("log-caption", &[("n", number(count))]) }</span></caption>
                <thead><tr aria-rowindex="1">{ for COLUMNS.iter().map(head) }</tr></thead>
                <tbody>{ rows.into_iter().collect::<Html>() }</tbody>
            </table>
            <p id="log-keys" class="unseen">{ shared.say("log-keys") }</p>
        </div>
    }
}

/// Moves the focus into a row; the browser brings it into sight.
fn enter(id: &str) {
    let found =
        gloo::utils::document().get_element_by_id(id).and_then(|row| row.dyn_into::<HtmlElement>().ok());
    if let Some(row) = found {
        // What takes no focus is in sight all the same.
        let _ = row.focus();
    }
}

fn row_id(id: &Id) -> String {
    row_of(&id.to_string())
}

/// The id of the button of a fill's row, by its record `device/number`.
pub fn row_of(record: &str) -> String {
    format!("fill-{}", record.replace('/', "-"))
}

fn drawn(
    seen: &Seen,
    one: &Current,
    at: usize,
    is_open: bool,
    unfolded: &UseStateHandle<Option<Id>>,
    move_to: &Callback<usize>,
    count: usize,
) -> Html {
    let shared = &seen.shared;
    let id = row_id(&one.id);
    let onclick = {
        let (unfolded, id) = (unfolded.clone(), one.id.clone());
        move |_: MouseEvent| unfolded.set((!is_open).then(|| id.clone()))
    };
    let onkeydown = {
        let move_to = move_to.clone();
        move |event: KeyboardEvent| {
            let next = match event.key().as_str() {
                "ArrowDown" => at + 1,
                "ArrowUp" => at.saturating_sub(1),
                "PageDown" => at + 8,
                "PageUp" => at.saturating_sub(8),
                "Home" => 0,
                "End" => count - 1,
                _ => return,
            };
            event.prevent_default();
            move_to.emit(next.min(count - 1));
        }
    };
    let fill = &one.fill;
    let state = match () {
        () if fill.struck => Some("log-struck"),
        () if one.contested => Some("log-contested"),
        () if one.is_corrected() => Some("log-corrected"),
        () => None,
    };
    // On a phone, which has no column for it: below the plan, as in the head.
    let measured = html! {
        <span class="on-phone">
            <span class="unseen">{ shared.words.headed(&shared.say("log-column-measured")) }{ " " }</span>
            { if fill.measured.text.is_empty() { "–" } else { &*fill.measured.text } }
        </span>
    };
    html! {
        <tr key={id.clone()} class={classes!(fill.struck.then_some("struck"), is_open.then_some("chosen"))} aria-rowindex={(at + 2).to_string()} data-fill={one.id.to_string()}>
            <th scope="row">
                <button type="button" class="link" {id} aria-expanded={is_open.to_string()} {onclick} {onkeydown}>{ told::moment(shared, &one.said) }</button>
                { for state.map(|key| html! { <span class="state">{ shared.say(key) }</span> }) }
            </th>
            { cells(one, measured) }
        </tr>
    }
}
