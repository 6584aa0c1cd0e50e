//! Active substance and powder against published recipes and computed figures.

use crate::bleach::RECIPES;
use crate::{assert_printed, in_unit, near, of, within};
use brimline::limits;
use brimline::trade::actives::{
    ActiveMistake, CHLORINE_IN_HYPOCHLORITE, Chlorine, available_chlorine, by_mass, dilution_for, from_label,
    in_concentrate, in_solution,
};
use brimline::trade::powder::{DensityMissing, mass_of, powder_for, scoops, volume_of};
use brimline::units::{Density, Mass, MassConcentration, MassFraction, Quantity, Volume, VolumeFraction};
use proptest::prelude::*;

/// Bleach recipes, ppm = % × 10⁴. The amounts are the publications'; the ppm follow from them unless
/// the line says that they are printed there.
#[test]
fn published_bleach_recipes() {
    for (_, percent, concentrate, total, ppm) in RECIPES {
        let bleach = of::<MassConcentration>(*percent, "percent_wv");
        let strength = VolumeFraction::new(concentrate / total);
        let counted = available_chlorine(in_solution(strength, bleach), Chlorine::AsHypochlorite);
        assert_printed(in_unit(counted, "mg_per_l"), ppm);
        let back = dilution_for(counted, bleach).expect("weaker than the bleach");
        assert!(near(back.si(), strength.si()));
    }
}

/// Standard atomic masses Na 22.98977, O 15.9994, Cl 35.453 (from memory): Cl₂ to sodium hypochlorite is
/// 70.906 to 74.44217, 0.952498; 5.25 % of the one is 5.00061 % of the other, as the library
/// chemicals 1.5.2 prints.
#[test]
fn chlorine_by_molar_mass() {
    assert_printed(2.0 * 35.453 / (22.989_77 + 15.999_4 + 35.453), "0.952498");
    assert_printed(CHLORINE_IN_HYPOCHLORITE, "0.952498");
    let bleach = of::<MassConcentration>(5.25, "percent_wv");
    assert_printed(in_unit(available_chlorine(bleach, Chlorine::AsChlorine), "percent_wv"), "5.00061");
}

/// Identities of the units; the library pint 0.25.3 prints the same.
#[test]
fn densities_and_powders() {
    let convert = |value: f64, from: &str, to: &str| in_unit(of::<MassConcentration>(value, from), to);
    assert_printed(convert(2.0, "oz_per_gal_us", "g_per_l"), "14.9783");
    assert_printed(convert(1.0, "oz_per_gal_us", "g_per_l"), "7.4891517073");
    assert_printed(convert(1.0, "oz_per_gal_imp", "g_per_l"), "6.2360232914");
    assert_printed(convert(1.0, "g_per_l", "oz_per_gal_us"), "0.1335264712");
    assert_printed(convert(30.0, "g_per_l", "oz_per_gal_us"), "4.00579");
    assert_printed(in_unit(of::<Mass>(1.0, "oz"), "g"), "28.349523125");
    assert_printed(in_unit(of::<Density>(9.2, "lb_per_gal_us"), "g_per_ml"), "1.10240");
    assert_printed(in_unit(of::<Density>(1.0, "lb_per_gal_us"), "g_per_ml"), "0.1198264273");

    // 4 oz/gal × 20 gal = 80 oz = 5 lb; 10 g/L × 75 L = 750 g.
    assert_printed(in_unit(powder_for(of(4.0, "oz_per_gal_us"), of(20.0, "gal_us")), "lb"), "5.000000");
    assert_printed(in_unit(powder_for(of(10.0, "g_per_l"), of(75.0, "l")), "kg"), "0.750000");
    // 1.10 g/mL: 6 × 29.5735295625 × 1.10 = 195.185 g; 3785.411784 × 1.10 ÷ 453.59237 = 9.17994 lb.
    let liquid = Some(of::<Density>(1.10, "g_per_ml"));
    let weighs = |value, unit, shown| in_unit(mass_of(of(value, unit), liquid).expect("a density"), shown);
    assert_printed(weighs(6.0, "floz_us", "g"), "195.185");
    assert_printed(weighs(1.0, "gal_us", "lb"), "9.17994");
    // 1 % of the mass of 20 gal of water at 20 °C, 0.998207 g/mL: 26.6574 oz.
    let water = Some(of::<Density>(0.998_207, "g_per_ml"));
    let tank = mass_of(of(20.0, "gal_us"), water).expect("a density");
    assert_printed(in_unit(tank * 0.01, "oz"), "26.6574");
}

#[test]
fn a_missing_density_is_told() {
    let (mass, scoop) = (of::<Mass>(100.0, "g"), of::<Volume>(50.0, "ml"));
    for density in [None, Some(Density::ZERO), Some(Density::new(f64::NAN))] {
        assert_eq!(volume_of(mass, density), Err(DensityMissing));
        assert_eq!(mass_of(scoop, density), Err(DensityMissing));
        assert_eq!(scoops(mass, scoop, density), Err(DensityMissing));
    }
}

#[test]
fn no_dilution_makes_more_than_the_concentrate_holds() {
    let c = |ppm| of::<MassConcentration>(ppm, "mg_per_l");
    assert_eq!(dilution_for(c(1_000.0), c(999.0)), Err(ActiveMistake::TooWeak));
    assert_eq!(dilution_for(c(1_000.0), c(1_000.0)), Ok(VolumeFraction::new(1.0)));
    assert_eq!(dilution_for(c(1_000.0), c(0.0)), Err(ActiveMistake::NoActive));
    assert_eq!(dilution_for(c(1_000.0), c(f64::NAN)), Err(ActiveMistake::NoActive));
}

proptest! {
    #[test]
    fn there_and_back(
        share in within::<MassFraction>(&limits::ACTIVE_SHARE), density in within::<Density>(&limits::DENSITY),
        strength in within::<VolumeFraction>(&limits::STRENGTH), volume in within::<Volume>(&limits::TANK),
        label in within::<MassConcentration>(&limits::POWDER_STRENGTH), mass in within::<Mass>(&limits::POWDER),
    ) {
        let concentrate = in_concentrate(share, density);
        prop_assert!(near(by_mass(concentrate, density).si(), share.si()));
        let active = in_solution(strength, concentrate);
        prop_assert!(near(dilution_for(active, concentrate).unwrap().si(), strength.si()));
        prop_assert!(near(from_label(active, strength).si(), concentrate.si()));
        let powder = powder_for(label, volume);
        prop_assert!(near((powder / label).si(), volume.si()));
        prop_assert!(near(powder.in_solution(volume).si(), label.si()));
        let poured = volume_of(mass, Some(density)).unwrap();
        prop_assert!(near(mass_of(poured, Some(density)).unwrap().si(), mass.si()));
        let count = scoops(mass, volume, Some(density)).unwrap();
        prop_assert!(near((mass_of(volume, Some(density)).unwrap() * count).si(), mass.si()));
    }
}
