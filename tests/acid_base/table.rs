//! The table computed beforehand.

use crate::cases::solution;
use crate::computed::{ACETIC, BLEACH, BLEACH_ACID, CARBONIC, CL, INTO_TAP, NA, TABLE, VINEGAR};
use brimline::chemistry::acid_base::{Activity, Solution, Water};
use brimline::units::MassConcentration;

#[test]
fn ideal_to_a_ten_thousandth_and_davies_to_a_hundredth() {
    for (given, ideal, davies) in TABLE {
        let made = solution(given.iter().copied());
        for (activity, theirs, within) in [(Activity::Ideal, ideal, 1e-4), (Activity::Davies, davies, 0.01)] {
            let ph = made.balance(activity).ph;
            assert!((ph - theirs).abs() <= within, "{ph} is not {theirs}: {given:?}, {activity:?}");
        }
    }
}

fn tap(alkalinity: f64) -> Water {
    Water { alkalinity: MassConcentration::new(alkalinity / 1_000.0), ph: 7.5 }
}

#[test]
fn vinegar_in_tap_water() {
    for (alkalinity, row) in VINEGAR {
        for (gallons, (ideal, davies)) in [10.0, 20.0, 30.0].into_iter().zip(row) {
            let share = 6.0 / (128.0 * gallons + 6.0);
            for (activity, theirs, within) in
                [(Activity::Ideal, ideal, 1e-4), (Activity::Davies, davies, 0.01)]
            {
                let water = tap(alkalinity).solution(activity).diluted(1.0 - share);
                let ph = solution([(ACETIC, 0.833 * share)]).and(&water).balance(activity).ph;
                assert!(
                    (ph - theirs).abs() <= within,
                    "{ph} is not {theirs}: {alkalinity} mg/L, {gallons} gal"
                );
            }
        }
    }
}

/// Carbonate of tap water of pH 7.5, mol/L.
#[test]
fn carbonate_of_tap_water() {
    for (alkalinity, carbonate) in [(50.0, 0.001_068_20), (100.0, 0.002_136_70), (200.0, 0.004_273_71)] {
        let ions = alkalinity / 50_043.5;
        let theirs = solution([(NA, ions), (CARBONIC, carbonate)]);
        let ours = tap(alkalinity).solution(Activity::Ideal);
        let gap = theirs.balance(Activity::Ideal).ph - ours.balance(Activity::Ideal).ph;
        assert!(gap.abs() < 5e-5, "{alkalinity}: {ours:?}");
        assert!((ours.balance(Activity::Ideal).ph - 7.5).abs() < 1e-9);
    }
}

#[test]
fn into_tap_water() {
    let water = tap(100.0).solution(Activity::Ideal);
    for (given, ideal, davies) in INTO_TAP {
        let made = solution(given.iter().copied()).and(&water);
        for (activity, theirs, within) in [(Activity::Ideal, ideal, 1e-4), (Activity::Davies, davies, 0.01)] {
            let ph = made.balance(activity).ph;
            assert!((ph - theirs).abs() <= within, "{ph} is not {theirs}: {given:?}, {activity:?}");
        }
    }
}

/// Share of hypochlorous acid against hypochlorite, per cent, at pKa 7.53: `100 / (1 + 10^(pH − pKa))`.
#[test]
fn bleach_turns_to_its_acid_as_ph_falls() {
    for (ph, acid) in BLEACH_ACID {
        // What of it is not acid carries a charge, and sodium the other one.
        let (hydrogen, hydroxide) = (10_f64.powf(-ph), 10_f64.powf(ph - 14.0));
        let amount = 0.01;
        let sodium = amount * (1.0 - acid / 100.0) + hydroxide - hydrogen;
        let made: Solution = solution([(BLEACH, amount), (NA, sodium.max(0.0)), (CL, (-sodium).max(0.0))]);
        let found = made.balance(Activity::Ideal).ph;
        assert!((found - ph).abs() < 2e-4, "{found} is not {ph}");
    }
}
