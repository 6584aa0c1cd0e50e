//! Flow: which setting this floor needs.

pub mod calibrate;
mod change;
pub(super) mod drying;
mod gravity;

pub mod thirst;

pub(super) use gravity::Fading;

use super::{Field, Outcome, Typed, What, cautions, names};
use crate::answer::{Answer, Remark, Value, Weight};
use crate::number::Marks;
use crate::site::Floor;
use crate::trade::coverage::{application_rate, passing, spent_share};
use crate::trade::formula;
use crate::trade::label::Window;
use crate::trade::setting::{Choice, Fit, choose, fit};
use crate::units::{
    ApplicationRate, Area, Duration, Flow as FlowRate, Kind, Length, Productivity, Speed, Volume,
    VolumeFraction,
};

/// One flow setting on this floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// What it delivers, with a full tank where gravity feeds the machine.
    pub flow: FlowRate,
    /// What it delivers on the mean of a tank.
    pub mean: FlowRate,
    /// What that lays down.
    pub rate: ApplicationRate,
    /// How long a full tank lasts.
    pub time: Duration,
    /// How much floor a full tank cleans.
    pub area: Area,
    /// How it meets the target.
    pub fit: Fit,
}

/// What Flow shows.
#[derive(Clone, Debug, Default)]
pub struct Flow {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// Every setting, in the order of its number.
    pub rows: Vec<Row>,
    /// The setting to use.
    pub choice: Option<Choice>,
    /// What the floor should get.
    pub target: Option<Window<ApplicationRate>>,
}

/// How a machine moves over a floor.
#[derive(Clone, Copy, Debug)]
pub(super) struct Motion {
    pub speed: Speed,
    pub width: Length,
    pub passing: Productivity,
    /// The share of the solution that leaves the tank for good.
    pub spent: f64,
}

/// Reads how the machine moves; mistakes are noted.
pub(super) fn motion(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Motion> {
    let path = out.need::<Length>(typed, Field::Path, marks);
    let overlap = out.may::<Length>(typed, Field::Overlap, marks);
    let speed = out.need::<Speed>(typed, Field::Speed, marks);
    let reuse = out.may::<VolumeFraction>(typed, Field::Reuse, marks);
    let (path, overlap, speed) = (path?, overlap?.unwrap_or(Length::ZERO), speed?);
    let spent = spent_share(reuse?.unwrap_or(VolumeFraction::ZERO));
    if overlap >= path {
        out.trouble(Field::Overlap.name(), What::OverlapTakesPath);
        return None;
    }
    Some(Motion { speed, width: path - overlap, passing: passing(speed, path, overlap), spent })
}

/// Reads the flows of all settings; mistakes are noted.
pub(super) fn flows(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Vec<FlowRate>> {
    let count = typed.machine().map_or(0, |machine| machine.settings.len());
    if count == 0 {
        out.trouble(Field::Setting(0).name(), What::NoRecord);
    }
    let read: Vec<Option<FlowRate>> =
        (0..count).map(|index| out.need(typed, Field::Setting(index), marks)).collect();
    read.into_iter().collect::<Option<Vec<_>>>().filter(|flows| !flows.is_empty())
}

/// Reads a floor's own target; mistakes are noted.
fn target(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Window<ApplicationRate>> {
    let low = out.need::<ApplicationRate>(typed, Field::TargetLow, marks);
    let high = out.need::<ApplicationRate>(typed, Field::TargetHigh, marks);
    let (low, high) = (low?, high?);
    if low > high {
        out.trouble(Field::TargetLow.name(), What::LeastAboveMost);
        return None;
    }
    Some(Window { low, high })
}

/// The target of a floor that is not the one asked about; its mistakes show on its own view.
pub(super) fn target_of(floor: &Floor, marks: Marks) -> Option<Window<ApplicationRate>> {
    let low = floor.target_low.read(Field::TargetLow.limit(), marks).ok()?;
    let high = floor.target_high.read(Field::TargetHigh.limit(), marks).ok()?;
    (low <= high).then_some(Window { low, high })
}

/// Works the setting out.
///
/// Figures: [`names`] with `flow.`.
///
/// ```
/// use brimline::form::{Typed, flow::work, names};
/// use brimline::number::Marks;
/// let flow = work(&Typed::default(), Marks::POINT);
/// assert_eq!(flow.outcome.answer.get(names::FLOW_SETTING).unwrap().si, 1.0);
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Flow {
    let mut view = Flow::default();
    let out = &mut view.outcome;
    let tank = out.need::<Volume>(typed, Field::Tank, marks);
    let motion = motion(out, typed, marks);
    let flows = flows(out, typed, marks);
    // A guide that decides nothing; what is wrong with it is said.
    out.may::<VolumeFraction>(typed, Field::Absorption, marks);
    out.may::<Duration>(typed, Field::Drop, marks);
    view.target = target(out, typed, marks);
    let (Some(tank), Some(motion), Some(flows), Some(target)) = (tank, motion, flows, view.target) else {
        return view;
    };
    let fading = Fading::read(out, typed, marks);
    view.rows = flows
        .iter()
        .map(|flow| {
            let rate = application_rate(*flow, motion.passing);
            let mean = fading.map_or(*flow, |fading| fading.mean(*flow));
            let (time, area) = tank_lasts(tank, mean, motion);
            Row { flow: *flow, mean, rate, time, area, fit: fit(rate, target) }
        })
        .collect();
    view.choice = choose(&flows, target, motion.speed, motion.width);
    if let Some(choice) = view.choice {
        let row = &view.rows[choice.index];
        figures(&mut out.answer, tank, motion, choice, row);
        change::Situation { rows: &view.rows, motion, target, choice }.note(&mut out.answer);
        if let Some(fading) = fading {
            gravity::note(out, fading, row, motion.passing, target);
        }
        drying::note(out, typed, row.rate, marks);
        out.answer.remarks.extend(cautions::remarks(typed, marks));
    }
    view
}

/// How long a full tank lasts, and how much floor it cleans.
fn tank_lasts(tank: Volume, mean: FlowRate, motion: Motion) -> (Duration, Area) {
    (tank / (mean * motion.spent), tank / (application_rate(mean, motion.passing) * motion.spent))
}

fn figures(answer: &mut Answer, tank: Volume, motion: Motion, choice: Choice, row: &Row) {
    let number = Value::plain((choice.index + 1) as f64, Kind::Count);
    let flow = Value::new(row.flow, Kind::Flow);
    let rate = Value::new(row.rate, Kind::Rate);
    let passing = Value::new(motion.passing, Kind::Productivity);
    let spent = Value::new(VolumeFraction::new(1.0 - motion.spent), Kind::Percent);
    let (speed, width) = (Value::new(motion.speed, Kind::Speed), Value::new(motion.width, Kind::Width));
    let (time, area) = (Value::new(row.time, Kind::Time), Value::new(row.area, Kind::Area));
    let tank = Value::new(tank, Kind::Fill);

    answer.figure(names::FLOW_PASSING, passing);
    answer.figure(names::FLOW_SETTING, number);
    answer.figure(names::FLOW_FLOW, flow);
    answer.figure(names::FLOW_RATE, rate);
    answer.figure(names::FLOW_TANK_TIME, time);
    answer.figure(names::FLOW_TANK_AREA, area);
    answer.step(&formula::PASSING, &[("v", speed), ("w − o", width)], passing);
    answer.step(&formula::RATE, &[("Q", flow), ("P", passing)], rate);
    let mean = Value::new(row.mean, Kind::Flow);
    let laid = Value::new(application_rate(row.mean, motion.passing), Kind::Rate);
    answer.step(&formula::TANK_TIME, &[("T", tank), ("Q", mean), ("u", spent)], time);
    answer.step(&formula::TANK_AREA, &[("T", tank), ("a", laid), ("u", spent)], area);
    if motion.spent < 1.0 {
        answer.remark(Remark::new("remark-reuse", Weight::Assumed).value("share", spent));
    }
}
