//! How strong each product of a shift is used, and its fills on the measure at hand.

use super::Row;
use crate::answer::{Remark, Value, Weight};
use crate::form::rules::{Extent, Rules, read_label};
use crate::form::station::near;
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::site::{self, Product};
use crate::trade::label::Window;
use crate::trade::measure::Rounded;
use crate::trade::shift::{Fill, Plan};
use crate::units::{Kind, Volume, VolumeFraction};

/// Each fill's concentrate on the measure of Fill; one that no mark comes near is left as it is.
pub(super) fn rounded(
    typed: &Typed,
    plan: &Plan,
    rows: &[Row],
    strengths: &[Strength],
    marks: Marks,
) -> Vec<Option<Rounded>> {
    let field = Field::MeasureStep;
    let counted = typed.measure().is_some_and(|measure| measure.dispenser.steps());
    let step = field.entry(typed).filter(|_| counted);
    let step = step.and_then(|entry| entry.read::<Volume>(field.limit(), marks).ok());
    let round = |fill: &Fill| {
        let Strength { allowed, ranged, .. } = strengths[rows[fill.task].product];
        let allowed = Window { low: allowed.low * fill.solution, high: allowed.high * fill.solution };
        near(fill.concentrate, step?, allowed, ranged).ok()
    };
    plan.fills.iter().map(round).collect()
}

/// The strength of a full tank of one product.
#[derive(Clone, Copy, Debug)]
pub(super) struct Strength {
    /// Concentrate in the use solution.
    pub aim: VolumeFraction,
    /// What rounding must stay in.
    allowed: Window<VolumeFraction>,
    /// Whether the rules give a range.
    ranged: bool,
}

/// The strength of each product of the site that an area of the shift takes, by the rules that govern there;
/// nothing stands where a product is not used.
pub(super) fn strengths(
    out: &mut Outcome,
    typed: &Typed,
    tank: Volume,
    marks: Marks,
) -> Option<Vec<Strength>> {
    let unused = Strength {
        aim: VolumeFraction::ZERO,
        allowed: Window { low: VolumeFraction::ZERO, high: VolumeFraction::ZERO },
        ranged: false,
    };
    let mut all = vec![unused; typed.site.products.len()];
    let mut sound = true;
    for (index, product) in typed.site.products.iter().enumerate() {
        let used = |area: &site::Area| typed.product_of(area).is_some_and(|own| own.id == product.id);
        let asked = typed.product().is_some_and(|own| own.id == product.id);
        let taken = typed.site.areas.iter().any(|area| area.included && used(area));
        // The product above is read in any case: its mistakes stand at its fields.
        if !(taken || asked) {
            continue;
        }
        let mut own = typed.clone();
        own.ask.product.clone_from(&product.id);
        match strength(out, &own, tank, marks) {
            Some(strength) => all[index] = strength,
            None => sound &= !taken,
        }
    }
    sound.then_some(all)
}

fn strength(out: &mut Outcome, typed: &Typed, tank: Volume, marks: Marks) -> Option<Strength> {
    let label = read_label(out, typed)?;
    let rules = Rules::read(out, typed, &label, marks)?;
    let fill = Extent::full(tank);
    let (asked, governed) = (rules.asked(fill), rules.govern(fill));
    if governed.dose > tank {
        out.trouble(Field::Tank.name(), What::NoRoom);
        return None;
    }
    if governed.clash {
        out.answer.remark(
            Remark::new("remark-shift-clash", Weight::Warn)
                .window("label", asked.low, asked.high, Kind::Dose)
                .value("dose", Value::new(governed.dose, Kind::Dose)),
        );
    }
    let disinfects = typed.product().is_some_and(Product::disinfects);
    Some(Strength {
        aim: governed.dose.fraction_of(tank),
        allowed: rules.allowed(tank, disinfects),
        ranged: !governed.window.is_point(),
    })
}
