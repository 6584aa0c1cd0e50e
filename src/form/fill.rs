//! Fill: how much concentrate goes into this fill.

mod actives;
mod let_pass;
pub mod levels;
mod metering;
mod packets;
mod powder;
mod rounding;
mod strength;
mod sure;
mod windows;

use super::rules::{Extent, Liquid, Rules, read_label};
use super::{Field, Filling, Outcome, Typed, What, cautions, names};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::foam::Foam;
use crate::limits;
use crate::number::Marks;
use crate::site::{Dispenser, Product};
use crate::trade::formula;
use crate::trade::governing::{Governed, Governs};
use crate::trade::label::{Label, Rule};
use crate::units::{Kind, Quantity, System, Volume, VolumeFraction, unit};

pub use super::rules::{LABEL, STANDARD};
pub use let_pass::{LET_PASS, let_pass};
pub use metering::RATIOS;

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

impl Fill {
    /// The figure that Fill is about, and its value: concentrate, powder, packets, a setting or a tip.
    pub fn headline(&self) -> Option<(&'static str, Value)> {
        if self.dispenser.draws() {
            return self.measured();
        }
        [names::FILL_ROUNDED, names::FILL_DOSE, names::FILL_MASS_ROUNDED, names::FILL_MASS, names::FILL_COUNT]
            .into_iter()
            .find_map(|name| self.figure(name))
    }

    /// What the measure gives in whole marks, strokes or caps, or what is set to draw it; none where the measure
    /// does not serve.
    pub fn measured(&self) -> Option<(&'static str, Value)> {
        match self.dispenser {
            Dispenser::Metering => self.figure(names::FILL_ROUNDED_RATIO),
            Dispenser::Wall => self.figure(names::FILL_SETTING),
            _ => [names::FILL_ROUNDED, names::FILL_MASS_ROUNDED, names::FILL_COUNT]
                .into_iter()
                .find_map(|name| self.figure(name)),
        }
    }

    fn figure(&self, name: &'static str) -> Option<(&'static str, Value)> {
        self.outcome.answer.get(name).map(|value| (name, value))
    }
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
    let mut fill = unsure(typed, marks);
    let_pass::note(&mut fill.outcome.answer.remarks, typed);
    sure::note(&mut fill.outcome, typed, fill.label.as_ref(), marks);
    fill
}

/// The same without the question how sure the dose is, which a table of doses does not ask.
pub(in crate::form) fn unsure(typed: &Typed, marks: Marks) -> Fill {
    let mut fill = Fill::default();
    let out = &mut fill.outcome;
    let tank = out.need::<Volume>(typed, Field::Tank, marks);
    let level = tank.and_then(|tank| level(out, typed, tank, marks));
    fill.label = read_label(out, typed);
    fill.dispenser = typed.measure().map(|measure| measure.dispenser).unwrap_or_default();
    let filling = match fill.dispenser {
        // The machine adds from its own bottle to a tank of plain water; a wall unit makes up the whole.
        Dispenser::Metering => Filling::OnTop,
        Dispenser::Wall => Filling::MadeUp,
        _ => typed.ask.filling,
    };
    let extent = tank.zip(level).map(|(tank, level)| Extent { tank, level, filling });
    let Some(label) = &fill.label else { return fill };
    match label.rule {
        Rule::Powder(window) => powder::work(out, typed, extent, window, marks),
        Rule::Packets(makes) => packets::work(out, typed, extent, makes),
        Rule::Strength(_) | Rule::PerTank(_) | Rule::Active(_) => {
            fill.governs = liquid(out, typed, label, extent, fill.dispenser, marks);
        }
    }
    if let Some(total) = out.answer.get(names::FILL_TOTAL) {
        out.answer.remarks.extend(cautions::remarks(typed, marks));
        out.answer.remarks.extend(standard_remark(typed));
        if let Some(dose) = out.answer.get(names::FILL_DOSE) {
            shake_recipe(out, typed, VolumeFraction::new(dose.si / total.si));
        }
    }
    fill
}

/// What Fill says beside a dose that keeps these rules, for the other jobs that make the same solution: where the rules
/// part, how long it must stay wet, what it does here, and the standard in force.
pub(in crate::form) fn beside(out: &mut Outcome, typed: &Typed, rules: &Rules, fill: Extent, marks: Marks) {
    out.answer.remarks.extend(rules.partings(fill));
    actives::contact(out, typed, marks);
    out.answer.remarks.extend(cautions::remarks(typed, marks));
    out.answer.remarks.extend(standard_remark(typed));
    let_pass::note(&mut out.answer.remarks, typed);
}

/// The standard in force for the floor: that it holds, or that it asks for another product.
fn standard_remark(typed: &Typed) -> Option<Remark> {
    let (product, floor) = (typed.product()?, typed.floor()?);
    if product.retired {
        return Some(
            Remark::new("remark-product-retired", Weight::Warn)
                .with("product", Fact::Text(product.name.clone())),
        );
    }
    let standard = typed.in_force(&floor.id)?;
    if typed.left_out().is_some() {
        return None;
    }
    let named = |code, weight| {
        let version = Value::plain(f64::from(standard.version), Kind::Count);
        Remark::new(code, weight).with("floor", Fact::Text(floor.name.clone())).value("version", version)
    };
    if standard.product == product.id {
        let day = Fact::Day(standard.effective.clone());
        return Some(named("remark-standard-in-force", Weight::Assumed).with("day", day));
    }
    let theirs = typed.site.products.iter().find(|one| one.id == standard.product)?;
    Some(named("remark-standard-other", Weight::Warn).with("product", Fact::Text(theirs.name.clone())))
}

/// What the dose depends on.
struct Job<'a> {
    fill: Extent,
    rules: &'a Rules,
    /// Whether less than the label asks would fail to disinfect.
    disinfects: bool,
    /// Whether the concentrate comes from a bottle of its own, and needs no room in the tank.
    own_bottle: bool,
}

fn liquid(
    out: &mut Outcome,
    typed: &Typed,
    label: &Label,
    extent: Option<Extent>,
    dispenser: Dispenser,
    marks: Marks,
) -> Option<Governs> {
    let rules = Rules::read(out, typed, label, marks);
    let weighs = dispenser == Dispenser::Scale;
    let pours = !weighs && !dispenser.draws();
    let step = pours.then(|| out.need::<Volume>(typed, Field::MeasureStep, marks)).flatten();
    let scale = weighs.then(|| powder::scale(out, typed, marks)).flatten();
    let (mut fill, rules) = (extent?, rules?);
    if let (Dispenser::Packet, Some(unit)) = (dispenser, step) {
        fill.level = packets::level_for(out, &rules, fill, unit);
    }
    let disinfects = typed.product().is_some_and(Product::disinfects);
    let job = Job { fill, rules: &rules, disinfects, own_bottle: dispenser == Dispenser::Metering };
    let governed = dose(out, &job)?;
    match dispenser {
        Dispenser::Metering => metering::own_bottle(out, typed, &job, governed, marks),
        Dispenser::Wall => metering::wall(out, typed, &job, governed, marks),
        Dispenser::Scale => {
            if let Some((step, density)) = scale {
                powder::weighed(out, &job, governed, step, density);
            }
        }
        _ => {
            if let Some(step) = step {
                rounding::rounded(out, &job, governed, step);
            }
        }
    }
    // What is really poured, where that is known.
    let dose = out.answer.get(names::FILL_ROUNDED).map_or(governed.dose, |value| Volume::from_si(value.si));
    actives::note(out, typed, dose.fraction_of(fill.total(dose)), marks);
    Some(governed.governs)
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

fn dose(out: &mut Outcome, job: &Job) -> Option<Governed> {
    if job.fill.filling == Filling::OnTop
        && matches!(&job.rules.liquid, Liquid::Strength(strength) if strength.high.parts_of_water() <= 0.0)
    {
        out.trouble(LABEL, What::Neat);
        return None;
    }
    let governed = job.rules.govern(job.fill);
    let total = job.fill.total(governed.dose);
    let fits = job.own_bottle || total / job.fill.tank <= 1.0 + 1e-9;
    if !fits || governed.dose > total {
        out.trouble(Field::Level.name(), What::NoRoom);
        return None;
    }
    strength::steps(out, job, governed);
    figures(out, total, governed);
    windows::note(out, job);
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
