//! Trial patches: what to mix for each, and what the records say.

mod records;

use super::candidates::{Asked, Candidate, judge, on};
use super::dilution::{like_label, per_tank, plus_water};
use super::machines::Dose;
use crate::answer::{Remark, Value, Weight};
use crate::form::rules::{Liquid, liquid};
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::site::{Product, Record};
use crate::trade::batch::{LEAST, enough, measurable};
use crate::trade::calendar::Date;
use crate::trade::governing::Aim;
use crate::trade::label::{self, Rule, Window};
use crate::units::{Kind, Mass, MassConcentration, Plain, Quantity, System, Volume, VolumeFraction};

pub use records::{WET_SLIP, WET_SLIP_SOURCE, slippery};

/// The name of the list of floors.
pub const FLOOR: &str = "trial-floor";
/// The name of the list of products.
pub const PRODUCT: &str = "trial-product";
/// The name of the field with the day.
pub const DATE: &str = "trial-date";

/// One patch.
#[derive(Clone, Debug)]
pub struct Mix {
    /// Which of the trial's patches, from 0.
    pub patch: usize,
    /// Where in the label's range.
    pub aim: Aim,
    /// The dilution, written as labels are.
    pub dilution: String,
    /// Concentrate or powder for the batch.
    pub amount: Value,
    /// The same as a small measure gives it; none where that is too little.
    pub rounded: Option<Value>,
    /// Water to it, where the concentrate is a liquid.
    pub water: Option<Value>,
    /// Parts of water to 1 that the rounded amount makes.
    pub makes: Option<Value>,
    /// Whether it suits the floor, its finish and the machines.
    pub candidate: Candidate,
    /// What a gloss meter read.
    pub gloss: Option<f64>,
    /// What a slip meter read.
    pub slip: Option<f64>,
}

/// What the trial asked about shows.
#[derive(Clone, Debug, Default)]
pub struct Tried {
    /// The answer and what is in its way.
    pub outcome: Outcome,
    /// The patches; one where the label gives one strength.
    pub mixes: Vec<Mix>,
    /// Which of the trial's patches the records point to, from 0.
    pub suggested: Option<usize>,
}

/// Works out what to mix for each patch of the trial asked about, and what its records say.
///
/// ```
/// use brimline::form::{Action, Typed, action::{Shelf, reduce}, site::{Act, finish::trial::work}};
/// use brimline::number::Marks;
/// let typed = [Action::Pick(Shelf::Product, "degreaser".into()), Act::Add(Shelf::Trial).action()];
/// let tried = work(&typed.into_iter().fold(Typed::default(), reduce), Marks::POINT);
/// // 4 to 8 oz/gal are 1:32 to 1:16; a litre takes 30.3, 44.8 and 58.8 mL.
/// assert_eq!(tried.mixes.len(), 3);
/// assert!((tried.mixes[0].amount.si - 1e-3 / 33.0).abs() < 1e-12);
/// assert!((tried.mixes[2].rounded.unwrap().si - 60e-6).abs() < 1e-12);
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Tried {
    let mut found = Tried::default();
    let Some(trial) = typed.trial() else { return found };
    let out = &mut found.outcome;
    if !trial.date.trim().is_empty() && Date::read(&trial.date).is_none() {
        out.trouble(DATE, What::Date);
    }
    let batch = out.need::<Volume>(typed, Field::Batch, marks);
    let floor = typed.site.floors.iter().find(|floor| floor.id() == trial.floor);
    let product = typed.site.products.iter().find(|product| product.id() == trial.product);
    if floor.is_none() {
        out.trouble(FLOOR, What::NoRecord);
    }
    if product.is_none() {
        out.trouble(PRODUCT, What::NoRecord);
    }
    let readings: Vec<(Option<f64>, Option<f64>)> = (0..trial.patches.len())
        .map(|patch| {
            let mut read = |field| out.may::<Plain>(typed, field, marks).flatten().map(Plain::si);
            (read(Field::PatchGloss(patch)), read(Field::PatchSlip(patch)))
        })
        .collect();
    let (Some(batch), Some(floor), Some(product)) = (batch, floor, product) else { return found };
    // The finish that lies on the floor, else the new one that is asked about.
    let finish = typed.finish().filter(|_| floor.finish.is_empty()).map(|finish| finish.id.clone());
    let own = on(typed, &floor.id, finish.as_deref());
    let Some(range) = Range::read(out, &own, product, marks) else { return found };
    let aims: &[Aim] = if range.is_point() { &[Aim::Low] } else { Aim::ALL };
    for (patch, record) in trial.patches.iter().enumerate().filter(|(_, patch)| aims.contains(&patch.aim)) {
        let (asked, amount, share) = range.at(record.aim, batch, product, own.system);
        let (rounded, makes) = measured(amount, batch);
        let (gloss, slip) = readings[patch];
        found.mixes.push(Mix {
            patch,
            aim: record.aim,
            dilution: asked.dilution.clone(),
            amount,
            rounded,
            water: share
                .map(|_| Value::new(batch - Volume::from_si(rounded.unwrap_or(amount).si), Kind::Dose)),
            makes,
            candidate: judge(&own, product, &asked, marks),
            gloss,
            slip,
        });
    }
    if range.is_point() {
        found.outcome.answer.remark(Remark::new("remark-trial-one", Weight::Assumed));
    }
    small(&mut found, batch);
    found.suggested = records::note(&mut found.outcome, &found.mixes, &trial.patches);
    found
}

/// What the label asks, as it can be tried.
enum Range {
    Share(Window<VolumeFraction>),
    PerTank(Window<Volume>, Volume),
    Powder(Window<MassConcentration>),
}

impl Range {
    fn read(out: &mut Outcome, own: &Typed, product: &Product, marks: Marks) -> Option<Self> {
        let label = match label::read(&product.label, own.system) {
            Ok(label) => label,
            Err(mistake) => {
                out.trouble(PRODUCT, What::Label(mistake));
                return None;
            }
        };
        match label.rule {
            Rule::Powder(window) => return Some(Self::Powder(window)),
            Rule::Packets(_) => {
                out.trouble(PRODUCT, What::NoLiquid);
                return None;
            }
            _ => {}
        }
        let mut of_product = own.clone();
        of_product.ask.product.clone_from(&product.id);
        let mut aside = Outcome::default();
        let tank = aside.need::<Volume>(&of_product, Field::Tank, marks);
        match (liquid(&mut aside, &of_product, &label, PRODUCT, marks), tank) {
            (Some(Liquid::Strength(window)), _) => Some(Self::Share(window)),
            (Some(Liquid::PerTank(window)), Some(tank)) => Some(Self::PerTank(window, tank)),
            _ => {
                out.trouble(PRODUCT, What::ProductUnsound);
                None
            }
        }
    }

    fn is_point(&self) -> bool {
        match self {
            Self::Share(window) => window.is_point(),
            Self::PerTank(window, _) => window.is_point(),
            Self::Powder(window) => window.is_point(),
        }
    }

    /// The dilution of a patch, what its batch takes, and the share of it where it is a liquid.
    fn at(
        &self,
        aim: Aim,
        batch: Volume,
        product: &Product,
        system: System,
    ) -> (Asked, Value, Option<VolumeFraction>) {
        let printed = product.label.trim().to_owned();
        let (dose, text, share) = match self {
            Self::Share(window) => {
                let share = aim.within(*window);
                let (text, share) = like_label(&printed, system, *window, aim)
                    .unwrap_or_else(|| (plus_water(share, aim), share));
                (Dose::Share(share), text, Some(share))
            }
            Self::PerTank(window, tank) => {
                let amount = aim.within(*window);
                (Dose::PerTank(amount), per_tank(amount, aim), Some(amount.fraction_of(*tank)))
            }
            Self::Powder(_) => (Dose::Solid, printed.clone(), None),
        };
        let amount = match (self, share) {
            (Self::Powder(window), _) => Value::new(aim.within(*window) * batch, Kind::Mass),
            (_, share) => Value::new(share.unwrap_or(VolumeFraction::ZERO) * batch, Kind::Dose),
        };
        let dilution = if self.is_point() { printed } else { text };
        let aim = (!self.is_point()).then_some(aim);
        (Asked { aim, dilution, dose: Some(dose), against: None }, amount, share)
    }
}

/// The amount as a small measure gives it, and the parts of water to 1 that it makes.
fn measured(amount: Value, batch: Volume) -> (Option<Value>, Option<Value>) {
    if amount.kind == Kind::Mass {
        let rounded = measurable(Mass::from_si(amount.si), Mass::new(0.001));
        return (rounded.map(|mass| Value::new(mass, Kind::Mass)), None);
    }
    let rounded = measurable(Volume::from_si(amount.si), LEAST).filter(|dose| *dose < batch);
    let makes = rounded.map(|dose| Value::plain((batch - dose) / dose, Kind::Ratio));
    (rounded.map(|dose| Value::new(dose, Kind::Dose)), makes)
}

/// More than a tenth off its aim is no longer that patch.
const COARSE: f64 = 0.1;

/// Where a batch is too small for what can be measured: the batch that would do.
fn small(found: &mut Tried, batch: Volume) {
    let coarse =
        |mix: &&Mix| mix.rounded.is_none_or(|rounded| (rounded.si / mix.amount.si - 1.0).abs() > COARSE);
    let alike = found.mixes.windows(2).any(|two| two[0].rounded == two[1].rounded);
    let Some(weakest) = found.mixes.iter().find(coarse).or(found.mixes.first().filter(|_| alike)) else {
        return;
    };
    let code = if weakest.rounded.is_none() { "remark-trial-small" } else { "remark-trial-coarse" };
    let share = VolumeFraction::new(weakest.amount.si / batch.si());
    let would_do = match weakest.amount.kind {
        Kind::Mass => batch * (0.01 / weakest.amount.si),
        _ => enough(share),
    };
    let remark = Remark::new(code, Weight::Warn)
        .value("amount", weakest.amount)
        .value("batch", Value::new(would_do, Kind::Fill));
    found.outcome.answer.remark(remark);
}
