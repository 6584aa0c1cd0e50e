//! From what a safety data sheet lists, the dilution and the tap water to a band of pH.

mod corner;

use super::activity::DAVIES_REACH;
use super::substance::{self, Brings};
use super::{Activity, Makeup, Substance, Water, Weak, weak};
use crate::chemistry::floor::PhRange;
use crate::source::Standing;
use crate::units::{Density, MassFraction, Quantity, VolumeFraction};
use corner::Blend;

/// One line of section 3 of a safety data sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ingredient<'a> {
    /// CAS number as typed; anything else where the sheet gives none.
    pub cas: &'a str,
    /// The least of it, 0 to 1.
    pub low: MassFraction,
    /// The most of it, 0 to 1; not less than `low`.
    pub high: MassFraction,
}

/// A product as its safety data sheet tells it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Product<'a> {
    /// All that is listed. What is not counts as water.
    pub ingredients: &'a [Ingredient<'a>],
    /// kg/m³, above 0.
    pub density: Density,
}

/// An ingredient that a row knows and what of it is in the use solution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Which ingredient.
    pub ingredient: usize,
    /// The row that knows it.
    pub substance: &'static Substance,
    /// How much of it the mixture with the lowest pH holds, mol/L.
    pub at_low: f64,
    /// How much the one with the highest pH holds, mol/L.
    pub at_high: f64,
}

/// What an estimate takes for granted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Assumption {
    /// 25 °C: warm alkaline solutions read lower, by a few hundredths a degree.
    Temperature,
    /// No carbon dioxide comes or goes.
    Closed,
    /// Hardness pairs up with nothing and nothing falls out. In hard water, what binds or drops calcium
    /// (EDTA, NTA, phosphate, carbonate, silicate) gives up protons for it and reads lower.
    NoPairs,
    /// What the sheet does not list is water.
    RestIsWater,
    /// The name of this ingredient leaves open what it brings; the band covers it.
    Between(usize),
    /// Silicate comes as single molecules; from about 0.002 mol/L on chains
    /// form, which hold their protons less; from memory, unverified.
    SingleSilicate,
    /// Stronger than the activity model reaches: at the least as unsure as a few tenths.
    BeyondActivities,
    /// The tap water's pH and alkalinity do not go together; the alkalinity counts.
    WaterDisagrees,
    /// Ingredients that no row knows are too little to matter; the band covers them.
    Traces,
    /// The constants of this acid or base were not checked against a publication.
    FromMemory(&'static Weak),
}

/// A band of pH.
///
/// Not reassuring while `unknown` holds anything: [`Self::range`] then gives none.
#[derive(Clone, Debug, PartialEq)]
pub struct Estimate {
    /// The lowest pH of a mixture within the ranges; of the known ingredients alone where some are
    /// unknown.
    pub low: f64,
    /// The highest.
    pub high: f64,
    /// Ingredients that no row knows and that may matter, by their place in the list.
    pub unknown: Vec<usize>,
    /// Ingredients that no row knows, of which there is so little that the strongest acid and the strongest
    /// base could not move pH by [`TRACE`].
    pub traces: Vec<usize>,
    /// The workings: what each known ingredient puts in.
    pub parts: Vec<Part>,
    /// The greater ionic strength of the two mixtures, mol/L.
    pub ionic_strength: f64,
    /// What was taken for granted.
    pub assumed: Vec<Assumption>,
}

impl Estimate {
    /// The band; none while an ingredient that may matter is unknown.
    pub fn range(&self) -> Option<PhRange> {
        self.unknown.is_empty().then_some(PhRange { low: self.low, high: self.high })
    }
}

/// A move of pH that does not matter: what a meter at a fill station is off by. Common practice.
pub const TRACE: f64 = 0.1;

/// The lightest molecule that can take or give a proton is ammonia: so little of anything weighs a mole of
/// charge, g/mol.
const LIGHTEST: f64 = 17.0;

/// The pH of a use solution.
///
/// `cᵢ = wᵢ × ρ × r / Mᵢ`, each wᵢ at that end of its range which moves pH furthest, in tap water that the
/// product takes the place of; then [`Solution::balance`](super::Solution::balance)
///
/// * `product`: wᵢ, 0 to 1, and ρ, kg/m³, 100 to 2,500.
/// * `strength`: r, 0 to 1.
/// * `water`: the tap's.
/// * `activity`: [`Activity::Davies`] for figures that people see.
///
/// Returns the band, with what is unknown and what was taken for granted. Whether the shares can add up to
/// one is not checked: a mixture outside that only widens the band. Source: [`super::SOURCE`]; why the ends
/// of the ranges suffice stands in [`super`].
///
/// ```
/// use brimline::chemistry::acid_base::{Activity, Ingredient, Product, Water, estimate};
/// use brimline::units::{Density, MassConcentration, MassFraction, VolumeFraction};
/// let citric = Ingredient { cas: "77-92-9", low: MassFraction::new(0.05), high: MassFraction::new(0.10) };
/// let product = Product { ingredients: &[citric], density: Density::new(1_040.0) };
/// let tap = Water { alkalinity: MassConcentration::new(0.1), ph: 7.5 };
/// let found = estimate(product, VolumeFraction::new(1.0 / 33.0), tap, Activity::Davies);
/// let band = found.range().expect("citric acid is known");
/// assert!((2.6..2.7).contains(&band.low) && (2.8..2.95).contains(&band.high));
/// ```
pub fn estimate(product: Product, strength: VolumeFraction, water: Water, activity: Activity) -> Estimate {
    let r = strength.si().clamp(0.0, 1.0);
    let mass = |share: MassFraction| share.si().clamp(0.0, 1.0) * product.density.si() * r;
    let mut blend = Blend::new(water.solution(activity).diluted(1.0 - r));
    let (mut known, mut unknown) = (Vec::new(), Vec::new());
    for (place, ingredient) in product.ingredients.iter().enumerate() {
        let Some(row) = substance::find(ingredient.cas) else {
            unknown.push(place);
            continue;
        };
        let ends = [mass(ingredient.low.min(ingredient.high)), mass(ingredient.low.max(ingredient.high))];
        blend.part(row.makeups().flat_map(|makeup| ends.map(|end| (*makeup, end / makeup.molar_mass))));
        known.push((place, row));
    }
    let mut band = blend.band(activity);
    let mut traces = Vec::new();
    if !unknown.is_empty() {
        for &place in &unknown {
            blend.part(anything(mass(product.ingredients[place].high) / LIGHTEST));
        }
        let wide = blend.band(activity);
        if band.low.ph - wide.low.ph <= TRACE && wide.high.ph - band.high.ph <= TRACE {
            band = wide;
            traces = std::mem::take(&mut unknown);
        }
    }
    let parts: Vec<Part> = known
        .iter()
        .zip(band.low.amounts.iter().zip(&band.high.amounts))
        .map(|(&(ingredient, substance), (&at_low, &at_high))| Part {
            ingredient,
            substance,
            at_low,
            at_high,
        })
        .collect();
    let ionic_strength = band.low.ionic_strength.max(band.high.ionic_strength);
    let assumed = assumptions(&parts, ionic_strength, !traces.is_empty(), water);
    Estimate { low: band.low.ph, high: band.high.ph, unknown, traces, parts, ionic_strength, assumed }
}

/// What an unknown ingredient may bring: nothing, acid or lye.
fn anything(amount: f64) -> impl Iterator<Item = (Makeup, f64)> {
    let ion = |plus, minus| Makeup { molar_mass: LIGHTEST, plus, minus, weak: &[] };
    [(ion(0.0, 0.0), amount), (ion(1.0, 0.0), amount), (ion(0.0, 1.0), amount)].into_iter()
}

fn assumptions(parts: &[Part], ionic_strength: f64, traces: bool, water: Water) -> Vec<Assumption> {
    let mut all =
        vec![Assumption::Temperature, Assumption::Closed, Assumption::NoPairs, Assumption::RestIsWater];
    let open = parts.iter().filter(|part| matches!(part.substance.brings, Brings::Between(..)));
    all.extend(open.map(|part| Assumption::Between(part.ingredient)));
    let mut acids: Vec<&'static Weak> = Vec::new();
    for (acid, _) in parts.iter().flat_map(|part| part.substance.makeups()).flat_map(|makeup| makeup.weak) {
        if !acids.contains(acid) {
            acids.push(acid);
        }
    }
    let when = [
        (acids.contains(&&weak::SILICIC), Assumption::SingleSilicate),
        (ionic_strength > DAVIES_REACH, Assumption::BeyondActivities),
        (!water.agrees(), Assumption::WaterDisagrees),
        (traces, Assumption::Traces),
    ];
    all.extend(when.into_iter().filter(|(holds, _)| *holds).map(|(_, one)| one));
    let unsure = acids.into_iter().filter(|acid| acid.source.standing == Standing::Unverified);
    all.extend(unsure.map(Assumption::FromMemory));
    all
}
