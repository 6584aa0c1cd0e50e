//! A table computed beforehand. "Ideal" is the root of the charge balance by scipy 1.17's brentq, with
//! which pHcalc 0.2.0 and PHREEQC without activities agree; "Davies" is PHREEQC 3 through phreeqpython
//! 1.6.2 with the same constants. mol/L were given to PHREEQC as mol/kg of water.

use crate::cases::{Given, solution};
use brimline::chemistry::acid_base::{Activity, Solution, Water};
use brimline::units::MassConcentration;

const NA: &str = "Na";
const CL: &str = "Cl";
const ACETIC: &str = "acetic acid";
const CITRIC: &str = "citric acid";
const AMMONIUM: &str = "ammonium";
const CARBONIC: &str = "carbonic acid";
const SILICIC: &str = "silicic acid";
const PHOSPHORIC: &str = "phosphoric acid";
const BLEACH: &str = "hypochlorous acid";

/// 200 ppm of available chlorine: 0.2 / 70.906 mol/L.
const PPM_200: f64 = 0.002_820_635;

#[rustfmt::skip]
const TABLE: &[(Given, f64, f64)] = &[
    (&[(ACETIC, 0.833)], 2.419_173, 2.4190),
    (&[(ACETIC, 0.1)], 2.881_372, 2.8814),
    (&[(ACETIC, 0.001)], 3.907_204, 3.9076),
    (&[(CITRIC, 0.01)], 2.619_961, 2.6226),
    (&[(CITRIC, 0.005), (NA, 0.002)], 3.160_983, 3.1504),
    (&[(NA, 0.001)], 11.0, 10.9845),
    (&[(NA, 0.1)], 13.0, 12.8942),
    (&[(CL, 0.01)], 2.0, 2.0448),
    (&[(CL, 0.1)], 1.0, 1.1072),
    (&[(AMMONIUM, 0.01)], 10.616_823, 10.6167),
    (&[(NA, 0.02), (CARBONIC, 0.01)], 11.132_821, 10.9984),
    (&[(NA, 0.01), (CARBONIC, 0.01)], 8.335_834, 8.2462),
    (&[(NA, 0.02), (SILICIC, 0.01)], 11.976_304, 11.9078),
    (&[(NA, 0.002), (SILICIC, 0.001)], 11.022_539, 11.0007),
    (&[(PHOSPHORIC, 0.01)], 2.258_242, 2.2720),
    (&[(NA, 0.03), (PHOSPHORIC, 0.01)], 11.873_830, 11.7099),
    (&[(NA, PPM_200), (BLEACH, PPM_200)], 9.487_796, 9.4624),
    (&[(NA, PPM_200 + 1e-4), (BLEACH, PPM_200)], 10.036_471, 10.0108),
    (&[(NA, 0.01), (ACETIC, 0.01)], 8.378_828, 8.3337),
    (&[(NA, 0.075), (PHOSPHORIC, 0.05)], 7.207, 6.8853),
    (&[(NA, 0.05), (CITRIC, 0.05)], 3.9471, 3.7661),
    (&[(NA, 0.075), (CARBONIC, 0.05)], 10.3219, 10.0032),
];

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

/// Vinegar of 0.833 mol/L, 6 US fl oz on top of 10, 20 and 30 gal of tap water of pH 7.5, alkalinity in
/// mg/L of calcium carbonate.
#[rustfmt::skip]
const VINEGAR: [(f64, [(f64, f64); 3]); 4] = [
    (0.0, [(3.598_290, 3.5985), (3.754_304, 3.7546), (3.846_790, 3.8471)]),
    (50.0, [(4.315_788, 4.3018), (4.768_462, 4.7539), (5.171_518, 5.1568)]),
    (100.0, [(4.761_382, 4.7405), (5.575_280, 5.5548), (6.089_744, 6.0702)]),
    (200.0, [(5.574_077, 5.5456), (6.334_815, 6.3087), (6.592_235, 6.5678)]),
];

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

/// More into tap water of 100 mg/L and pH 7.5, its carbonate that of the ideal water in both columns.
#[rustfmt::skip]
const INTO_TAP: &[(Given, f64, f64)] = &[
    (&[], 7.5, 7.4773),
    (&[(NA, 0.001)], 10.059_594, 9.9835),
    (&[(NA, 0.01)], 11.891_084, 11.8386),
    (&[(NA, 0.01), (CARBONIC, 0.005)], 10.560_676, 10.4122),
    (&[(CITRIC, 0.002)], 4.020_119, 3.9825),
    (&[(CL, 0.001)], 6.295_216, 6.2736),
    (&[(CL, 0.003)], 2.998_835, 3.0248),
];

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
    let table = [
        (5.0, 99.7057),
        (6.0, 97.1334),
        (7.0, 77.2129),
        (7.5, 51.7263),
        (8.0, 25.3087),
        (9.0, 3.277_39),
        (10.0, 0.337_700),
        (11.0, 0.033_872_9),
    ];
    for (ph, acid) in table {
        // What of it is not acid carries a charge, and sodium the other one.
        let (hydrogen, hydroxide) = (10_f64.powf(-ph), 10_f64.powf(ph - 14.0));
        let amount = 0.01;
        let sodium = amount * (1.0 - acid / 100.0) + hydroxide - hydrogen;
        let made: Solution = solution([(BLEACH, amount), (NA, sodium.max(0.0)), (CL, (-sodium).max(0.0))]);
        let found = made.balance(Activity::Ideal).ph;
        assert!((found - ph).abs() < 2e-4, "{found} is not {ph}");
    }
}
