//! Shift: areas in, fills, gallons and hours out.

mod strengths;
mod turns;

pub use turns::best_order;

use super::flow::{Motion, flows, motion, target_of};
use super::{Field, Outcome, Typed, What, cautions, names};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::floor::FloorVerdict;
use crate::number::Marks;
use crate::trade::coverage::{application_rate, productivity};
use crate::trade::formula;
use crate::trade::measure::Rounded;
use crate::trade::setting::{Fit, choose};
use crate::trade::shift::{Level, Part, Plan, Task, levels, plan_parts};
use crate::units::{ApplicationRate, Area, Duration, Flow, Kind, Productivity, Volume, VolumeFraction};
use strengths::{rounded, strengths};

/// One area of the shift, worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// Its place in the site's list.
    pub area: usize,
    /// Its size.
    pub size: Area,
    /// The place of its product in the site's list.
    pub product: usize,
    /// The number of the flow setting.
    pub setting: usize,
    /// What that lays down.
    pub rate: ApplicationRate,
    /// How it meets the floor's target.
    pub fit: Fit,
    /// Time at the floor.
    pub run: Duration,
    /// Solution spent.
    pub solution: Volume,
}

/// What Shift shows.
#[derive(Clone, Debug, Default)]
pub struct Shift {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// The areas, in the order of work.
    pub rows: Vec<Row>,
    /// The fills; their `task` is an index into `rows`.
    pub plan: Option<Plan>,
    /// The tank over the shift.
    pub levels: Vec<Level>,
    /// The concentrate of each fill in whole marks, strokes or caps of the measure, where that is near.
    pub rounded: Vec<Option<Rounded>>,
}

/// Works a shift out.
///
/// Figures: [`names`] with `shift.`.
///
/// ```
/// use brimline::form::{Typed, names, shift::work};
/// use brimline::number::Marks;
/// let shift = work(&Typed::default(), Marks::POINT);
/// let fills = shift.outcome.answer.get(names::SHIFT_FILLS).unwrap().si;
/// assert_eq!(fills as usize, shift.plan.unwrap().fills.len());
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Shift {
    let mut view = Shift::default();
    let out = &mut view.outcome;
    let tank = out.need::<Volume>(typed, Field::Tank, marks);
    let strengths = tank.and_then(|tank| strengths(out, typed, tank, marks));
    let motion = motion(out, typed, marks);
    let efficiency = out.need::<VolumeFraction>(typed, Field::Efficiency, marks);
    let flows = flows(out, typed, marks);
    let refill = out.may::<Duration>(typed, Field::Refill, marks);
    let change = out.may::<Duration>(typed, Field::Change, marks);
    let (Some(motion), Some(efficiency), Some(flows)) = (motion, efficiency, flows) else { return view };
    let Some(rows) = rows(out, typed, &flows, motion, efficiency, marks) else { return view };
    view.rows = rows;
    let (Some(tank), Some(strengths), Some(refill), Some(change)) = (tank, strengths, refill, change) else {
        return view;
    };

    let speed = productivity(motion.passing, efficiency);
    let as_task = |row: &Row| Task { size: row.size, spent: row.rate * motion.spent, productivity: speed };
    let tasks: Vec<Task> = view.rows.iter().map(as_task).collect();
    let runs: Vec<&[Row]> = view.rows.chunk_by(|a, b| a.product == b.product).collect();
    let mut begins = 0;
    let mut parts = Vec::new();
    for run in &runs {
        let tasks = &tasks[begins..begins + run.len()];
        parts.push(Part { tasks, strength: strengths[run[0].product].aim });
        begins += run.len();
    }
    let (refill, change) = (refill.unwrap_or(Duration::ZERO), change.unwrap_or(Duration::ZERO));
    match plan_parts(&parts, tank, refill, change) {
        Some(plan) => {
            pace(out, motion, efficiency);
            figures(out, &view.rows, &plan, tank, speed);
            if let [only] = parts.as_slice() {
                concentrate_step(out, only.strength, &plan);
            } else {
                let changes = Value::plain((parts.len() - 1) as f64, Kind::Count);
                out.answer.figure(names::SHIFT_CHANGES, changes);
            }
            let reuse = VolumeFraction::new(1.0 - motion.spent);
            if motion.spent < 1.0 {
                let share = Value::new(reuse, Kind::Percent);
                out.answer.remark(Remark::new("remark-reuse", Weight::Assumed).value("share", share));
            }
            remarks(out, typed, &view.rows, marks);
            view.levels = levels(&plan, &tasks);
            view.rounded = rounded(typed, &plan, &view.rows, &strengths, marks);
            view.plan = Some(plan);
        }
        None => out.trouble(Field::Tank.name(), What::TooManyFills),
    }
    view
}

fn rows(
    out: &mut Outcome,
    typed: &Typed,
    flows: &[Flow],
    motion: Motion,
    efficiency: VolumeFraction,
    marks: Marks,
) -> Option<Vec<Row>> {
    let speed = productivity(motion.passing, efficiency);
    let mut rows = Vec::new();
    let mut sound = true;
    for (index, area) in typed.site.areas.iter().enumerate().filter(|(_, area)| area.included) {
        let size = out.need::<Area>(typed, Field::AreaSize(index), marks);
        let floor = typed.floor_of(area);
        let target = floor.and_then(|floor| target_of(floor, marks));
        if target.is_none() {
            let what = if floor.is_none() { What::NoFloor } else { What::FloorTarget };
            out.trouble(format!("area-{}-floor", index + 1), what);
        }
        // They only order the areas; what is wrong with them is said.
        for time in [Field::AreaOpens(index), Field::AreaCloses(index)] {
            out.may::<Duration>(typed, time, marks);
        }
        let own = typed.product_of(area);
        let product = typed.site.products.iter().position(|one| own.is_some_and(|own| own.id == one.id));
        if product.is_none() {
            out.trouble(format!("area-{}-product", index + 1), What::NoProduct);
        }
        let (Some(size), Some(target), Some(product)) = (size, target, product) else {
            sound = false;
            continue;
        };
        let choice = choose(flows, target, motion.speed, motion.width)?;
        let rate = application_rate(flows[choice.index], motion.passing);
        let (run, solution) = (size / speed, rate * motion.spent * size);
        let setting = choice.index + 1;
        rows.push(Row { area: index, size, product, setting, rate, fit: choice.fit, run, solution });
    }
    if sound && rows.is_empty() {
        out.trouble("area-add", What::NoArea);
    }
    (sound && !rows.is_empty()).then_some(rows)
}

/// How fast the floor is cleaned, turns and waiting included.
fn pace(out: &mut Outcome, motion: Motion, efficiency: VolumeFraction) {
    let pace = productivity(motion.passing, efficiency);
    let given = [
        ("v", Value::new(motion.speed, Kind::Speed)),
        ("w − o", Value::new(motion.width, Kind::Width)),
        ("e", Value::new(efficiency, Kind::Percent)),
    ];
    out.answer.step(&formula::PRODUCTIVITY, &given, Value::new(pace, Kind::Productivity));
}

fn figures(out: &mut Outcome, rows: &[Row], plan: &Plan, tank: Volume, pace: Productivity) {
    let answer = &mut out.answer;
    let area = Value::new(rows.iter().map(|row| row.size).sum::<Area>(), Kind::Area);
    let run = Value::new(plan.run_time(), Kind::Time);
    let solution = Value::new(plan.solution(), Kind::Fill);
    let concentrate = Value::new(plan.concentrate(), Kind::Dose);
    let fills = Value::plain(plan.fills.len() as f64, Kind::Count);
    answer.figure(names::SHIFT_AREA, area);
    answer.figure(names::SHIFT_RUN_TIME, run);
    answer.figure(names::SHIFT_TOTAL_TIME, Value::new(plan.total, Kind::Time));
    answer.figure(names::SHIFT_SOLUTION, solution);
    answer.figure(names::SHIFT_WATER, Value::new(plan.water(), Kind::Fill));
    answer.figure(names::SHIFT_CONCENTRATE, concentrate);
    answer.figure(names::SHIFT_FILLS, fills);
    answer.step(&formula::RUN_TIME, &[("Σ A", area), ("P", Value::new(pace, Kind::Productivity))], run);
    answer.step(&formula::SOLUTION, &[("Σ A", area)], solution);
    answer.step(&formula::FILLS, &[("S", solution), ("T", Value::new(tank, Kind::Fill))], fills);
}

/// The concentrate of one product; of several each has its own strength.
fn concentrate_step(out: &mut Outcome, strength: VolumeFraction, plan: &Plan) {
    let given = [("r", Value::new(strength, Kind::Percent)), ("S", Value::new(plan.solution(), Kind::Fill))];
    out.answer.step(&formula::CONCENTRATE, &given, Value::new(plan.concentrate(), Kind::Dose));
}

/// Foam stands before the amounts; each floor of the shift is held against the product.
fn remarks(out: &mut Outcome, typed: &Typed, rows: &[Row], marks: Marks) {
    let about_floor = |remark: &Remark| remark.code.starts_with("remark-floor-");
    for product in (0..typed.site.products.len()).filter(|one| rows.iter().any(|row| row.product == *one)) {
        let mut own = typed.clone();
        own.ask.product.clone_from(&typed.site.products[product].id);
        for remark in cautions::remarks(&own, marks).into_iter().filter(|remark| !about_floor(remark)) {
            if !out.answer.remarks.iter().any(|one| one.code == remark.code) {
                out.answer.remark(remark);
            }
        }
    }
    let stop = if typed.ask.stop_read { Weight::Warn } else { Weight::Stop };
    for row in rows {
        let area = &typed.site.areas[row.area];
        let name = Fact::Text(area.name.clone());
        let own = typed.product_of(area).zip(typed.floor_of(area));
        let harmed = own.map(|(product, floor)| cautions::on_floor(product, floor, marks));
        match harmed {
            Some(FloorVerdict::DoesNotFit { .. }) => {
                out.answer.remark(Remark::new("remark-shift-floor", stop).with("area", name.clone()));
            }
            Some(FloorVerdict::Unknown { .. }) => {
                let remark = Remark::new("remark-shift-floor-unknown", Weight::Warn);
                out.answer.remark(remark.with("area", name.clone()));
            }
            Some(FloorVerdict::Fits) | None => {}
        }
        let code = match row.fit {
            Fit::Meets => continue,
            Fit::Short => "remark-shift-short",
            Fit::TooWet => "remark-shift-too-wet",
        };
        out.answer.remark(Remark::new(code, Weight::Warn).with("area", name));
    }
}
