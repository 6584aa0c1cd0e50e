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

/// The fills after which something was left undone, and what.
///
/// ```
/// use brimline::site::log::{Checklist, Fill, Log, Stamp, Task, Words, current};
/// use brimline::site::log::questions::{Filter, missed};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let checklist = Checklist { drain: Task::Done, squeegee: Task::NotDone, ..Checklist::default() };
/// log.fill(&stamp, Fill { checklist, ..Fill::default() }, Words::default()).unwrap();
/// assert_eq!(missed(Filter::default().of(&current(&log).fills))[0].tasks, ["squeegee"]);
/// ```
pub fn missed<'a>(fills: impl IntoIterator<Item = &'a Current>) -> Vec<Missed> {
    let undone = |list: &Checklist| -> Vec<&'static str> {
        list.tasks().into_iter().filter(|(_, task)| *task == Task::NotDone).map(|(code, _)| code).collect()
    };
    let all = fills.into_iter().map(|one| (one, undone(&one.fill.checklist)));
    all.filter(|(_, tasks)| !tasks.is_empty()).map(|(one, tasks)| Missed::of(one, tasks)).collect()
}

/// The [`shifts`] of which no fill has any tick, each by its last fill. Of a machine that is not known there are none.
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
    let is_blank = |one: &&Current| one.fill.checklist == Checklist::default();
    let all = shifts(fills).into_iter().filter(|shift| shift.iter().all(is_blank));
    all.filter_map(|shift| shift.last().map(|last| Missed::of(last, Vec::new()))).collect()
}

/// How often each task was done, in the order in which they are done.
pub fn tasks<'a>(fills: impl IntoIterator<Item = &'a Current>) -> [TaskCount; 5] {
    let mut counts = Checklist::default().tasks().map(|(task, _)| TaskCount { task, ..TaskCount::default() });
    for one in fills {
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
