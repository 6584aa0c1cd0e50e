//! Shift: areas in, fills, gallons and hours out.

use super::flow::{Motion, flows, motion, target_of};
use super::rules::{Extent, Rules, read_label};
use super::station::near;
use super::{Field, Outcome, Typed, What, cautions, names};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::floor::FloorVerdict;
use crate::number::Marks;
use crate::site::{self, Product};
use crate::trade::coverage::{application_rate, productivity};
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::measure::Rounded;
use crate::trade::order::{Order, OrderMistake, Stop, order};
use crate::trade::setting::{Fit, choose};
use crate::trade::shift::{Fill, Level, Part, Plan, Task, levels, plan_parts};
use crate::units::{ApplicationRate, Area, Duration, Flow, Kind, Productivity, Volume, VolumeFraction};

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

/// Each fill's concentrate on the measure of Fill; one that no mark comes near is left as it is.
fn rounded(
    typed: &Typed,
    plan: &Plan,
    rows: &[Row],
    strengths: &[Strength],
    marks: Marks,
) -> Vec<Option<Rounded>> {
    let field = Field::MeasureStep;
    let counted = typed.measure().is_some_and(|measure| measure.dispenser.steps());
    let step = field.entry(typed).filter(|_| counted);
    let step = step.and_then(|entry| entry.read::<Volume>(field.limit(), marks).ok());
    let round = |fill: &Fill| {
        let Strength { allowed, ranged, .. } = strengths[rows[fill.task].product];
        let allowed = Window { low: allowed.low * fill.solution, high: allowed.high * fill.solution };
        near(fill.concentrate, step?, allowed, ranged).ok()
    };
    plan.fills.iter().map(round).collect()
}

/// The strength of a full tank of one product.
#[derive(Clone, Copy, Debug)]
struct Strength {
    aim: VolumeFraction,
    allowed: Window<VolumeFraction>,
    ranged: bool,
}

/// The strength of each product of the site that an area of the shift takes, by the rules that govern there;
/// nothing stands where a product is not used.
fn strengths(out: &mut Outcome, typed: &Typed, tank: Volume, marks: Marks) -> Option<Vec<Strength>> {
    let unused = Strength {
        aim: VolumeFraction::ZERO,
        allowed: Window { low: VolumeFraction::ZERO, high: VolumeFraction::ZERO },
        ranged: false,
    };
    let mut all = vec![unused; typed.site.products.len()];
    let mut sound = true;
    for (index, product) in typed.site.products.iter().enumerate() {
        let used = |area: &site::Area| typed.product_of(area).is_some_and(|own| own.id == product.id);
        let asked = typed.product().is_some_and(|own| own.id == product.id);
        let taken = typed.site.areas.iter().any(|area| area.included && used(area));
        // The product above is read in any case: its mistakes stand at its fields.
        if !(taken || asked) {
            continue;
        }
        let mut own = typed.clone();
        own.ask.product.clone_from(&product.id);
        match strength(out, &own, tank, marks) {
            Some(strength) => all[index] = strength,
            None => sound &= !taken,
        }
    }
    sound.then_some(all)
}

fn strength(out: &mut Outcome, typed: &Typed, tank: Volume, marks: Marks) -> Option<Strength> {
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
    let disinfects = typed.product().is_some_and(Product::disinfects);
    Some(Strength {
        aim: governed.dose.fraction_of(tank),
        allowed: rules.allowed(tank, disinfects),
        ranged: !governed.window.is_point(),
    })
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

/// The best order of the areas that are cleaned; the others keep their places behind them.
///
/// # Errors
/// As [`order`]; `None` where the shift itself does not work out yet.
///
/// ```
/// use brimline::form::{Typed, shift::best_order};
/// use brimline::number::Marks;
/// let (turns, order) = best_order(&Typed::default(), Marks::POINT).unwrap().unwrap();
/// assert_eq!((turns.len(), order.changes), (5, 0));
/// ```
pub fn best_order(typed: &Typed, marks: Marks) -> Option<Result<(Vec<usize>, Order), OrderMistake>> {
    let shift = work(typed, marks);
    let plan = shift.plan?;
    let mut out = Outcome::default();
    let mut time = |field: Field| out.may::<Duration>(typed, field, marks).flatten();
    let refill = time(Field::Refill).unwrap_or(Duration::ZERO);
    let change = time(Field::Change).unwrap_or(Duration::ZERO);
    let mut stops = Vec::new();
    for (index, row) in shift.rows.iter().enumerate() {
        // A fill at the beginning of an area may also have been the end of the one before.
        let fills = plan.fills.iter().filter(|fill| fill.task == index).count();
        stops.push(Stop {
            product: row.product,
            time: row.run + refill * fills as f64,
            place: typed.site.areas[row.area].place,
            opens: time(Field::AreaOpens(row.area)).unwrap_or(Duration::ZERO),
            closes: time(Field::AreaCloses(row.area)).unwrap_or(Duration::new(f64::INFINITY)),
        });
    }
    Some(order(&stops, change).map(|order| {
        let mut turns: Vec<usize> = order.stops.iter().map(|stop| shift.rows[*stop].area).collect();
        let rest: Vec<usize> = (0..typed.site.areas.len()).filter(|area| !turns.contains(area)).collect();
        turns.extend(rest);
        (turns, order)
    }))
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
