//! How sure the dose is: tank mark, measure and label, each with its tolerance.

use crate::answer::{Remark, Value, Weight};
use crate::form::{Field, Filling, Outcome, Typed, names};
use crate::limits;
use crate::number::Marks;
use crate::trade::certainty::{Cause, Dose, Measured, Overall, chance_inside, draw, first_order, worst_case};
use crate::trade::formula;
use crate::trade::label::{Basis, Label, Rule, Window};
use crate::trade::reading::with_tolerance;
use crate::trade::rescue::TOLERANCE;
use crate::units::{Kind, Quantity, Volume, VolumeFraction};

/// The same draws for the same question, on every device.
const SEED: u64 = 1;

/// Shares of the doubt that differ by less are told as alike.
const ALIKE: f64 = 0.05;

/// Enough to know the chance to within 1 %: √(p (1 − p) / N) is at most 0.8 %.
const DRAWS: u32 = 4_000;

/// Notes what the tolerances make of a dose of liquid concentrate in a measure.
pub(super) fn note(out: &mut Outcome, typed: &Typed, label: Option<&Label>, marks: Marks) {
    let answer = &out.answer;
    let measured = answer.get(names::FILL_COUNT).and_then(|_| answer.get(names::FILL_ROUNDED));
    let dose = measured.or(answer.get(names::FILL_DOSE)).map(|value| Volume::from_si(value.si));
    let total = answer.get(names::FILL_TOTAL).map(|value| Volume::from_si(value.si));
    let (Some(dose), Some(total), Some(label)) = (dose, total, label) else { return };
    let drawn = typed.measure().is_some_and(|measure| measure.dispenser.draws());
    if drawn || matches!(label.rule, Rule::Powder(_) | Rule::Packets(_)) {
        return;
    }
    let measure = tolerance(out, typed, Field::SureMeasure, dose, marks);
    let mark = tolerance(out, typed, Field::SureTank, total, marks);
    let doubt = label_doubt(out, typed, label, dose.fraction_of(total), marks);
    let (Some(measure), Some(mark), Some(doubt)) = (measure, mark, doubt) else { return };
    let made = |of: fn(Volume, Volume) -> Measured<Volume>| {
        let concentrate = of(dose, measure);
        match typed.ask.filling {
            Filling::MadeUp => Dose::MadeUp { concentrate, total: of(total, mark) },
            Filling::OnTop => Dose::OnTop { concentrate, water: of(total - dose, mark) },
        }
    };
    let deviations = made(Measured::within_limits);
    let spread = first_order(deviations);
    let overall = Overall::of(spread, doubt / 3.0_f64.sqrt());
    let worst = worst_case(made(|value, error| Measured { value, error }));
    let window = window(out, label, total);
    let chance = chance_inside(spread.strength, overall.error, window);
    let drawn = draw(deviations, window, overall.label, SEED, DRAWS);

    let answer = &mut out.answer;
    let percent = |share: f64| Value::new(VolumeFraction::new(share), Kind::Percent);
    let ratio = |strength: VolumeFraction| Value::plain(strength.parts_of_water(), Kind::Ratio);
    let given = [
        ("x", Value::new(spread.strength, Kind::Percent)),
        ("c", Value::new(dose, Kind::Dose)),
        ("V", Value::new(total, Kind::Fill)),
    ];
    answer.step(&formula::SURE, &given, Value::new(overall.error, Kind::Percent));
    answer.figure(names::SURE_ERROR, Value::new(dose * (overall.error / spread.strength), Kind::Dose));
    answer.figure(
        names::SURE_RATIO_ERROR,
        Value::plain(overall.error.si() / spread.strength.si().powi(2), Kind::Ratio),
    );
    answer.figure(names::SURE_STRONGEST, ratio(worst.high * (1.0 + doubt)));
    // A tolerance as great as the dose may leave nothing of it, and no ratio.
    if worst.low > VolumeFraction::ZERO {
        answer.figure(names::SURE_WEAKEST, ratio(worst.low * (1.0 - doubt)));
    }
    answer.figure(names::SURE_INSIDE, percent(chance));
    if let Some(drawn) = drawn {
        answer.figure(names::SURE_DRAWN, percent(drawn.inside));
    }
    let shares = [overall.by_measure, overall.by_water, overall.by_label];
    let most = shares.into_iter().fold(0.0, f64::max);
    let alike = shares.iter().filter(|share| most - **share < ALIKE).count() > 1;
    let cause = match overall.cause() {
        _ if alike => "sure-cause-alike",
        Cause::Measure => "sure-cause-measure",
        Cause::Water => "sure-cause-water",
        Cause::Label => "sure-cause-label",
    };
    if overall.error > VolumeFraction::ZERO {
        answer.remark(
            Remark::new(cause, Weight::Assumed)
                .value("measure", percent(overall.by_measure))
                .value("water", percent(overall.by_water))
                .value("label", percent(overall.by_label)),
        );
    }
}

/// A tolerance, as a share of a volume or as a volume; mistakes are noted.
fn tolerance(out: &mut Outcome, typed: &Typed, field: Field, of: Volume, marks: Marks) -> Option<Volume> {
    let entry = field.entry(typed)?;
    if entry.text.trim().is_empty() {
        return Some(Volume::ZERO);
    }
    out.share_or_volume(typed, field, &limits::TOLERANCE_SHARE, of, marks)
}

/// How far the label itself may be off: as typed, else by the other way in which people read it, parts
/// of the total for parts of water.
fn label_doubt(
    out: &mut Outcome,
    typed: &Typed,
    label: &Label,
    strength: VolumeFraction,
    marks: Marks,
) -> Option<f64> {
    if let Some(share) = out.may::<VolumeFraction>(typed, Field::SureLabel, marks)? {
        return Some(share.si());
    }
    Some(match label.basis {
        // The other reading differs by so much: 1 to n or 1 in n, an amount per water or made up.
        Basis::PlusWater | Basis::OfTotal | Basis::PerWater | Basis::MadeUp => strength.si(),
        _ => 0.0,
    })
}

/// The label's own window of strengths: what a chance of being inside is about. A label with one number
/// gets the tolerance of a rescue.
fn window(out: &Outcome, label: &Label, total: Volume) -> Window<VolumeFraction> {
    let share = |name| {
        let bound = out.answer.get(name).map_or(0.0, |value| value.si);
        Volume::new(bound).min(total).fraction_of(total)
    };
    let window = Window { low: share(names::LABEL_LOW), high: share(names::LABEL_HIGH) };
    let window = if let Rule::Strength(asked) = label.rule { asked } else { window };
    if window.is_point() { with_tolerance(window, TOLERANCE) } else { window }
}
