//! What scipy and fluids say of the same numbers.

use brimline::trade::calibration::{DISCHARGE, Drain, Point, drain_time, fit_line, orifice_flow};
use brimline::trade::student::bound;
use brimline::units::{Area, Length, Quantity};
use serde_json::Value;
use std::process::Command;

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|one| one.as_f64().expect("a number")).collect()
}

#[track_caller]
fn near(got: f64, theirs: f64, within: f64) {
    assert!((got - theirs).abs() <= within * theirs.abs().max(1e-9), "{got} is not {theirs}");
}

#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn lines_and_drains_are_what_scipy_and_fluids_say() {
    let python =
        std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with scipy and fluids");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/calibration.py");
    let run = Command::new(python).arg(script).output().expect("Python starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    let rows = |key: &str| theirs[key].as_array().expect("a list").clone();
    for row in rows("lines") {
        let points: Vec<Point> = row["points"]
            .as_array()
            .expect("points")
            .iter()
            .map(numbers)
            .map(|one| Point { x: one[0], y: one[1], error: one[2] })
            .collect();
        let line = fit_line(&points).expect("two places");
        let (intercept, slope, covariance) = line.errors();
        // scipy searches for the least squares, ours is the closed form: seven digits.
        for (got, theirs) in [line.intercept, line.slope].into_iter().zip(numbers(&row["line"])) {
            near(got, theirs, 1e-6);
        }
        for (got, theirs) in [intercept, slope, covariance].into_iter().zip(numbers(&row["errors"])) {
            near(got, theirs, 1e-5);
        }
        let scatter = line.scatter();
        for (got, theirs) in [intercept * scatter, slope * scatter].into_iter().zip(numbers(&row["scaled"])) {
            near(got, theirs, 1e-5);
        }
    }
    // The table has three decimals.
    for (freedom, theirs) in (1..).zip(numbers(&theirs["student"])) {
        assert!((bound(freedom) - theirs).abs() <= 5e-4 + 1e-9, "{freedom}: {} {theirs}", bound(freedom));
    }
    for row in rows("holes") {
        let [hole, head] = numbers(&row["given"])[..] else { panic!("two numbers") };
        let flow = orifice_flow(DISCHARGE, Area::new(hole), Length::new(head));
        near(flow.si(), row["flow"].as_f64().expect("a number"), 1e-9);
    }
    for row in rows("drains") {
        let [surface, hole, from, to] = numbers(&row["given"])[..] else { panic!("four numbers") };
        let drain = Drain { surface: Area::new(surface), hole: Area::new(hole) };
        let time = drain_time(drain, Length::new(from), Length::new(to));
        near(time.si(), row["time"].as_f64().expect("a number"), 1e-9);
    }
}
