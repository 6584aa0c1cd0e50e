//! Cases worked by hand, held to the digits that the hand wrote down.
//!
//! Where no source is named the arithmetic follows from the definition of the volume fraction.

use crate::{in_unit, is_printed, of};
use brimline::trade::actives::{by_mass, dilution_for, in_concentrate};
use brimline::trade::certainty::{Class, Dose, Measured, cylinder, first_order, worst_case};
use brimline::trade::label::Window;
use brimline::trade::metering::{bottle_time, proportion};
use brimline::trade::portion::{Makes, whole_units};
use brimline::trade::powder::{powder_for, scoops};
use brimline::trade::reading::{
    BRIX_ERROR, Calibration, Doubt, Reading, Seen, conductivity, drops, refractometer, strip,
};
use brimline::trade::rescue::{TOLERANCE, forgotten, rescue};
use brimline::trade::top_up::{Content, Wanted, Work, fresh, top_up};
use brimline::units::{
    Density, Flow, Mass, MassConcentration, MassFraction, Quantity, Volume, VolumeFraction,
};

/// What it is, the results in the units of the row, and what the hand wrote down.
type Case = (&'static str, Vec<f64>, &'static [&'static str]);

fn parts(water: f64) -> VolumeFraction {
    VolumeFraction::from_parts_of_water(water)
}

fn percent(value: f64) -> VolumeFraction {
    of(value, "percent")
}

fn content(volume: f64, unit: &str, strength: VolumeFraction) -> Content {
    Content { volume: of(volume, unit), strength }
}

fn wanted(level: f64, tank: f64, unit: &str, strength: VolumeFraction) -> Wanted {
    Wanted { level: of(level, unit), strength, tank: of(tank, unit) }
}

/// Drain, water and concentrate, each in a unit.
fn amounts(work: Work, drain: &str, water: &str, concentrate: &str) -> Vec<f64> {
    vec![in_unit(work.drain, drain), in_unit(work.water, water), in_unit(work.concentrate, concentrate)]
}

/// The reading and the ends of what it can mean, in per cent.
fn ends(reading: Reading) -> Vec<f64> {
    let Window { low, high } = reading.bounds();
    vec![reading.strength.percent(), low.percent(), high.percent()]
}

fn with(value: f64, error: f64, unit: &str) -> Measured<Volume> {
    Measured { value: of(value, unit), error: of(error, unit) }
}

fn topped(left: Content, wanted: Wanted) -> Work {
    top_up(left, wanted).expect("it fits").work()
}

fn tank_cases() -> Vec<Case> {
    let rescued = |volume, strength, target, tank| {
        rescue(content(volume, "l", strength), target, of(tank, "l"), TOLERANCE).work()
    };
    let unknown =
        fresh(of(10.0, "gal_us"), parts(64.0), wanted(20.0, 20.0, "gal_us", parts(64.0))).expect("it fits");
    vec![
        // 1:64 is r = 1/65. V = 20 gal = 2560 fl oz, V₀ = 5 gal of the same = 640 fl oz.
        // X = (2560 − 640) / 65 = 29.5385 fl oz; W = 1920 − 29.5385 = 1890.4615 fl oz = 14.7692 gal.
        (
            "top-up, right strength left",
            amounts(
                topped(content(5.0, "gal_us", parts(64.0)), wanted(20.0, 20.0, "gal_us", parts(64.0))),
                "gal_us",
                "gal_us",
                "floz_us",
            ),
            &["0.0000", "14.7692", "29.5385"],
        ),
        // V = 80 L, V₀ = 20 L of plain water, 1:128: X = 80 000 / 129 = 620.155 mL; W = 60 − 0.620155 L.
        (
            "top-up, water left",
            amounts(
                topped(content(20.0, "l", VolumeFraction::ZERO), wanted(80.0, 90.0, "l", parts(128.0))),
                "l",
                "l",
                "ml",
            ),
            &["0.0000", "59.3798", "620.155"],
        ),
        // V₀ = 40 L at 4 % to V = 80 L at 1 %: X = 0.8 − 1.6 < 0; D = 40 − 1 × 80 / 4 = 20 L, then 60 L water.
        (
            "top-up, too strong left",
            amounts(
                topped(content(40.0, "l", percent(4.0)), wanted(80.0, 80.0, "l", percent(1.0))),
                "l",
                "l",
                "ml",
            ),
            &["20.0000", "60.0000", "0.0000"],
        ),
        // V₀ = 58 L at 0.5 % to V = 60 L at 5 %: X = 3 − 0.29 = 2.71 L, room 2 L. Keep 60 × 0.95 / 0.995
        // = 57.2864 L: D = 0.7136 L, X = 2.7136 L.
        (
            "top-up, weak and in the way",
            amounts(
                topped(content(58.0, "l", percent(0.5)), wanted(60.0, 60.0, "l", percent(5.0))),
                "l",
                "l",
                "l",
            ),
            &["0.7136", "0.0000", "2.7136"],
        ),
        // 10 gal of anything, to 20 gal at 1:64. Fresh: 2560 / 65 = 39.3846 fl oz. Kept, it would be
        // 10/20 × 1/65 = 0.7692 % were it water, (1 + 2)/2 × 1/65 = 2.3077 % were it dosed twice.
        // That it is twice at most is common practice.
        (
            "top-up, unknown left",
            vec![
                in_unit(unknown.work.drain, "gal_us"),
                in_unit(unknown.work.concentrate, "floz_us"),
                unknown.at_worst.strength.low.percent(),
                unknown.at_worst.strength.high.percent(),
            ],
            &["10.0000", "39.3846", "0.7692", "2.3077"],
        ),
        // 60 L at 1:128, target 1:64: (1/65 − 1/129) / (64/65) = (64/129) / 64 = 1/129; X = 60 000 / 129.
        (
            "rescue, weak",
            amounts(rescued(60.0, parts(128.0), parts(64.0), 80.0), "l", "l", "ml"),
            &["0.0000", "0.0000", "465.116"],
        ),
        // 10 L at 3 %, target 2 %: W = 10 × (1.5 − 1) = 5 L, which 12 L of tank cannot take: keep
        // 12 × 2 / 3 = 8 L, drain 2 L, add 4 L.
        (
            "rescue, strong, no room",
            amounts(rescued(10.0, percent(3.0), percent(2.0), 12.0), "l", "l", "ml"),
            &["2.0000", "4.0000", "0.0000"],
        ),
        // 1.04 times the target: within 5 %, the common practice.
        (
            "rescue, near enough",
            amounts(rescued(10.0, percent(2.08), percent(2.0), 12.0), "l", "l", "ml"),
            &["0.0000", "0.0000", "0.0000"],
        ),
        // One dose of 1:64 more than remembered: 1/65 × (2 − 1/65) = 3.0533 %, 1 to 31.75.
        (
            "forgotten dose",
            vec![
                forgotten(parts(64.0), false).if_dosed.high.percent(),
                forgotten(parts(64.0), false).if_dosed.high.parts_of_water(),
            ],
            &["3.0533", "31.75"],
        ),
    ]
}

fn reading_cases() -> Vec<Case> {
    let blocks = [0.0, 50.0, 100.0, 200.0, 400.0].map(|ppm| of(ppm, "mg_per_l"));
    let quat = of::<MassConcentration>(10.0, "percent_wv");
    let strength = Measured { value: percent(2.0), error: VolumeFraction::ZERO };
    let meter = Calibration { water: 300.0, solution: 1_100.0, strength };
    let read = conductivity(900.0, 10.0, &meter).expect("a reading");
    let Doubt::Deviation(meter_error) = read.doubt else { panic!("a standard deviation") };
    let flow = |value: f64, error: f64| Measured {
        value: of::<Flow>(value, "ml_per_min"),
        error: of::<Flow>(error, "ml_per_min"),
    };
    let wall = proportion(flow(250.0, 5.0), flow(16_000.0, 200.0)).expect("a catch");
    vec![
        // 10 % w/v is 100 000 ppm. Between the blocks of 100 and 200: 150 ppm = 0.15 %. A block either way:
        // between 50 and 100, 75 ppm; between 200 and 400, 300 ppm. The blocks are a maker's, second-hand;
        // the error of one block: Water Conditioning & Purification, September 2001.
        (
            "strip between two blocks",
            ends(strip(Seen::Between(2), &blocks, quat).expect("blocks")),
            &["0.150", "0.075", "0.300"],
        ),
        // 7 drops of 25 ppm = 175 ppm of 90 000: 0.19444 %; 6 drops 0.16667 %, 8 drops 0.22222 %. One drop
        // either way is common practice.
        (
            "drops",
            ends(drops(7, of(25.0, "mg_per_l"), of(9.0, "percent_wv")).expect("active")),
            &["0.19444", "0.16667", "0.22222"],
        ),
        // 1.8 °Brix × 0.9 % = 1.62 %; ± 0.2 °Brix, common practice: 1.44 to 1.80 %.
        ("refractometer", ends(refractometer(1.8, percent(0.9), BRIX_ERROR)), &["1.62", "1.44", "1.80"]),
        // f = (900 − 300) / (1100 − 300) = 0.75; m = 1.5 %; s = 2 % × 10 / 800 × √(1 + 0.5625 + 0.0625)
        // = 0.025 % × 1.274755 = 0.0318689 %. The straight line is common practice.
        ("conductivity", vec![read.strength.percent(), meter_error.percent()], &["1.500000", "0.0318689"]),
        // 250 ± 5 mL of 16 000 ± 200 mL: m = 1/64, 1 to 63. √(0.02² + 0.0125²) = 0.0235850; × 64 = 1.50944.
        ("catch test at the wall", vec![wall.parts, wall.parts_error], &["63.00000", "1.50944"]),
    ]
}

fn product_cases() -> Vec<Case> {
    let quat = in_concentrate(of::<MassFraction>(10.0, "percent_ww"), of::<Density>(1.02, "g_per_ml"));
    let wanted = of::<MassConcentration>(200.0, "mg_per_l");
    let dilution = dilution_for(wanted, quat).expect("strong enough");
    let powder = powder_for(of(2.0, "oz_per_gal_us"), of(15.0, "gal_us"));
    let makes = |low, aim, high| {
        Makes::of_liquid(of(0.5, "floz_us"), parts(aim), Window { low: parts(low), high: parts(high) })
    };
    let packets = whole_units(makes(300.0, 256.0, 200.0), of(20.0, "gal_us"), of(20.0, "gal_us"));
    let tablets = Makes::of_solid(
        of(3.25, "g"),
        of(0.5, "g_per_l"),
        Window { low: of(0.5, "g_per_l"), high: of(0.6, "g_per_l") },
    );
    let two = whole_units(tablets, of(12.0, "l"), of(12.0, "l")).best;
    vec![
        // 10 % of 1.02 g/mL = 102 g/L; 200 ppm = 0.2 g/L: 1 in 510, 20 L / 510 = 39.2157 mL.
        // By mass, in water of 0.998207 g/mL (20 °C): 200 / 0.998207 = 200.359 mg/kg.
        (
            "dilution for 200 ppm",
            vec![
                in_unit(quat, "g_per_l"),
                1.0 / dilution.si(),
                in_unit(dilution * of::<Volume>(20.0, "l"), "ml"),
                in_unit(by_mass(wanted, of(0.998_207, "g_per_ml")), "mg_per_kg"),
            ],
            &["102.000", "510.000", "39.2157", "200.359"],
        ),
        // 2 oz/gal × 15 gal = 30 oz = 850.486 g; a 50 mL scoop of 0.9 g/mL holds 45 g: 18.8997 scoops.
        (
            "powder by the scoop",
            vec![
                in_unit::<Mass>(powder, "g"),
                scoops(powder, of(50.0, "ml"), Some(of(0.9, "g_per_ml"))).expect("a density"),
            ],
            &["850.486", "18.8997"],
        ),
        // Packets of 0.5 fl oz at 1:256: one makes 128.5 fl oz = 1.00391 gal. 20 gal: 19.92, so 20 packets,
        // which make 20.0781 gal and do not fit; 19 make 19.0742 gal. At 20 gal 20 packets are 1:255,
        // 20 / 19.9222 = 1.00391 of the aim.
        (
            "packets",
            vec![
                packets.best.count,
                in_unit(packets.above.level, "gal_us"),
                f64::from(u8::from(packets.above.fits)),
                in_unit(packets.below.expect("nineteen").level, "gal_us"),
                packets.best.share,
            ],
            &["20", "20.0781", "0", "19.0742", "1.00391"],
        ),
        // Tablets of 3.25 g at 0.5 g/L: one makes 6.5 L. 12 L: 1.85, so 2 tablets, 13 L, or 0.541667 g/L in
        // 12 L: 1.08333 of the aim and still no more than 0.6 g/L.
        (
            "tablets",
            vec![two.count, in_unit(two.level, "l"), two.share, f64::from(u8::from(two.inside))],
            &["2", "13.0000", "1.08333", "1"],
        ),
        // A bottle of 2.5 L at 1:100 and 1.2 L/min: 2.5 × 101 / 1.2 = 210.417 min.
        (
            "bottle",
            vec![in_unit(bottle_time(of(2.5, "l"), parts(100.0), of(1.2, "l_per_min")), "min")],
            &["210.417"],
        ),
    ]
}

fn certainty_cases() -> Vec<Case> {
    let row = cylinder(of(250.0, "ml")).expect("a row");
    let tolerance = in_unit(row.tolerance(Class::B), "ml");
    let limits = Dose::MadeUp { concentrate: with(250.0, tolerance, "ml"), total: with(25.0, 0.5, "l") };
    let even = |measured: Measured<Volume>| Measured::within_limits(measured.value, measured.error);
    let deviations =
        Dose::MadeUp { concentrate: even(with(250.0, tolerance, "ml")), total: even(with(25.0, 0.5, "l")) };
    let (worst, spread) = (worst_case(limits), first_order(deviations));
    vec![
        // 250 mL in a class B cylinder, ± 2 mL (ASTM E1272-02(2012), Table 1), in a tank mark of 25 ± 0.5 L
        // (common practice): 248 / 25 500 = 0.972549 %, 252 / 24 500 = 1.028571 %. As even tolerances
        // s = 1 % × √(0.008² + 0.02²) / √3 = 0.0124365 %; the measure's part is 64 / (64 + 400) = 0.137931.
        (
            "a cylinder and a tank mark",
            vec![
                worst.low.percent(),
                worst.high.percent(),
                spread.strength.percent(),
                spread.error.percent(),
                spread.by_measure,
            ],
            &["0.972549", "1.028571", "1.000000", "0.0124365", "0.137931"],
        ),
    ]
}

#[test]
fn twenty_by_hand() {
    let cases: Vec<Case> =
        [tank_cases(), reading_cases(), product_cases(), certainty_cases()].into_iter().flatten().collect();
    assert_eq!(cases.len(), 20);
    for (what, got, printed) in cases {
        assert_eq!(got.len(), printed.len(), "{what}");
        for (got, printed) in got.into_iter().zip(printed) {
            assert!(is_printed(got, printed), "{what}: {got} is not {printed}");
        }
    }
}
