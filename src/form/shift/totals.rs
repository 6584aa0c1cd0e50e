//! What a shift takes in all, and what a mean year takes.

use super::fleet::Fitted;
use super::{Round, Row, Times};
use crate::answer::{Answer, Value};
use crate::form::{Outcome, Typed, names};
use crate::trade::formula;
use crate::trade::shift::Act;
use crate::trade::stock::YEAR;
use crate::units::{Area, Duration, Kind, Volume, VolumeFraction};

/// What work takes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Amounts {
    /// Floor, each cleaning counted.
    pub area: Area,
    /// Use solution.
    pub solution: Volume,
    /// Concentrate of each product of the site.
    pub concentrate: Vec<Volume>,
    /// What is drained out of the recovery tanks.
    pub waste: Volume,
    /// The time of people.
    pub labour: Duration,
}

impl Amounts {
    /// Concentrate of all products together.
    pub fn all_concentrate(&self) -> Volume {
        self.concentrate.iter().copied().sum()
    }

    /// Water.
    pub fn water(&self) -> Volume {
        self.solution - self.all_concentrate()
    }

    fn none(products: usize) -> Self {
        Self { concentrate: vec![Volume::ZERO; products], ..Self::default() }
    }
}

/// What a shift takes.
pub(super) fn of_shift(rows: &[Row], rounds: &[Round], products: usize) -> Amounts {
    let mut all = Amounts::none(products);
    all.area = rows.iter().map(Row::size).sum();
    for round in rounds {
        for fill in &round.plan.fills {
            all.solution += fill.solution;
            all.concentrate[rows[round.rows[fill.task]].product] += fill.concentrate;
        }
        all.waste += round.waste;
        all.labour += round.labour();
    }
    all
}

/// The time that people spend on each area of the shift: with it, and on the trips and changes before it.
pub(super) fn labours(rows: &[Row], rounds: &[Round]) -> Vec<Duration> {
    let mut labours = vec![Duration::ZERO; rows.len()];
    for round in rounds {
        for (row, labour) in round.rows.iter().zip(&round.labours) {
            labours[*row] = *labour;
        }
    }
    labours
}

/// The same of an area that is not in this shift: which others it shares a fill with is not known, so that
/// its part of a tank counts as its part of a trip.
pub(super) fn labour_alone(row: &Row, fleet: &[Option<Fitted>], times: Times) -> Duration {
    let Some(fitted) = &fleet[row.machine] else { return Duration::ZERO };
    let with = fitted.alone.is_none() || row.misfit.is_some();
    let at_floor = if with { row.run() } else { Duration::ZERO };
    let trips = row.solution() / fitted.filled_to;
    at_floor + row.task.mopping + (times.refill + row.task.way * 2.0) * trips
}

/// What a mean year takes of the areas that say how often; none where no area does. Each time an area takes
/// what it takes in this shift.
///
/// * `labours`: a time a row.
pub(super) fn of_year(
    rows: &[Row],
    labours: &[Duration],
    fleet: &[Option<Fitted>],
    products: usize,
) -> Option<Amounts> {
    let mut all = Amounts::none(products);
    let mut any = false;
    for (row, labour) in rows.iter().zip(labours) {
        let (Some(often), Some(fitted)) = (row.often, &fleet[row.machine]) else { continue };
        any = true;
        let n = often.times_in(YEAR);
        let solution = row.solution() * n;
        all.area += row.size() * n;
        all.solution += solution;
        all.concentrate[row.product] += row.task.strength * solution;
        all.waste += solution * fitted.dumped;
        all.labour += *labour * n;
    }
    any.then_some(all)
}

/// The workings, machine by machine.
pub(super) fn steps(
    out: &mut Outcome,
    typed: &Typed,
    rows: &[Row],
    rounds: &[Round],
    fleet: &[Option<Fitted>],
) {
    for round in rounds {
        let Some(fitted) = &fleet[round.machine] else { continue };
        let from = out.answer.steps.len();
        steps_of(out, rows, round, fitted);
        if rounds.len() > 1 {
            for step in &mut out.answer.steps[from..] {
                step.about.clone_from(&typed.site.machines[round.machine].name);
            }
        }
    }
}

fn steps_of(out: &mut Outcome, rows: &[Row], round: &Round, fitted: &Fitted) {
    let answer = &mut out.answer;
    let own = || round.rows.iter().map(|row| &rows[*row]);
    let passed: Area = own().map(|row| row.size() * row.passes).sum();
    let (passed, pace) = (Value::new(passed, Kind::Area), Value::new(fitted.pace, Kind::Productivity));
    let given = [
        ("v", Value::new(fitted.motion.speed, Kind::Speed)),
        ("w − o", Value::new(fitted.motion.width, Kind::Width)),
        ("e", Value::new(fitted.efficiency, Kind::Percent)),
    ];
    answer.step(&formula::PRODUCTIVITY, &given, pace);
    let run = Value::new(round.plan.run_time(), Kind::Time);
    answer.step(&formula::RUN_TIME, &[("Σ n × A", passed), ("P", pace)], run);
    let spent = VolumeFraction::new(1.0 - fitted.motion.spent);
    let solution = Value::new(round.plan.solution(), Kind::Fill);
    answer.step(
        &formula::SOLUTION,
        &[("Σ n × A", passed), ("u", Value::new(spent, Kind::Percent))],
        solution,
    );
    if let Some(recovery) = fitted.recovery.filter(|_| fitted.filled_to < fitted.tank) {
        let given = [
            ("R", Value::new(recovery, Kind::Fill)),
            ("d", Value::new(VolumeFraction::new(fitted.dumped), Kind::Percent)),
        ];
        answer.step(&formula::RECOVERY, &given, Value::new(fitted.filled_to, Kind::Fill));
    }
    // Each product has fills of its own.
    for part in round.rows.chunk_by(|a, b| rows[*a].product == rows[*b].product) {
        let needs: Volume = part.iter().map(|row| rows[*row].solution()).sum();
        let of = |row: &usize| part.contains(row);
        let count = round.plan.fills.iter().filter(|fill| of(&round.rows[fill.task])).count();
        let given = [("S", Value::new(needs, Kind::Fill)), ("T", Value::new(fitted.filled_to, Kind::Fill))];
        answer.step(&formula::FILLS, &given, Value::plain(count as f64, Kind::Count));
    }
    let given = [("S", solution), ("d", Value::new(VolumeFraction::new(fitted.dumped), Kind::Percent))];
    answer.step(&formula::WASTE, &given, Value::new(round.waste, Kind::Fill));
    // Of several products each has its own strength.
    let strength = own().next().map(|row| row.task.strength);
    if let Some(strength) = strength.filter(|one| own().all(|row| row.task.strength == *one)) {
        let given = [("r", Value::new(strength, Kind::Percent)), ("S", solution)];
        answer.step(&formula::CONCENTRATE, &given, Value::new(round.plan.concentrate(), Kind::Dose));
    }
    time_steps(answer, round);
}

/// What the whole time and the labour of a machine are made of.
fn time_steps(answer: &mut Answer, round: &Round) {
    let plan = &round.plan;
    let time = |of: fn(Act) -> bool| Value::new(plan.time_of(of), Kind::Time);
    let mut given = vec![("t", Value::new(plan.run_time(), Kind::Time))];
    let parts = [
        ("refills", time(|act| matches!(act, Act::Refill(_)))),
        ("changes", time(|act| matches!(act, Act::Change(_)))),
        ("ways", time(|act| act == Act::Go)),
        ("mopping", time(|act| act == Act::Mop)),
        ("charges", time(|act| act == Act::Charge)),
        ("waits", time(|act| act == Act::Wait)),
    ];
    given.extend(parts.into_iter().filter(|(_, time)| time.si > 0.0));
    let total = Value::new(plan.total, Kind::Time);
    answer.step(&formula::SHIFT_TOTAL, &given, total);
    let away = plan.total - round.labour();
    let given = [("E", total), ("alone", Value::new(away.max(Duration::ZERO), Kind::Time))];
    answer.step(&formula::LABOUR, &given, Value::new(round.labour(), Kind::Time));
}

/// The figures of the shift.
pub(super) fn figures(out: &mut Outcome, rounds: &[Round], amounts: &Amounts) {
    let answer = &mut out.answer;
    let plans = || rounds.iter().map(|round| &round.plan);
    let count = |of: fn(Act) -> bool| plans().map(|plan| plan.count_of(of)).sum::<usize>();
    let run = plans().map(crate::trade::shift::Plan::run_time).sum::<Duration>();
    let total = plans().map(|plan| plan.total).fold(Duration::ZERO, Duration::max);
    let fills: usize = plans().map(|plan| plan.fills.len()).sum();
    answer.figure(names::SHIFT_AREA, Value::new(amounts.area, Kind::Area));
    answer.figure(names::SHIFT_RUN_TIME, Value::new(run, Kind::Time));
    answer.figure(names::SHIFT_TOTAL_TIME, Value::new(total, Kind::Time));
    answer.figure(names::SHIFT_LABOUR, Value::new(amounts.labour, Kind::Time));
    answer.figure(names::SHIFT_SOLUTION, Value::new(amounts.solution, Kind::Fill));
    answer.figure(names::SHIFT_WATER, Value::new(amounts.water(), Kind::Fill));
    answer.figure(names::SHIFT_CONCENTRATE, Value::new(amounts.all_concentrate(), Kind::Dose));
    answer.figure(names::SHIFT_WASTE, Value::new(amounts.waste, Kind::Fill));
    answer.figure(names::SHIFT_FILLS, Value::plain(fills as f64, Kind::Count));
    let times = [
        (names::SHIFT_CHANGES, count(|act| matches!(act, Act::Change(_)))),
        (names::SHIFT_CHARGES, count(|act| act == Act::Charge)),
    ];
    for (name, number) in times.into_iter().filter(|(_, number)| *number > 0) {
        answer.figure(name, Value::plain(number as f64, Kind::Count));
    }
}

/// What a mean year and a mean month take: a month is a twelfth.
pub(super) fn year_figures(out: &mut Outcome, year: &Amounts) {
    let answer = &mut out.answer;
    for (month, of_year, value) in [
        (names::MONTH_AREA, names::YEAR_AREA, Value::new(year.area, Kind::Area)),
        (names::MONTH_SOLUTION, names::YEAR_SOLUTION, Value::new(year.solution, Kind::Fill)),
        (names::MONTH_WATER, names::YEAR_WATER, Value::new(year.water(), Kind::Fill)),
        (names::MONTH_CONCENTRATE, names::YEAR_CONCENTRATE, Value::new(year.all_concentrate(), Kind::Fill)),
        (names::MONTH_WASTE, names::YEAR_WASTE, Value::new(year.waste, Kind::Fill)),
        (names::MONTH_LABOUR, names::YEAR_LABOUR, Value::new(year.labour, Kind::Time)),
    ] {
        answer.figure(month, Value { si: value.si / 12.0, ..value });
        answer.figure(of_year, value);
    }
    let given = [("Σ f × S", Value::new(year.solution, Kind::Fill))];
    answer.step(&formula::A_MONTH, &given, Value::new(year.solution / 12.0, Kind::Fill));
}
