//! The end of the shift: what each machine had today, and what was left undone on its last day.

use crate::site::log::{Current, Task};
use crate::trade::calendar::Date;

/// So many days back a task that was left undone is still shown.
const BACK: i64 = 14;

/// The last fill of a machine on a day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Day {
    /// Where it stands in the view.
    pub place: usize,
    /// How many fills that day.
    pub fills: usize,
}

impl Day {
    /// Tasks that were not done, or of which nobody said that they were, by their codes.
    pub fn undone(&self, fills: &[Current]) -> Vec<&'static str> {
        let list = fills.get(self.place).map(|one| one.fill.checklist.tasks());
        list.into_iter().flatten().filter(|(_, task)| *task != Task::Done).map(|(code, _)| code).collect()
    }
}

/// The machines with a fill today, each with its last one, in the order of their first fill of the day.
///
/// * `fills`: by time.
pub fn end_of_shift(fills: &[Current], today: Date) -> Vec<Day> {
    let mut days = Vec::new();
    for (place, one) in recent(fills, today) {
        if one.when.date == today {
            count(&mut days, fills, place, one);
        }
    }
    days
}

/// The machines whose last day before today ended with something undone.
pub fn left_undone(fills: &[Current], today: Date) -> Vec<Day> {
    let mut days: Vec<Day> = Vec::new();
    for (place, one) in recent(fills, today) {
        if one.when.date < today {
            let earlier = |day: &Day| {
                let there = &fills[day.place];
                there.fill.machine.id == one.fill.machine.id && there.when.date < one.when.date
            };
            days.retain(|day| !earlier(day));
            count(&mut days, fills, place, one);
        }
    }
    days.retain(|day| !day.undone(fills).is_empty());
    days
}

/// Fills of the last days that count, of a machine that is known.
fn recent(fills: &[Current], today: Date) -> impl Iterator<Item = (usize, &Current)> {
    let from = today.days() - BACK;
    // They are sorted by the instant, which the local day is off from by one at most.
    let begin = fills.partition_point(|one| one.when.instant() < (from - 1) * 86_400);
    let counts = move |one: &Current| {
        !one.fill.struck && !one.fill.machine.id.is_empty() && one.when.date.days() >= from
    };
    fills.iter().enumerate().skip(begin).filter(move |(_, one)| counts(one))
}

fn count(days: &mut Vec<Day>, fills: &[Current], place: usize, one: &Current) {
    match days.iter_mut().find(|day| fills[day.place].fill.machine.id == one.fill.machine.id) {
        Some(day) => {
            day.place = place;
            day.fills += 1;
        }
        None => days.push(Day { place, fills: 1 }),
    }
}
