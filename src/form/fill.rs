//! Fill: how much concentrate goes into this fill.

pub mod levels;
mod rounding;
mod strength;

use super::{Field, Filling, Outcome, Typed, What, cautions, names};
use crate::answer::{Remark, Value, Weight};
use crate::chemistry::foam::Foam;
use crate::limits;
use crate::number::Marks;
use crate::site::Dispenser;
use crate::trade::dilution::{made_up_to, on_top_of, scaled_to_level};
use crate::trade::formula;
use crate::trade::governing::{Aim, Governed, Governs, govern};
use crate::trade::label::{self, Label, Rule, Window};
use crate::units::{Kind, Quantity, System, Volume, VolumeFraction, unit};

/// The name of the label field.
pub const LABEL: &str = "product-label";

/// What Fill shows.
#[derive(Clone, Debug, Default)]
pub struct Fill {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// The label as it was read.
    pub label: Option<Label>,
    /// How the measure is counted.
    pub dispenser: Dispenser,
    /// The rule that decided the dose.
    pub governs: Option<Governs>,
}

/// Works a fill out.
///
/// Figures: [`names`] with `fill.`; they are complete unless a trouble is noted.
///
/// ```
/// use brimline::form::{Typed, fill::work, names};
/// use brimline::number::Marks;
/// let fill = work(&Typed::default(), Marks::POINT);
/// let dose = fill.outcome.answer.get(names::FILL_DOSE).unwrap().si;
/// assert!((dose - 0.037_854_117_84 / 65.0).abs() < 1e-15); // 10 gal at 1 to 64
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Fill {
    let mut fill = Fill::default();
    let out = &mut fill.outcome;
    let tank = out.need::<Volume>(typed, Field::Tank, marks);
    let level = tank.and_then(|tank| level(out, typed, tank, marks));
    fill.label = read_label(out, typed);
    let machine = machine_window(out, typed, marks);
    let step = out.need::<Volume>(typed, Field::MeasureStep, marks);
    fill.dispenser = typed.measure().map(|measure| measure.dispenser).unwrap_or_default();

    if let (Some(tank), Some(level), Some(label), Some(machine)) = (tank, level, &fill.label, machine) {
        let disinfects =
            typed.product().is_some_and(|product| product.families.iter().any(|one| one.disinfects()));
        let job =
            Job { tank, level, filling: typed.ask.filling, aim: typed.ask.aim, label, machine, disinfects };
        if let Some(governed) = dose(out, &job) {
            fill.governs = Some(governed.governs);
            if let Some(step) = step {
                rounding::rounded(out, &job, governed, step);
            }
            out.answer.remarks.extend(cautions::remarks(typed, marks));
            shake_recipe(out, typed, governed.dose.fraction_of(total_of(&job, governed.dose)));
        }
    }
    fill
}

/// What the dose depends on.
struct Job<'a> {
    tank: Volume,
    level: Volume,
    filling: Filling,
    aim: Aim,
    label: &'a Label,
    machine: Option<Window<Volume>>,
    /// Whether less than the label asks would fail to disinfect.
    disinfects: bool,
}

impl Job<'_> {
    /// The machine's window for this fill.
    fn takes(&self) -> Option<Window<Volume>> {
        self.machine.map(|machine| Window {
            low: scaled_to_level(machine.low, self.level, self.tank),
            high: scaled_to_level(machine.high, self.level, self.tank),
        })
    }
}

/// The volume filled now: a share of the tank or a volume of its own.
fn level(out: &mut Outcome, typed: &Typed, tank: Volume, marks: Marks) -> Option<Volume> {
    let entry = &typed.ask.level;
    if unit(&entry.unit).is_some_and(|unit| unit.code == "percent") {
        return match entry.read::<VolumeFraction>(&limits::LEVEL_SHARE, marks) {
            Ok(share) => {
                let level = share * tank;
                let given = [("f", Value::new(share, Kind::Percent)), ("T", Value::new(tank, Kind::Fill))];
                out.answer.step(&formula::FILL_LEVEL, &given, Value::new(level, Kind::Fill));
                Some(level)
            }
            Err(mistake) => {
                out.trouble(Field::Level.name(), What::Number(mistake));
                None
            }
        };
    }
    let level = out.need::<Volume>(typed, Field::Level, marks)?;
    if level / tank > 1.0 + 1e-9 {
        out.trouble(Field::Level.name(), What::AboveTank);
        return None;
    }
    Some(level)
}

/// Reads the product's label and notes what it takes for granted.
pub(super) fn read_label(out: &mut Outcome, typed: &Typed) -> Option<Label> {
    let Some(product) = typed.product() else {
        out.trouble(LABEL, What::NoRecord);
        return None;
    };
    match label::read(&product.label, typed.system) {
        Ok(label) => {
            for note in &label.notes {
                out.answer.remark(Remark::new(note.code(), Weight::Assumed));
            }
            Some(label)
        }
        Err(mistake) => {
            out.trouble(LABEL, What::Label(mistake));
            None
        }
    }
}

/// The machine's own window for a full tank. The outer `None` is a mistake, which is noted.
#[allow(clippy::option_option, reason = "no window and a mistyped window are two things")]
pub(super) fn machine_window(
    out: &mut Outcome,
    typed: &Typed,
    marks: Marks,
) -> Option<Option<Window<Volume>>> {
    let least = out.may::<Volume>(typed, Field::Least, marks);
    let most = out.may::<Volume>(typed, Field::Most, marks);
    match (least?, most?) {
        (None, None) => Some(None),
        (Some(least), Some(most)) if least > most => {
            out.trouble(Field::Least.name(), What::LeastAboveMost);
            None
        }
        (least, most) => Some(Some(Window {
            low: least.unwrap_or(Volume::ZERO),
            high: most.unwrap_or(Volume::new(f64::INFINITY)),
        })),
    }
}

/// The label's window for a fill to `level`, m³ of concentrate.
pub(super) fn label_window(label: &Label, tank: Volume, level: Volume, filling: Filling) -> Window<Volume> {
    match &label.rule {
        Rule::PerTank(amount) => Window {
            low: scaled_to_level(amount.low, level, tank),
            high: scaled_to_level(amount.high, level, tank),
        },
        Rule::Strength(strength) => {
            let amount = |strength| match filling {
                Filling::MadeUp => made_up_to(level, strength),
                Filling::OnTop => on_top_of(level, strength),
            };
            Window { low: amount(strength.low), high: amount(strength.high) }
        }
    }
}

fn dose(out: &mut Outcome, job: &Job) -> Option<Governed> {
    if job.filling == Filling::OnTop
        && matches!(&job.label.rule, Rule::Strength(strength) if strength.high.parts_of_water() <= 0.0)
    {
        out.trouble(LABEL, What::Neat);
        return None;
    }
    let asked = label_window(job.label, job.tank, job.level, job.filling);
    let takes = job.takes();
    let governed = govern(asked, takes, job.aim);
    let total = total_of(job, governed.dose);
    if total / job.tank > 1.0 + 1e-9 || governed.dose > total {
        out.trouble(Field::Level.name(), What::NoRoom);
        return None;
    }
    strength::steps(out, job, governed, takes);
    figures(out, total, governed);
    windows(out, job, asked, takes, governed);
    Some(governed)
}

fn figures(out: &mut Outcome, total: Volume, governed: Governed) {
    let strength = governed.dose.fraction_of(total);
    let answer = &mut out.answer;
    answer.figure(names::FILL_TOTAL, Value::new(total, Kind::Fill));
    answer.figure(names::FILL_WATER, Value::new(total - governed.dose, Kind::Fill));
    answer.figure(names::FILL_DOSE, Value::new(governed.dose, Kind::Dose));
    answer.figure(names::FILL_STRENGTH, Value::new(strength, Kind::Percent));
    answer.figure(names::FILL_RATIO, Value::plain(strength.parts_of_water(), Kind::Ratio));
    if strength.parts_of_water() < 1.0 {
        answer.remark(Remark::new("remark-strong", Weight::Warn));
    }
}

/// A dose more than a tenth off its aim is no longer what the label says.
pub(super) const COARSE: f64 = 0.1;

/// The volume of use solution that a dose makes.
fn total_of(job: &Job, dose: Volume) -> Volume {
    match job.filling {
        Filling::MadeUp => job.level,
        Filling::OnTop => job.level + dose,
    }
}

/// A pail of use solution for the shake test, where the test is still to be done: so little as one
/// bottle takes could not be measured.
fn shake_recipe(out: &mut Outcome, typed: &Typed, strength: VolumeFraction) {
    if typed.product().is_some_and(|product| product.foam == Foam::Unknown) {
        let pail = unit(if typed.system == System::Imperial { "gal_imp" } else { "gal_us" });
        let pail = pail.map_or(Volume::new(0.004), |gallon| Volume::from_si(gallon.to_si(1.0)));
        let pail = if typed.system == System::Metric { Volume::new(0.004) } else { pail };
        let dose = strength * pail;
        out.answer.remark(
            Remark::new("remark-shake-recipe", Weight::Assumed)
                .value("dose", Value::new(dose, Kind::Dose))
                .value("water", Value::new(pail - dose, Kind::Fill)),
        );
    }
}

/// What both rules ask for, and the remark where they part.
fn windows(
    out: &mut Outcome,
    job: &Job,
    asked: Window<Volume>,
    takes: Option<Window<Volume>>,
    governed: Governed,
) {
    let dose = |volume: Volume| Value::new(volume, Kind::Dose);
    let answer = &mut out.answer;
    answer.figure(names::LABEL_LOW, dose(asked.low));
    answer.figure(names::LABEL_HIGH, dose(asked.high));
    let basis = Remark::new(job.label.basis.code(), Weight::Assumed);
    let ratio = |window: &Window<VolumeFraction>| match job.label.basis {
        label::Basis::OfTotal => 1.0 / (window.low / VolumeFraction::new(1.0)),
        _ => window.low.parts_of_water(),
    };
    answer.remark(match &job.label.rule {
        Rule::Strength(window) => basis.value("n", Value::plain(ratio(window), Kind::Ratio)),
        Rule::PerTank(_) => basis,
    });
    let Some(takes) = takes else { return };
    answer.figure(names::MACHINE_LOW, dose(takes.low));
    if takes.high.si().is_finite() {
        answer.figure(names::MACHINE_HIGH, dose(takes.high));
    }
    let code = match (governed.clash, governed.governs) {
        (true, Governs::Machine) => "remark-clash-machine",
        (true, Governs::Label) => "remark-clash-label",
        (false, Governs::Machine) => "remark-machine-narrows",
        (false, Governs::Label) => return,
    };
    answer.remark(
        Remark::new(code, Weight::Warn)
            .window("label", asked.low, asked.high, Kind::Dose)
            .window("machine", takes.low, takes.high, Kind::Dose)
            .value("dose", dose(governed.dose)),
    );
}
