//! The order in which areas are best cleaned.

use super::{Row, Shift};
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::trade::order::{Order, OrderMistake, Stop, comes_to, order};
use crate::units::Duration;

/// What is to be said of the order of the areas.
#[derive(Clone, Debug, PartialEq)]
pub struct Turns {
    /// The best order that was found, each area by its place in the site's list; those that are not cleaned
    /// stand behind.
    pub areas: Vec<usize>,
    /// What it comes to.
    pub order: Order,
    /// How it is better than the order of the list.
    pub better: Better,
}

/// How one order is better than another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Better {
    /// It is not.
    Not,
    /// It has fewer product changes.
    Fewer,
    /// It ends sooner.
    Sooner,
    /// It keeps places and times that the other does not.
    Keeps,
}

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
/// use brimline::form::{Typed, shift::{Better, best_order, work}};
/// use brimline::number::Marks;
/// let typed = Typed::default();
/// let turns = best_order(&typed, &work(&typed, Marks::POINT), Marks::POINT).unwrap().unwrap();
/// assert_eq!((turns.areas.len(), turns.order.changes, turns.better), (5, 0, Better::Not));
/// ```
pub fn best_order(typed: &Typed, shift: &Shift, marks: Marks) -> Option<Result<Turns, OrderMistake>> {
    if shift.rounds.is_empty() {
        return None;
    }
    let mut out = Outcome::default();
    let mut time =
        |field: Field| out.may::<Duration>(typed, field, marks).flatten().unwrap_or(Duration::ZERO);
    let (refill, change) = (time(Field::Refill), time(Field::Change));
    // Each machine's areas change places among themselves.
    let mut turns: Vec<usize> = shift.rows.iter().map(|row| row.area).collect();
    let mut better = Better::Not;
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
        let now: Vec<usize> = (0..stops.len()).collect();
        better = better.or(Better::than(comes_to(&stops, &now, change), &own));
        for (place, task) in round.rows.iter().zip(&own.stops) {
            turns[*place] = rows[*task].area;
        }
        whole.changes += own.changes;
        whole.least += own.least;
        whole.ends = whole.ends.max(own.ends);
        whole.exact &= own.exact;
    }
    if better == Better::Not {
        turns = shift.rows.iter().map(|row| row.area).collect();
    }
    whole.stops.clone_from(&turns);
    let mut placed = vec![false; typed.site.areas.len()];
    for area in &turns {
        placed[*area] = true;
    }
    turns.extend((0..placed.len()).filter(|area| !placed[*area]));
    Some(Ok(Turns { areas: turns, order: whole, better }))
}

impl Better {
    /// How an order is better than what another comes to.
    fn than(other: Option<(usize, Duration)>, order: &Order) -> Self {
        match other {
            None => Self::Keeps,
            Some((changes, _)) if order.changes < changes => Self::Fewer,
            // A second sooner is no reason to move anything.
            Some((changes, ends)) if order.changes == changes && order.ends + Duration::new(1.0) < ends => {
                Self::Sooner
            }
            Some(_) => Self::Not,
        }
    }

    fn or(self, other: Self) -> Self {
        if self == Self::Not { other } else { self }
    }
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
