//! The same shift with another product, another flow setting, or both, side by side.

use super::{Shift, other_setting, work_with};
use crate::form::{Field, Outcome, Typed};
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
