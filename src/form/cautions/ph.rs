//! The pH of the use solution, estimated from what the product is made of, the dilution and the tap water.

use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::acid_base::{
    self, Activity, Assumption, Estimate, Ingredient, Point, Water, curve, estimate,
};
use crate::chemistry::cas;
use crate::chemistry::floor::PhRange;
use crate::chemistry::ghs::mixture::{HEAVIEST, WATER};
use crate::form::{Field, Outcome, Typed, What, fill, names};
use crate::limits::STRENGTH;
use crate::number::Marks;
use crate::units::{Density, Kind, MassConcentration, MassFraction, Plain, Quantity, VolumeFraction};

/// So many steps the picture has.
const STEPS: u16 = 24;

/// What is known of a use solution's pH.
#[derive(Clone, Debug, Default)]
pub struct Ph {
    /// Figures, what was taken for granted, and mistakes at their fields.
    pub outcome: Outcome,
    /// The band; none while something that may matter is not known.
    pub band: Option<PhRange>,
    /// Names of the parts that no table knows.
    pub unknown: Vec<String>,
    /// The band from plain water to twice this strength, where there is one.
    pub curve: Vec<Point>,
    /// The strength of the use solution.
    pub strength: Option<VolumeFraction>,
    /// The band of the concentrate itself.
    pub neat: Option<PhRange>,
}

/// Estimates the pH of the product asked about at the strength of Fill, in the site's tap water.
///
/// A pH that the maker prints for the use solution stands first, and where both disagree the worse counts: `use_ph`. Figures: [`names::PH_LOW`], [`names::PH_HIGH`].
///
/// ```
/// use brimline::form::{Typed, cautions::ph::work, names};
/// use brimline::number::Marks;
/// let unknown = work(&Typed::default(), Marks::POINT);
/// assert!(unknown.band.is_none() && unknown.outcome.answer.get(names::PH_LOW).is_none());
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Ph {
    // What is wrong with the fill is told on Fill.
    let strength = fill::work(typed, marks).outcome.answer.get(names::FILL_STRENGTH);
    solve(typed, strength.map(|strength| VolumeFraction::from_si(strength.si)), STEPS, marks)
}

/// The same at a strength of its own, without the picture.
pub(super) fn at(typed: &Typed, strength: Option<VolumeFraction>, marks: Marks) -> Ph {
    solve(typed, strength, 0, marks)
}

fn solve(typed: &Typed, strength: Option<VolumeFraction>, steps: u16, marks: Marks) -> Ph {
    let mut found = Ph::default();
    let out = &mut found.outcome;
    let alkalinity = out.need::<MassConcentration>(typed, Field::Alkalinity, marks);
    let tap = out.need::<Plain>(typed, Field::TapPh, marks);
    let parts = parts(out, typed, marks);
    let density = out.may::<Density>(typed, Field::Density, marks);
    let Some(product) = typed.product() else { return found };
    let (Some(alkalinity), Some(tap), Some(parts), Some(density)) = (alkalinity, tap, parts, density) else {
        return found;
    };
    let Some(strength) = strength else { return found };
    found.strength = Some(strength);
    if parts.is_empty() {
        return found;
    }
    // What a litre holds is share times density: where nobody knows the density, a litre of what is as light as
    // water holds the least, of the heaviest the most.
    let heavier = if density.is_some() { 1.0 } else { HEAVIEST / WATER };
    let most = |high: MassFraction| (high * heavier).min(MassFraction::new(1.0));
    let ingredients: Vec<Ingredient> = parts
        .iter()
        .map(|(cas, low, high)| Ingredient { cas: cas.as_str(), low: *low, high: most(*high) })
        .collect();
    let made = acid_base::Product { ingredients: &ingredients, density: density.unwrap_or(WATER) };
    let water = Water { alkalinity, ph: tap.si() };
    let told = estimate(made, strength, water, Activity::Davies);
    found.unknown = told.unknown.iter().map(|place| product.parts[*place].name.clone()).collect();
    note(&mut found.outcome, &told, product.parts.as_slice());
    if density.is_none() {
        found.outcome.answer.remark(Remark::new("remark-ph-density", Weight::Assumed));
    }
    found.band = told.range();
    if let Some(band) = found.band {
        let answer = &mut found.outcome.answer;
        answer.figure(names::PH_LOW, Value::plain(band.low, Kind::Ph));
        answer.figure(names::PH_HIGH, Value::plain(band.high, Kind::Ph));
        if steps > 0 {
            let up_to = (strength * 2.0).min(VolumeFraction::new(STRENGTH.high));
            found.curve = curve(made, water, Activity::Davies, up_to, steps);
        }
        found.neat = estimate(made, VolumeFraction::new(1.0), water, Activity::Davies).range();
    }
    found
}

/// CAS number, least and most of each part; mistakes are noted.
pub(super) fn parts(
    out: &mut Outcome,
    typed: &Typed,
    marks: Marks,
) -> Option<Vec<(String, MassFraction, MassFraction)>> {
    let count = typed.product().map_or(0, |product| product.parts.len());
    let mut sound = true;
    let mut all = Vec::new();
    for index in 0..count {
        let part = &typed.product()?.parts[index];
        if !part.cas.trim().is_empty() && cas::check(&part.cas).is_none() {
            out.trouble(format!("part-{}-cas", index + 1), What::Cas);
            sound = false;
        }
        let low = out.may::<MassFraction>(typed, Field::PartLow(index), marks);
        let high = out.may::<MassFraction>(typed, Field::PartHigh(index), marks);
        // A sheet gives a range, one number, or "less than": an end that is missing is the other one, or none
        // of it at all.
        let ends = match (low, high) {
            (Some(Some(low)), Some(Some(high))) if low > high => {
                out.trouble(Field::PartLow(index).name(), What::LeastAboveMost);
                None
            }
            (Some(Some(low)), Some(high)) => Some((low, high.unwrap_or(low))),
            (Some(None), Some(Some(high))) => Some((MassFraction::ZERO, high)),
            // Nobody knows how much: from nothing to all of it.
            (Some(None), Some(None)) => Some((MassFraction::ZERO, MassFraction::new(1.0))),
            _ => None,
        };
        match ends {
            Some((low, high)) => all.push((part.cas.clone(), low, high)),
            None => sound = false,
        }
    }
    sound.then_some(all)
}

/// What was taken for granted.
fn note(out: &mut Outcome, told: &Estimate, parts: &[crate::site::Ingredient]) {
    for assumed in &told.assumed {
        let (code, about) = match assumed {
            Assumption::Temperature => ("remark-ph-temperature", None),
            Assumption::Closed => ("remark-ph-closed", None),
            Assumption::NoPairs => ("remark-ph-no-pairs", None),
            Assumption::RestIsWater => ("remark-ph-rest", None),
            Assumption::Between(place) => ("remark-ph-between", Some(parts[*place].name.clone())),
            Assumption::SingleSilicate => ("remark-ph-silicate", None),
            Assumption::BeyondActivities => ("remark-ph-strong", None),
            Assumption::WaterDisagrees => ("remark-ph-water", None),
            Assumption::Traces => ("remark-ph-traces", None),
            Assumption::FromMemory(weak) => ("remark-ph-memory", Some(weak.name.to_owned())),
        };
        let mut remark = Remark::new(code, Weight::Assumed);
        if let Some(about) = about {
            remark = remark.with("part", Fact::Text(about));
        }
        out.answer.remark(remark);
    }
}
