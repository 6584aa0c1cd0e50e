//! A machine's settings from its catch tests.

use crate::answer::{Answer, Value};
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::trade::calibration::{CatchTest, HAND, Line, Point, fit_line, rising};
use crate::trade::certainty::JUG_SHARE;
use crate::trade::formula;
use crate::units::{Duration, Flow, Kind, Plain, Quantity, Volume, VolumeFraction};

/// A line is taken where no setting's mean lies further from it. Common practice, no source.
const LINE_FITS: f64 = 0.1;

/// One catch test, as far as it can be read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tested {
    /// Which row of the machine's tests it is, from 0.
    pub row: usize,
    /// The number of the setting.
    pub setting: f64,
    /// What it delivered.
    pub flow: Flow,
    /// How far that lies from the line; none where no line was drawn.
    pub off: Option<Flow>,
    /// Whether it lies further off than the others explain.
    pub outlier: bool,
}

/// One setting, from 1 to the highest that was tested.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setting {
    /// Its number.
    pub number: f64,
    /// Its flow.
    pub flow: Flow,
    /// One standard error of it; none for a table.
    pub error: Option<Flow>,
}

/// What the tests come to.
#[derive(Clone, Debug, Default)]
pub struct Calibration {
    /// What is in the way.
    pub outcome: Outcome,
    /// Every test that could be read.
    pub tests: Vec<Tested>,
    /// The line through them, where they make one.
    pub line: Option<Line>,
    /// Whether the line fits; else the rising table is taken.
    pub fits: bool,
    /// Whether each setting gives more than the one before. Where not, the tests contradict each other, and
    /// no flow is to be taken from them.
    pub rises: bool,
    /// The flows to take.
    pub settings: Vec<Setting>,
}

/// Works the settings out. A test with nothing typed yet is passed over; one in which nothing came out is
/// pointed out and passed over.
///
/// ```
/// use brimline::form::action::reduce;
/// use brimline::form::{Action, Field, Typed, flow::calibrate::work};
/// use brimline::number::Marks;
/// let mut typed = Typed::default();
/// for (index, (setting, ounces)) in [("1", "15"), ("2", "30"), ("3", "45")].into_iter().enumerate() {
///     typed = reduce(typed, Action::AddCatch);
///     typed = reduce(typed, Action::Write(Field::TestSetting(index), setting.into()));
///     typed = reduce(typed, Action::Write(Field::TestCaught(index), ounces.into()));
/// }
/// let calibration = work(&typed, Marks::POINT);
/// assert!(calibration.fits && calibration.settings.len() == 3); // 15 fl oz a minute a setting
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Calibration {
    let mut out = Calibration::default();
    let count = typed.machine().map_or(0, |machine| machine.tests.len());
    let read: Vec<(usize, CatchTest)> =
        (0..count).filter_map(|row| test(&mut out.outcome, typed, row, marks)).collect();
    let tests: Vec<CatchTest> = read.iter().map(|(_, test)| *test).collect();
    let read: Vec<(usize, Point)> = read.iter().map(|(row, test)| (*row, test.point(jug()))).collect();
    let points: Vec<Point> = read.iter().map(|(_, point)| *point).collect();
    let line = line(&points);
    let outliers = line.as_ref().map(Line::outliers).unwrap_or_default();
    out.tests = read
        .iter()
        .enumerate()
        .map(|(index, (row, point))| Tested {
            row: *row,
            setting: point.x,
            flow: Flow::new(point.y),
            off: line.as_ref().map(|line| Flow::new(line.residuals[index])),
            outlier: outliers.contains(&index),
        })
        .collect();
    // Means of what was caught: by their own errors, which grow with the flow, low tests would outweigh high.
    let table = rising(&points.iter().map(|point| Point { error: 1.0, ..*point }).collect::<Vec<_>>());
    out.rises = table.windows(2).all(|pair| pair[0].y < pair[1].y);
    out.fits = line.as_ref().is_some_and(|line| {
        line.slope > 0.0 && table.iter().all(|step| (step.y / line.at(step.x).0 - 1.0).abs() <= LINE_FITS)
    });
    let highest = points.iter().map(|point| point.x).fold(0.0, f64::max);
    out.settings = match &line {
        // Scatter beyond what jug and hand explain widens the error, less never narrows it.
        Some(line) if out.fits => (1..=99)
            .map(f64::from)
            .take_while(|number| *number <= highest)
            .map(|number| {
                let (flow, error) = line.at(number);
                let error = Flow::new(error * line.scatter().max(1.0));
                Setting { number, flow: Flow::new(flow), error: Some(error) }
            })
            .filter(|setting| setting.flow > Flow::ZERO)
            .collect(),
        _ => table
            .iter()
            .map(|step| Setting { number: step.x, flow: Flow::new(step.y), error: None })
            .collect(),
    };
    workings(&mut out.outcome.answer, &tests, line.as_ref().filter(|_| out.fits), out.settings.last());
    out.line = line;
    out
}

/// How the first test comes to its flow and its error, and the line through all of them.
fn workings(answer: &mut Answer, tests: &[CatchTest], line: Option<&Line>, last: Option<&Setting>) {
    let flow = |si: f64| Value::new(Flow::new(si), Kind::Flow);
    if let Some(test) = tests.first() {
        let (point, time) = (test.point(jug()), Value::new(test.time, Kind::Time));
        let caught = Value::new(test.caught, Kind::Dose);
        answer.step(&formula::CATCH_FLOW, &[("V", caught), ("t", time)], flow(point.y));
        let given = [
            ("Q", flow(point.y)),
            ("j", Value::new(VolumeFraction::new(jug()), Kind::Percent)),
            ("h", Value::new(HAND, Kind::Time)),
            ("t", time),
        ];
        answer.step(&formula::CATCH_ERROR, &given, flow(point.error));
    }
    if let (Some(line), Some(last)) = (line, last) {
        let n = Value::plain(last.number, Kind::Count);
        let given = [("a", flow(line.intercept)), ("b", flow(line.slope)), ("n", n)];
        answer.step(&formula::CATCH_LINE, &given, Value::new(last.flow, Kind::Flow));
    }
}

/// The line, with the error of each test taken at the line and not at what was caught: a test that caught too
/// little is not the surer for it.
fn line(points: &[Point]) -> Option<Line> {
    let mut line = fit_line(points).ok()?;
    for _ in 0..4 {
        let share = |point: &Point| point.error / point.y.max(f64::MIN_POSITIVE);
        let least = points.iter().map(|point| point.y).fold(f64::INFINITY, f64::min).max(1e-12);
        let at_line = |point: &Point| {
            let error = share(point).min(0.5) * line.at(point.x).0.max(least);
            Point { error, ..*point }
        };
        line = fit_line(&points.iter().map(at_line).collect::<Vec<_>>()).ok()?;
    }
    Some(line)
}

/// One relative standard deviation of a plastic jug.
fn jug() -> f64 {
    JUG_SHARE / 3.0_f64.sqrt()
}

fn test(out: &mut Outcome, typed: &Typed, row: usize, marks: Marks) -> Option<(usize, CatchTest)> {
    let caught = out.may::<Volume>(typed, Field::TestCaught(row), marks)??;
    let setting = out.need::<Plain>(typed, Field::TestSetting(row), marks);
    let time = out.need::<Duration>(typed, Field::TestTime(row), marks);
    if caught <= Volume::ZERO {
        // A setting that gives nothing is none; as a point of the line it would pull all others down.
        out.trouble(Field::TestCaught(row).name(), What::NothingCame);
        return None;
    }
    let setting = setting?.si();
    if setting.fract() != 0.0 {
        out.trouble(Field::TestSetting(row).name(), What::Whole);
        return None;
    }
    Some((row, CatchTest { setting, time: time?, caught }))
}
