//! A shift as a list of whole events: fill, clean, refill.

use crate::units::{ApplicationRate, Area, Duration, Productivity, Volume, VolumeFraction};

/// One area to clean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Task {
    /// Its size, m².
    pub size: Area,
    /// Solution that leaves the tank for good on each area of floor, m³/m², above 0.
    pub spent: ApplicationRate,
    /// Floor area cleaned a time, m²/s, above 0.
    pub productivity: Productivity,
}

/// What all tasks share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Means {
    /// The solution tank, m³, above 0.
    pub tank: Volume,
    /// Concentrate in the use solution.
    pub strength: VolumeFraction,
    /// One drain, rinse and refill, s.
    pub refill: Duration,
}

/// One fill of the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fill {
    /// Index of the task at which it is done.
    pub task: usize,
    /// Area of that task cleaned before it, m².
    pub after: Area,
    /// Time since the start, s, the earlier refills included.
    pub at: Duration,
    /// Use solution, m³.
    pub solution: Volume,
    /// Concentrate in it, m³.
    pub concentrate: Volume,
}

/// A shift worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The fills, in order; the last one only as large as needed.
    pub fills: Vec<Fill>,
    /// Run time of each task, s.
    pub run: Vec<Duration>,
    /// Solution spent on each task, m³.
    pub spent: Vec<Volume>,
    /// Time with the refills after the first, s.
    pub total: Duration,
}

impl Plan {
    /// Run time of all tasks, s.
    pub fn run_time(&self) -> Duration {
        self.run.iter().copied().sum()
    }

    /// Use solution of all fills, m³.
    pub fn solution(&self) -> Volume {
        self.fills.iter().map(|fill| fill.solution).sum()
    }

    /// Concentrate of all fills, m³.
    pub fn concentrate(&self) -> Volume {
        self.fills.iter().map(|fill| fill.concentrate).sum()
    }

    /// Water of all fills, m³.
    pub fn water(&self) -> Volume {
        self.solution() - self.concentrate()
    }
}

/// How much solution is in the tank at one time of the shift.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Level {
    /// Time since the start, s.
    pub at: Duration,
    /// Use solution in the tank, m³.
    pub solution: Volume,
}

/// The tank over the shift: between two of these it falls evenly, and it rises where it is filled.
///
/// * `plan`, `tasks`: as [`plan`] or [`plan_parts`] made the one of the other.
///
/// Returns a level at each fill, at each end of a task on the way, and where the tank runs empty. Source:
/// definition.
///
/// ```
/// use brimline::trade::shift::{Means, Task, levels, plan};
/// use brimline::units::{ApplicationRate, Area, Duration, Productivity, Volume, VolumeFraction};
/// let task = Task { size: Area::new(30.0), spent: ApplicationRate::new(0.5), productivity: Productivity::new(1.0) };
/// let means = Means { tank: Volume::new(10.0), strength: VolumeFraction::new(0.1), refill: Duration::new(5.0) };
/// let levels = levels(&plan(&[task], means).unwrap(), &[task]);
/// let told: Vec<(f64, f64)> = levels.iter().map(|one| (one.at / Duration::new(1.0), one.solution / Volume::new(1.0))).collect();
/// assert_eq!(told, [(0.0, 10.0), (20.0, 0.0), (25.0, 5.0), (35.0, 0.0)]);
/// ```
pub fn levels(plan: &Plan, tasks: &[Task]) -> Vec<Level> {
    let mut out = Vec::new();
    // A small last fill carries the rounding of all that went before.
    let crumb = plan.solution() * 1e-9;
    for fill in &plan.fills {
        let (mut at, mut left, mut done) = (fill.at, fill.solution, fill.after);
        out.push(Level { at, solution: left });
        for task in &tasks[fill.task..] {
            let wanted = task.spent * (task.size - done).max(Area::ZERO);
            let used = wanted.min(left);
            at += used / task.spent / task.productivity;
            left = left - used;
            done = Area::ZERO;
            let empty = left <= crumb;
            if used > crumb {
                out.push(Level { at, solution: if empty { Volume::ZERO } else { left } });
            }
            if empty {
                break;
            }
        }
    }
    out
}

/// Tasks in a row that take one product.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part<'a> {
    /// In the order of work.
    pub tasks: &'a [Task],
    /// Concentrate in the use solution.
    pub strength: VolumeFraction,
}

/// Works out a shift with several products: [`plan`] for each part, and between two parts a change.
///
/// * `parts`: in the order of work; neighbours take different products.
/// * `tank`, `refill`: as in [`Means`].
/// * `change`: one dump, rinse and fill for another product, s.
///
/// Each part's last fill is only as large as needed, so that nothing is dumped but the rinse. A fill's
/// `task` counts through all parts. Source: definition.
///
/// ```
/// use brimline::trade::shift::{Part, Task, plan_parts};
/// use brimline::units::{ApplicationRate, Area, Duration, Productivity, Volume, VolumeFraction};
/// let task = Task { size: Area::new(10.0), spent: ApplicationRate::new(0.5), productivity: Productivity::new(1.0) };
/// let part = Part { tasks: &[task], strength: VolumeFraction::new(0.1) };
/// let plan = plan_parts(&[part, part], Volume::new(10.0), Duration::new(5.0), Duration::new(20.0)).unwrap();
/// assert_eq!(plan.total, Duration::new(10.0 + 20.0 + 10.0));
/// assert_eq!((plan.fills[1].task, plan.fills[1].at), (1, Duration::new(30.0)));
/// ```
pub fn plan_parts(parts: &[Part], tank: Volume, refill: Duration, change: Duration) -> Option<Plan> {
    let mut whole = Plan { fills: Vec::new(), run: Vec::new(), spent: Vec::new(), total: Duration::ZERO };
    for (index, part) in parts.iter().enumerate() {
        let begins = if index > 0 { whole.total + change } else { whole.total };
        let own = plan(part.tasks, Means { tank, strength: part.strength, refill })?;
        let before = whole.run.len();
        let later = |fill: Fill| Fill { task: fill.task + before, at: fill.at + begins, ..fill };
        whole.fills.extend(own.fills.into_iter().map(later));
        whole.run.extend(own.run);
        whole.spent.extend(own.spent);
        whole.total = begins + own.total;
    }
    Some(whole)
}

/// The most fills that one plan lists: more means a tank far too small for the floor.
pub const MOST_FILLS: usize = 10_000;

/// Works out a shift.
///
/// For each task `spent = a × A` and `run = A / P`; the tank is filled when it is empty and work is
/// left, to `min(T, what is still needed)`; each fill takes `c = r × V` of concentrate.
///
/// * `tasks`: in the order of work.
/// * `means`: tank, strength and the time of a refill.
///
/// Returns the plan, or `None` when it would need more than [`MOST_FILLS`]. A tank is taken to give
/// all that it holds; what a pump leaves behind is not modelled. Source: definition.
///
/// ```
/// use brimline::trade::shift::{Means, Task, plan};
/// use brimline::units::{ApplicationRate, Area, Duration, Productivity, Volume, VolumeFraction};
/// let task = Task { size: Area::new(50.0), spent: ApplicationRate::new(0.5), productivity: Productivity::new(1.0) };
/// let means = Means { tank: Volume::new(10.0), strength: VolumeFraction::new(0.1), refill: Duration::new(5.0) };
/// let plan = plan(&[task], means).unwrap();
/// let sizes: Vec<Volume> = plan.fills.iter().map(|fill| fill.solution).collect();
/// assert_eq!(sizes, [Volume::new(10.0), Volume::new(10.0), Volume::new(5.0)]);
/// assert_eq!(plan.total, Duration::new(60.0));
/// ```
pub fn plan(tasks: &[Task], means: Means) -> Option<Plan> {
    let spent: Vec<Volume> = tasks.iter().map(|task| task.spent * task.size).collect();
    let run: Vec<Duration> = tasks.iter().map(|task| task.size / task.productivity).collect();
    let mut later: Volume = spent.iter().copied().sum();
    // A rest of a billionth of the tank is rounding, not a fill.
    let crumb = means.tank * 1e-9;
    let mut fills: Vec<Fill> = Vec::new();
    let (mut left, mut clock) = (Volume::ZERO, Duration::ZERO);
    for (index, task) in tasks.iter().enumerate() {
        let mut done = Area::ZERO;
        let mut wanted = spent[index];
        later = later - wanted;
        while wanted > crumb {
            if left <= crumb {
                if fills.len() == MOST_FILLS {
                    return None;
                }
                if !fills.is_empty() {
                    clock += means.refill;
                }
                let solution = means.tank.min(wanted + later.max(Volume::ZERO));
                let concentrate = means.strength * solution;
                fills.push(Fill { task: index, after: done, at: clock, solution, concentrate });
                left = solution;
            }
            let used = left.min(wanted);
            let cleaned = used / task.spent;
            clock += cleaned / task.productivity;
            done += cleaned;
            left = left - used;
            wanted = wanted - used;
        }
    }
    Some(Plan { fills, run, spent, total: clock })
}
