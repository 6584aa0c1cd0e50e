//! The order in which areas are best cleaned.

use super::{Row, Shift};
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::trade::order::{Order, OrderMistake, Stop, order};
use crate::units::Duration;

/// The best order of the areas that are cleaned, machine by machine; the others keep their places behind
/// them.
///
/// * `shift`: [`super::work`] of `typed`.
///
/// The machines work side by side: the changes of all are added up, the end is the last one's.
///
/// # Errors
/// As [`order`], of the first machine that has none; `None` where the shift itself does not work out yet.
///
/// ```
/// use brimline::form::{Typed, shift::{best_order, work}};
/// use brimline::number::Marks;
/// let typed = Typed::default();
/// let (turns, order) = best_order(&typed, &work(&typed, Marks::POINT), Marks::POINT).unwrap().unwrap();
/// assert_eq!((turns.len(), order.changes), (5, 0));
/// ```
pub fn best_order(
    typed: &Typed,
    shift: &Shift,
    marks: Marks,
) -> Option<Result<(Vec<usize>, Order), OrderMistake>> {
    if shift.rounds.is_empty() {
        return None;
    }
    let mut out = Outcome::default();
    let mut time =
        |field: Field| out.may::<Duration>(typed, field, marks).flatten().unwrap_or(Duration::ZERO);
    let (refill, change) = (time(Field::Refill), time(Field::Change));
    // Each machine's areas change places among themselves.
    let mut turns: Vec<usize> = shift.rows.iter().map(|row| row.area).collect();
    let mut whole = Order { stops: Vec::new(), changes: 0, ends: Duration::ZERO, least: 0, exact: true };
    for round in &shift.rounds {
        let rows: Vec<&Row> = round.rows.iter().map(|row| &shift.rows[*row]).collect();
        // A fill at the beginning of an area may also have been the end of the one before.
        let mut fills = vec![0; rows.len()];
        for fill in &round.plan.fills {
            fills[fill.task] += 1;
        }
        let stop = |(row, fills): (&&Row, usize)| stop(typed, row, fills, refill);
        let stops: Vec<Stop> = rows.iter().zip(fills).map(stop).collect();
        let own = match order(&stops, change) {
            Ok(own) => own,
            Err(OrderMistake::Late(task)) => return Some(Err(OrderMistake::Late(round.rows[task]))),
            Err(mistake) => return Some(Err(mistake)),
        };
        for (place, task) in round.rows.iter().zip(&own.stops) {
            turns[*place] = rows[*task].area;
        }
        whole.changes += own.changes;
        whole.least += own.least;
        whole.ends = whole.ends.max(own.ends);
        whole.exact &= own.exact;
    }
    whole.stops.clone_from(&turns);
    let mut placed = vec![false; typed.site.areas.len()];
    for area in &turns {
        placed[*area] = true;
    }
    turns.extend((0..placed.len()).filter(|area| !placed[*area]));
    Some(Ok((turns, whole)))
}

/// An area, as far as its place goes: its time, with so many fills on the way and the way to them.
fn stop(typed: &Typed, row: &Row, fills: usize, refill: Duration) -> Stop {
    let trips = (refill + row.task.way * 2.0) * fills as f64;
    Stop {
        product: row.product,
        time: row.run() + row.task.mopping + trips,
        place: typed.site.areas[row.area].place,
        opens: row.task.opens,
        closes: row.closes.unwrap_or(Duration::new(f64::INFINITY)),
    }
}
