//! How strong each product of a shift is used, and its fills on the measure at hand.

use crate::answer::{Fact, Remark, Value, Weight};
use crate::form::rules::{Extent, Rules, read_label};
use crate::form::{Field, Outcome, Typed, What};
use crate::number::Marks;
use crate::site::Product;
use crate::trade::label::Window;
use crate::trade::measure::Rounded;
use crate::trade::rounding::near;
use crate::trade::shift::Fill;
use crate::units::{Kind, Volume, VolumeFraction};

/// The strength of a full tank of one product in one machine.
#[derive(Clone, Copy, Debug)]
pub(super) struct Strength {
    /// Concentrate in the use solution.
    pub aim: VolumeFraction,
    /// What rounding must stay in.
    allowed: Window<VolumeFraction>,
    /// Whether the rules give a range.
    ranged: bool,
}

/// The strength of the product and the machine asked about, by the rules that govern there; mistakes are
/// noted.
pub(super) fn strength(out: &mut Outcome, typed: &Typed, tank: Volume, marks: Marks) -> Option<Strength> {
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
                .with("machine", Fact::Text(typed.machine().map(|one| one.name.clone()).unwrap_or_default()))
                .with("product", Fact::Text(typed.product().map(|one| one.name.clone()).unwrap_or_default()))
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

impl Strength {
    /// A fill's concentrate in whole steps of a measure; none where no mark comes near.
    pub(super) fn rounded(self, fill: &Fill, step: Volume) -> Option<Rounded> {
        let Window { low, high } = self.allowed;
        let allowed = Window { low: low * fill.solution, high: high * fill.solution };
        near(fill.concentrate, step, allowed, self.ranged).ok()
    }
}

/// One step of the measure of Fill, where it is counted in steps of a volume.
pub(super) fn step(typed: &Typed, marks: Marks) -> Option<Volume> {
    let field = Field::MeasureStep;
    let counted = typed.measure().is_some_and(|measure| measure.dispenser.steps());
    field.entry(typed).filter(|_| counted)?.read(field.limit(), marks).ok()
}
