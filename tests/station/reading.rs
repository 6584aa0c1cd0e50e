//! Laws of readings, and a reading after a rescue.

use crate::{near, of, within};
use brimline::limits;
use brimline::trade::actives::in_solution;
use brimline::trade::certainty::Measured;
use brimline::trade::label::Window;
use brimline::trade::reading::{
    BRIX_ERROR, Calibration, Doubt, Reading, ReadingMistake, Seen, Supports, Verdict, catch, conductivity,
    drops, refractometer, strip, with_tolerance,
};
use brimline::trade::rescue::rescue;
use brimline::trade::top_up::Content;
use brimline::units::{Flow, MassConcentration, Quantity, Volume, VolumeFraction};
use proptest::prelude::*;

/// The blocks of a quat strip, ppm: a maker's answer to questions, seen second-hand.
const QUAT: [f64; 5] = [0.0, 50.0, 100.0, 200.0, 400.0];

fn chart() -> Vec<MassConcentration> {
    QUAT.iter().map(|ppm| of(*ppm, "mg_per_l")).collect()
}

/// A meter that was set with water and a solution of the label's strength.
fn meter(strength: VolumeFraction, error: f64) -> Calibration {
    let strength = Measured { value: strength, error: strength * error };
    Calibration { water: 320.0, solution: 1_450.0, strength }
}

proptest! {
    /// Rescued by one meter, read by the same and by a catch of what is in the tank.
    #[test]
    fn a_rescue_followed_by_a_reading_gives_the_target(
        tank in within::<Volume>(&limits::TANK), share in 0.01..=1.0_f64,
        target in within::<VolumeFraction>(&limits::STRENGTH), off in 0.0..=2.0_f64,
    ) {
        let target = target * 0.4;
        let calibration = meter(target, 0.0);
        let shows = |strength: VolumeFraction| 320.0 + 1_130.0 * (strength / target);
        let read = conductivity(shows(target * off), 0.0, &calibration).unwrap();
        prop_assert!(near(read.strength.si(), (target * off).si()) || off < 1e-9);
        let before = Content { volume: tank * share, strength: read.strength };
        let after = rescue(before, target, tank, 0.0).work().on(before);
        let again = conductivity(shows(after.strength), 0.0, &calibration).unwrap();
        prop_assert!(near(again.strength.si(), target.si()));
        let exact = |value| Measured { value, error: Volume::ZERO };
        let caught = catch(exact(after.strength * after.volume), exact(after.volume)).unwrap();
        prop_assert!(near(caught.strength.si(), target.si()));
    }

    #[test]
    fn a_reading_lies_within_its_bounds(
        seen in 0..4_usize, half in any::<bool>(), active in within::<MassConcentration>(&limits::ACTIVE),
        count in 0..50_u32, brix in 0.0..30.0_f64,
    ) {
        let concentrate = active * 10.0;
        let seen = if half { Seen::Between(seen) } else { Seen::At(seen) };
        for reading in [
            strip(seen, &chart(), concentrate).unwrap(),
            drops(count, active * 0.1, concentrate).unwrap(),
            refractometer(brix, VolumeFraction::new(0.01), BRIX_ERROR),
        ] {
            let Window { low, high } = reading.bounds();
            prop_assert!(VolumeFraction::ZERO <= low && low <= reading.strength);
            prop_assert!(reading.strength <= high && high <= VolumeFraction::new(1.0));
            prop_assert!(low < high || reading.strength == VolumeFraction::new(1.0));
        }
    }

    /// A strip is never read closer than its blocks lie: what it can mean holds the neighbours.
    #[test]
    fn a_strip_is_off_by_a_block(index in 0..5_usize) {
        let concentrate = of::<MassConcentration>(10.0, "percent_wv");
        let bounds = strip(Seen::At(index), &chart(), concentrate).unwrap().bounds();
        let strength = |index: usize| chart().get(index).map(|active| (*active / concentrate).min(1.0));
        let below = index.checked_sub(1).and_then(strength).unwrap_or(0.0);
        prop_assert!(near(bounds.low.si(), below));
        prop_assert!(near(bounds.high.si(), strength(index + 1).unwrap_or(1.0)));
        // Half a block up moves both ends half a block up.
        if index < 4 {
            let between = strip(Seen::Between(index), &chart(), concentrate).unwrap().bounds();
            prop_assert!(between.low >= bounds.low && between.high >= bounds.high);
        }
    }

    #[test]
    fn what_is_decided_holds_for_all_that_the_reading_can_mean(
        strength in within::<VolumeFraction>(&limits::STRENGTH), error in 0.0..0.5_f64,
        low in 0.2..3.0_f64, wide in 1.0..3.0_f64,
    ) {
        let reading = Reading { strength, doubt: Doubt::Deviation(strength * error) };
        let window = Window { low: strength * low, high: strength * (low * wide) };
        let Window { low, high } = reading.bounds();
        let holds = |r: VolumeFraction| window.low * (1.0 - 1e-8) <= r && r <= window.high * (1.0 + 1e-8);
        let inside = |r: VolumeFraction| window.low <= r && r <= window.high;
        match reading.supports(window) {
            Supports::CanDecide(Verdict::Inside) => prop_assert!(holds(low) && holds(high)),
            Supports::CanDecide(Verdict::TooWeak) => prop_assert!(high < window.low),
            Supports::CanDecide(Verdict::TooStrong) => prop_assert!(low > window.high),
            Supports::CannotDecide => prop_assert!(!(inside(low) && inside(high))),
        }
    }

    /// A reading of the strength that was put in returns it.
    #[test]
    fn there_and_back(strength in within::<VolumeFraction>(&limits::STRENGTH), count in 1..40_u32) {
        let concentrate = of::<MassConcentration>(12.0, "percent_wv");
        let each = in_solution(strength, concentrate) / f64::from(count);
        let read = drops(count, each, concentrate).unwrap();
        prop_assert!(near(read.strength.si(), strength.si()));
        let factor = VolumeFraction::new(0.013);
        let read = refractometer(strength / factor, factor, 0.0);
        prop_assert!(near(read.strength.si(), strength.si()));
    }

    /// The same in two flows as in the volumes that they fill in the same time.
    #[test]
    fn a_catch_of_flows_is_one_of_volumes(q in 1e-6..1e-4_f64, times in 1.0..500.0_f64, time in 1.0..600.0_f64) {
        let flows = |value: f64| Measured { value: Flow::new(value), error: Flow::new(value * 0.02) };
        let volumes = |value: f64| Measured { value: Volume::new(value * time), error: Volume::new(value * time * 0.02) };
        let (a, b) = (catch(flows(q), flows(q * times)).unwrap(), catch(volumes(q), volumes(q * times)).unwrap());
        prop_assert!(near(a.strength.si(), b.strength.si()));
        let (Doubt::Deviation(a), Doubt::Deviation(b)) = (a.doubt, b.doubt) else { unreachable!() };
        prop_assert!(near(a.si(), b.si()));
    }
}

/// A quat label of 150 to 400 ppm: between 100 and 200 nothing can be said, below 50 it can.
#[test]
fn a_strip_decides_little() {
    let concentrate = of::<MassConcentration>(10.0, "percent_wv");
    let r = |ppm: f64| VolumeFraction::new(of::<MassConcentration>(ppm, "mg_per_l") / concentrate);
    let label = Window { low: r(150.0), high: r(400.0) };
    let says = |seen| strip(seen, &chart(), concentrate).unwrap().supports(label);
    assert_eq!(says(Seen::At(1)), Supports::CanDecide(Verdict::TooWeak));
    assert_eq!(says(Seen::At(2)), Supports::CannotDecide);
    assert_eq!(says(Seen::Between(2)), Supports::CannotDecide);
    assert_eq!(says(Seen::At(3)), Supports::CannotDecide, "100 to 400 ppm reaches below 150");
    assert_eq!(says(Seen::At(4)), Supports::CannotDecide, "beyond the last block it can be anything");
    let point = with_tolerance(Window { low: r(200.0), high: r(200.0) }, 0.5);
    let drops = drops(8, of(25.0, "mg_per_l"), concentrate).unwrap();
    assert_eq!(drops.supports(point), Supports::CanDecide(Verdict::Inside));
}

#[test]
fn readings_that_say_nothing_are_refused() {
    let none = MassConcentration::ZERO;
    let concentrate = of::<MassConcentration>(10.0, "percent_wv");
    assert_eq!(strip(Seen::At(5), &chart(), concentrate), Err(ReadingMistake::NoSuchBlock));
    assert_eq!(strip(Seen::Between(4), &chart(), concentrate), Err(ReadingMistake::NoSuchBlock));
    assert_eq!(strip(Seen::At(0), &[], concentrate), Err(ReadingMistake::NoSuchBlock));
    let back = [of(100.0, "mg_per_l"), of(50.0, "mg_per_l")];
    assert_eq!(strip(Seen::At(0), &back, concentrate), Err(ReadingMistake::BlocksNotRising));
    assert_eq!(strip(Seen::At(0), &chart(), none), Err(ReadingMistake::NoActive));
    assert_eq!(drops(3, of(25.0, "mg_per_l"), none), Err(ReadingMistake::NoActive));
    let meter = meter(VolumeFraction::new(0.02), 0.01);
    assert_eq!(conductivity(5_000.0, 5.0, &meter), Err(ReadingMistake::BeyondCalibration));
    assert_eq!(conductivity(100.0, 5.0, &meter), Err(ReadingMistake::BeyondCalibration));
    assert_eq!(conductivity(f64::NAN, 5.0, &meter), Err(ReadingMistake::BeyondCalibration));
    assert_eq!(conductivity(400.0, 500.0, &meter), Err(ReadingMistake::NoSpan));
    let flat = Calibration { solution: meter.water, ..meter };
    assert_eq!(conductivity(320.0, 0.0, &flat), Err(ReadingMistake::NoSpan));
    let caught = |value| Measured { value: Volume::new(value), error: Volume::ZERO };
    assert_eq!(catch(caught(0.0), caught(1.0)), Err(ReadingMistake::NothingCaught));
    assert_eq!(catch(caught(2.0), caught(1.0)), Err(ReadingMistake::MoreThanWhole));
}
