//! How sure a dose is: against computed tables, against the uncertainties library, and by drawing.

use crate::{assert_printed, near, of, within};
use brimline::limits;
use brimline::source::Standing;
use brimline::trade::certainty::{
    CYLINDERS, Cause, Class, Dose, Measured, chance_inside, cylinder, draw, first_order, worst_case,
};
use brimline::trade::label::Window;
use brimline::trade::reading::{Calibration, Doubt, Reading, catch, conductivity};
use brimline::units::{Quantity, Volume, VolumeFraction};
use proptest::prelude::*;
use serde_json::Value;
use std::process::Command;

fn volume(value: f64, error: f64) -> Measured<Volume> {
    Measured { value: Volume::new(value), error: Volume::new(error) }
}

fn on_top(c: f64, a: f64, w: f64, b: f64) -> Dose {
    Dose::OnTop { concentrate: volume(c, a), water: volume(w, b) }
}

/// Concentrate, water, and what the library uncertainties 3.2.3 makes of them: x, s, s in per cent of
/// x, parts of water and their s. The unit of the volumes, ounces or millilitres, falls out.
#[rustfmt::skip]
const BUDGETS: [([f64; 4], [&str; 5]); 7] = [
    ([6.0, 0.25, 1280.0, 64.0], ["0.00466563", "0.000302248", "6.47817", "213.333", "13.8849"]),
    ([6.0, 0.5, 1280.0, 12.8], ["0.00466563", "0.000389765", "8.35396", "213.333", "17.9053"]),
    ([20.0, 1.0, 1280.0, 64.0], ["0.0153846", "0.00107112", "6.96228", "64", "4.52548"]),
    ([128.0, 4.0, 1152.0, 23.04], ["0.1", "0.00333918", "3.33918", "9", "0.333918"]),
    ([100.0, 1.0, 900.0, 9.0], ["0.1", "0.00127279", "1.27279", "9", "0.127279"]),
    ([30.0, 3.0, 3785.41, 75.7082], ["0.00786285", "0.000795552", "10.1179", "126.180", "12.8679"]),
    ([500.0, 5.0, 500.0, 10.0], ["0.5", "0.00559017", "1.11803", "1", "0.0223607"]),
];

#[test]
fn budgets_to_the_printed_digits() {
    for ([c, a, w, b], [x, s, percent, parts, parts_error]) in BUDGETS {
        let spread = first_order(on_top(c, a, w, b));
        assert_printed(spread.strength.si(), x);
        assert_printed(spread.error.si(), s);
        assert_printed(100.0 * (spread.error / spread.strength), percent);
        assert_printed(spread.parts, parts);
        assert_printed(spread.parts_error, parts_error);
    }
}

/// Interval arithmetic: (6 − 0.25) / (5.75 + 1344) and (6 + 0.25) / (6.25 + 1216); the same for 128 ± 4
/// in 1152 ± 23.04.
#[test]
fn worst_cases_to_the_printed_digits() {
    for (dose, low, high, percent_low, percent_high) in [
        (on_top(6.0, 0.25, 1280.0, 64.0), "0.00426005", "0.00511352", "-8.69297", "9.59978"),
        (on_top(128.0, 4.0, 1152.0, 23.04), "0.0954551", "0.104682", "-4.54489", "4.68215"),
    ] {
        let (worst, usual) = (worst_case(dose), first_order(dose).strength);
        assert_printed(worst.low.si(), low);
        assert_printed(worst.high.si(), high);
        assert_printed(100.0 * (worst.low / usual - 1.0), percent_low);
        assert_printed(100.0 * (worst.high / usual - 1.0), percent_high);
    }
}

/// The closed form and ten thousand draws agree within 3 standard errors; that of a standard
/// deviation is s / √(2 N), for normal errors. First order itself is off by the square of the relative
/// error, which is allowed for beside it.
#[test]
fn draws_agree_with_the_closed_form() {
    for (seed, ([c, a, w, b], _)) in (1..).zip(BUDGETS) {
        let dose = on_top(c, a, w, b);
        let spread = first_order(dose);
        let (x, s) = (spread.strength, spread.error);
        let window = Window { low: x - s, high: x + s * 2.0 };
        let count = 10_000;
        let drawn = draw(dose, window, 0.0, seed, count).expect("enough draws");
        let bend = (s / x).powi(2);
        let n = f64::from(count);
        let mean_off = (drawn.mean - x).si().abs();
        assert!(mean_off <= 3.0 * s.si() / n.sqrt() + bend * x.si(), "mean of {c} in {w}: {mean_off}");
        let error_off = (drawn.error - s).si().abs();
        assert!(error_off <= (3.0 / (2.0 * n).sqrt() + 3.0 * bend) * s.si(), "s of {c} in {w}: {error_off}");
        let chance = chance_inside(x, s, window);
        let chance_off = (drawn.inside - chance).abs();
        assert!(chance_off <= 3.0 * drawn.inside_error + s / x * 0.1, "chance of {c} in {w}: {chance_off}");
    }
}

#[test]
fn too_few_draws_say_nothing() {
    let all = Window { low: VolumeFraction::ZERO, high: VolumeFraction::new(1.0) };
    let dose = on_top(6.0, 0.25, 1280.0, 64.0);
    assert!(draw(dose, all, 0.0, 1, 0).is_none() && draw(dose, all, 0.0, 1, 1).is_none());
    assert_ne!(draw(dose, all, 0.0, 1, 100), draw(dose, all, 0.0, 2, 100), "another seed, other draws");
    let exact = draw(on_top(1.0, 0.0, 3.0, 0.0), all, 0.0, 1, 100).expect("enough draws");
    assert_eq!((exact.mean, exact.error), (VolumeFraction::new(0.25), VolumeFraction::ZERO));
}

#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn errors_are_what_the_uncertainties_library_says() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with uncertainties");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/certainty.py");
    let run = Command::new(python).arg(script).output().expect("Python starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    let rows = |key: &str| theirs[key].as_array().expect("a list").clone();
    let numbers = |value: &Value| -> Vec<f64> {
        value.as_array().expect("a list").iter().map(|one| one.as_f64().expect("a number")).collect()
    };
    let close = |ours: f64, theirs: f64, scale: f64, row: &Value| {
        assert!((ours - theirs).abs() <= 1e-10 * scale, "{ours} is not {theirs} in {row}");
    };
    let reading = |found: Reading, row: &Value| {
        let theirs = numbers(&row["strength"]);
        let Doubt::Deviation(error) = found.doubt else { panic!("a standard deviation") };
        close(found.strength.si(), theirs[0], theirs[0], row);
        close(error.si(), theirs[1], theirs[1], row);
    };
    for row in rows("doses") {
        let (given, window) = (numbers(&row["given"]), numbers(&row["window"]));
        let (concentrate, water) = (volume(given[0], given[1]), volume(given[2], given[3]));
        let total = volume(given[0] + given[2], given[3]);
        let spread = first_order(Dose::OnTop { concentrate, water });
        let made_up = first_order(Dose::MadeUp { concentrate, total });
        for (ours, key) in [(spread, "on_top"), (made_up, "made_up")] {
            let theirs = numbers(&row[key]);
            close(ours.strength.si(), theirs[0], theirs[0], &row);
            close(ours.error.si(), theirs[1], theirs[1], &row);
        }
        let parts = numbers(&row["parts"]);
        close(spread.parts, parts[0], parts[0], &row);
        close(spread.parts_error, parts[1], parts[1], &row);
        let window = Window { low: VolumeFraction::new(window[0]), high: VolumeFraction::new(window[1]) };
        let chance = chance_inside(spread.strength, spread.error, window);
        let theirs = row["chance"].as_f64().expect("a number");
        assert!((chance - theirs).abs() <= 2e-7, "{chance} is not {theirs} in {row}");
    }
    for row in rows("catches") {
        let given = numbers(&row["given"]);
        reading(catch(volume(given[0], given[1]), volume(given[2], given[3])).expect("a catch"), &row);
    }
    for row in rows("meters") {
        let given = numbers(&row["given"]);
        let strength =
            Measured { value: VolumeFraction::new(given[4]), error: VolumeFraction::new(given[5]) };
        let calibration = Calibration { water: given[2], solution: given[3], strength };
        reading(conductivity(given[0], given[1], &calibration).expect("a reading"), &row);
    }
}

/// Class B is twice class A: ASTM E1272-02(2012), Table 1. The row of 1000 mL was not read there.
#[test]
fn cylinders() {
    for row in CYLINDERS {
        assert!(near(row.class_b.si(), 2.0 * row.class_a.si()));
        let from_memory = near(row.capacity.si(), of::<Volume>(1.0, "l").si());
        assert_eq!(row.source.standing == Standing::Published, !from_memory);
        assert!(std::ptr::eq(cylinder(row.capacity).expect("its own row"), row));
    }
    assert!(CYLINDERS.is_sorted_by(|a, b| a.capacity < b.capacity && a.class_a < b.class_a));
    let largest: Volume = of(500.0, "ml");
    assert!(near(cylinder(largest).expect("a row").tolerance(Class::A).si(), of::<Volume>(2.0, "ml").si()));
}

proptest! {
    #[test]
    fn the_worst_case_holds_the_usual_one(
        c in within::<Volume>(&limits::MEASURE), w in within::<Volume>(&limits::TANK),
        a in 0.0..0.3_f64, b in 0.0..0.3_f64,
    ) {
        let measured = |value: Volume, error: f64| Measured { value, error: value * error };
        for dose in [
            Dose::OnTop { concentrate: measured(c, a), water: measured(w, b) },
            Dose::MadeUp { concentrate: measured(c, a), total: measured(c + w, b) },
        ] {
            let (spread, worst) = (first_order(dose), worst_case(dose));
            prop_assert!(worst.low.si() <= spread.strength.si() * (1.0 + 1e-12));
            prop_assert!(spread.strength.si() <= worst.high.si() * (1.0 + 1e-12));
            prop_assert!((0.0..=1.0).contains(&spread.by_measure));
            prop_assert!(VolumeFraction::ZERO <= worst.low && worst.high <= VolumeFraction::new(1.0));
            // Exact water leaves only the measure to blame, and the other way round.
            let blame = |dose| first_order(dose).cause();
            if a > 1e-6 {
                prop_assert_eq!(blame(Dose::MadeUp { concentrate: measured(c, a), total: measured(c + w, 0.0) }), Cause::Measure);
            }
            if b > 1e-6 {
                prop_assert_eq!(blame(Dose::MadeUp { concentrate: measured(c, 0.0), total: measured(c + w, b) }), Cause::Water);
            }
        }
        // The unit falls out: twice of everything is as sure.
        let twice = Dose::OnTop { concentrate: measured(c * 2.0, a), water: measured(w * 2.0, b) };
        let once = Dose::OnTop { concentrate: measured(c, a), water: measured(w, b) };
        prop_assert!(near(first_order(twice).error.si(), first_order(once).error.si()));
    }

    #[test]
    fn a_wider_window_is_met_more_often(x in 0.001..0.5_f64, s in 0.0001..0.1_f64, low in 0.0..0.5_f64, wide in 0.0..0.5_f64) {
        let r = VolumeFraction::new;
        let chance = |low: f64, high: f64| chance_inside(r(x), r(s), Window { low: r(low), high: r(high) });
        prop_assert!((0.0..=1.0).contains(&chance(low, low + wide)));
        prop_assert!(chance(low, low + wide) <= chance(low - 0.01, low + wide + 0.01) + 4e-7);
        prop_assert!((chance(x - 1.959_964 * s, x + 1.959_964 * s) - 0.95).abs() < 1e-6);
        prop_assert!((chance(x - 9.0 * s, x) - 0.5).abs() < 1e-6);
        let sure = |low: f64, high: f64| chance_inside(r(x), r(0.0), Window { low: r(low), high: r(high) });
        prop_assert!(near(sure(x, x), 1.0) && near(sure(x * 1.1, x * 2.0), 0.0), "without error there is no chance");
    }
}
