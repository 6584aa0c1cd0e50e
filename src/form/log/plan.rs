//! The fill as Fill plans it, and how far what was measured out lies from that.

use super::entered::scale_unit;
use super::filled::standard;
use crate::answer::{Remark, Value, Weight};
use crate::form::fill::Fill as Asked;
use crate::form::station::reading::work;
use crate::form::{Field, Typed, names};
use crate::number::{Marks, plain};
use crate::site::Entry;
use crate::site::log::{Amount, Fill, Named, Scale, Si};
use crate::trade::rounding::COARSE;
use crate::units::{Kind, Quantity, Volume, unit};

/// The amounts as Fill shows them.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shown {
    /// The dose, in the measure on the wall.
    pub dose: String,
    /// The water.
    pub water: String,
    /// How far the tank is filled.
    pub level: String,
}

/// The record of the fill that Fill shows; none while it shows no amount, or something stands in its way.
///
/// What is poured is planned: rounded to the measure where it is counted. A powder, or packets of one, has no volume;
/// its text tells it, and no question can count it.
///
/// ```
/// use brimline::form::{Typed, fill::work, log::{Shown, plan}};
/// use brimline::number::Marks;
/// let typed = Typed::default();
/// let fill = plan(&typed, &work(&typed, Marks::POINT), &Shown::default()).unwrap();
/// assert_eq!(*fill.machine.id, *typed.ask.machine);
/// assert!(fill.concentrate.si.value().unwrap() > 0.0005);
/// ```
pub fn plan(typed: &Typed, fill: &Asked, shown: &Shown) -> Option<Fill> {
    let answer = &fill.outcome.answer;
    if answer.stopped() {
        return None;
    }
    fill.headline()?;
    let (machine, product, floor) = (typed.machine()?, typed.product()?, typed.floor());
    let floor = floor.map(|floor| Named::new(&*floor.id, &*floor.name)).unwrap_or_default();
    let (standard, version) = standard(&typed.site, &product.id, &floor.id);
    let si = |all: &[&str]| {
        let found = all.iter().find_map(|name| answer.get(name));
        found.filter(|value| matches!(value.kind, Kind::Dose | Kind::Fill)).map_or(f64::NAN, |value| value.si)
    };
    Some(Fill {
        machine: Named::new(&*machine.id, &*machine.name),
        product: Named::new(&*product.id, &*product.name),
        floor,
        standard,
        version,
        concentrate: Amount::new(si(&[names::FILL_ROUNDED, names::FILL_DOSE]), &*shown.dose),
        water: Amount::new(si(&[names::FILL_WATER]), &*shown.water),
        level: Amount::new(si(&[names::FILL_TOTAL]), &*shown.level),
        ..Fill::default()
    })
}

/// A rule of the fill: the figures of its least and its most, and the remarks of too much and of too little.
type Rule = (&'static str, Option<&'static str>, &'static str, &'static str);

/// The rules in the order of their weight.
const RULES: [Rule; 4] = [
    (names::LABEL_LOW, Some(names::LABEL_HIGH), "remark-log-over-label", "remark-log-under-label"),
    (names::MINIMUM_LOW, None, "remark-log-more", "remark-log-under-minimum"),
    (
        names::STANDARD_LOW,
        Some(names::STANDARD_HIGH),
        "remark-log-over-standard",
        "remark-log-under-standard",
    ),
    (names::MACHINE_LOW, Some(names::MACHINE_HIGH), "remark-log-over-machine", "remark-log-under-machine"),
];

/// That what was measured out is not what was planned: by more than half a graduation, or outside a rule that the
/// plan keeps. A rule that the plan does not keep was overruled, and says nothing here; of several that are broken the
/// tightest is named.
///
/// * `measured`: m³.
pub fn measured_remark(typed: &Typed, fill: &Asked, measured: Volume, marks: Marks) -> Option<Remark> {
    let answer = &fill.outcome.answer;
    let value = |name| answer.get(name).map(|value| value.si);
    let planned = value(names::FILL_ROUNDED).or_else(|| value(names::FILL_DOSE))?;
    let aimed = value(names::FILL_DOSE).unwrap_or(planned);
    let off = measured.si() - planned;
    let slack = 1e-9 * planned;
    let remark = |code| {
        Remark::new(code, Weight::Warn)
            .value("measured", Value::new(measured, Kind::Dose))
            .value("planned", Value::new(Volume::new(planned), Kind::Dose))
    };
    let entry = Field::MeasureStep.entry(typed);
    let step = entry.and_then(|entry| entry.read::<Volume>(Field::MeasureStep.limit(), marks).ok());
    let half = step.map_or(0.0, |step| step.si() / 2.0);
    if off.abs() <= half + slack {
        return None;
    }
    // A rule of one number leaves as much room as Fill leaves a coarse measure.
    let room = |low: f64, high: f64| if high > low * (1.0 + 1e-9) { 0.0 } else { COARSE };
    let kept = RULES.iter().filter_map(|&(low, high, over, under)| {
        let low = value(low)?;
        let high = high.and_then(value).unwrap_or(f64::INFINITY);
        (aimed >= low - slack && aimed <= high + slack).then_some((low, high, over, under))
    });
    let broken = kept.filter(|&(low, high, ..)| {
        measured.si() < low * (1.0 - room(low, high)) - slack
            || measured.si() > high * (1.0 + room(low, high)) + slack
    });
    let tightest = broken.reduce(|one, other| {
        let tighter = if off > 0.0 { other.1 < one.1 - slack } else { other.0 > one.0 + slack };
        if tighter { other } else { one }
    });
    if let Some((low, high, over, under)) = tightest {
        let (code, name, limit) = if off > 0.0 { (over, "most", high) } else { (under, "least", low) };
        return Some(remark(code).value(name, Value::new(Volume::new(limit), Kind::Dose)));
    }
    Some(remark(if off > 0.0 { "remark-log-more" } else { "remark-log-less" }))
}

/// A measured amount so far from its plan is worth a second look, a share of it. Common practice, no source.
const FAR: f64 = 0.25;

/// What a fill that is written down by hand, or corrected, says that can hardly be so or is not to be cleaned with: more
/// than the tank holds; outside label, minimum, standard or machine; far from its own plan.
///
/// * `typed`: the site, whose records tell the rules. What the site does not have any more says nothing.
pub fn doubts(typed: &Typed, fill: &Fill, marks: Marks) -> Vec<Remark> {
    // The first record of a list stands in for one that is gone.
    let has_machine = typed.site.machines.iter().any(|one| *one.id == *fill.machine.id);
    let has_product = typed.site.products.iter().any(|one| *one.id == *fill.product.id);
    let mut typed = typed.clone();
    typed.ask.machine = fill.machine.id.to_string();
    typed.ask.product = fill.product.id.to_string();
    typed.ask.floor = fill.floor.id.to_string();
    if let Some((level, unit)) = fill.level.si.value().zip(unit("l")) {
        typed.ask.level = Entry::new(plain(unit.from_si(level), 12, marks.decimal), unit.code);
    }
    let mut found = Vec::new();
    let tank =
        Field::Tank.entry(&typed).and_then(|entry| entry.read::<Volume>(Field::Tank.limit(), marks).ok());
    let most = [fill.level.si, fill.water.si].into_iter().filter_map(Si::value).fold(0.0, f64::max);
    if let Some(tank) = tank.filter(|tank| has_machine && most > tank.si() * (1.0 + 1e-9)) {
        found.push(
            Remark::new("remark-log-over-tank", Weight::Warn)
                .value("level", Value::new(Volume::new(most), Kind::Fill))
                .value("tank", Value::new(tank, Kind::Fill)),
        );
    }
    let Some(measured) = fill.measured.si.value() else { return found };
    let asked = (has_machine && has_product).then(|| crate::form::fill::work(&typed, marks));
    let rule = asked
        .and_then(|asked| measured_remark(&typed, &asked, Volume::new(measured), marks))
        .filter(|remark| RULES.iter().any(|(_, _, over, under)| [*over, *under].contains(&remark.code)));
    let planned = fill.concentrate.si.value().filter(|planned| *planned > 0.0);
    let far = planned.filter(|planned| (measured - planned).abs() > FAR * planned).map(|planned| {
        let code = if measured > planned { "remark-log-more" } else { "remark-log-less" };
        Remark::new(code, Weight::Warn)
            .value("measured", Value::new(Volume::new(measured), Kind::Dose))
            .value("planned", Value::new(Volume::new(planned), Kind::Dose))
    });
    found.extend(rule.or(far));
    found
}

/// What the job of reading the strength has worked out, as a reading of a record; none where it has not.
pub fn reading(typed: &Typed, marks: Marks) -> Option<(Scale, Entry)> {
    let done = work(typed, marks);
    let value = |name| done.outcome.answer.get(name);
    let (scale, value) = match (value(names::STATION_ACTIVE), value(names::STATION_STRENGTH)) {
        (Some(active), _) => (Scale::Active, active),
        (None, Some(strength)) => (Scale::Ratio, strength),
        (None, None) => return None,
    };
    let unit = unit(scale_unit(scale))?;
    // More digits than an instrument has say nothing.
    Some((scale, Entry::new(plain(unit.from_si(value.si), 4, marks.decimal), unit.code)))
}
