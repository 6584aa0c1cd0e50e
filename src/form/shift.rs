//! Shift: areas in, fills, gallons and hours out.

use super::fill::COARSE;
use super::flow::{Motion, flows, motion, target_of};
use super::rules::{Extent, Rules, read_label};
use super::{Field, Outcome, Typed, What, cautions, names};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::floor::FloorVerdict;
use crate::number::Marks;
use crate::trade::coverage::{application_rate, productivity};
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::measure::{Rounded, round_to};
use crate::trade::setting::{Fit, choose};
use crate::trade::shift::{Means, Plan, Task, plan};
use crate::units::{ApplicationRate, Area, Duration, Flow, Kind, Productivity, Volume, VolumeFraction};

/// One area of the shift, worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// Its place in the site's list.
    pub area: usize,
    /// Its size.
    pub size: Area,
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
    let strength = tank.and_then(|tank| strength(out, typed, tank, marks));
    let motion = motion(out, typed, marks);
    let efficiency = out.need::<VolumeFraction>(typed, Field::Efficiency, marks);
    let flows = flows(out, typed, marks);
    let refill = out.may::<Duration>(typed, Field::Refill, marks);
    let (Some(motion), Some(efficiency), Some(flows)) = (motion, efficiency, flows) else { return view };
    let Some(rows) = rows(out, typed, &flows, motion, efficiency, marks) else { return view };
    view.rows = rows;
    let (Some(tank), Some(strength), Some(refill)) = (tank, strength, refill) else { return view };

    let speed = productivity(motion.passing, efficiency);
    let as_task = |row: &Row| Task { size: row.size, spent: row.rate * motion.spent, productivity: speed };
    let tasks: Vec<Task> = view.rows.iter().map(as_task).collect();
    let means = Means { tank, strength, refill: refill.unwrap_or(Duration::ZERO) };
    match plan(&tasks, means) {
        Some(plan) => {
            pace(out, motion, efficiency);
            figures(out, &view.rows, &plan, means, speed);
            let reuse = VolumeFraction::new(1.0 - motion.spent);
            if motion.spent < 1.0 {
                let share = Value::new(reuse, Kind::Percent);
                out.answer.remark(Remark::new("remark-reuse", Weight::Assumed).value("share", share));
            }
            remarks(out, typed, &view.rows, marks);
            view.rounded = rounded(typed, &plan, marks);
            view.plan = Some(plan);
        }
        None => out.trouble(Field::Tank.name(), What::TooManyFills),
    }
    view
}

/// Each fill's concentrate on the measure of Fill; one that a mark misses by more than a tenth is left
/// as it is.
fn rounded(typed: &Typed, plan: &Plan, marks: Marks) -> Vec<Option<Rounded>> {
    let field = Field::MeasureStep;
    let counted = typed.measure().is_some_and(|measure| measure.dispenser.steps());
    let step = field.entry(typed).filter(|_| counted);
    let step = step.and_then(|entry| entry.read::<Volume>(field.limit(), marks).ok());
    let open = Window { low: Volume::ZERO, high: Volume::new(f64::INFINITY) };
    let near = |dose: Volume, rounded: &Rounded| (rounded.dose / dose - 1.0).abs() <= COARSE;
    plan.fills
        .iter()
        .map(|fill| {
            let rounded = round_to(fill.concentrate, step?, open);
            Some(rounded).filter(|rounded| near(fill.concentrate, rounded))
        })
        .collect()
}

/// The strength of a full tank, by the rule that governs there.
fn strength(out: &mut Outcome, typed: &Typed, tank: Volume, marks: Marks) -> Option<VolumeFraction> {
    let label = read_label(out, typed)?;
    let rules = Rules::read(out, typed, &label, marks)?;
    let fill = Extent::full(tank);
    let (asked, governed) = (rules.asked(fill), rules.govern(fill));
    if governed.dose > tank {
        out.trouble(Field::Tank.name(), What::NoRoom);
        return None;
    }
    if governed.clash {
        out.answer.remark(
            Remark::new("remark-shift-clash", Weight::Warn)
                .window("label", asked.low, asked.high, Kind::Dose)
                .value("dose", Value::new(governed.dose, Kind::Dose)),
        );
    }
    Some(governed.dose.fraction_of(tank))
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
        let (Some(size), Some(target)) = (size, target) else {
            sound = false;
            continue;
        };
        let choice = choose(flows, target, motion.speed, motion.width)?;
        let rate = application_rate(flows[choice.index], motion.passing);
        let (run, solution) = (size / speed, rate * motion.spent * size);
        rows.push(Row { area: index, size, setting: choice.index + 1, rate, fit: choice.fit, run, solution });
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

fn figures(out: &mut Outcome, rows: &[Row], plan: &Plan, means: Means, pace: Productivity) {
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
    answer.step(&formula::FILLS, &[("S", solution), ("T", Value::new(means.tank, Kind::Fill))], fills);
    let r = Value::new(means.strength, Kind::Percent);
    answer.step(&formula::CONCENTRATE, &[("r", r), ("S", solution)], concentrate);
}

/// Foam stands before the amounts; each floor of the shift is held against the product.
fn remarks(out: &mut Outcome, typed: &Typed, rows: &[Row], marks: Marks) {
    let about_floor = |remark: &Remark| remark.code.starts_with("remark-floor-");
    out.answer
        .remarks
        .extend(cautions::remarks(typed, marks).into_iter().filter(|remark| !about_floor(remark)));
    let Some(product) = typed.product() else { return };
    let stop = if typed.ask.stop_read { Weight::Warn } else { Weight::Stop };
    for row in rows {
        let area = &typed.site.areas[row.area];
        let name = Fact::Text(area.name.clone());
        let harmed = typed.floor_of(area).map(|floor| cautions::on_floor(product, floor, marks));
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
