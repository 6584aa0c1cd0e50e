//! What the use solution holds of the active substance, and how long it must stay wet.

use crate::answer::{Remark, Value, Weight};
use crate::chemistry::family::Family;
use crate::form::rules::active;
use crate::form::{Field, Outcome, Typed, names};
use crate::number::Marks;
use crate::site::Product;
use crate::trade::actives::{Chlorine, available_chlorine, in_solution};
use crate::trade::formula;
use crate::units::{Duration, Kind, VolumeFraction};

/// Notes the ppm, where the concentrate's active substance is known, and a disinfectant's contact time.
pub(super) fn note(out: &mut Outcome, typed: &Typed, strength: VolumeFraction, marks: Marks) {
    let Some(product) = typed.product() else { return };
    if !product.active.text.trim().is_empty()
        && let Some(concentrate) = active(out, typed, marks)
    {
        let ppm = in_solution(strength, concentrate);
        let given =
            [("r", Value::new(strength, Kind::Percent)), ("C", Value::new(concentrate, Kind::Active))];
        out.answer.step(&formula::PPM, &given, Value::new(ppm, Kind::Active));
        out.answer.figure(names::FILL_ACTIVE, Value::new(ppm, Kind::Active));
        if product.kinds().contains(&Family::HypochloriteBleach) {
            let chlorine = available_chlorine(ppm, Chlorine::AsChlorine);
            out.answer.figure(names::FILL_CHLORINE, Value::new(chlorine, Kind::Active));
            out.answer.remark(Remark::new("remark-chlorine", Weight::Assumed));
        }
    }
    contact(out, typed, marks);
}

/// Notes how long the floor must stay wet, where the label says so or the product disinfects.
pub(super) fn contact(out: &mut Outcome, typed: &Typed, marks: Marks) {
    match out.may::<Duration>(typed, Field::Contact, marks) {
        Some(Some(contact)) => {
            let contact = Value::new(contact, Kind::Time);
            out.answer.figure(names::FILL_CONTACT, contact);
            out.answer.remark(Remark::new("remark-contact", Weight::Warn).value("time", contact));
        }
        Some(None) if typed.product().is_some_and(Product::disinfects) => {
            out.answer.remark(Remark::new("remark-contact-unknown", Weight::Warn));
        }
        _ => {}
    }
}
