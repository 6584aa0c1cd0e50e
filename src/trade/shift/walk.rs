//! Walks through a shift, event by event.

use super::{Act, Event, Fill, Level, MOST_FILLS, Means, Plan, Task};
use crate::units::{Area, Duration, Volume};

pub(super) fn walk(tasks: &[Task], means: Means) -> Option<Plan> {
    let mut walk = Walk::new(tasks, means);
    for task in 0..tasks.len() {
        walk.task(task)?;
    }
    Some(walk.end())
}

/// What the tasks after each one still need of its product, added up from the end: thousands of
/// subtractions would leave a rest that no fill can serve.
fn later(tasks: &[Task], spent: &[Volume]) -> Vec<Volume> {
    let mut later = vec![Volume::ZERO; tasks.len()];
    for index in (1..tasks.len()).rev() {
        if tasks[index].product == tasks[index - 1].product {
            later[index - 1] = later[index] + spent[index];
        }
    }
    later
}

struct Walk<'a> {
    tasks: &'a [Task],
    means: Means,
    plan: Plan,
    clock: Duration,
    /// In the tank.
    left: Volume,
    later: Vec<Volume>,
    /// Cleaning time that the battery still gives.
    charge: Duration,
    /// A rest of a billionth of the tank is rounding, not a fill.
    crumb: Volume,
}

impl<'a> Walk<'a> {
    fn new(tasks: &'a [Task], means: Means) -> Self {
        let plan = Plan {
            fills: Vec::new(),
            events: Vec::with_capacity(tasks.len() * 2),
            levels: Vec::with_capacity(tasks.len() * 2),
            run: tasks.iter().map(|task| task.size / task.productivity).collect(),
            done: Vec::with_capacity(tasks.len()),
            spent: tasks.iter().map(|task| task.spent * task.size).collect(),
            total: Duration::ZERO,
        };
        let charge = means.battery.map_or(Duration::new(f64::INFINITY), |battery| battery.lasts);
        let (crumb, later) = (means.tank * 1e-9, later(tasks, &plan.spent));
        Self { tasks, means, plan, clock: Duration::ZERO, left: Volume::ZERO, later, charge, crumb }
    }

    /// One area, from the first step to it until it is clean.
    fn task(&mut self, index: usize) -> Option<()> {
        let task = self.tasks[index];
        let mut wanted = self.plan.spent[index];
        let mut cleaned = Area::ZERO;
        let changed = index > 0 && self.tasks[index - 1].product != task.product;
        if (changed || self.left <= self.crumb) && wanted > self.crumb {
            self.fill(index, cleaned, wanted)?;
        }
        let early = task.opens - self.clock;
        self.spend(Act::Wait, index, early);
        self.spend(Act::Mop, index, task.mopping);
        while wanted > self.crumb {
            if self.left <= self.crumb {
                self.fill(index, cleaned, wanted)?;
            }
            let used = self.left.min(wanted);
            let area = used / task.spent;
            self.clean(index, area)?;
            cleaned += area;
            wanted = wanted - used;
        }
        self.plan.done.push(self.clock);
        Some(())
    }

    /// Back to the fill station, a fill for this task and what comes after it, and out again.
    fn fill(&mut self, task: usize, after: Area, wanted: Volume) -> Option<()> {
        let number = self.plan.fills.len();
        if number == MOST_FILLS {
            return None;
        }
        // The area that the machine stands in; before the first it stands at the station.
        let from = if after > Area::ZERO { Some(task) } else { task.checked_sub(1) };
        if let Some(from) = from.filter(|_| number > 0) {
            self.spend(Act::Go, from, self.tasks[from].way);
            if self.tasks[from].product == self.tasks[task].product {
                self.spend(Act::Refill(number), task, self.means.refill);
            } else {
                self.spend(Act::Change(number), task, self.means.change);
            }
        }
        let solution = self.means.tank.min(wanted + self.later[task]);
        let concentrate = self.tasks[task].strength * solution;
        self.plan.fills.push(Fill { task, after, at: self.clock, solution, concentrate });
        self.left = solution;
        self.level();
        self.spend(Act::Go, task, self.tasks[task].way);
        Some(())
    }

    /// Cleans so much with what is in the tank; a battery that gives out is charged on the way.
    fn clean(&mut self, index: usize, area: Area) -> Option<()> {
        let task = self.tasks[index];
        let mut rest = area / task.productivity;
        while rest > self.charge * (1.0 + 1e-9) {
            let battery = self.means.battery?;
            if self.plan.events.len() > 16 * MOST_FILLS + 16 * self.tasks.len() {
                return None;
            }
            self.run(index, self.charge);
            rest = rest - self.charge;
            self.spend(Act::Go, index, task.way);
            self.spend(Act::Charge, index, battery.charge);
            self.spend(Act::Go, index, task.way);
            self.charge = battery.lasts;
        }
        self.run(index, rest);
        self.charge = (self.charge - rest).max(Duration::ZERO);
        Some(())
    }

    fn run(&mut self, index: usize, time: Duration) {
        let task = self.tasks[index];
        self.spend(Act::Clean, index, time);
        self.left = self.left - task.spent * (task.productivity * time);
        if self.left <= self.crumb {
            self.left = Volume::ZERO;
        }
        self.level();
    }

    /// Lets time pass; nothing that takes none is told.
    fn spend(&mut self, act: Act, task: usize, lasts: Duration) {
        if lasts > Duration::ZERO {
            let (from, level) = (self.clock, self.left);
            self.clock += lasts;
            self.plan.events.push(Event { act, task, from, lasts });
            if act != Act::Clean {
                self.plan.levels.push(Level { at: self.clock, solution: level });
            }
        }
    }

    fn level(&mut self) {
        self.plan.levels.push(Level { at: self.clock, solution: self.left });
    }

    fn end(mut self) -> Plan {
        if let Some(last) = self.tasks.len().checked_sub(1).filter(|_| !self.plan.fills.is_empty()) {
            self.spend(Act::Go, last, self.tasks[last].way);
        }
        self.plan.total = self.clock;
        self.plan
    }
}
