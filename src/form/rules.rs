//! The rules for the concentrate of one fill: the label, a minimum by law, the site's standard, the
//! machine.

mod parting;

use super::{Field, Filling, Outcome, Typed, What};
use crate::answer::{Remark, Value, Weight};
use crate::limits;
use crate::number::Marks;
use crate::trade::actives::{dilution_for, in_concentrate};
use crate::trade::dilution::{made_up_to, on_top_of, scaled_to_level};
use crate::trade::formula;
use crate::trade::governing::{Aim, Bound, Governed, Governs, govern};
use crate::trade::label::{self, Label, LabelMistake, Rule, Window};
use crate::trade::rounding::Ruled;
use crate::units::{Density, Kind, MassConcentration, MassFraction, Volume, VolumeFraction, unit};

/// The name of the label field.
pub const LABEL: &str = "product-label";

/// The name of the field with the site's own standard.
pub const STANDARD: &str = "product-standard";

/// What a label asks of a liquid concentrate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Liquid {
    /// A volume fraction of the use solution.
    Strength(Window<VolumeFraction>),
    /// So much for a full tank.
    PerTank(Window<Volume>),
}

impl Liquid {
    /// Concentrate for one fill, m³.
    pub(super) fn window(self, fill: Extent) -> Window<Volume> {
        let (low, high): (Volume, Volume) = match self {
            Self::PerTank(amount) => (fill.scaled(amount.low), fill.scaled(amount.high)),
            Self::Strength(strength) => (fill.concentrate(strength.low), fill.concentrate(strength.high)),
        };
        Window { low, high }
    }
}

/// How much is filled, and into what.
#[derive(Clone, Copy, Debug)]
pub(super) struct Extent {
    /// The tank, m³.
    pub tank: Volume,
    /// How far it is filled, m³.
    pub level: Volume,
    /// What that volume is.
    pub filling: Filling,
}

impl Extent {
    /// A full tank, water and concentrate together.
    pub(super) fn full(tank: Volume) -> Self {
        Self { tank, level: tank, filling: Filling::MadeUp }
    }

    /// An amount for a full tank, at this level.
    fn scaled(self, full: Volume) -> Volume {
        scaled_to_level(full, self.level, self.tank)
    }

    /// The concentrate of a strength.
    pub(super) fn concentrate(self, strength: VolumeFraction) -> Volume {
        match self.filling {
            Filling::MadeUp => made_up_to(self.level, strength),
            Filling::OnTop => on_top_of(self.level, strength),
        }
    }

    /// The use solution that a dose makes.
    pub(super) fn total(self, dose: Volume) -> Volume {
        match self.filling {
            Filling::MadeUp => self.level,
            Filling::OnTop => self.level + dose,
        }
    }
}

/// All of them, read.
#[derive(Clone, Debug)]
pub(super) struct Rules {
    /// The label.
    pub label: Label,
    /// What it asks of a liquid.
    pub liquid: Liquid,
    minimum: Option<VolumeFraction>,
    standard: Option<Liquid>,
    machine: Option<Window<Volume>>,
    aim: Aim,
}

impl Rules {
    /// Reads them; mistakes are noted.
    pub(super) fn read(out: &mut Outcome, typed: &Typed, label: &Label, marks: Marks) -> Option<Self> {
        let machine = machine_window(out, typed, marks);
        let liquid = liquid(out, typed, label, LABEL, marks);
        let standard = standard(out, typed, marks);
        let minimum = minimum(out, typed, marks);
        // Flow needs it; what is wrong with it shows wherever it can be typed.
        out.may::<VolumeFraction>(typed, Field::Reuse, marks);
        Some(Self {
            label: label.clone(),
            liquid: liquid?,
            minimum: minimum?,
            standard: standard?,
            machine: machine?,
            aim: typed.ask.aim,
        })
    }

    /// The same where no machine has a say.
    pub(super) fn without_machine(mut self) -> Self {
        self.machine = None;
        self
    }

    /// What the label asks, m³.
    pub(super) fn asked(&self, fill: Extent) -> Window<Volume> {
        self.liquid.window(fill)
    }

    /// What the other rules allow, the machine last.
    pub(super) fn bounds(&self, fill: Extent) -> Vec<Bound> {
        let minimum = self.minimum.map(|strength| Bound {
            by: Governs::Minimum,
            window: Window { low: fill.concentrate(strength), high: Volume::new(f64::INFINITY) },
        });
        let standard =
            self.standard.map(|standard| Bound { by: Governs::Standard, window: standard.window(fill) });
        let machine = self.machine.map(|machine| Bound {
            by: Governs::Machine,
            window: Window { low: fill.scaled(machine.low), high: fill.scaled(machine.high) },
        });
        minimum.into_iter().chain(standard).chain(machine).collect()
    }

    /// What rounding may make of a full tank.
    pub(super) fn allowed(&self, tank: Volume, disinfects: bool) -> Window<VolumeFraction> {
        let fill = Extent::full(tank);
        let (asked, bounds, governed) = (self.asked(fill), self.bounds(fill), self.govern(fill));
        let Window { low, high } = Ruled { asked, bounds: &bounds, governed, disinfects }.allowed();
        let share = |volume: Volume| volume.min(tank).fraction_of(tank);
        Window { low: share(low), high: share(high) }
    }

    /// The dose, and which rule decides it.
    pub(super) fn govern(&self, fill: Extent) -> Governed {
        govern(self.asked(fill), &self.bounds(fill), self.aim)
    }
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

/// What a label asks of a liquid; ppm need the active substance of the concentrate.
pub(super) fn liquid(
    out: &mut Outcome,
    typed: &Typed,
    label: &Label,
    name: &'static str,
    marks: Marks,
) -> Option<Liquid> {
    match label.rule {
        Rule::Strength(window) => Some(Liquid::Strength(window)),
        Rule::PerTank(window) => Some(Liquid::PerTank(window)),
        Rule::Active(window) => {
            let concentrate = active(out, typed, marks)?;
            let strength = |wanted| dilution_for(wanted, concentrate).ok();
            let (Some(low), Some(high)) = (strength(window.low), strength(window.high)) else {
                out.trouble(name, What::TooWeak);
                return None;
            };
            if name == LABEL {
                let given = [("c", ppm(window.low)), ("C", ppm(concentrate))];
                out.answer.step(&formula::ACTIVE_DOSE, &given, Value::new(low, Kind::Percent));
            }
            Some(Liquid::Strength(Window { low, high }))
        }
        Rule::Powder(_) | Rule::Packets(_) => {
            out.trouble(name, What::NoLiquid);
            None
        }
    }
}

/// The site's own standard, written as labels are. The outer `None` is a mistake, which is noted.
#[allow(clippy::option_option, reason = "no standard and a mistyped one are two things")]
fn standard(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Option<Liquid>> {
    let (rule, system) = typed.own_rule();
    match label::read(rule, system) {
        Err(LabelMistake::Empty) => Some(None),
        Ok(label) => liquid(out, typed, &label, STANDARD, marks).map(Some),
        Err(mistake) => {
            out.trouble(STANDARD, What::Label(mistake));
            None
        }
    }
}

/// The least strength by law, from its ppm. The outer `None` is a mistake, which is noted.
#[allow(clippy::option_option, reason = "no minimum and a mistyped one are two things")]
fn minimum(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Option<VolumeFraction>> {
    let Some(wanted) = out.may::<MassConcentration>(typed, Field::Minimum, marks)? else {
        return Some(None);
    };
    if let Ok(strength) = dilution_for(wanted, active(out, typed, marks)?) {
        Some(Some(strength))
    } else {
        out.trouble(Field::Minimum.name(), What::TooWeak);
        None
    }
}

/// The active substance in the concentrate; by mass it needs the density. Mistakes are noted.
pub(super) fn active(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<MassConcentration> {
    let field = Field::Active;
    let entry = field.entry(typed)?;
    if unit(&entry.unit).is_none_or(|unit| unit.code != "percent_ww") {
        return out.need(typed, field, marks);
    }
    let share = entry.read::<MassFraction>(&limits::ACTIVE_SHARE, marks);
    let density = out.need::<Density>(typed, Field::Density, marks);
    match share {
        Ok(share) => Some(in_concentrate(share, density?)),
        Err(mistake) => {
            out.trouble(field.name(), What::Number(mistake));
            None
        }
    }
}

/// A concentration, told in ppm.
pub(super) fn ppm(active: MassConcentration) -> Value {
    Value::new(active, Kind::Active)
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
