//! The same shift with another product, another flow setting, or both, side by side.

use super::{Shift, other_setting, work_with};
use crate::answer::{Answer, Value};
use crate::form::{Field, Outcome, Typed, names};
use crate::number::Marks;

/// The shift with what is compared; none where nothing is chosen to compare with.
///
/// The other product takes the place of the one asked about, in every area that takes that one; areas with
/// another product of their own keep it. The other setting stands on every floor, whether it serves there or
/// not: how it does is told by the remarks.
///
/// * `plan`: [`super::work`] of `typed`.
///
/// ```
/// use brimline::form::{Action, Field, Typed, action::reduce, names, shift::{compare::compare, work}};
/// use brimline::number::Marks;
/// let typed = reduce(Typed::default(), Action::Write(Field::OtherSetting, "2".into()));
/// let plan = work(&typed, Marks::POINT);
/// let other = compare(&typed, &plan, Marks::POINT).unwrap();
/// let solution = |shift: &brimline::form::shift::Shift| shift.outcome.answer.get(names::SHIFT_SOLUTION).unwrap().si;
/// assert!(solution(&other) > solution(&plan));
/// ```
pub fn compare(typed: &Typed, plan: &Shift, marks: Marks) -> Option<Shift> {
    let asked = typed.product().map(|product| product.id.clone())?;
    let other = typed.site.products.iter().find(|product| product.id == typed.ask.other_product);
    let setting = other_setting(&mut Outcome::default(), typed, marks);
    // A setting that a machine lacks is a mistake at its field, and nothing to compare with.
    if plan.outcome.at(&Field::OtherSetting.name()).is_some() {
        return None;
    }
    if other.is_none() && setting.is_none() {
        return None;
    }
    let mut own = typed.clone();
    if let Some(other) = other {
        own.ask.product.clone_from(&other.id);
        for area in own.site.areas.iter_mut().filter(|area| area.product == asked) {
            area.product.clear();
        }
    }
    Some(work_with(&own, marks, setting.map(|number| number - 1)))
}

/// The figures that are held side by side.
const COMPARED: &[&str] = &[
    names::SHIFT_SOLUTION,
    names::SHIFT_WATER,
    names::SHIFT_CONCENTRATE,
    names::SHIFT_FILLS,
    names::SHIFT_TOTAL_TIME,
    names::SHIFT_LABOUR,
    names::COST_TOTAL,
    names::COST_EACH,
    names::YEAR_CONCENTRATE,
    names::YEAR_COST,
];

/// One figure of the plan and of the other way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difference {
    /// Its name.
    pub name: &'static str,
    /// As planned.
    pub own: Value,
    /// The other way.
    pub other: Value,
    /// How much more the other way takes; nothing where only rounding lies between.
    pub change: Value,
}

/// The figures that both ways have, side by side.
pub fn differences(own: &Answer, other: &Answer) -> Vec<Difference> {
    let one = |name: &&'static str| {
        let (own, other) = (own.get(name)?, other.get(name)?);
        let change = other.si - own.si;
        let rounding = change.abs() <= 1e-9 * own.si.abs();
        Some(Difference {
            name,
            own,
            other,
            change: Value { si: if rounding { 0.0 } else { change }, ..own },
        })
    };
    COMPARED.iter().filter_map(one).collect()
}
