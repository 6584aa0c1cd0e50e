//! The shift plan as the benchmark calls it, compiled as the page is: `cargo run -- test --only bench`.

#![cfg(target_arch = "wasm32")]

mod areas;
mod tasks;

use brimline::form::action::reduce;
use brimline::form::shift::work;
use brimline::form::{Action, Field, Typed, names};
use brimline::limits;
use brimline::number::Marks;
use brimline::trade::shift::{Means, Plan, Task, plan};
use brimline::units::{Area, Duration, Quantity, Volume, unit};
use std::hint::black_box;
use wasm_bindgen::prelude::wasm_bindgen;

/// The change that is worked out: what the size of this area is.
const CHANGED: Field = Field::AreaSize(0);

/// A large site, and its plan as the spreadsheet works it out too.
#[wasm_bindgen]
pub struct Bench {
    typed: Typed,
    tasks: Vec<Task>,
    means: Means,
}

/// So much of one unit in another, by their codes; not a number where there is no such unit.
#[wasm_bindgen]
pub fn convert(amount: f64, from: &str, to: &str) -> f64 {
    unit(from).zip(unit(to)).map_or(f64::NAN, |(from, to)| to.from_si(from.to_si(amount)))
}

#[wasm_bindgen]
impl Bench {
    /// A site with so many areas.
    #[wasm_bindgen(constructor)]
    pub fn new(areas: usize) -> Self {
        let typed = areas::demo_with(areas);
        let tasks = tasks::tasks_of(&typed).unwrap_or_default();
        let tank = typed.machine().and_then(|machine| tasks::read(&machine.tank, &limits::TANK));
        let means = Means {
            tank: tank.unwrap_or(Volume::ZERO),
            refill: Duration::new(600.0),
            change: Duration::ZERO,
            battery: None,
        };
        Self { typed, tasks, means }
    }

    /// Types another size of the first area, ft², and works the whole view out. Returns the solution of the
    /// shift, m³; not a number where there is no plan.
    pub fn work(&mut self, size: f64) -> f64 {
        if let Some(entry) = CHANGED.entry_mut(&mut self.typed) {
            entry.text = size.to_string();
        }
        solution(&self.typed)
    }

    /// The same with the copy of all that was typed which the page makes at each change.
    pub fn keystroke(&mut self, size: f64) -> f64 {
        self.typed = reduce(self.typed.clone(), Action::Write(CHANGED, size.to_string()));
        solution(&self.typed)
    }

    /// What is in the way of [`Self::work`]; empty when all is well.
    pub fn troubles(&self) -> Vec<String> {
        let troubles = work(&self.typed, Marks::POINT).outcome.troubles;
        troubles.iter().map(|trouble| format!("{trouble:?}")).collect()
    }

    /// Gives a task another size, m², plans all of them and sums up. Returns the solution, m³; not a number
    /// where there is no plan.
    pub fn plan(&mut self, task: usize, size: f64) -> f64 {
        self.tasks[task].size = Area::new(size);
        // Looked at whole: the compiler may leave nothing out that the page would show.
        let plan = black_box(plan(&self.tasks, self.means));
        plan.as_ref().map_or(f64::NAN, |plan| black_box(totals(plan))[2])
    }

    /// Run time, total time, solution, water, concentrate and fills of the plan, in SI units.
    pub fn totals(&self) -> Vec<f64> {
        plan(&self.tasks, self.means).as_ref().map(totals).map(Vec::from).unwrap_or_default()
    }

    /// Of each task: run time, s, solution, m³, and fills.
    pub fn rows(&self) -> Vec<f64> {
        let Some(plan) = plan(&self.tasks, self.means) else { return Vec::new() };
        let mut fills = vec![0_u32; self.tasks.len()];
        for fill in &plan.fills {
            fills[fill.task] += 1;
        }
        let rows = plan.run.iter().zip(&plan.spent).zip(fills);
        rows.flat_map(|((run, spent), fills)| [run.si(), spent.si(), f64::from(fills)]).collect()
    }

    /// Of each task: size, m², solution spent on it, m³/m², and pace, m²/s.
    pub fn tasks(&self) -> Vec<f64> {
        self.tasks.iter().flat_map(|task| [task.size.si(), task.spent.si(), task.productivity.si()]).collect()
    }

    /// The tank, m³, the strength, and a refill, s.
    pub fn means(&self) -> Vec<f64> {
        vec![self.means.tank.si(), tasks::STRENGTH, self.means.refill.si()]
    }
}

fn totals(plan: &Plan) -> [f64; 6] {
    let (solution, water, concentrate) = (plan.solution().si(), plan.water().si(), plan.concentrate().si());
    [plan.run_time().si(), plan.total.si(), solution, water, concentrate, plan.fills.len() as f64]
}

fn solution(typed: &Typed) -> f64 {
    black_box(work(typed, Marks::POINT))
        .outcome
        .answer
        .get(names::SHIFT_SOLUTION)
        .map_or(f64::NAN, |figure| figure.si)
}
