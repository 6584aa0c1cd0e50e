//! The forms on Log: a fill by hand, and the correction of one.

use super::super::fields::{press, steady};
use super::super::initials::still;
use super::super::list::row_of;
use super::super::shift::who;
use super::super::{Seen, now, told};
use super::Form;
use crate::form::log::{Base, Entered, Lack, Reader, filled, words};
use crate::page::focus;
use crate::page::keep::log_draft::change;
use crate::page::log;
use crate::page::shared::Shared;
use crate::site::Entry;
use crate::site::log::{Current, Fill, Id, Part, Words, changed};
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// The way to a record by hand, or the form that is open.
pub fn forms(seen: &Seen) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    if let Some(one) = found(seen, &draft.of) {
        return correction(seen, one);
    }
    if draft.by_hand {
        return by_hand(seen);
    }
    let own = shared.clone();
    let open = move || {
        let ask = own.typed.ask.clone();
        change(|draft| {
            draft.by_hand = true;
            if draft.hand == Entered::default() {
                draft.hand.machine = ask.machine;
                draft.hand.product = ask.product;
                draft.hand.floor = ask.floor;
                draft.hand.who.clone_from(&draft.by);
            }
        });
        focus::soon("log-form".to_owned());
    };
    html! { <div class="buttons">{ press(shared, "log-by-hand", open) }</div> }
}

/// The fill that a text names.
pub fn found<'a>(seen: &'a Seen, id: &str) -> Option<&'a Current> {
    let id = Id::read(id)?;
    seen.held.view.fills.iter().rev().find(|one| one.id == id)
}

/// The record that the fields say, read as this device's people write, by its clock.
///
/// # Errors
/// What is in the way.
pub fn read(shared: &Shared, base: &Base, entered: &Entered) -> Result<Fill, Vec<Lack>> {
    let write = |entry: &Entry| shared.words.entry(entry);
    let reader = Reader { marks: shared.marks(), write: &write, now: now(), offset: &log::offset };
    filled(base, entered, &shared.typed.site, &reader)
}

fn by_hand(seen: &Seen) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    let base = Base::default();
    let result = read(shared, &base, &draft.hand);
    let lacks = result.as_ref().err().cloned().unwrap_or_default();
    let form = Form { shared, entered: &draft.hand, lacks: &lacks, of: |draft| &mut draft.hand };
    let doubt = form.doubts(&result);
    let offered = draft.offered().filter(|_| draft.hand.who.trim().is_empty());
    let offered = offered.map(|who| still(shared, who)).unwrap_or_default();
    let record = {
        let words = words(&base.entered, &draft.hand, &draft.by);
        move || match &result {
            Ok(fill) => {
                log::record(fill.clone(), words.clone());
                change(|draft| {
                    draft.hand = Entered::default();
                    draft.by_hand = false;
                });
                focus::soon("log-said".to_owned());
            }
            Err(lacks) => lead_to(lacks),
        }
    };
    let leave = move || change(|draft| draft.by_hand = false);
    shell(
        shared,
        "log-hand-heading",
        html! {
            <>
                <p class="hint">{ shared.say("log-hand-hint") }</p>
                { form.whole(&base, offered) }
                { doubt }
                { steady(html! {
                    <>
                        { press(shared, "log-hand-record", record) }
                        { press(shared, "log-leave-form", leave) }
                    </>
                }) }
            </>
        },
    )
}

fn correction(seen: &Seen, one: &Current) -> Html {
    let (shared, draft) = (&seen.shared, &seen.draft);
    let base = Base::of(one, shared.system(), shared.marks());
    let result = read(shared, &base, &draft.correction);
    let mut lacks = result.as_ref().err().cloned().unwrap_or_default();
    let no_why = draft.correction.why.trim().is_empty();
    if no_why {
        lacks.push(Lack::Why);
    }
    let form = Form { shared, entered: &draft.correction, lacks: &lacks, of: |draft| &mut draft.correction };
    let doubt = form.doubts(&result);
    let said = words(&base.entered, &draft.correction, &draft.by);
    let unchanged = result.as_ref().is_ok_and(|fill| {
        changed(&base.fill, fill).is_empty()
            && said.clone().with(Part::Why, "").with(Part::By, "") == Words::default()
    });
    let save = {
        let (lacks, id, was, result, said) =
            (lacks.clone(), one.id.clone(), base.fill.clone(), result.clone(), said.clone());
        move || match &result {
            Ok(fill) if lacks.is_empty() => {
                if !unchanged {
                    log::correct(id.clone(), changed(&was, fill), said.clone());
                    close();
                }
            }
            _ => lead_to(&lacks),
        }
    };
    let strike = {
        let (id, was) = (one.id.clone(), base.fill.clone());
        let struck = crate::site::log::Fill { struck: !was.struck, ..was.clone() };
        let said =
            Words::default().with(Part::Why, draft.correction.why.trim()).with(Part::By, draft.by.trim());
        move || {
            if no_why {
                return lead_to(&[Lack::Why]);
            }
            log::correct(id.clone(), changed(&was, &struck), said.clone());
            close();
        }
    };
    shell(
        shared,
        "log-correct-heading",
        html! {
            <>
                <p>{ told::title(shared, one) }</p>
                <p class="hint">{ shared.say("log-correct-hint") }</p>
                { form.whole(&base, Html::default()) }
                { doubt }
                { who(seen) }
                { form.line("log-why", &draft.correction.why, false, |entered| &mut entered.why) }
                if unchanged { <p class="hint">{ shared.say("log-nothing-new") }</p> }
                { steady(html! {
                    <>
                        { press(shared, "log-correct-save", save) }
                        { press(shared, if base.fill.struck { "log-unstrike" } else { "log-strike" }, strike) }
                        { press(shared, "log-leave-form", close) }
                    </>
                }) }
                <p class="hint">{ shared.say("log-strike-hint") }</p>
            </>
        },
    )
}

/// Closes the form and goes back to the row that it was about.
fn close() {
    change(|draft| {
        focus::soon(row_of(&draft.of));
        draft.of.clear();
        draft.correction = Entered::default();
    });
}

/// Opens the form that corrects a fill.
pub fn open(shared: &Shared, one: &Current) {
    let base = Base::of(one, shared.system(), shared.marks());
    let id = one.id.to_string();
    change(|draft| {
        // What was typed to correct the same fill goes on.
        if draft.of != id {
            draft.of = id;
            draft.correction = base.entered;
        }
        draft.part = crate::form::log::Part::Fills;
    });
    focus::soon("log-form".to_owned());
}

/// Leads to the first thing that is in the way. A field that has the focus is left first, so that it tells what is wrong
/// with it.
fn lead_to(lacks: &[Lack]) {
    let Some(first) = lacks.first() else { return };
    let typed_in =
        gloo::utils::document().active_element().and_then(|one| one.dyn_into::<HtmlElement>().ok());
    if let Some(field) = typed_in {
        // What takes no focus has none to lose.
        let _ = field.blur();
    }
    focus::on(first.at());
}

fn shell(shared: &Shared, heading: &'static str, content: Html) -> Html {
    html! {
        <section class="remark news" id="log-form" tabindex="-1" aria-labelledby={heading}>
            <h2 id={heading}>{ shared.say(heading) }</h2>
            { content }
        </section>
    }
}
