//! Labels that weigh, count or give ppm. Units exact by NIST SP 811, Appendix B: 1 oz (avoirdupois) =
//! 28.349523125 g, 1 gal (US) = 3.785411784 L, 1 gal (imperial) = 4.54609 L.

use brimline::trade::label::{Basis, LabelMistake, Rule, read};
use brimline::units::{Quantity, System};

/// Basis and the two ends, kg/m³ or m³.
#[track_caller]
fn reads(text: &str, system: System, basis: Basis, low: f64, high: f64) {
    let label = read(text, system).unwrap_or_else(|mistake| panic!("{text}: {mistake:?}"));
    assert_eq!(label.basis, basis, "{text}");
    let ends = match label.rule {
        Rule::Powder(window) | Rule::Active(window) => (window.low.si(), window.high.si()),
        Rule::Packets(window) => (window.low.si(), window.high.si()),
        other => panic!("{text}: {other:?}"),
    };
    for (got, expected) in [(ends.0, low), (ends.1, high)] {
        assert!((got / expected - 1.0).abs() < 1e-12, "{text}: {got} is not {expected}");
    }
}

const GALLON: f64 = 3.785_411_784e-3;
const OUNCE: f64 = 0.028_349_523_125;

#[test]
fn powders_are_weighed() {
    for text in ["30 g/L", "30 g per L", "30 grams per litre", "30 g powder per 1 L of water", "0.03 kg/L"] {
        reads(text, System::Metric, Basis::Powder, 30.0, 30.0);
    }
    for text in
        ["2 oz wt/gal", "2 oz weight per gallon", "2 oz (weight) per gal", "2 wt oz per gal", "1/8 lb/gal"]
    {
        reads(text, System::Us, Basis::Powder, 2.0 * OUNCE / GALLON, 2.0 * OUNCE / GALLON);
    }
    reads("10-20 g/L", System::Us, Basis::Powder, 10.0, 20.0);
    reads("1/2 to 1 oz wt/gal", System::Us, Basis::Powder, 0.5 * OUNCE / GALLON, OUNCE / GALLON);
    reads("1 oz wt per imp gal", System::Us, Basis::Powder, OUNCE / 4.546_09e-3, OUNCE / 4.546_09e-3);
    // The avoirdupois ounce is not the fluid one.
    assert_eq!(read("2 oz/gal", System::Us).map(|label| label.basis), Ok(Basis::PerWater));
}

#[test]
fn parts_per_million_are_active_substance() {
    for text in ["200 ppm", "200 ppm active", "200 mg/L"] {
        reads(text, System::Us, Basis::Active, 0.2, 0.2);
    }
    reads("200 to 400 ppm", System::Metric, Basis::Active, 0.2, 0.4);
}

#[test]
fn packets_are_whole_and_the_strongest_comes_first() {
    for text in [
        "1 packet per 2 gal",
        "1 packet makes 2 gal",
        "one tablet per 2 gallons",
        "1 pouch in 2 gal of water",
    ] {
        reads(text, System::Us, Basis::Packets, 2.0 * GALLON, 2.0 * GALLON);
    }
    reads("1-2 tablets per 10 L", System::Metric, Basis::Packets, 5e-3, 10e-3);
}

#[test]
fn what_is_missing_is_asked_for() {
    assert_eq!(
        read("1 packet", System::Us),
        Err(LabelMistake::NoPer { readings: vec!["1 packet per US gal".into()] })
    );
    assert_eq!(
        read("30 g", System::Metric),
        Err(LabelMistake::NoPer { readings: vec!["30 g per L".into()] })
    );
    assert_eq!(
        read("2 packets per gal", System::Metric),
        Err(LabelMistake::Ambiguous {
            readings: vec!["2 packets per US gal".into(), "2 packets per imp gal".into()]
        })
    );
    assert_eq!(read("0 g/L", System::Us), Err(LabelMistake::Zero));
    assert_eq!(
        read("20-10 g/L", System::Us),
        Err(LabelMistake::Backwards { reading: "10 to 20 g per L".into() })
    );
    assert!(matches!(read("5000 g/L", System::Us), Err(LabelMistake::Range(_))));
    assert!(matches!(read("1:64 ppm", System::Us), Err(LabelMistake::Weight | LabelMistake::Shape)));
}
