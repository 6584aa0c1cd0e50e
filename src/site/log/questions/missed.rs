//! What was left undone at the end of a shift.

use super::shifts;
use crate::site::log::{Checklist, Current, Id, Task};
use std::sync::Arc;

/// A shift whose machine was left with something undone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Missed {
    /// The fill.
    pub id: Id,
    /// When, as it was given.
    pub when: Arc<str>,
    /// The machine's name.
    pub machine: Arc<str>,
    /// Who, where it is known.
    pub who: Arc<str>,
    /// The codes of the tasks; none where nobody ticked off any.
    pub tasks: Vec<&'static str>,
}

impl Missed {
    fn of(one: &Current, tasks: Vec<&'static str>) -> Self {
        Self {
            id: one.id.clone(),
            when: one.said.clone(),
            machine: one.fill.machine.name.clone(),
            who: one.who.clone(),
            tasks,
        }
    }
}

/// How often one task was done.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct TaskCount {
    /// Its code.
    pub task: &'static str,
    /// It was.
    pub done: usize,
    /// It was not.
    pub not_done: usize,
    /// Nobody asked: it may have been or not.
    pub not_asked: usize,
}

/// The [`shifts`] that were ticked off, each by its last fill, and of which a task was not done, or not ticked off
/// with the others. By the last fill alone: what was done before the tank was filled again does not count.
///
/// * `fills`: by time.
///
/// ```
/// use brimline::site::log::{Checklist, Fill, Log, Named, Stamp, Task, Words, current};
/// use brimline::site::log::questions::missed;
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let done = Task::Done;
/// let checklist = Checklist { drain: done, rinse: done, filters: done, brush: done, squeegee: Task::NotDone };
/// let machine = Named::new("m1", "Scrubber");
/// log.fill(&stamp, Fill { machine, checklist, ..Fill::default() }, Words::default()).unwrap();
/// assert_eq!(missed(&current(&log).fills)[0].tasks, ["squeegee"]);
/// ```
pub fn missed<'a>(fills: impl IntoIterator<Item = &'a Current>) -> Vec<Missed> {
    let undone = |one: &Current| -> Vec<&'static str> {
        let tasks = one.fill.checklist.tasks().into_iter();
        tasks.filter(|(_, task)| *task != Task::Done).map(|(code, _)| code).collect()
    };
    let ticked = ends(fills).into_iter().filter(|one| one.fill.checklist != Checklist::default());
    let all = ticked.map(|one| Missed::of(one, undone(one)));
    all.filter(|one| !one.tasks.is_empty()).collect()
}

/// The [`shifts`] after whose last fill nobody ticked anything off. Of a machine that is not known there are none.
///
/// * `fills`: by time.
///
/// ```
/// use brimline::site::log::{Fill, Log, Named, Stamp, Words, current};
/// use brimline::site::log::questions::unticked;
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let fill = Fill { machine: Named::new("m1", "Scrubber"), ..Fill::default() };
/// log.fill(&stamp, fill, Words::default()).unwrap();
/// assert_eq!(&*unticked(&current(&log).fills)[0].machine, "Scrubber");
/// ```
pub fn unticked<'a>(fills: impl IntoIterator<Item = &'a Current>) -> Vec<Missed> {
    let blank = ends(fills).into_iter().filter(|one| one.fill.checklist == Checklist::default());
    blank.map(|one| Missed::of(one, Vec::new())).collect()
}

/// The last fill of each shift, by time.
fn ends<'a>(fills: impl IntoIterator<Item = &'a Current>) -> Vec<&'a Current> {
    let mut ends: Vec<&Current> = shifts(fills).iter().filter_map(|shift| shift.last().copied()).collect();
    ends.sort_by(|one, other| one.by_time(other));
    ends
}

/// After how many shifts each task was done, in the order in which they are done.
pub fn tasks<'a>(fills: impl IntoIterator<Item = &'a Current>) -> [TaskCount; 5] {
    let mut counts = Checklist::default().tasks().map(|(task, _)| TaskCount { task, ..TaskCount::default() });
    for one in ends(fills) {
        for (count, (_, task)) in counts.iter_mut().zip(one.fill.checklist.tasks()) {
            match task {
                Task::Done => count.done += 1,
                Task::NotDone => count.not_done += 1,
                Task::NotAsked => count.not_asked += 1,
            }
        }
    }
    counts
}
