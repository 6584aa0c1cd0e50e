//! What is written for a strength reads back as that strength, and never leaves the range that it came from.

use brimline::form::site::finish::dilution::{per_tank, plus_water};
use brimline::trade::batch::{LEAST, enough, measurable};
use brimline::trade::governing::Aim;
use brimline::trade::label::{self, Rule};
use brimline::units::{Quantity, System, Volume, VolumeFraction};
use proptest::prelude::*;

fn strength(text: &str) -> f64 {
    // In a metric site nothing decides what a bare gallon is: what is written needs no site.
    let read = label::read(text, System::Metric).unwrap_or_else(|mistake| panic!("{text}: {mistake:?}"));
    match read.rule {
        Rule::Strength(window) => {
            assert!(window.is_point(), "{text}");
            window.low.si()
        }
        Rule::PerTank(window) => window.low.si(),
        other => panic!("{text}: {other:?}"),
    }
}

proptest! {
    #[test]
    fn a_strength_reads_back_inside(r in 1e-4..0.95_f64) {
        for aim in Aim::ALL {
            let back = strength(&plus_water(VolumeFraction::new(r), *aim));
            // Six digits at the ends, four in the middle.
            let within = if *aim == Aim::Middle { 1e-3 } else { 3e-5 };
            prop_assert!((back / r - 1.0).abs() < within, "{} for {r}", plus_water(VolumeFraction::new(r), *aim));
            match aim {
                Aim::Low => prop_assert!(back >= r * (1.0 - 1e-9)),
                Aim::High => prop_assert!(back <= r * (1.0 + 1e-9)),
                Aim::Middle => {}
            }
        }
    }

    #[test]
    fn an_amount_for_a_tank_reads_back_inside(ml in 1.0..2_000.0_f64) {
        for aim in Aim::ALL {
            let back = strength(&per_tank(Volume::new(ml * 1e-6), *aim)) * 1e6;
            let within = if *aim == Aim::Middle { 1e-3 } else { 2e-5 };
            prop_assert!((back / ml - 1.0).abs() < within, "{}", per_tank(Volume::new(ml * 1e-6), *aim));
            prop_assert!(*aim != Aim::Low || back >= ml * (1.0 - 1e-9));
            prop_assert!(*aim != Aim::High || back <= ml * (1.0 + 1e-9));
        }
    }

    /// A measurable amount is never more than a quarter off, and within a twentieth in the batch that is called
    /// enough.
    #[test]
    fn small_amounts_are_measured_closely(ml in 1.0..500.0_f64, r in 1e-4..0.5_f64) {
        let amount = Volume::new(ml * 1e-6);
        let rounded = measurable(amount, LEAST).expect("a millilitre or more");
        prop_assert!((rounded / amount - 1.0).abs() <= 0.25 + 1e-9);
        let amount = VolumeFraction::new(r) * enough(VolumeFraction::new(r));
        prop_assert!((measurable(amount, LEAST).expect("ten") / amount - 1.0).abs() <= 0.05 + 1e-9);
    }
}

#[test]
fn whole_numbers_are_written_whole() {
    for (parts, text) in
        [(64.0, "1:64"), (256.0, "1:256"), (1_024.0, "1:1024"), (10.5, "1:10.5"), (10.125, "1:10.1250")]
    {
        let written = plus_water(VolumeFraction::from_parts_of_water(parts), Aim::Low);
        assert_eq!(written, text);
    }
    assert_eq!(measurable(Volume::new(0.99e-6), LEAST), None);
}
