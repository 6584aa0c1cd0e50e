//! Powder, and liquids that are weighed.

use super::{Job, packets};
use crate::answer::{Remark, Value, Weight};
use crate::form::rules::Extent;
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::Marks;
use crate::site::Dispenser;
use crate::trade::formula;
use crate::trade::governing::Governed;
use crate::trade::label::Window;
use crate::trade::measure::round_to;
use crate::trade::portion::Makes;
use crate::trade::powder::{mass_of, powder_for};
use crate::trade::rounding::COARSE;
use crate::units::{Density, Kind, Mass, MassConcentration, Volume};

/// A label that weighs a powder.
pub(super) fn work(
    out: &mut Outcome,
    typed: &Typed,
    extent: Option<Extent>,
    asked: Window<MassConcentration>,
    marks: Marks,
) {
    let dispenser = typed.measure().map(|measure| measure.dispenser).unwrap_or_default();
    let by_weight = matches!(dispenser, Dispenser::Scale | Dispenser::Packet);
    let step = match dispenser {
        Dispenser::Scale | Dispenser::Packet => out.need::<Mass>(typed, Field::MeasureWeight, marks),
        Dispenser::Pump | Dispenser::Metering | Dispenser::Wall => {
            out.trouble("measure", What::PowderMeasure);
            None
        }
        _ => scoop(out, typed, marks),
    };
    let Some(fill) = extent else { return };
    let aim = typed.ask.aim.within(asked);
    out.answer.remark(Remark::new("basis-powder", Weight::Assumed));
    if typed.machine().is_some_and(|machine| !machine.most.text.trim().is_empty()) {
        out.answer.remark(Remark::new("remark-powder-machine", Weight::Warn));
    }
    if dispenser == Dispenser::Packet {
        if let Some(step) = step {
            packets::whole(out, Makes::of_solid(step, aim, asked), fill);
        }
        return;
    }
    let (powder, window) =
        (powder_for(aim, fill.level), Window { low: asked.low * fill.level, high: asked.high * fill.level });
    let given = [("c", Value::new(aim, Kind::Powder)), ("V", Value::new(fill.level, Kind::Fill))];
    out.answer.step(&formula::POWDER, &given, mass(powder));
    out.answer.figure(names::FILL_TOTAL, Value::new(fill.level, Kind::Fill));
    out.answer.figure(names::FILL_WATER, Value::new(fill.level, Kind::Fill));
    out.answer.figure(names::FILL_MASS, mass(powder));
    out.answer.figure(names::POWDER_LOW, mass(window.low));
    out.answer.figure(names::POWDER_HIGH, mass(window.high));
    let Some(step) = step else { return };
    let open = Window { low: Mass::ZERO, high: Mass::new(f64::INFINITY) };
    let rounded = round_to(powder, step, if window.is_point() { open } else { window });
    // What the label's range allows is not coarse, however far from the aim.
    let in_range = rounded.inside && !window.is_point();
    if !in_range && (rounded.dose / powder - 1.0).abs() > COARSE {
        let remark = Remark::new("remark-measure-coarse", Weight::Warn).value("rounded", mass(rounded.dose));
        out.answer.remark(remark.value("dose", mass(powder)));
        return;
    }
    out.answer.figure(names::FILL_COUNT, Value::plain(rounded.count, Kind::Count));
    out.answer.figure(names::FILL_MASS_ROUNDED, mass(rounded.dose));
    if !by_weight {
        let given = [("m", mass(powder)), ("ρ × s", mass(step))];
        out.answer.step(&formula::SCOOPS, &given, Value::plain(rounded.count, Kind::Count));
    }
    if !(rounded.inside || window.is_point()) {
        out.answer.remark(
            Remark::new("remark-rounded-outside", Weight::Warn).value("rounded", mass(rounded.dose)).window(
                "window",
                window.low,
                window.high,
                Kind::Mass,
            ),
        );
    }
}

/// What one level scoop, or one graduation of a jug, holds of the powder.
fn scoop(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Mass> {
    let volume = out.need::<Volume>(typed, Field::MeasureStep, marks);
    let density = out.need::<Density>(typed, Field::Density, marks);
    mass_of(volume?, Some(density?)).ok()
}

/// The smallest division of the scale, and the density of what is weighed on it.
pub(super) fn scale(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<(Mass, Density)> {
    let step = out.need::<Mass>(typed, Field::MeasureWeight, marks);
    let density = out.need::<Density>(typed, Field::Density, marks);
    Some((step?, density?))
}

/// A liquid that is weighed out.
pub(super) fn weighed(out: &mut Outcome, job: &Job, governed: Governed, step: Mass, density: Density) {
    let exact = density * governed.dose;
    let given = [("ρ", Value::new(density, Kind::Density)), ("c", Value::new(governed.dose, Kind::Dose))];
    out.answer.step(&formula::WEIGHED, &given, mass(exact));
    out.answer.figure(names::FILL_MASS, mass(exact));
    super::rounding::rounded(out, job, governed, step / density);
    if let Some(count) = out.answer.get(names::FILL_COUNT) {
        out.answer.figure(names::FILL_MASS_ROUNDED, mass(step * count.si));
    }
}

fn mass(mass: Mass) -> Value {
    Value::new(mass, Kind::Mass)
}
