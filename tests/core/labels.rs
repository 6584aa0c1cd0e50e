//! Labels as people write them, each with the strength that it means.

#[path = "label_statements.rs"]
mod label_statements;

use crate::in_unit;
use brimline::trade::label::{Basis, Note, Rule, read};
use brimline::units::System::{self, Imperial, Metric, Us};
use brimline::units::VolumeFraction;

/// Parts of water and the notes that a ratio is read with.
#[track_caller]
fn assert_reads(text: &str, system: System, basis: Basis, strength: f64, notes: &[Note]) {
    assert_range(text, system, basis, (strength, strength), notes);
}

#[track_caller]
fn assert_range(text: &str, system: System, basis: Basis, (low, high): (f64, f64), notes: &[Note]) {
    let label = read(text, system).unwrap_or_else(|mistake| panic!("{text:?}: {mistake:?}"));
    assert_eq!((label.basis, label.notes.as_slice()), (basis, notes), "{text:?}");
    let Rule::Strength(window) = label.rule else { panic!("{text:?} is an amount a tank") };
    for (got, expected) in [(window.low, low), (window.high, high)] {
        let off = got / VolumeFraction::new(expected) - 1.0;
        assert!(off.abs() < 1e-12, "{text:?}: {got:?}, not {expected}");
    }
}

/// "1 part plus n parts water": common practice, no source.
#[test]
fn parts_plus_water() {
    for text in [
        "1:64",
        " 1 : 64 ",
        "1∶64",
        "1 to 64",
        "1+64",
        "1 part to 64 parts water",
        "1 part cleaner to 64 parts of water",
        "1 part concentrate : 64 parts water",
        "Dilute 1:64 with cold water.",
        "Mixed 1:64",
        "use dilution 1:64",
        "Mix with water 1:64",
        "0.5:32",
        "½:32",
        "1:64 (1/65)",
        "1:64 [1.54 %]",
        "1:64 solution",
        "1:64 use solution",
        "1:64 (v/v)",
        "Dilute (1:64)",
        "Dilute, 1:64, with cold water",
        "1:64 (US)",
        "1:64, 1.54 %",
        "1:64; 1/65",
        "one part to 64 parts",
        "1 part(s) to 64 part(s)",
    ] {
        assert_reads(text, Us, Basis::PlusWater, 1.0 / 65.0, &[]);
        assert_reads(text, Metric, Basis::PlusWater, 1.0 / 65.0, &[]);
    }
    for text in ["64:1", "64:1 solution", "64 to 1", "64+1", "64 parts water to 1 part cleaner"] {
        assert_reads(text, Us, Basis::PlusWater, 1.0 / 65.0, &[Note::ReversedOrder]);
    }
    assert_reads("5 parts water + 2 parts cleaner", Us, Basis::PlusWater, 2.0 / 7.0, &[Note::ReversedOrder]);
    assert_reads("2+5", Us, Basis::PlusWater, 2.0 / 7.0, &[]);
    assert_reads("1:1", Us, Basis::PlusWater, 0.5, &[]);
    assert_reads("1:7.5", Us, Basis::PlusWater, 1.0 / 8.5, &[]);
    for text in [
        "1:64 to 1:128",
        "1:128 - 1:64",
        "1:64–1:128",
        "1+64 - 1+128",
        "1:64-128",
        "1:64 to 128",
        "1:128-64",
        "1 part to 64-128 parts water",
        "1:64-128 solution",
        "1:64-128, 1:64 to 1:128",
    ] {
        assert_range(text, Us, Basis::PlusWater, (1.0 / 129.0, 1.0 / 65.0), &[]);
    }
    assert_range("2+5 to 2+10", Us, Basis::PlusWater, (2.0 / 12.0, 2.0 / 7.0), &[]);
}

#[test]
fn parts_of_the_whole() {
    for text in [
        "1 in 65",
        "1/65",
        "1 part in 65 parts",
        "1 to 65 total",
        "1:65 made up",
        "1:65 finished solution",
        "1:65 finished",
        "1:65 total",
        "1 per 65 total",
        "1 in 65 solution",
    ] {
        assert_reads(text, Us, Basis::OfTotal, 1.0 / 65.0, &[]);
    }
    assert_reads("1 in 1", Us, Basis::OfTotal, 1.0, &[]);
    assert_reads("one in ten", Us, Basis::OfTotal, 0.1, &[]);
    for text in ["1:10 to 1:20 total", "1:10-20 total", "1 in 10 to 1 in 20", "1/10 - 1/20", "1 in 10-20"] {
        assert_range(text, Us, Basis::OfTotal, (0.05, 0.1), &[]);
    }
    for text in [
        "0.5 %",
        "0,5 %",
        ".5%",
        "½ %",
        "0.5 percent",
        "0.5 % v/v",
        "0.5 % (v/v)",
        "0.5% solution",
        "0.5 % in water",
        "half percent in cold water",
    ] {
        assert_reads(text, Metric, Basis::Percent, 0.005, &[]);
    }
    for text in ["0.5-1 %", "0.5 % to 1 %", "0,5 bis 1 %", "0.5-1 % in water"] {
        assert_range(text, Metric, Basis::Percent, (0.005, 0.01), &[]);
    }
}

/// r = x / (1 + x): the amount is added to that much water. 128 US fl oz in a US gallon (NIST SP 811,
/// B.8), 160 imperial fl oz in an imperial one (UK Units of Measurement Regulations 1995).
#[test]
fn amounts_added_to_water() {
    let us: &[Note] = &[Note::FluidOunce, Note::UsMeasure];
    for text in [
        "2 oz/gal",
        "2 oz. per gal.",
        "2 ounces to 1 gallon of water",
        "2oz / 1 gallon",
        "2 oz in a gallon",
        "2oz:1gal",
        "2 oz per gallon of hot water",
        "2 ounce(s) per gallon(s)",
        "2 oz, per gal",
        "2 oz (per gal)",
        "2 oz (59 mL) per gal",
        "2 oz/gal, 1:64",
        "2 oz/gal; 1.54 %",
        "two oz per gal",
        "two ounces per one gallon",
    ] {
        assert_reads(text, Us, Basis::PerWater, 2.0 / 130.0, us);
    }
    for text in [
        "2 fl oz per gallon",
        "2 fl. oz. per gallon",
        "2 fluid ounces to 1 gallon of water",
        "2 floz/gal",
        "2 fl.oz./gal",
    ] {
        assert_reads(text, Us, Basis::PerWater, 2.0 / 130.0, &[Note::UsMeasure]);
        assert_reads(text, Imperial, Basis::PerWater, 2.0 / 162.0, &[Note::ImperialMeasure]);
    }
    for text in ["2 US fl oz per US gal", "2 oz per US gallon", "2 fl oz per U.S. gal"] {
        let notes: &[Note] = if text.contains("fl") { &[] } else { &[Note::FluidOunce] };
        assert_reads(text, Imperial, Basis::PerWater, 2.0 / 130.0, notes);
        assert_reads(text, Metric, Basis::PerWater, 2.0 / 130.0, notes);
    }
    assert_reads("2 imp fl oz per imp gal", Us, Basis::PerWater, 2.0 / 162.0, &[]);
    for text in
        ["½ oz/gal", "half oz per gal", "half an ounce per gallon", "one half oz per gal", "one-half oz/gal"]
    {
        assert_reads(text, Us, Basis::PerWater, 0.5 / 128.5, us);
    }
    assert_reads("twelve oz per gal", Us, Basis::PerWater, 12.0 / 140.0, us);
    for text in ["3 oz per 10 gal tank", "3 oz per 10-gallon tank", "three oz in a ten gal tank"] {
        assert_reads(text, Us, Basis::PerWater, 3.0 / 1283.0, us);
    }
    for text in [
        "1 1/2 oz per gal",
        "1½ oz/gal",
        "1-1/2 oz per gal",
        "1-½ oz/gal",
        "1.5 oz/gal",
        "1,5 oz/gal",
        "3/2 oz/gal",
    ] {
        assert_reads(text, Us, Basis::PerWater, 1.5 / 129.5, us);
    }
    for text in [
        "2-4 oz/gal",
        "2 to 4 oz/gal",
        "2 oz to 4 oz per gallon",
        "2 – 4 oz per gal",
        "2 oz per gal to 4 oz per gal",
        "2 oz/gal - 4 oz/gal",
    ] {
        assert_range(text, Us, Basis::PerWater, (2.0 / 130.0, 4.0 / 132.0), us);
    }
    assert_range("1/4-1/2 oz/gal", Us, Basis::PerWater, (0.25 / 128.25, 0.5 / 128.5), us);
    for text in [
        "15 mL/L",
        "15 ml per litre",
        "15 mls per l of water",
        "15 cc/L",
        "1.5 cl per L",
        "0.15 dl per litre",
        "1.5 mL/dL",
        "15 mL / 1 liter",
    ] {
        assert_reads(text, Metric, Basis::PerWater, 0.015 / 1.015, &[]);
    }
    assert_reads("5 mL per 10 litres", Metric, Basis::PerWater, 0.0005 / 1.0005, &[]);
    assert_reads("1 cup per 5 gal", Us, Basis::PerWater, 1.0 / 81.0, &[Note::UsMeasure]);
    assert_reads("1 tbsp per US qt", Metric, Basis::PerWater, 1.0 / 65.0, &[]);
    let both = read("1:64 (2 oz/gal)", Us).expect("both say the same");
    assert_eq!(both, read("1:64", Us).unwrap());
}

/// A point before three digits: a decimal where gallons are at home. What is left open takes it over.
#[test]
fn a_point_before_three_digits() {
    let us: &[Note] = &[Note::FluidOunce, Note::UsMeasure];
    assert_reads("1.125 oz/gal", Us, Basis::PerWater, 1.125 / 129.125, us);
    assert_reads("1.125 fl oz/gal", Imperial, Basis::PerWater, 1.125 / 161.125, &[Note::ImperialMeasure]);
    assert_reads("1:1.500", Us, Basis::PlusWater, 1.0 / 2.5, &[]);
}

#[test]
fn amounts_made_up() {
    let us: &[Note] = &[Note::FluidOunce, Note::UsMeasure];
    for text in [
        "2 oz makes 1 gal",
        "2 oz made up to 1 gallon",
        "2 oz per gallon of finished solution",
        "2 oz per gallon of solution",
        "2 oz/gal use solution",
    ] {
        assert_reads(text, Us, Basis::MadeUp, 2.0 / 128.0, us);
    }
    assert_reads("50 mL makes 10 L", Metric, Basis::MadeUp, 0.005, &[]);
    assert_reads("1 L makes 1 L", Metric, Basis::MadeUp, 1.0, &[]);
}

#[test]
fn amounts_a_tank() {
    for text in [
        "3 to 6 oz per tank",
        "3-6 oz/tank",
        "3 oz to 6 oz for a full tank",
        "3 to 6 fl oz per tank",
        "3 oz per tank to 6 oz per tank",
        "three to six oz, per tank",
    ] {
        let label = read(text, Us).unwrap_or_else(|mistake| panic!("{text:?}: {mistake:?}"));
        let Rule::PerTank(window) = label.rule else { panic!("{text:?} is a strength") };
        assert_eq!(label.basis, Basis::PerTank);
        assert!((in_unit(window.low, "floz_us") - 3.0).abs() < 1e-12, "{text:?}");
        assert!((in_unit(window.high, "floz_us") - 6.0).abs() < 1e-12, "{text:?}");
        assert!(label.notes.contains(&Note::UsMeasure) && label.others.is_empty());
    }
    let Rule::PerTank(window) = read("100 mL per tank", Metric).unwrap().rule else { unreachable!() };
    assert!(window.is_point() && (in_unit(window.low, "ml") - 100.0).abs() < 1e-9);
}

/// What people also mean by the same words stands beside the reading.
#[test]
fn the_other_reading_is_kept() {
    for (text, others) in [
        ("1:64", &["1 in 64"] as &[&str]),
        ("64:1", &["1 in 64"]),
        ("1 in 65", &["1+65"]),
        ("2 in 5", &["2+5"]),
        ("2+5", &["2 in 5"]),
        ("1:1", &[]),
        ("1:64 to 1:128", &["1 in 64 to 1 in 128"]),
        ("1 in 64-128", &["1+64 to 1+128"]),
        // Weaker than any label.
        ("1 in 100000", &[]),
        ("0.5 %", &[]),
        ("2 oz/gal", &["2 US fl oz per US gal made up"]),
        ("2 oz makes 1 gal", &["2 US fl oz per US gal water"]),
        ("2-4 oz/gal", &["2 to 4 US fl oz per US gal made up"]),
        ("5 mL per 10 litres", &["5 mL per 10 L made up"]),
        ("3 oz per 10 gal tank", &["3 US fl oz per 10 US gal made up"]),
        ("1⅛ oz/gal", &["1.1250 US fl oz per US gal made up"]),
    ] {
        assert_eq!(read(text, Us).unwrap().others, others, "{text:?}");
    }
}
