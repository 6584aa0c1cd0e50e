//! Lines, rising tables and gravity.

use super::prints;
use brimline::trade::calibration::{
    CatchTest, DISCHARGE, Drain, LineMistake, Point, drain_time, fades, fit_line, orifice_area, orifice_flow,
    rising,
};
use brimline::units::{Area, Duration, Flow, Length, Quantity, Volume};
use proptest::prelude::*;

/// NIST Statistical Reference Datasets, linear regression, "Norris" (lower difficulty): x, y.
#[rustfmt::skip]
const NORRIS: [(f64, f64); 36] = [
    (0.2, 0.1), (337.4, 338.8), (118.2, 118.1), (884.6, 888.0), (10.1, 9.2), (226.5, 228.1),
    (666.3, 668.5), (996.3, 998.5), (448.6, 449.1), (777.0, 778.9), (558.2, 559.2), (0.4, 0.3),
    (0.6, 0.1), (775.5, 778.1), (666.9, 668.8), (338.0, 339.3), (447.5, 448.9), (11.6, 10.8),
    (556.0, 557.7), (228.1, 228.3), (995.8, 998.0), (887.6, 888.8), (120.2, 119.6), (0.3, 0.3),
    (0.3, 0.6), (556.8, 557.6), (339.1, 339.3), (887.2, 888.0), (999.0, 998.5), (779.0, 778.9),
    (11.1, 10.2), (118.3, 117.6), (229.2, 228.9), (669.1, 668.4), (448.9, 449.2), (0.5, 0.2),
];

fn even(x: f64, y: f64) -> Point {
    Point { x, y, error: 1.0 }
}

/// Certified: intercept -0.262323073774029 (0.232818234301152), slope 1.00211681802045
/// (0.000429796848199937), residual sum of squares 26.6173985294224.
#[test]
fn a_line_agrees_with_the_certified_norris_data() {
    let points: Vec<Point> = NORRIS.iter().map(|(x, y)| even(*x, *y)).collect();
    let line = fit_line(&points).expect("a line");
    let (intercept, slope, _) = line.errors();
    let scatter = line.scatter();
    for (got, certified) in [
        (line.intercept, -0.262_323_073_774_029),
        (line.slope, 1.002_116_818_020_45),
        (intercept * scatter, 0.232_818_234_301_152),
        (slope * scatter, 0.429_796_848_199_937e-3),
        (line.chi_squared, 26.617_398_529_422_4),
    ] {
        assert!((got / certified - 1.0).abs() < 1e-11, "{got} is not {certified}");
    }
}

/// Made up, worked with numpy.polyfit, `scipy.optimize.curve_fit` and the closed form, which agree: five
/// points with errors 0.01, 0.01, 0.02, 0.02, 0.03.
#[test]
fn a_weighted_line_agrees_with_numpy_and_scipy() {
    let rows = [(0.21, 0.01), (0.39, 0.01), (0.62, 0.02), (0.80, 0.02), (1.01, 0.03)];
    let points: Vec<Point> =
        (1..).zip(rows).map(|(x, (y, error))| Point { x: f64::from(x), y, error }).collect();
    let line = fit_line(&points).expect("a line");
    let (intercept, slope, covariance) = line.errors();
    prints(line.intercept, "0.00350532");
    prints(line.slope, "0.199427");
    prints(intercept, "0.0128623");
    prints(slope, "0.00554927");
    prints(covariance * 1e5, "-6.25717");
    prints(line.chi_squared, "2.95741");
    prints(intercept * line.scatter(), "0.0127707");
    let (at, error) = line.at(3.5);
    prints(at, "0.701499");
    prints(error, "0.0102308");
}

#[test]
fn one_place_makes_no_line() {
    assert_eq!(fit_line(&[]), Err(LineMistake::OnePlace));
    assert_eq!(fit_line(&[even(2.0, 1.0), even(2.0, 3.0)]), Err(LineMistake::OnePlace));
    assert_eq!(fit_line(&[even(1.0, f64::NAN), even(2.0, 3.0)]), Err(LineMistake::NoNumber));
    let exact = Point { x: 1.0, y: 1.0, error: 0.0 };
    assert_eq!(fit_line(&[exact, even(2.0, 3.0)]), Err(LineMistake::NoNumber));
}

/// Eight settings on a line but for small scatter, and one that was caught with the cap half on.
#[test]
fn an_outlier_is_pointed_out_and_stays() {
    let mut points: Vec<Point> = (1..=8)
        .map(|x| even(f64::from(x), 2.0 * f64::from(x) + if x % 2 == 0 { 0.01 } else { -0.01 }))
        .collect();
    assert!(fit_line(&points).expect("a line").outliers().is_empty());
    points[4].y -= 1.0;
    let line = fit_line(&points).expect("a line");
    assert_eq!(line.outliers(), [4]);
    assert_eq!(line.residuals.len(), 8, "all points stay in the line");
    assert!(line.off(&points) > 0.05);
}

#[test]
fn a_catch_test_knows_its_error() {
    let test = |seconds, millilitres| CatchTest {
        setting: 1.0,
        time: Duration::new(seconds),
        caught: Volume::new(millilitres * 1e-6),
    };
    assert!(
        test(60.0, 500.0).point(0.03).error < test(10.0, 500.0 / 6.0).point(0.03).error,
        "longer is surer"
    );
    assert!(test(30.0, 0.0).point(0.03).error > 0.0, "a dry setting keeps a weight");
}

/// Worked with the closed form, scipy's ODE solver and the `fluids` library, which agree: C 0.62, g 9.80665.
#[test]
fn gravity_agrees_with_fluids_and_scipy() {
    let hole = |millimetres: f64| Area::new(std::f64::consts::PI * (millimetres * 0.5e-3).powi(2));
    for (diameter, head, litres_a_minute) in [
        (4.0, 0.05, "0.462928"),
        (4.0, 0.4, "1.30936"),
        (6.0, 0.1, "1.47303"),
        (6.0, 0.2, "2.08317"),
        (6.0, 0.3, "2.55136"),
        (8.0, 0.05, "1.85171"),
        (8.0, 0.4, "5.23743"),
    ] {
        prints(orifice_flow(DISCHARGE, hole(diameter), Length::new(head)).si() * 60_000.0, litres_a_minute);
    }
    let drain = |surface, diameter| Drain { surface: Area::new(surface), hole: hole(diameter) * DISCHARGE };
    let time = |drain, from, to| drain_time(drain, Length::new(from), Length::new(to)).si();
    prints(time(drain(0.2, 6.0), 0.4, 0.05), "2106.51");
    prints(time(drain(0.2, 6.0), 0.4, 0.2), "954.421");
    prints(time(drain(0.2, 6.0), 0.4, 0.0), "3258.60");
    prints(time(drain(std::f64::consts::PI * 0.225 * 0.225, 8.0), 0.35, 0.1), "634.659");
    // 2 ft², a hole of 1/4 in, from 12 to 2 in.
    prints(time(drain(2.0 * 0.3048 * 0.3048, 6.35), 12.0 * 0.0254, 2.0 * 0.0254), "1396.15");
}

/// Points, some at the same setting.
fn any_points() -> impl Strategy<Value = Vec<Point>> {
    proptest::collection::vec((1..6_u8, 0.0..10.0_f64, 0.1..3.0_f64), 1..9)
        .prop_map(|all| all.into_iter().map(|(x, y, error)| Point { x: f64::from(x), y, error }).collect())
}

proptest! {
    /// The table that the definition gives: at each setting the greatest of the least means of all runs
    /// of settings that hold it, tried one by one.
    #[test]
    fn a_rising_table_is_what_brute_force_finds(points in any_points()) {
        let table = rising(&points);
        let settings: Vec<f64> = table.iter().map(|step| step.x).collect();
        let mean = |from: usize, to: usize| {
            let inside = |one: &&Point| settings[from] <= one.x && one.x <= settings[to];
            let (sum, weight) = points.iter().filter(inside).fold((0.0, 0.0), |(sum, weight), one| {
                (sum + one.y / (one.error * one.error), weight + 1.0 / (one.error * one.error))
            });
            sum / weight
        };
        for (at, step) in table.iter().enumerate() {
            let least = |from: usize| (at..settings.len()).map(|to| mean(from, to)).fold(f64::INFINITY, f64::min);
            let best = (0..=at).map(least).fold(f64::NEG_INFINITY, f64::max);
            prop_assert!((step.y - best).abs() < 1e-9, "{} is not {} at {}", step.y, best, step.x);
        }
        prop_assert!(table.windows(2).all(|pair| pair[0].x < pair[1].x && pair[0].y <= pair[1].y + 1e-12));
        prop_assert_eq!(table.iter().map(|step| step.count).sum::<usize>(), points.len());
    }

    /// A line through points of a line is that line, wherever the points and whatever their weights.
    #[test]
    fn a_line_is_found_again(a in -5.0..5.0_f64, b in -5.0..5.0_f64, points in any_points()) {
        let points: Vec<Point> = points.into_iter().map(|one| Point { y: a + b * one.x, ..one }).collect();
        prop_assume!(points.iter().any(|one| (one.x - points[0].x).abs() > 0.5));
        let line = fit_line(&points).expect("two places");
        prop_assert!((line.intercept - a).abs() < 1e-9 && (line.slope - b).abs() < 1e-9);
        prop_assert!(line.outliers().is_empty(), "{:?}", line.studentised);
    }

    /// Twice the errors: the same line, twice the standard errors.
    #[test]
    fn errors_scale_the_doubt_and_not_the_line(points in any_points()) {
        prop_assume!(points.len() > 2 && points.iter().any(|one| (one.x - points[0].x).abs() > 0.5));
        let doubled: Vec<Point> = points.iter().map(|one| Point { error: 2.0 * one.error, ..*one }).collect();
        let (once, twice) = (fit_line(&points).expect("two places"), fit_line(&doubled).expect("two places"));
        prop_assert!((once.slope - twice.slope).abs() < 1e-9);
        prop_assert!((2.0 * once.errors().1 / twice.errors().1 - 1.0).abs() < 1e-9);
        prop_assert!((once.scatter() - 2.0 * twice.scatter()).abs() < 1e-9 * once.scatter().max(1.0));
    }

    /// Caught at one head, told at another, and back; draining in two steps takes as long as in one.
    #[test]
    fn gravity_goes_there_and_back(
        flow in 1e-6..1e-3_f64, head in 0.02..1.0_f64, other in 0.02..1.0_f64, surface in 0.05..1.0_f64, part in 0.01..0.99_f64,
    ) {
        let (flow, head, other) = (Flow::new(flow), Length::new(head), Length::new(other));
        let there = fades(flow, head, other);
        prop_assert!((fades(there, other, head) / flow - 1.0).abs() < 1e-12);
        let hole = orifice_area(flow, head);
        prop_assert!((orifice_flow(1.0, hole, other) / there - 1.0).abs() < 1e-12);
        let drain = Drain { surface: Area::new(surface), hole };
        let whole = drain_time(drain, head, Length::ZERO);
        let first = drain_time(drain, head, head * part);
        prop_assert!(((first + drain_time(drain, head * part, Length::ZERO)) / whole - 1.0).abs() < 1e-12);
        // The mean of a tank that drains by gravity is half its first flow.
        prop_assert!((surface * head.si() / whole.si() / flow.si() - 0.5).abs() < 1e-12);
    }
}
