//! Leads to a view, and to the control that a step speaks of.

use crate::form::Action;
use crate::form::log::Part;
use crate::form::station::Job;
use crate::page::keep::log_draft;
use crate::page::place::Place;
use crate::page::shared::Shared;
use crate::practice::first_fill::Step;
use gloo::timers::callback::Timeout;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

/// Milliseconds between two looks whether a view stands, and how often it is looked for.
const WAIT: u32 = 50;
const LOOKS: u32 = 60;

/// What takes the focus without further ado.
const CONTROLS: &str = "button, input, select, textarea, summary, a, [tabindex]";

/// A control that a step speaks of: the key of its words, and how it is found on its view.
pub type Control = (&'static str, &'static str);

/// The controls of a step, in the order in which it speaks of them.
///
/// * `locked`: whether the device is set to its standards, where nobody chooses a product.
pub fn controls(step: Step, locked: bool) -> &'static [Control] {
    match step {
        Step::Wear => &[("caution-wear", ".answer .caution")],
        Step::Machine => &[("machine", "#machine"), ("machine-tank", "#machine-tank")],
        Step::Product if locked => &[("product-label", "#product-label")],
        Step::Product => &[("product", "#product"), ("product-label", "#product-label")],
        Step::Floor => &[("floor", "#floor")],
        Step::Level => &[("fill-level", "#fill-level"), ("measure", "#measure")],
        Step::Amount => &[("answer", ".answer .amount, .answer .stop, .answer .troubles")],
        Step::Record => &[("record-fill", r#"[name="record-fill"]"#)],
        Step::Shift => &[("log-shift", r#"[name="log-shift"]"#)],
    }
}

/// The view that a step is about.
pub fn place(step: Step) -> Place {
    if step == Step::Shift { Place::Log } else { Place::Fill }
}

/// Shows what a step is about. What is typed and chosen stays as it is.
pub fn show(shared: &Shared, step: Step) {
    if step == Step::Shift {
        log_draft::change(|draft| draft.part = Part::Shift);
    } else if shared.typed.ask.station.job != Job::Fill {
        shared.act.emit(Action::Job(Job::Fill));
    }
    // Where the address cannot be set the step still says which view it means.
    let _ = gloo::utils::window().location().set_hash(place(step).code());
}

/// Moves the focus to what is found, as soon as it stands.
pub fn focus_on(selector: &'static str) {
    look(selector, LOOKS);
}

fn look(selector: &'static str, left: u32) {
    match gloo::utils::document().query_selector(selector) {
        Ok(Some(found)) => focus(&found),
        _ if left > 0 => drop(Timeout::new(WAIT, move || look(selector, left - 1)).forget()),
        _ => {}
    }
}

fn focus(element: &Element) {
    if let Ok(Some(details)) = element.closest("details") {
        // Setting an attribute of that name cannot fail.
        let _ = details.set_attribute("open", "");
    }
    if !element.matches(CONTROLS).unwrap_or(true) {
        let _ = element.set_attribute("tabindex", "-1");
    }
    // A field comes into sight with its label.
    element.closest(".field").ok().flatten().as_ref().unwrap_or(element).scroll_into_view();
    if let Some(element) = element.dyn_ref::<HtmlElement>() {
        let _ = element.focus();
    }
}
