//! Dilution and coverage against worked figures and published recipes.

use crate::{assert_printed, in_unit, of};
use brimline::trade::coverage::{application_rate, passing, productivity};
use brimline::trade::dilution::{made_up_to, on_top_of};
use brimline::trade::label::{Label, Rule, read};
use brimline::units::{
    ApplicationRate, Area, Duration, Flow, Length, Productivity, Speed, System, Volume, VolumeFraction,
};

#[track_caller]
fn strength(text: &str) -> VolumeFraction {
    let label: Label = read(text, System::Us).unwrap_or_else(|mistake| panic!("{text:?}: {mistake:?}"));
    let Rule::Strength(window) = label.rule else { panic!("{text:?} is an amount a tank") };
    assert!(window.is_point());
    window.low
}

/// From r = 1/(1+n) and 128 fl oz in a US gallon: concentrate when the tank is made up to the volume,
/// and when the volume is water.
#[test]
fn ratios_by_the_tank() {
    for (label, gallons, made_up, on_top) in [
        ("1:64", 20.0, "39.3846", "40.0000"),
        ("1:128", 10.0, "9.92248", "10.0000"),
        ("1:256", 30.0, "14.9416", "15.0000"),
        ("1:32", 15.0, "58.1818", "60.0000"),
        ("1:10", 5.0, "58.1818", "64.0000"),
        ("2 fl oz per gal", 20.0, "39.3846", "40.0000"),
    ] {
        let (volume, strength) = (of::<Volume>(gallons, "gal_us"), strength(label));
        assert_printed(in_unit(made_up_to(volume, strength), "floz_us"), made_up);
        assert_printed(in_unit(on_top_of(volume, strength), "floz_us"), on_top);
    }
    let made_up = strength("2 oz makes 1 gal");
    assert_printed(made_up.percent() * 10.0, "15.625"); // mL in a litre
    assert_printed(in_unit(made_up_to(of(20.0, "gal_us"), made_up), "floz_us"), "40.0000");
    let small = strength("6 fl oz per 10 gal");
    assert_printed(small.percent(), "0.466563");
    assert_printed(small.parts_of_water(), "213.333");
}

/// Sodium hypochlorite, ppm = % × 10⁴: the convention of the guidance. Which total the words mean is
/// written out; "1:100" in these texts is 1 part in 100 parts.
#[test]
fn published_bleach_recipes() {
    for (label, percent, ppm) in [
        // WHO, Infection prevention and control of epidemic- and pandemic-prone acute respiratory
        // infections in health care (2014), Annex G, Table G.1: 1 part 5 % bleach to 99 parts water, 500 ppm.
        ("1 part bleach + 99 parts water", 5.0, "500"),
        ("1:99", 5.0, "500"),
        ("1 in 100", 5.0, "500"),
        // Washington Administrative Code 296-823-14055: 2 teaspoons made up to 1 quart, called 1:100;
        // 1/3 cup plus 1 tablespoon made up to 1 quart, called 1:10. The ppm follow from its amounts.
        ("2 tsp made up to 1 qt", 5.25, "546.875"),
        ("6 1/3 tbsp made up to 1 qt", 5.25, "5195.31"),
        // CDC, Cleaning and Sanitizing with Bleach after an Emergency: 1 cup to 5 gallons of water;
        // 1 tablespoon to 1 gallon of water. The page prints no ppm; these follow from the amounts.
        ("1 cup to 5 gal water", 5.25, "648.148"),
        ("1 tbsp to 1 gal water", 5.25, "204.280"),
        // CDC's text on COVID-19, seen second-hand: 5 tablespoons (1/3 cup) a gallon, "at least 1000 ppm".
        ("5 tbsp per gal of water", 5.25, "1005.75"),
        ("1/3 cup per gal of water", 5.25, "1071.43"),
        // CDC Guideline for Disinfection and Sterilization (2008), from memory, unverified: 1:10 of 5.25 %
        // is 5250 ppm, so that 1:10 is 1 part in 10 there.
        ("1 in 10", 5.25, "5250"),
        ("1+10", 5.25, "4772.73"),
    ] {
        let label = label.replace("bleach ", "");
        assert_printed(strength(&label).percent() / 100.0 * percent * 1e4, ppm);
    }
}

/// Identities of width × speed; 1 mph = 5280 ft/h.
#[test]
fn productivity_by_hand() {
    let mph = |speed: f64| of::<Speed>(speed, "mph");
    let inches = |width: f64| of::<Length>(width, "in");
    let per_hour = |speed: Productivity| in_unit(speed, "ft2_per_h");
    let whole = passing(mph(2.5), inches(20.0), Length::ZERO);
    assert_printed(per_hour(whole), "22000.000000");
    assert_printed(per_hour(productivity(whole, VolumeFraction::new(0.75))), "16500.000000");
    let lapped = passing(mph(3.0), inches(28.0), inches(2.0));
    assert_printed(per_hour(productivity(lapped, VolumeFraction::new(0.8))), "27456.000000");
}

#[test]
fn rate_and_run_time_by_hand() {
    let flow = of::<Flow>(0.30, "gal_us_per_min");
    // 0.30 gal/min × 60 min/h ÷ 15 thousand ft²/h
    let rate = application_rate(flow, of(15_000.0, "ft2_per_h"));
    assert_printed(in_unit(rate, "gal_us_per_1000ft2"), "1.200000000");
    // 0.30 × 3785.411784 mL/min ÷ (0.508 m × 67.056 m/min)
    let rate = application_rate(flow, passing(of(2.5, "mph"), of(20.0, "in"), Length::ZERO));
    assert_printed(in_unit(rate, "ml_per_m2"), "33.3375");
    // 0.30 gal/min × 6 h × 60 min/h × 70 %
    let used: Volume = flow * of::<Duration>(6.0, "h") * 0.7;
    assert_printed(in_unit(used, "gal_us"), "75.6000000");
    let lasts: Duration = of::<Volume>(20.0, "gal_us") / flow;
    assert_printed(in_unit(lasts, "min"), "66.6667");
    let covers: Area = of::<Volume>(20.0, "gal_us") / of::<ApplicationRate>(0.60, "gal_us_per_1000ft2");
    assert_printed(in_unit(covers, "ft2"), "33333.3");
}
