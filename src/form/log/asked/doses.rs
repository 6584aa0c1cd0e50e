//! Too much and too little: the doses of the latest fills on a control chart.

use super::{Told, count};
use crate::answer::{Remark, Value, Weight};
use crate::form::names;
use crate::site::log::questions::dosing;
use crate::site::log::{Current, Id};
use crate::trade::control::{Limits, RUN, Rule, Signal, limits, ranges, signals};
use crate::trade::formula;
use crate::trade::rounding::COARSE;
use crate::units::{Kind, VolumeFraction};

/// From fewer values no chart is drawn: a mean range of less is mostly chance. Common practice, no source.
pub const FEWEST: usize = 8;
/// From fewer values than these the limits are called an estimate. Common practice, no source.
const FEW: usize = 20;
/// So many of the latest fills are on the chart.
pub const LATEST: usize = 60;
/// One fill on the chart.
#[derive(Clone, Debug, PartialEq)]
pub struct Point {
    /// The fill.
    pub id: Id,
    /// When, as it was given.
    pub when: String,
    /// The machine's name.
    pub machine: String,
    /// Measured of planned, a ratio.
    pub ratio: f64,
    /// How far from the one before; none for the first.
    pub range: Option<f64>,
    /// Why it stands out.
    pub rules: Vec<Rule>,
}

/// How fills stand to their plans.
#[derive(Clone, Debug, Default)]
pub struct Doses {
    /// The answer.
    pub told: Told,
    /// The fills on the chart, in the order in which they came.
    pub points: Vec<Point>,
    /// The lines of the chart; none where there are too few values.
    pub limits: Option<Limits>,
    /// Fills that have both amounts, those before the chart's among them.
    pub known: usize,
    /// Within a tenth of the plan.
    pub within: usize,
    /// Above.
    pub over: usize,
    /// Below.
    pub under: usize,
}

/// The doses of fills against their plans, and the chart of the latest of them.
///
/// * `fills`: by time.
///
/// Formulas and sources: [`limits`] and [`signals`], with the rule of eight.
pub fn doses<'a>(fills: impl IntoIterator<Item = &'a Current> + Clone) -> Doses {
    let all = fills.clone().into_iter().count();
    let found = dosing(fills.clone(), COARSE);
    let known = all - found.unknown;
    let mut told = Told { fills: all, uncounted: found.unknown, ..Told::default() };
    let ratio = |one: &&Current| {
        let ratio = one.fill.measured.si.value()? / one.fill.concentrate.si.value()?;
        ratio.is_finite().then_some(ratio)
    };
    let values: Vec<(&Current, f64)> =
        fills.into_iter().filter_map(|one| Some((one, ratio(&one)?))).collect();
    let latest = &values[values.len().saturating_sub(LATEST)..];
    let numbers: Vec<f64> = latest.iter().map(|(_, ratio)| *ratio).collect();
    let lines = if numbers.len() < FEWEST { None } else { limits(&numbers).ok() };
    let marks = lines.map(|lines| marked(&numbers, &lines)).unwrap_or_default();
    let ranges = ranges(&numbers);
    let points: Vec<Point> = latest
        .iter()
        .enumerate()
        .map(|(at, (one, ratio))| Point {
            id: one.id.clone(),
            when: one.said.to_string(),
            machine: one.fill.machine.name.to_string(),
            ratio: *ratio,
            range: at.checked_sub(1).and_then(|before| ranges.get(before).copied()),
            rules: rules(&marks, at),
        })
        .collect();
    let (within, over, under) = (found.within, found.over.len(), found.under.len());
    say(&mut told, lines, &points, [known, within, over, under]);
    Doses { told, points, limits: lines, known, within, over, under }
}

/// What stands out. While a value lies beyond the limits it has pulled the centre towards itself, and runs on one side
/// of that centre say nothing: they are looked for once none does.
fn marked(numbers: &[f64], lines: &Limits) -> Vec<Signal> {
    let beyond = signals(numbers, lines, false);
    if beyond.is_empty() { signals(numbers, lines, true) } else { beyond }
}

fn rules(marks: &[Signal], at: usize) -> Vec<Rule> {
    marks.iter().filter(|mark| mark.at == at).map(|mark| mark.rule).collect()
}

/// The middle one of them; 1 where there is none.
fn median(values: impl Iterator<Item = f64>) -> f64 {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(1.0)
}

fn percent(ratio: f64) -> Value {
    Value::new(VolumeFraction::new(ratio), Kind::Percent)
}

fn say(told: &mut Told, lines: Option<Limits>, points: &[Point], [known, within, over, under]: [usize; 4]) {
    let answer = &mut told.answer;
    if known == 0 {
        return answer.remark(Remark::new("remark-log-doses-none", Weight::Assumed));
    }
    answer.remark(
        Remark::new("remark-log-doses", Weight::Assumed)
            .value("known", count(known))
            .value("within", count(within))
            .value("over", count(over))
            .value("under", count(under)),
    );
    let Some(lines) = lines else {
        let fewest = Remark::new("remark-log-chart-few", Weight::Assumed).value("fewest", count(FEWEST));
        return answer.remark(fewest.value("n", count(known)));
    };
    for (name, value) in [
        (names::LOG_CENTRE, lines.centre),
        (names::LOG_LOWER, lines.lower.max(0.0)),
        (names::LOG_UPPER, lines.upper),
        (names::LOG_RANGE, lines.range),
        (names::LOG_RANGE_UPPER, lines.range_upper),
    ] {
        answer.figure(name, percent(value));
    }
    let out = points.iter().filter(|point| !point.rules.is_empty()).count();
    let code = if out == 0 { "remark-log-chart-steady" } else { "remark-log-chart-out" };
    answer.remark(
        Remark::new(code, Weight::Assumed)
            .value("out", count(out))
            .value("n", count(points.len()))
            .value("run", count(RUN)),
    );
    if points.iter().any(|point| point.rules.contains(&Rule::Beyond)) {
        answer.remark(Remark::new("remark-log-chart-pulled", Weight::Assumed));
    }
    // Three standard errors of the mean, of the scatter that the limits rest on.
    let doubt = (lines.upper - lines.centre) / (points.len() as f64).sqrt();
    // What a few fills did is not what is done fill after fill: the middle one of all has to lie there, too.
    let middle = median(points.iter().map(|point| point.ratio)) - 1.0;
    let mean = lines.centre - 1.0;
    if mean.abs() > doubt && middle.abs() > doubt && middle.signum() == mean.signum() {
        let code = if lines.centre > 1.0 { "remark-log-doses-high" } else { "remark-log-doses-low" };
        answer.remark(Remark::new(code, Weight::Warn).value("mean", percent(lines.centre)));
    }
    if points.len() < FEW {
        let few = Remark::new("remark-log-chart-estimate", Weight::Assumed);
        answer.remark(few.value("n", count(points.len())));
    }
    let (centre, range) = (percent(lines.centre), percent(lines.range));
    answer.step(&formula::CONTROL_UPPER, &[("x̄", centre), ("MR̄", range)], percent(lines.upper));
    answer.step(&formula::CONTROL_LOWER, &[("x̄", centre), ("MR̄", range)], percent(lines.lower.max(0.0)));
    answer.step(&formula::CONTROL_RANGE, &[("MR̄", range)], percent(lines.range_upper));
}
