//! What the parts of a product say beyond its label: the worse of both counts.

use super::{Panel, panel_with, screening};
use crate::chemistry::ghs::mixture::{Class, Screening};
use crate::chemistry::ghs::{Hazard, codes};
use crate::form::Typed;
use crate::number::Marks;

/// The statements that the parts of the product asked about call for, by the mixture rules, and its label does not
/// bear: of the concentrate, and of the use solution at the strength of Fill. Empty where nothing is listed.
///
/// ```
/// use brimline::form::{Typed, cautions::worse::beyond_label};
/// use brimline::number::Marks;
/// assert!(beyond_label(&Typed::default(), Marks::POINT).is_empty());
/// ```
pub fn beyond_label(typed: &Typed, marks: Marks) -> Vec<&'static Hazard> {
    let Some(product) = typed.product() else { return Vec::new() };
    let label = codes::read(&product.codes).hazards;
    let mut out: Vec<&'static Hazard> = Vec::new();
    let screened = [screening::concentrate(typed, marks), screening::work(typed, marks)];
    for class in screened.iter().flatten().flat_map(known) {
        let more = Some(class) > Class::among(&label, class.endpoint);
        if let Some(hazard) = class.hazard().filter(|hazard| more && !out.contains(hazard)) {
            out.push(hazard);
        }
    }
    out
}

fn known(found: &Screening) -> impl Iterator<Item = Class> {
    found.findings.iter().filter_map(|one| one.known)
}

/// The cautions of the product asked about, by the worse of its label and its parts.
pub fn panel_by_parts(typed: &Typed, marks: Marks) -> Option<Panel> {
    Some(panel_with(typed.product()?, &beyond_label(typed, marks)))
}
