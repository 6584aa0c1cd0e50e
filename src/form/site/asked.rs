//! The question that a standard answers: its product on its floor, as if it were in force.

use super::super::{Filling, Typed};
use crate::site::{Entry, Record, Standard, Standing};
use crate::trade::label;
use crate::units::System;

/// What was typed, asked about this standard's product and floor in one machine with one measure, the tank filled
/// to `percent` of it. The standard counts as in force, draft or not, and no area comes along.
///
/// ```
/// use brimline::form::{Typed, fill, names, site::asked::asked};
/// use brimline::number::Marks;
/// use brimline::site::Standard;
/// let typed = Typed::default();
/// let standard = Standard { floor: "vinyl".into(), product: "neutral".into(), dilution: "1:100".into(), ..Standard::default() };
/// let half = asked(&typed, &standard, "walk-behind", "cup", 50);
/// let total = fill::work(&half, Marks::POINT).outcome.answer.get(names::FILL_TOTAL).unwrap();
/// assert!((total.si - 0.018_927_058_92).abs() < 1e-12); // 5 of 10 gal
/// ```
pub fn asked(typed: &Typed, standard: &Standard, machine: &str, measure: &str, percent: u32) -> Typed {
    let mut out = typed.without_areas();
    out.site.standards.retain(|one| one.floor != standard.floor);
    out.site.standards.push(Standard { standing: Standing::InForce, ..standard.clone() });
    // A draft means what it means to whoever writes it now.
    if standard.standing != Standing::Draft {
        out.system = read_in(&out, standard);
    }
    out.ask.floor.clone_from(&standard.floor);
    out.ask.product.clone_from(&standard.product);
    machine.clone_into(&mut out.ask.machine);
    measure.clone_into(&mut out.ask.measure);
    out.ask.level = Entry::new(percent.to_string(), "percent");
    out.ask.filling = Filling::MadeUp;
    out.ask.before.clear();
    out.ask.stop_read = false;
    // Its first day may be still to come.
    out.ask.today.clear();
    out.ask.held = false;
    out
}

/// The units to read a published standard's product in: those shown, unless its label means something else in them
/// than where the standard was checked.
pub(super) fn read_in(typed: &Typed, standard: &Standard) -> System {
    let product = typed.site.products.iter().find(|one| one.id == standard.product);
    let means = |system: System| {
        product.and_then(|product| label::read(&product.label, system).ok()).map(|label| label.rule)
    };
    if means(typed.system) == means(standard.system) { typed.system } else { standard.system }
}

/// The records that are in use.
pub fn in_use<T: Record>(all: &[T]) -> impl Iterator<Item = &T> {
    all.iter().filter(|one| !one.retired())
}
