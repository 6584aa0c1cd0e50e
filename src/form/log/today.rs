//! The end of the shift: the machines to tick off now, those to tick off late, and what the last shift left undone.

use crate::site::log::questions::{REST, shifts};
use crate::site::log::{Checklist, Current, Task, When};

/// A machine is ticked off for so long after a fill, seconds: 24 hours.
const OFFERED: i64 = 86_400;
/// For so long, seconds, what was left undone is shown and can be ticked off late: 7 days.
const BACK: i64 = 7 * 86_400;

/// A machine's shift, by its last fill: the one that is ticked off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shift<'a> {
    /// The last fill.
    pub last: &'a Current,
    /// How many fills.
    pub fills: usize,
}

impl<'a> Shift<'a> {
    fn of(fills: &[&'a Current]) -> Option<Self> {
        fills.last().map(|last| Self { last, fills: fills.len() })
    }

    /// Tasks that were not done, or of which nobody said that they were, by their codes.
    pub fn undone(&self) -> Vec<&'static str> {
        let tasks = self.last.fill.checklist.tasks().into_iter();
        tasks.filter(|(_, task)| *task != Task::Done).map(|(code, _)| code).collect()
    }

    /// Whether nobody ticked anything off.
    pub fn is_unticked(&self) -> bool {
        self.last.fill.checklist == Checklist::default()
    }

    /// Seconds since its last fill; below 0 where a clock was ahead.
    fn age(&self, now: When) -> i64 {
        now.instant() - self.last.when.instant()
    }
}

/// The machines with a fill in the last 24 hours, each with its last shift, in the order of those.
///
/// * `fills`: by time.
pub fn end_of_shift(fills: &[Current], now: When) -> Vec<Shift<'_>> {
    let mut machines = Vec::new();
    for shift in recent(fills, now).into_iter().filter(|shift| shift.age(now) <= OFFERED) {
        put(&mut machines, shift);
    }
    machines
}

/// The machines whose last shift that is over was left with something undone, or nobody ticked it off.
///
/// * `fills`: by time.
pub fn left_undone(fills: &[Current], now: When) -> Vec<Shift<'_>> {
    let mut machines = Vec::new();
    let is_over = |shift: &Shift| shift.age(now) >= REST;
    for shift in recent(fills, now).into_iter().filter(is_over) {
        put(&mut machines, shift);
    }
    machines.retain(|shift| !shift.undone().is_empty());
    machines
}

/// Those of [`left_undone`] that [`end_of_shift`] does not offer any more: to be ticked off late.
///
/// * `fills`: by time.
pub fn late(fills: &[Current], now: When) -> Vec<Shift<'_>> {
    let offered = end_of_shift(fills, now);
    let mut late = left_undone(fills, now);
    late.retain(|shift| !offered.contains(shift));
    late
}

/// The shifts that count. A clock that was ahead by more than a day makes none.
fn recent(fills: &[Current], now: When) -> Vec<Shift<'_>> {
    let (from, to) = (now.instant() - BACK, now.instant() + OFFERED);
    let begin = fills.partition_point(|one| one.when.instant() < from);
    let end = fills.partition_point(|one| one.when.instant() <= to).max(begin);
    let counted = fills[begin..end].iter().filter(|one| !one.fill.struck);
    shifts(counted).iter().filter_map(|fills| Shift::of(fills)).collect()
}

/// Puts the later shift of a machine in the place of the earlier one.
fn put<'a>(machines: &mut Vec<Shift<'a>>, shift: Shift<'a>) {
    match machines.iter_mut().find(|one| one.last.fill.machine.id == shift.last.fill.machine.id) {
        Some(one) => *one = shift,
        None => machines.push(shift),
    }
}
