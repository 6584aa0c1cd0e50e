//! What was left undone at the end of a shift.

use super::{Told, count};
use crate::answer::{Fact, Remark, Weight};
use crate::site::log::Current;
use crate::site::log::questions::{Missed, TaskCount, missed, tasks, unticked};

/// So many shifts are listed one by one.
const LISTED: usize = 100;

/// What was left undone.
#[derive(Clone, Debug, Default)]
pub struct Undone {
    /// The answer.
    pub told: Told,
    /// How often each task was done.
    pub tasks: Vec<TaskCount>,
    /// The latest shifts with something undone, the newest first.
    pub shifts: Vec<Missed>,
    /// How many shifts there are.
    pub all: usize,
    /// The latest shifts that nobody ticked off, the newest first.
    pub unticked: Vec<Missed>,
    /// How many of those there are.
    pub all_unticked: usize,
}

/// What was left undone at the ends of shifts. Of a shift that nobody ticked off nobody knows what was done: it is
/// counted and listed as such, and none of its tasks counts as done.
pub fn undone<'a>(fills: impl IntoIterator<Item = &'a Current> + Clone) -> Undone {
    let tasks = tasks(fills.clone()).to_vec();
    let all = tasks.first().map_or(0, |task| task.done + task.not_done + task.not_asked);
    let mut shifts = missed(fills.clone());
    shifts.reverse();
    let mut unticked = unticked(fills.clone());
    unticked.reverse();
    let asked = all - unticked.len();
    let most = tasks.iter().max_by_key(|task| task.not_done).filter(|task| task.not_done > 0);
    let mut told = Told { fills: fills.into_iter().count(), ..Told::default() };
    let said = match most {
        _ if asked == 0 => Remark::new("remark-log-undone-unasked", Weight::Assumed),
        None if shifts.is_empty() => {
            Remark::new("remark-log-undone-none", Weight::Assumed).value("n", count(asked))
        }
        None => Remark::new("remark-log-undone-part", Weight::Assumed)
            .value("n", count(asked))
            .value("missed", count(shifts.len())),
        Some(most) => Remark::new("remark-log-undone", Weight::Assumed)
            .value("n", count(asked))
            .value("missed", count(shifts.len()))
            .with("task", Fact::Key(format!("log-task-{}", most.task)))
            .value("times", count(most.not_done)),
    };
    told.answer.remark(said.value("unticked", count(unticked.len())));
    let all_unticked = unticked.len();
    unticked.truncate(LISTED);
    let listed = shifts.len();
    shifts.truncate(LISTED);
    Undone { told, tasks, shifts, all: listed, unticked, all_unticked }
}
