//! What holds of every solution.

use brimline::chemistry::acid_base::{
    Activity, Ingredient, Makeup, Product, Solution, Water, Weak, curve, estimate, substance, weak,
};
use brimline::limits;
use brimline::units::{Density, MassConcentration, MassFraction, Quantity, VolumeFraction};
use proptest::prelude::*;

const STRONG_ACID: Makeup = Makeup { molar_mass: 36.5, plus: 0.0, minus: 1.0, weak: &[] };
const STRONG_BASE: Makeup = Makeup { molar_mass: 40.0, plus: 1.0, minus: 0.0, weak: &[] };

fn any_activity() -> impl Strategy<Value = Activity> {
    proptest::sample::select(vec![Activity::Ideal, Activity::Davies])
}

fn any_weak_acid() -> impl Strategy<Value = &'static Weak> {
    let acids: Vec<_> = weak::ALL.iter().copied().filter(|acid| acid.charge <= 0).collect();
    proptest::sample::select(acids)
}

/// From traces to more than any liquid holds, mol/L.
fn any_amount() -> impl Strategy<Value = f64> {
    prop_oneof![Just(0.0), (-9.0..2.2_f64).prop_map(|log| 10_f64.powf(log))]
}

fn any_weak() -> impl Strategy<Value = &'static Weak> {
    proptest::sample::select(weak::ALL.to_vec())
}

fn any_solution() -> impl Strategy<Value = Solution> {
    let weak = proptest::collection::vec((any_weak(), any_amount()), 0..6);
    (any_amount(), any_amount(), weak).prop_map(|(plus, minus, weak)| {
        let ions = Solution::water().strong(plus, minus);
        weak.into_iter().fold(ions, |all, (acid, amount)| all.weak(acid, amount))
    })
}

/// As thin as use solutions are.
fn thin_solution() -> impl Strategy<Value = Solution> {
    any_solution().prop_map(|solution| {
        let strength = solution.balance(Activity::Ideal).ionic_strength;
        solution.diluted((0.02 / strength).min(1.0))
    })
}

fn any_water() -> impl Strategy<Value = Water> {
    (0.0..0.5_f64, 5.0..9.5_f64)
        .prop_map(|(alkalinity, ph)| Water { alkalinity: MassConcentration::new(alkalinity), ph })
}

const STRANGER: &str = "50-00-0";

fn any_ingredients() -> impl Strategy<Value = Vec<(&'static str, f64, f64)>> {
    let numbers: Vec<&str> = substance::all().map(|row| row.cas).chain([STRANGER, "trade secret"]).collect();
    let one = (proptest::sample::select(numbers), 0.0..1.0_f64, 0.0..=1.0_f64)
        .prop_map(|(cas, high, share)| (cas, high * share, high));
    proptest::collection::vec(one, 0..7)
}

fn ingredients<'a>(given: &[(&'a str, f64, f64)]) -> Vec<Ingredient<'a>> {
    let share = MassFraction::new;
    given.iter().map(|&(cas, low, high)| Ingredient { cas, low: share(low), high: share(high) }).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Charges sum to nothing, whatever was put in, and pH is a number.
    #[test]
    fn charges_balance(solution in any_solution(), activity in any_activity()) {
        let found = solution.balance(activity);
        prop_assert!(found.ph.is_finite() && (-4.0..18.0).contains(&found.ph), "{found:?}");
        prop_assert!(found.ionic_strength >= 0.0 && found.ionic_strength.is_finite());
        // One part in 10¹⁰ of all charges, and the last bits of ions that cancel.
        let strong = 2e-16 * found.ionic_strength;
        prop_assert!(found.residual.abs() <= 1e-10 * found.charges + strong, "{found:?} of {solution:?}");
    }

    /// More strong acid never raises pH, more strong base never lowers it.
    #[test]
    fn acid_lowers_and_base_raises(solution in any_solution(), amount in any_amount()) {
        let ph = solution.balance(Activity::Ideal).ph;
        let acid = solution.clone().with(&STRONG_ACID, amount).balance(Activity::Ideal).ph;
        let base = solution.with(&STRONG_BASE, amount).balance(Activity::Ideal).ph;
        prop_assert!(acid <= ph + 1e-9 && base >= ph - 1e-9, "{acid} {ph} {base}");
    }

    /// The same with activities, as thin as use solutions are. There a salt shifts pH too: more acid brings
    /// its ion along, which may move a buffer by a few thousandths the other way.
    #[test]
    fn acid_lowers_and_base_raises_with_activities(solution in thin_solution(), amount in -9.0..-2.0_f64) {
        let amount = 10_f64.powf(amount);
        let ph = solution.balance(Activity::Davies).ph;
        let acid = solution.clone().with(&STRONG_ACID, amount).balance(Activity::Davies).ph;
        let base = solution.with(&STRONG_BASE, amount).balance(Activity::Davies).ph;
        prop_assert!(acid <= ph + 0.01 && base >= ph - 0.01, "{acid} {ph} {base}");
    }

    /// More of a weak acid that carries no charge never raises pH.
    #[test]
    fn weak_acid_lowers(solution in any_solution(), acid in any_weak_acid(), amount in any_amount()) {
        let ph = solution.balance(Activity::Ideal).ph;
        prop_assert!(solution.weak(acid, amount).balance(Activity::Ideal).ph <= ph + 1e-9);
    }

    /// The more of a strong acid is thinned with water, the nearer its pH comes to the water's.
    #[test]
    fn thinning_leads_to_the_water(
        water in any_water(), acid in -4.0..0.5_f64, more in 0.0..1.0_f64, share in 0.000_01..1.0_f64,
    ) {
        let activity = Activity::Ideal;
        let tap = water.solution(activity);
        let own = tap.balance(activity).ph;
        let at = |share: f64| {
            let strong = Solution::water().with(&STRONG_ACID, 10_f64.powf(acid) * share);
            strong.and(&tap.clone().diluted(1.0 - share)).balance(activity).ph
        };
        let (strong, thin) = (at(share), at(share * more));
        prop_assert!(strong <= thin + 1e-9 && thin <= own + 1e-9, "{strong} {thin} {own}");
        prop_assert!((at(0.0) - own).abs() < 1e-9);
    }

    /// Twice of everything at once is the same solution poured together twice.
    #[test]
    fn order_does_not_matter(one in any_solution(), other in any_solution()) {
        let (forth, back) = (one.clone().and(&other), other.and(&one));
        let (forth, back) = (forth.balance(Activity::Ideal).ph, back.balance(Activity::Ideal).ph);
        prop_assert!((forth - back).abs() < 1e-8, "{forth} {back}");
    }

    /// Tap water has the pH that it is said to have.
    #[test]
    fn water_keeps_its_ph(water in any_water(), activity in any_activity()) {
        prop_assume!(water.agrees() && water.alkalinity.si() > 0.001);
        let ph = water.solution(activity).balance(activity).ph;
        prop_assert!((ph - water.ph).abs() < 0.06);
        prop_assert!(water.ph > 9.0 || (ph - water.ph).abs() < 1e-6, "{ph} {water:?}");
    }

    /// No mixture within the ranges lies outside the band, with activities by no more than 0.005.
    #[test]
    fn the_band_holds_every_mixture(
        given in any_ingredients(), r in -3.0..-1.0_f64, water in any_water(), density in 900.0..1_300.0_f64,
        shares in proptest::collection::vec(0.0..=1.0_f64, 7),
    ) {
        let known: Vec<_> = given.into_iter().filter(|one| substance::find(one.0).is_some()).collect();
        let mixture: Vec<_> =
            known.iter().zip(shares).map(|(&(cas, low, high), at)| (cas, low + at * (high - low))).collect();
        let fixed: Vec<_> = mixture.iter().map(|&(cas, share)| (cas, share, share)).collect();
        let of = |given: &[(&str, f64, f64)], activity| {
            let ingredients = ingredients(given);
            let product = Product { ingredients: &ingredients, density: Density::new(density) };
            estimate(product, VolumeFraction::new(10_f64.powf(r)), water, activity)
        };
        for (activity, within) in [(Activity::Ideal, 1e-8), (Activity::Davies, 0.005)] {
            let (band, one) = (of(&known, activity), of(&fixed, activity));
            prop_assert!(band.low <= one.low + within, "{} {} {known:?}", band.low, one.low);
            prop_assert!(band.high >= one.high - within, "{} {} {known:?}", band.high, one.high);
        }
    }

    /// Whatever is typed within the limits: numbers, in order, and nothing unknown passes for known.
    #[test]
    fn estimates_end(
        given in any_ingredients(), r in -5.0..=0.0_f64, water in any_water(), activity in any_activity(),
        density in limits::DENSITY.low..=limits::DENSITY.high,
    ) {
        let listed = ingredients(&given);
        let product = Product { ingredients: &listed, density: Density::new(density) };
        let found = estimate(product, VolumeFraction::new(10_f64.powf(r)), water, activity);
        prop_assert!(found.low.is_finite() && found.high.is_finite() && found.low <= found.high + 1e-9, "{found:?}");
        let strangers = given.iter().filter(|one| substance::find(one.0).is_none()).count();
        prop_assert_eq!(found.unknown.len() + found.traces.len(), strangers);
        prop_assert_eq!(found.parts.len() + strangers, given.len());
        prop_assert_eq!(found.range().is_some(), found.unknown.is_empty());
    }

    /// The curve begins at the water and ends at the estimate.
    #[test]
    fn curves_join_water_and_estimate(given in any_ingredients(), r in 0.001..0.2_f64, water in any_water(), steps in 1_u16..9) {
        let listed = ingredients(&given);
        let product = Product { ingredients: &listed, density: Density::new(1_050.0) };
        let strength = VolumeFraction::new(r);
        let points = curve(product, water, Activity::Davies, strength, steps);
        let whole = estimate(product, strength, water, Activity::Davies);
        let plain = water.solution(Activity::Davies).balance(Activity::Davies).ph;
        prop_assert_eq!(points.len(), usize::from(steps) + 1);
        let (first, last) = (points[0], points[points.len() - 1]);
        prop_assert!((first.low - plain).abs() < 1e-9 && (first.high - plain).abs() < 1e-9 && first.known);
        prop_assert_eq!((last.low, last.high, last.known), (whole.low, whole.high, whole.unknown.is_empty()));
        prop_assert!(points.is_sorted_by(|a, b| a.strength < b.strength));
    }
}
