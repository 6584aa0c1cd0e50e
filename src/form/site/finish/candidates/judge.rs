//! One product at one dilution, held against the floor, its finish and the machines.

use super::strengths::{Asked, without_limits};
use super::{Candidate, Suits};
use crate::answer::{Answer, Fact, Remark, Weight};
use crate::chemistry::floor::FloorVerdict;
use crate::chemistry::ghs::Knowledge;
use crate::form::cautions::{self, UsePh, mixing, panel, residue};
use crate::form::site::finish::machines::{Dose, ask, because};
use crate::form::{Field, Outcome, Typed, fill, flow, names};
use crate::number::Marks;
use crate::site::Product;
use crate::units::{Area, AreaPrice, ArealMass, Duration, Money, Quantity, Volume, VolumeFraction};

/// What speaks for and against it. `own` asks about the floor with its finish.
pub(in crate::form::site::finish) fn judge(
    own: &Typed,
    product: &Product,
    asked: &Asked,
    marks: Marks,
) -> Candidate {
    let typed = at(own, product, &asked.dilution);
    let filled = fill::unsure(&typed, marks).outcome.answer;
    let strength = filled.get(names::FILL_STRENGTH).map(|value| VolumeFraction::from_si(value.si));
    let mut found = Verdict::default();
    if let Some((forbids, remark)) = &asked.against {
        found.note(if *forbids { Suits::DoesNotFit } else { Suits::Unknown }, remark.clone());
    }
    let ph = UsePh::of(&typed, marks);
    found.on_floor(&typed, product, ph, marks);
    found.of_product(product);
    if let Some(dose) = asked.dose {
        found.in_machines(own, product, dose, marks);
    }
    let laid = flow::work(&typed, marks).outcome.answer;
    found.stays_wet(product, &laid);
    let left = residue::work(&typed, marks).answer.get(names::RESIDUE_ONE);
    Candidate {
        product: product.id.clone(),
        name: product.name.clone(),
        aim: asked.aim,
        dilution: asked.dilution.clone(),
        strength,
        suits: found.suits,
        reasons: found.reasons,
        ph: ph.range,
        ph_estimated: cautions::printed_ph(product, marks).is_none(),
        residue: left.map(|value| ArealMass::from_si(value.si)),
        cost: cost(&typed, &filled, &laid, marks),
        contact: Outcome::default().may::<Duration>(&typed, Field::Contact, marks).flatten(),
    }
}

/// Asked about this product at this dilution and at no other: it takes the place of its label, and no other rule
/// plays a part.
fn at(own: &Typed, product: &Product, dilution: &str) -> Typed {
    let mut typed = own.clone();
    typed.ask.product.clone_from(&product.id);
    typed.site.standards.clear();
    without_limits(&mut typed);
    if let Some(asked) = typed.product_mut() {
        dilution.clone_into(&mut asked.label);
        asked.standard.clear();
        asked.minimum.text.clear();
    }
    typed
}

struct Verdict {
    suits: Suits,
    reasons: Vec<Remark>,
}

impl Default for Verdict {
    fn default() -> Self {
        Self { suits: Suits::Fits, reasons: Vec::new() }
    }
}

impl Verdict {
    /// A reason, and what it makes of the verdict: never better than it was.
    fn note(&mut self, suits: Suits, remark: Remark) {
        self.suits = self.suits.max(suits);
        self.reasons.push(remark);
    }

    fn on_floor(&mut self, typed: &Typed, product: &Product, ph: UsePh, marks: Marks) {
        let Some(floor) = typed.floor() else { return };
        let why = || Remark::new("remark-fit-why", Weight::Warn);
        match ph.verdict(product, cautions::ground(&typed.site, floor, marks)) {
            FloorVerdict::Fits => {}
            FloorVerdict::DoesNotFit { reasons } => {
                for reason in &reasons {
                    self.note(Suits::DoesNotFit, because(why(), reason));
                }
            }
            FloorVerdict::Unknown { missing } => {
                for missing in missing {
                    self.note(Suits::Unknown, why().with("why", Fact::Key(missing.key().to_owned())));
                }
            }
        }
    }

    fn of_product(&mut self, product: &Product) {
        if panel(product).knowledge == Knowledge::Partial {
            self.note(Suits::Unknown, Remark::new("remark-fit-hazards", Weight::Warn));
        }
        if mixing::clashes_with_itself(product) {
            self.note(Suits::Unknown, Remark::new("remark-families-clash", Weight::Warn));
        }
        if product.disinfects() && product.contact.text.trim().is_empty() {
            self.note(Suits::Unknown, Remark::new("remark-fit-contact", Weight::Warn));
        }
    }

    /// One machine that takes it is enough; what speaks against it in the others is said all the same.
    fn in_machines(&mut self, own: &Typed, product: &Product, dose: Dose, marks: Marks) {
        let machines = ask(own, product, dose, marks);
        let suits = match (machines.takes, machines.unknown) {
            (true, _) => Suits::Fits,
            (false, true) => Suits::Unknown,
            (false, false) => Suits::DoesNotFit,
        };
        for remark in machines.notes {
            self.note(suits, remark);
        }
    }

    /// What its label asks of the time that the floor is wet, with the machine asked about.
    fn stays_wet(&mut self, product: &Product, laid: &Answer) {
        let early = laid.remarks.iter().find(|remark| remark.code == "remark-dries-early");
        // Whether it disinfects is then not known.
        let suits = if product.disinfects() { Suits::Unknown } else { Suits::Fits };
        if let Some(remark) = early {
            self.note(suits, remark.clone());
        }
    }
}

/// What the concentrate of a full tank costs for the floor that the tank cleans.
fn cost(typed: &Typed, filled: &Answer, laid: &Answer, marks: Marks) -> Option<AreaPrice> {
    let mut aside = Outcome::default();
    let container = aside.may::<Volume>(typed, Field::Container, marks).flatten()?;
    let price = aside.may::<Money>(typed, Field::Price, marks).flatten()?;
    let dose = Volume::from_si(filled.get(names::FILL_DOSE)?.si);
    let area = Area::from_si(laid.get(names::FLOW_TANK_AREA)?.si);
    Some(price / container * dose / area)
}
