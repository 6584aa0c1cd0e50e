//! What is mixed for the patches of a trial: the label's range at its low, its middle and its high end.

use super::super::fill::{Fill, unsure};
use super::super::{Filling, Trouble, Typed, names};
use crate::answer::{Remark, Value};
use crate::number::Marks;
use crate::site::{Dispenser, Entry, Measure, Patch, Record, Trial};
use crate::trade::label::Rule;

/// What is mixed for one patch.
#[derive(Clone, Debug)]
pub struct Mix {
    /// The patch.
    pub patch: Patch,
    /// Concentrate and water, both exact: a batch is measured with a syringe or a scale.
    pub amounts: Result<Amounts, Vec<Trouble>>,
}

/// Concentrate and water of a batch.
#[derive(Clone, Debug, PartialEq)]
pub struct Amounts {
    /// Concentrate, powder or packets.
    pub dose: Value,
    /// Water.
    pub water: Value,
    /// Parts of water to one of concentrate, of a liquid.
    pub ratio: Option<Value>,
    /// What must be minded.
    pub remarks: Vec<Remark>,
}

/// What is mixed for each patch of a trial. Neither the site's standard nor the machine narrows what the label
/// allows: that is what the trial is to find. A label that counts by the tank is held against the machine asked about.
///
/// ```
/// use brimline::form::{Typed, site::patches::mixes};
/// use brimline::number::Marks;
/// use brimline::site::Trial;
/// let trial = Trial { floor: "vinyl".into(), product: "degreaser".into(), ..Trial::default() };
/// let mixes = mixes(&Typed::default(), &trial, Marks::POINT);
/// let high = mixes[2].amounts.as_ref().unwrap();
/// assert!((high.dose.si - 0.001 * 8.0 / 136.0).abs() < 1e-15); // 1 L at 8 fl oz to 128 of water
/// ```
pub fn mixes(typed: &Typed, trial: &Trial, marks: Marks) -> Vec<Mix> {
    trial
        .patches
        .iter()
        .map(|patch| Mix { patch: patch.clone(), amounts: mix(typed, trial, patch, marks) })
        .collect()
}

fn mix(typed: &Typed, trial: &Trial, patch: &Patch, marks: Marks) -> Result<Amounts, Vec<Trouble>> {
    let mut asked = typed.without_areas();
    asked.site.standards.clear();
    // A trial whose product was taken away is not one of another product.
    asked.site.products.retain(|one| one.id() == trial.product);
    for product in &mut asked.site.products {
        product.standard.clear();
    }
    for machine in &mut asked.site.machines {
        machine.least.text.clear();
        machine.most.text.clear();
    }
    asked.ask.product.clone_from(&trial.product);
    asked.ask.floor.clone_from(&trial.floor);
    asked.ask.level = trial.batch.clone();
    asked.ask.filling = Filling::MadeUp;
    asked.ask.aim = patch.aim;
    asked.ask.before.clear();
    let mut fill = with(&mut asked, Dispenser::Cup, marks);
    if matches!(fill.label.as_ref().map(|label| label.rule), Some(Rule::Powder(_))) {
        fill = with(&mut asked, Dispenser::Scale, marks);
    }
    let answer = &fill.outcome.answer;
    let dose =
        [names::FILL_DOSE, names::FILL_MASS, names::FILL_COUNT].iter().find_map(|name| answer.get(name));
    match (dose, answer.get(names::FILL_WATER)) {
        (Some(dose), Some(water)) => {
            let minded =
                |remark: &&Remark| remark.code == "remark-packets-level" || remark.code == "remark-strong";
            let remarks = answer.remarks.iter().filter(minded).cloned().collect();
            Ok(Amounts { dose, water, ratio: answer.get(names::FILL_RATIO), remarks })
        }
        _ => Err(fill.outcome.troubles),
    }
}

/// The fill with a measure fine enough for a batch.
fn with(asked: &mut Typed, dispenser: Dispenser, marks: Marks) -> Fill {
    let step = Entry::new("0.1", "ml");
    let weight = Entry::new("0.1", "g");
    asked.site.measures = vec![Measure { dispenser, step, weight, ..Measure::default() }];
    unsure(asked, marks)
}
