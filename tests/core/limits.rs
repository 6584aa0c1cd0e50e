//! The rows of the limits table, at both ends and beyond.

use brimline::limits::{ALL, Limit, OutOfRange};
use brimline::number::Marks;
use brimline::site::Entry;
use brimline::units::{
    ApplicationRate, Area, AreaPrice, ArealMass, Coverage, Density, Dimension, Duration, Flow, Frequency,
    Length, Mass, MassConcentration, MassFraction, Money, Plain, Pressure, Productivity, Quantity,
    SpecificEnergy, Speed, Temperature, UNITS, Unit, Volume, VolumeFraction, VolumePrice, Wage,
};
use proptest::prelude::*;

/// Checks an SI value against a row, whatever it limits.
fn check(limit: &'static Limit, si: f64) -> Result<f64, OutOfRange> {
    macro_rules! by_dimension {
        ($($quantity:ident)*) => {
            match limit.dimension {
                $(Dimension::$quantity => limit.check($quantity::from_si(si)).map(Quantity::si),)*
            }
        };
    }
    by_dimension!(
        Volume Flow Area Length Speed Duration ApplicationRate Coverage Productivity VolumeFraction
        Mass Density MassConcentration MassFraction Plain Temperature
        ArealMass Money VolumePrice Wage AreaPrice Frequency Pressure SpecificEnergy
    )
}

#[test]
fn rows_are_sound() {
    for (index, limit) in ALL.iter().enumerate() {
        let name = limit.name;
        assert!(limit.low < limit.high && limit.low >= 0.0 && limit.high.is_finite(), "{name}");
        assert!(!limit.reason().is_empty(), "{name} gives no reason");
        assert!(!ALL[..index].iter().any(|other| other.name == name), "{name} stands twice");
        assert_eq!(check(limit, limit.low), Ok(limit.low), "{name}");
        assert_eq!(check(limit, limit.high), Ok(limit.high), "{name}");
        assert_eq!(check(limit, limit.high * 1.000_001), Err(OutOfRange::Above(limit)), "{name}");
        assert_eq!(check(limit, limit.low * 0.999_999 - 1e-15), Err(OutOfRange::Below(limit)), "{name}");
        assert_eq!(check(limit, -1.0), Err(OutOfRange::Below(limit)), "{name}");
        assert_eq!(check(limit, f64::NAN), Err(OutOfRange::Below(limit)), "{name}");
        assert_eq!(check(limit, f64::INFINITY), Err(OutOfRange::Above(limit)), "{name}");
        assert_ne!(OutOfRange::Above(limit), OutOfRange::Below(limit));
    }
}

/// Ten times beyond an end and no less: a mark of thousands that was a decimal mark makes a thousandfold.
#[test]
fn what_is_far_beyond_a_limit() {
    for limit in ALL {
        let name = limit.name;
        assert!(!limit.is_far(limit.low) && !limit.is_far(limit.high), "{name}");
        assert!(!limit.is_far(limit.high * 9.999) && limit.is_far(limit.high * 10.001), "{name}");
        assert!(
            limit.low <= 0.0 || limit.is_far(limit.low / 10.001) && !limit.is_far(limit.low / 9.999),
            "{name}"
        );
    }
}

/// A row, a unit that can be typed for it, and a value within it.
fn within() -> impl Strategy<Value = (&'static Limit, &'static Unit, f64)> {
    let pairs: Vec<(&'static Limit, &'static Unit)> = ALL
        .iter()
        .flat_map(|limit| {
            UNITS.iter().filter(|unit| unit.dimension == limit.dimension).map(|unit| (*limit, unit))
        })
        .collect();
    (proptest::sample::select(pairs), 0.0..=1.0_f64)
        .prop_map(|((limit, unit), share)| (limit, unit, limit.low + (limit.high - limit.low) * share))
}

proptest! {
    #[test]
    fn what_lies_within_is_taken((limit, unit, si) in within()) {
        prop_assert!(check(limit, si).is_ok());
        prop_assert!(check(limit, unit.to_si(unit.from_si(si))).is_ok(), "{} in {}", limit.name, unit.code);
    }

    /// A value typed at the limit in any unit is within it, and is read in full.
    #[test]
    fn a_typed_value_is_read_in_its_unit((limit, unit, si) in within()) {
        let typed = Entry::new(format!("{:.17}", unit.from_si(si)), unit.code);
        if limit.dimension == Dimension::Volume && typed.text.len() <= 24 {
            let read = typed.read::<Volume>(limit, Marks::POINT);
            prop_assert!(read.is_ok_and(|volume| (volume.si() - si).abs() <= 1e-12), "{:?}", typed);
        }
    }
}

#[test]
fn a_unit_of_something_else_is_refused() {
    use brimline::error::Mistake;
    use brimline::limits::TANK;
    let read = |unit: &str| Entry::new("10", unit).read::<Volume>(&TANK, Marks::POINT);
    for unit in ["in", "ft2", "percent", "firkin", ""] {
        assert_eq!(read(unit), Err(Mistake::Unit), "{unit:?}");
    }
    assert!(read("gal_imp").is_ok());
    let empty = Entry::new(" ", "l");
    assert_eq!(empty.read::<Volume>(&TANK, Marks::POINT), Err(Mistake::Missing));
    assert_eq!(empty.read_optional::<Volume>(&TANK, Marks::POINT), Ok(None));
}
