//! Whole products, as safety data sheets list them.

use brimline::chemistry::acid_base::{
    Activity, Assumption, Estimate, Ingredient, Product, Water, estimate, weak,
};
use brimline::chemistry::floor::PhRange;
use brimline::units::{Density, MassConcentration, MassFraction, VolumeFraction};

const TAP: Water = Water { alkalinity: MassConcentration::new(0.1), ph: 7.5 };

fn of(given: &[(&str, f64, f64)], density: f64, parts: f64) -> Estimate {
    in_water(given, density, VolumeFraction::from_parts_of_water(parts), TAP)
}

/// Shares in per cent by mass.
fn in_water(given: &[(&str, f64, f64)], density: f64, r: VolumeFraction, water: Water) -> Estimate {
    let share = |percent: f64| MassFraction::new(percent / 100.0);
    let line = |&(cas, low, high)| Ingredient { cas, low: share(low), high: share(high) };
    let ingredients: Vec<Ingredient> = given.iter().map(line).collect();
    estimate(
        Product { ingredients: &ingredients, density: Density::new(density) },
        r,
        water,
        Activity::Davies,
    )
}

/// Vinegar of 5 % w/v, 6 fl oz on 10 gal, by its mass share: the same solution as the computed table's.
#[test]
fn vinegar_by_its_sheet() {
    let share = 100.0 * 0.833 * 60.052 / 1_006.0;
    let r = VolumeFraction::new(6.0 / 1_286.0);
    let found = in_water(&[("64-19-7", share, share), ("7732-18-5", 90.0, 95.0)], 1_006.0, r, TAP);
    // PHREEQC 3 with the equation of Davies: 4.7405.
    assert!((found.low - 4.7405).abs() < 0.01 && (found.high - found.low).abs() < 1e-9, "{found:?}");
    assert!(
        (found.parts[0].at_low - 0.003_886_47).abs() < 1e-6,
        "0.833 × 6 / 1286, less rounding of the density"
    );
    assert_eq!(found.range(), Some(PhRange { low: found.low, high: found.high }));
}

/// The band reaches both mixtures, and past them by no more than a salt shifts pH.
#[track_caller]
fn holds(band: &Estimate, low: &Estimate, high: &Estimate) {
    let (below, above) = (low.low - band.low, band.high - high.high);
    assert!((0.0..0.1).contains(&below) && (0.0..0.1).contains(&above), "{below} {above} {band:?}");
}

#[test]
fn a_range_of_acid_is_a_band() {
    let found = of(&[("5329-14-6", 5.0, 10.0), ("77-92-9", 1.0, 5.0)], 1_050.0, 32.0);
    let strongest = of(&[("5329-14-6", 10.0, 10.0), ("77-92-9", 5.0, 5.0)], 1_050.0, 32.0);
    let weakest = of(&[("5329-14-6", 5.0, 5.0), ("77-92-9", 1.0, 1.0)], 1_050.0, 32.0);
    holds(&found, &strongest, &weakest);
    assert!(found.low < found.high);
}

/// The lowest pH has the most acid and the least soda, the highest the other way round.
#[test]
fn ends_of_ranges_pull_apart() {
    let found = of(&[("7664-38-2", 1.0, 3.0), ("497-19-8", 1.0, 3.0)], 1_030.0, 20.0);
    let [acid, soda] = &found.parts[..] else { panic!("two parts") };
    assert!(acid.at_low > acid.at_high && soda.at_low < soda.at_high, "{found:?}");
    let low = of(&[("7664-38-2", 3.0, 3.0), ("497-19-8", 1.0, 1.0)], 1_030.0, 20.0);
    let high = of(&[("7664-38-2", 1.0, 1.0), ("497-19-8", 3.0, 3.0)], 1_030.0, 20.0);
    holds(&found, &low, &high);
}

/// Baking soda raises the pH of an acid and lowers that of a lye.
#[test]
fn baking_soda_takes_the_end_that_moves_ph_further() {
    let lye = of(&[("1310-73-2", 1.0, 1.0), ("144-55-8", 0.0, 5.0)], 1_030.0, 20.0);
    assert!(lye.parts[1].at_low > 0.0 && lye.parts[1].at_high == 0.0, "{lye:?}");
    let acid = of(&[("7647-01-0", 1.0, 1.0), ("144-55-8", 0.0, 2.0)], 1_030.0, 20.0);
    assert!(acid.parts[1].at_low == 0.0 && acid.parts[1].at_high > 0.0, "{acid:?}");
}

#[test]
fn an_unknown_ingredient_is_not_reassuring() {
    let found =
        of(&[("64-19-7", 5.0, 5.0), ("trade secret", 1.0, 5.0), ("50-00-0", 0.0, 1.0)], 1_000.0, 64.0);
    assert_eq!((found.unknown.as_slice(), found.range()), (&[1, 2][..], None));
    assert!(found.traces.is_empty() && !found.assumed.contains(&Assumption::Traces));
}

/// So little of an unknown one that even acid or lye would not show.
#[test]
fn traces_do_not_matter() {
    let found = of(&[("497-19-8", 5.0, 10.0), ("50-00-0", 0.0, 0.01)], 1_050.0, 32.0);
    let without = of(&[("497-19-8", 5.0, 10.0)], 1_050.0, 32.0);
    assert_eq!((found.unknown.as_slice(), found.traces.as_slice()), (&[][..], &[1][..]));
    assert!(found.low < without.low && without.low - found.low < 0.1, "the band covers it");
    assert!(found.high > without.high && found.assumed.contains(&Assumption::Traces));
}

/// The same trace matters in a product that holds nothing against it.
#[test]
fn traces_matter_where_nothing_holds_against_them() {
    let r = VolumeFraction::from_parts_of_water(10.0);
    let found = in_water(&[("64-17-5", 5.0, 10.0), ("50-00-0", 0.0, 0.1)], 990.0, r, Water::PURE);
    assert_eq!(found.unknown, [1]);
}

#[test]
fn what_is_taken_for_granted_is_told() {
    let found = of(&[("7681-52-9", 5.0, 6.0), ("1344-09-8", 1.0, 2.0)], 1_100.0, 20.0);
    for expected in [
        Assumption::Temperature,
        Assumption::Closed,
        Assumption::NoPairs,
        Assumption::RestIsWater,
        Assumption::Between(0),
        Assumption::Between(1),
        Assumption::SingleSilicate,
        Assumption::FromMemory(&weak::HYPOCHLOROUS),
    ] {
        assert!(found.assumed.contains(&expected), "{expected:?}");
    }
    assert!(!found.assumed.contains(&Assumption::BeyondActivities));
    let neat = of(&[("1310-73-2", 10.0, 20.0)], 1_150.0, 0.0);
    assert!(neat.ionic_strength > 0.5 && neat.assumed.contains(&Assumption::BeyondActivities));
    let odd = Water { alkalinity: MassConcentration::new(0.001), ph: 10.0 };
    let found = in_water(&[], 1_000.0, VolumeFraction::ZERO, odd);
    assert!(found.assumed.contains(&Assumption::WaterDisagrees));
}

/// Bleach at 200 ppm in pure water lies between no caustic at all and the most that the pharmacopoeia
/// allows: PHREEQC 3 gives 9.4624 without.
#[test]
fn bleach_is_open_upwards() {
    let r = VolumeFraction::new(0.21 / 55.0);
    let found = in_water(&[("7681-52-9", 5.0, 5.0)], 1_100.0, r, Water::PURE);
    let ppm_200 = 0.21 / 74.442;
    assert!((found.parts[0].at_low - ppm_200).abs() < 1e-6, "{found:?}");
    assert!((found.low - 9.4624).abs() < 0.01, "{found:?}");
    // 0.4 × 0.0028 mol/L of caustic soda alone: 14 − log 0.00113.
    assert!((found.high - 11.03).abs() < 0.03, "{found:?}");
}

/// The order of the ends does not matter.
#[test]
fn swapped_ends_are_the_same_range() {
    let forth = of(&[("1310-73-2", 1.0, 2.0)], 1_030.0, 20.0);
    let back = of(&[("1310-73-2", 2.0, 1.0)], 1_030.0, 20.0);
    assert_eq!((forth.low, forth.high), (back.low, back.high));
    let part = forth.parts[0];
    assert!(forth.high - forth.low > 0.2 && (part.at_high / part.at_low - 2.0).abs() < 1e-9);
}

#[test]
fn strengths_run_from_water_to_neat() {
    let soda = &[("497-19-8", 10.0, 10.0)];
    let at = |r: f64| in_water(soda, 1_100.0, VolumeFraction::new(r), TAP).high;
    assert!((at(0.0) - 7.5).abs() < 1e-6);
    assert!(at(0.001) < at(0.01) && at(0.01) < at(0.1));
    assert!((11.0..13.0).contains(&at(1.0)), "far outside the model, and still a pH of soda");
}
