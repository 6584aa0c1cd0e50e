//! The order in which areas are best cleaned.

use super::work;
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::trade::order::{Order, OrderMistake, Stop, order};
use crate::units::Duration;

/// The best order of the areas that are cleaned; the others keep their places behind them.
///
/// # Errors
/// As [`order`]; `None` where the shift itself does not work out yet.
///
/// ```
/// use brimline::form::{Typed, shift::best_order};
/// use brimline::number::Marks;
/// let (turns, order) = best_order(&Typed::default(), Marks::POINT).unwrap().unwrap();
/// assert_eq!((turns.len(), order.changes), (5, 0));
/// ```
pub fn best_order(typed: &Typed, marks: Marks) -> Option<Result<(Vec<usize>, Order), OrderMistake>> {
    let shift = work(typed, marks);
    let plan = shift.plan?;
    let mut out = Outcome::default();
    let mut time = |field: Field| out.may::<Duration>(typed, field, marks).flatten();
    let refill = time(Field::Refill).unwrap_or(Duration::ZERO);
    let change = time(Field::Change).unwrap_or(Duration::ZERO);
    let mut stops = Vec::new();
    for (index, row) in shift.rows.iter().enumerate() {
        // A fill at the beginning of an area may also have been the end of the one before.
        let fills = plan.fills.iter().filter(|fill| fill.task == index).count();
        stops.push(Stop {
            product: row.product,
            time: row.run + refill * fills as f64,
            place: typed.site.areas[row.area].place,
            opens: time(Field::AreaOpens(row.area)).unwrap_or(Duration::ZERO),
            closes: time(Field::AreaCloses(row.area)).unwrap_or(Duration::new(f64::INFINITY)),
        });
    }
    Some(order(&stops, change).map(|order| {
        let mut turns: Vec<usize> = order.stops.iter().map(|stop| shift.rows[*stop].area).collect();
        let rest: Vec<usize> = (0..typed.site.areas.len()).filter(|area| !turns.contains(area)).collect();
        turns.extend(rest);
        (turns, order)
    }))
}
