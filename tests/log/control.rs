//! Control charts.

use brimline::trade::control::{ControlMistake, D2, D4, E2, Rule, limits, ranges, signals};
use proptest::prelude::*;

/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rates of ten batches: mean 50.81, mean range
/// 1.8778, limits 55.8041 and 45.8159. Seen in a table that cites it.
#[test]
fn the_handbooks_flow_rates() {
    let rates = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    let found = limits(&rates).expect("a chart");
    for (got, printed) in
        [(found.centre, 50.81), (found.range, 1.8778), (found.upper, 55.8041), (found.lower, 45.8159)]
    {
        assert!((got - printed).abs() < 5.001e-5, "{got} is not {printed}");
    }
    assert!((found.range_upper - 3.267 * 16.9 / 9.0).abs() < 1e-9);
    assert_eq!(signals(&rates, &found, true), [], "the process is in control");
}

/// By their definition for two normal values: d₂ = 2/√π, d₃ = √(2 − 4/π), D₄ = 1 + 3 d₃/d₂.
#[test]
fn the_constants_are_those_of_two_normal_values() {
    use std::f64::consts::PI;
    let (d2, d3) = (2.0 / PI.sqrt(), (2.0 - 4.0 / PI).sqrt());
    assert!((D2.value - d2).abs() < 5e-4);
    assert!((D4.value - (1.0 + 3.0 * d3 / d2)).abs() < 1e-3);
    assert!((E2.value - 2.66).abs() < 5e-3);
}

#[test]
fn eight_on_one_side() {
    let made = limits(&[-1.0, 1.0, -1.0, 1.0]).expect("a chart");
    let run = |values: &[f64]| -> Vec<usize> {
        signals(values, &made, true).iter().filter(|one| one.rule == Rule::Run).map(|one| one.at).collect()
    };
    assert_eq!(run(&[0.5; 7]), [0; 0]);
    assert_eq!(run(&[0.5; 9]), [7, 8]);
    let broken = [0.5, 0.5, 0.5, 0.5, 0.0, 0.5, 0.5, 0.5, 0.5];
    assert_eq!(run(&broken), [0; 0], "one on the centre ends the run");
    let turned = [0.5, 0.5, 0.5, 0.5, -0.5, -0.5, -0.5, -0.5, -0.5, -0.5, -0.5, -0.5];
    assert_eq!(run(&turned), [11]);
    assert_eq!(signals(&[0.5; 9], &made, false), []);
}

#[test]
fn what_makes_no_chart() {
    assert_eq!(limits(&[]), Err(ControlMistake::TooFew));
    assert_eq!(limits(&[1.0]), Err(ControlMistake::TooFew));
    assert_eq!(limits(&[1.0, f64::NAN]), Err(ControlMistake::NoNumber));
    assert_eq!(limits(&[f64::MAX, -f64::MAX]), Err(ControlMistake::NoNumber));
    let flat = limits(&[3.0; 5]).expect("a chart");
    assert_eq!((flat.lower, flat.upper, flat.range_upper), (3.0, 3.0, 0.0));
    assert_eq!(signals(&[3.0; 20], &flat, true), []);
    let rules: Vec<Rule> = signals(&[3.0, 3.1], &flat, true).iter().map(|one| one.rule).collect();
    assert_eq!(rules, [Rule::Beyond, Rule::Jump]);
}

fn near(a: f64, b: f64, size: f64) -> bool {
    (a - b).abs() <= 1e-9 * (1.0 + size)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, failure_persistence: None, ..ProptestConfig::default() })]

    /// In another unit, and counted from another zero, it is the same chart.
    #[test]
    fn shift_and_scale(values in prop::collection::vec(-100.0..100.0_f64, 2..40), by in -1e3..1e3_f64, times in 1e-2..1e3_f64) {
        let plain = limits(&values).expect("a chart");
        let moved: Vec<f64> = values.iter().map(|value| value * times + by).collect();
        let found = limits(&moved).expect("a chart");
        let size = 1e3 + 1e3 * times;
        for (a, b) in [(found.centre, plain.centre), (found.lower, plain.lower), (found.upper, plain.upper)] {
            prop_assert!(near(a, b * times + by, size));
        }
        prop_assert!(near(found.range, plain.range * times, size));
        prop_assert!(near(found.range_upper, plain.range_upper * times, size));
        // Away from the limits by more than rounding, the same points stand out.
        let far = |value: &f64| [plain.upper, plain.lower, plain.centre].iter().all(|line| (value - line).abs() > 1e-6);
        let jumps = ranges(&values);
        if values.iter().all(far) && jumps.iter().all(|jump| (jump - plain.range_upper).abs() > 1e-6) {
            prop_assert_eq!(signals(&moved, &found, true), signals(&values, &plain, true));
        }
    }

    /// Turned upside down, it is the same chart upside down; backwards, the limits are the same.
    #[test]
    fn mirrored(values in prop::collection::vec(-100.0..100.0_f64, 2..40)) {
        let plain = limits(&values).expect("a chart");
        let down: Vec<f64> = values.iter().map(|value| -value).collect();
        let turned = limits(&down).expect("a chart");
        prop_assert!(near(turned.upper, -plain.lower, 1e3) && near(turned.range, plain.range, 1e3));
        let back: Vec<f64> = values.iter().rev().copied().collect();
        prop_assert!(near(limits(&back).expect("a chart").upper, plain.upper, 1e3));
    }
}
