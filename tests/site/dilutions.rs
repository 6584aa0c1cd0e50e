//! What is written for a strength reads back as that strength, and never leaves the range that it came from.

use brimline::form::site::finish::dilution::{like_label, parts, per_tank, plus_water};
use brimline::trade::batch::{LEAST, enough, measurable};
use brimline::trade::governing::Aim;
use brimline::trade::label::Window;
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
    /// What is written like a label never leaves the label's range, reads back as it says, and is that place in it.
    #[test]
    fn a_strength_written_like_its_label_reads_back_inside(
        low in 1..400_u32, more in 1..400_u32, unit in prop::sample::select(vec!["oz/gal", "mL/L", "fl oz per gallon", "mL makes 1 L"]),
    ) {
        let number = |tenths: u32| f64::from(tenths) / 10.0;
        let text = format!("{} to {} {unit}", number(low), number(low + more));
        let Ok(label::Label { rule: Rule::Strength(range), .. }) = label::read(&text, System::Us) else { return Ok(()) };
        for aim in Aim::ALL {
            let Some((written, strength)) = like_label(&text, System::Us, range, *aim) else { continue };
            let Rule::Strength(back) = label::read(&written, System::Us).expect("it reads").rule else { panic!("{written}") };
            prop_assert!(back.is_point() && back.low == strength, "{written}");
            prop_assert!(strength.si() >= range.low.si() * (1.0 - 1e-9) && strength.si() <= range.high.si() * (1.0 + 1e-9), "{written} of {text}");
            let wanted = aim.within(range).si();
            let within = if *aim == Aim::Middle { 0.01 } else { 3e-5 };
            prop_assert!((strength.si() / wanted - 1.0).abs() < within, "{written} of {text}");
            prop_assert!(written.ends_with(unit), "{written}");
        }
    }

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

#[test]
fn a_strength_is_written_as_its_label_writes_it() {
    let of = |text: &str, aim: Aim| {
        let Rule::Strength(range) = label::read(text, System::Us).expect("it reads").rule else {
            panic!("{text}")
        };
        like_label(text, System::Us, range, aim).map(|(written, _)| written)
    };
    // 1 oz in 128 oz of water.
    assert_eq!(of("1-3 oz/gal", Aim::Low).as_deref(), Some("1 oz/gal"));
    assert_eq!(of("1-3 oz/gal", Aim::High).as_deref(), Some("3 oz/gal"));
    assert_eq!(of("4 to 8 oz/gal", Aim::Middle).as_deref(), Some("6 oz/gal"));
    assert_eq!(of("15-30 mL/L", Aim::Low).as_deref(), Some("15 mL/L"));
    // Ratios stay ratios.
    assert_eq!(of("1:32-64", Aim::Middle), None);
    // A range that is narrower than its digits is not left for a rounder number.
    let narrow = Window {
        low: VolumeFraction::from_parts_of_water(64.0),
        high: VolumeFraction::from_parts_of_water(63.9),
    };
    if let Some((_, strength)) = like_label("2-2.01 oz/gal", System::Us, narrow, Aim::Middle) {
        assert!(strength >= narrow.low && strength <= narrow.high);
    }
    assert_eq!(parts("1:64.25", System::Us), None);
    // 30 mL in a litre of water are 1 to 33.3.
    assert!((parts("30 mL/L", System::Metric).expect("parts") - 1_000.0 / 30.0).abs() < 1e-9);
    assert_eq!(parts("2-4 oz/gal", System::Us), None, "a range is no single ratio");
}
