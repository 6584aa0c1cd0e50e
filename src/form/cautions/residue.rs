//! What a cleaning leaves on the floor.

use crate::answer::{Remark, Value, Weight};
use crate::form::{Field, Outcome, Typed, fill, flow, names};
use crate::number::Marks;
use crate::trade::formula;
use crate::trade::residue::{left_at_most, left_by_one};
use crate::units::{ApplicationRate, Kind, MassConcentration, Plain, Quantity, VolumeFraction};

/// 100 % of mass in volume, kg/m³: only a heavy syrup holds more.
const WHOLE: f64 = 1_000.0;

/// Why nothing is worked out: the key of what to do first.
pub fn missing(typed: &Typed, marks: Marks) -> &'static str {
    let typed_in = typed.product().is_some_and(|product| !product.solids.text.trim().is_empty());
    let has = |answer: &crate::answer::Answer, name| answer.get(name).is_some();
    if !typed_in {
        "residue-unknown"
    } else if !has(&fill::unsure(typed, marks).outcome.answer, names::FILL_STRENGTH) {
        "residue-no-strength"
    } else if !has(&flow::work(typed, marks).outcome.answer, names::FLOW_FILM) {
        "residue-no-film"
    } else {
        "residue-unknown"
    }
}

/// Works out what one cleaning and many cleanings leave, from the film of Flow, the strength of Fill and
/// what is dissolved in the product.
///
/// Figures: [`names::RESIDUE_ONE`], [`names::RESIDUE_SUM`]; none where what is dissolved is not known.
///
/// ```
/// use brimline::form::{Action, Field, Typed, action::reduce, cautions::residue::work, names};
/// use brimline::number::Marks;
/// assert!(work(&Typed::default(), Marks::POINT).answer.get(names::RESIDUE_ONE).is_none());
/// let typed = reduce(Typed::default(), Action::Write(Field::Solids, "10".into()));
/// let answer = work(&typed, Marks::POINT).answer;
/// let si = |name| answer.get(name).unwrap().si;
/// assert!((si(names::RESIDUE_SUM) / si(names::RESIDUE_ONE) - 30.0).abs() < 1e-9);
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Outcome {
    let mut out = Outcome::default();
    let solids = out.may::<MassConcentration>(typed, Field::Solids, marks).flatten();
    let cleanings = out.need::<Plain>(typed, Field::Cleanings, marks);
    let of = |answer: &crate::answer::Answer, name| answer.get(name).map(|value| value.si);
    // What is wrong with these is told on their own views.
    let film = of(&flow::work(typed, marks).outcome.answer, names::FLOW_FILM);
    let strength = of(&fill::unsure(typed, marks).outcome.answer, names::FILL_STRENGTH);
    if solids.is_some_and(|solids| solids.si() > WHOLE) {
        out.answer.remark(Remark::new("remark-residue-solids", Weight::Warn));
    }
    let (Some(solids), Some(cleanings), Some(film), Some(strength)) = (solids, cleanings, film, strength)
    else {
        return out;
    };
    let (film, strength) = (ApplicationRate::from_si(film), VolumeFraction::from_si(strength));
    let one = left_by_one(film, strength, solids);
    let sum = left_at_most(one, cleanings.si());
    let (one, sum) = (Value::new(one, Kind::Residue), Value::new(sum, Kind::Residue));
    let given = [
        ("f", Value::new(film, Kind::Rate)),
        ("r", Value::new(strength, Kind::Percent)),
        ("s", Value::new(solids, Kind::Powder)),
    ];
    let answer = &mut out.answer;
    answer.figure(names::RESIDUE_ONE, one);
    answer.figure(names::RESIDUE_SUM, sum);
    answer.step(&formula::RESIDUE, &given, one);
    answer.step(&formula::RESIDUE_SUM, &[("n", Value::plain(cleanings.si(), Kind::Count)), ("m", one)], sum);
    answer.remark(Remark::new("remark-residue-estimate", Weight::Assumed));
    out
}
