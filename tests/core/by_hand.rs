//! Fills and a shift worked by hand, held to the digits that the hand wrote down.

use crate::{after, assert_printed, in_unit};
use brimline::answer::Answer;
use brimline::form::action::{Line, Shelf};
use brimline::form::{Action, Field, Filling, Typed, fill, names, shift};
use brimline::number::Marks;
use brimline::trade::shift::Fill;
use brimline::units::{Duration, Quantity, System, unit};

#[track_caller]
fn assert_figure(answer: &Answer, name: &str, code: &str, printed: &str) {
    let value = answer.get(name).unwrap_or_else(|| panic!("{name} is missing"));
    assert_printed(unit(code).map_or(value.si, |unit| unit.from_si(value.si)), printed);
}

#[track_caller]
fn fill_of(typed: &Typed, marks: Marks) -> Answer {
    let outcome = fill::work(typed, marks).outcome;
    assert_eq!(outcome.troubles, []);
    outcome.answer
}

/// US: a tank of 20 gal made up to three quarters, label "2 oz/gal" of water.
///
/// V = 0.75 × 20 = 15 gal = 1920 fl oz; r = 2 / (128 + 2) = 0.0153846; c = 1920 × 2 / 130 = 29.5385 fl oz;
/// W = 1920 − 29.5385 = 1890.4615 fl oz = 14.7692 gal; n = 128 / 2 = 64. In half fluid ounces:
/// 59.08, so 59 caps = 29.5 fl oz, which make 1 to (1920 − 29.5) / 29.5 = 64.0847.
#[test]
fn a_us_fill() {
    let typed = after([
        Action::Write(Field::Tank, "20".into()),
        Action::Write(Field::Level, "75".into()),
        Action::Text(Line::Label, "2 oz/gal".into()),
        Action::Pick(Shelf::Measure, "cap".into()),
    ]);
    let answer = fill_of(&typed, Marks::POINT);
    assert_figure(&answer, names::FILL_TOTAL, "gal_us", "15.0000");
    assert_figure(&answer, names::FILL_DOSE, "floz_us", "29.5385");
    assert_figure(&answer, names::FILL_WATER, "gal_us", "14.7692");
    assert_figure(&answer, names::FILL_STRENGTH, "percent", "1.53846");
    assert_figure(&answer, names::FILL_RATIO, "", "64.0000");
    assert_figure(&answer, names::FILL_COUNT, "", "59.0000");
    assert_figure(&answer, names::FILL_ROUNDED, "floz_us", "29.5000");
    assert_figure(&answer, names::FILL_ROUNDED_RATIO, "", "64.0847");
}

/// Metric: 60 L of water measured into a tank of 75 L, label "0,5 %", decimal comma.
///
/// c = 60 000 mL × 0.005 / 0.995 = 301.5075 mL; V = 60.3015 L; n = 0.995 / 0.005 = 199. In 10 mL: 30.15, so
/// 30 marks = 300 mL, which make 1 to 60 000 / 300 = 200.
#[test]
fn a_metric_fill() {
    let typed = after([
        Action::System(System::Metric),
        Action::Unit(Field::Tank, "l".into()),
        Action::Write(Field::Tank, "75,0".into()),
        Action::Unit(Field::Level, "l".into()),
        Action::Write(Field::Level, "60".into()),
        Action::Filling(Filling::OnTop),
        Action::Text(Line::Label, "0,5 %".into()),
        Action::Pick(Shelf::Measure, "cup-ml".into()),
    ]);
    let answer = fill_of(&typed, Marks::COMMA);
    assert_figure(&answer, names::FILL_TOTAL, "l", "60.3015");
    assert_figure(&answer, names::FILL_WATER, "l", "60.0000");
    assert_figure(&answer, names::FILL_DOSE, "ml", "301.5075");
    assert_figure(&answer, names::FILL_RATIO, "", "199.0000");
    assert_figure(&answer, names::FILL_COUNT, "", "30.0000");
    assert_figure(&answer, names::FILL_ROUNDED, "ml", "300.0000");
    assert_figure(&answer, names::FILL_ROUNDED_RATIO, "", "200.0000");
}

/// Imperial: a tank of 12 gal, label "2 fl oz per gallon" of water, 160 fl oz to the gallon.
///
/// V = 12 × 160 = 1920 fl oz; c = 1920 × 2 / 162 = 23.7037 fl oz = 23.7037 × 28.4130625 mL = 673.495 mL;
/// W = 1896.2963 fl oz = 11.8519 gal. In strokes of 30 mL: 22.45, so 22 = 660 mL.
#[test]
fn an_imperial_fill() {
    let typed = after([
        Action::System(System::Imperial),
        Action::Unit(Field::Tank, "gal_imp".into()),
        Action::Write(Field::Tank, "12".into()),
        Action::Text(Line::Label, "2 fl oz per gallon".into()),
        Action::Pick(Shelf::Measure, "pump".into()),
    ]);
    let answer = fill_of(&typed, Marks::POINT);
    assert_figure(&answer, names::FILL_DOSE, "floz_imp", "23.7037");
    assert_figure(&answer, names::FILL_DOSE, "ml", "673.495");
    assert_figure(&answer, names::FILL_WATER, "gal_imp", "11.8519");
    assert_figure(&answer, names::FILL_RATIO, "", "80.0000");
    assert_figure(&answer, names::FILL_COUNT, "", "22.0000");
    assert_figure(&answer, names::FILL_ROUNDED, "ml", "660.000");
}

/// Three areas with the small walk-behind of the demo: 10 gal, 17 in less 2 in at 2 mph, 65 % of the time
/// at work, settings of 0.12, 0.2 and 0.3 gal/min, 1 to 64, 10 min a refill.
///
/// Passing: 15/12 ft × 2 × 5280 ft/h = 13 200 ft²/h; cleaned: 13 200 × 0.65 = 8580 ft²/h = 143 ft²/min.
///
/// | area | ft² | wanted, gal/1000 ft² | setting | gives | gal | min |
/// |---|---|---|---|---|---|---|
/// | Reading room | 6000 | 0.3 to 0.6 | 1 | 0.12 × 60 / 13.2 = 0.545455 | 3.27273 | 41.9580 |
/// | Sports hall | 9000 | 0.3 to 0.6 | 1 | 0.545455 | 4.90909 | 62.9371 |
/// | Changing rooms | 3600 | 0.8 to 1.3 | 2 | 0.2 × 60 / 13.2 = 0.909091 | 3.27273 | 25.1748 |
///
/// In all 18 600 ft², 11.45455 gal and 130.0699 min. The first fill of 10 gal covers the first two
/// (8.18182 gal) and 1.81818 gal of the third, which is 1.81818 / 0.909091 = 2000 ft² of it. That is at
/// 41.9580 + 62.9371 + 2000 / 143 = 118.8811 min; the refill is done at 128.8811, and is only the
/// 1.45455 gal that are left; all ends at 140.0699 min. Concentrate at 1/65: 1280 / 65 = 19.6923 and
/// 1.45455 × 128 / 65 = 2.8643 fl oz, together 22.5566; water 11.45455 × 64 / 65 = 11.27832 gal.
#[test]
fn a_shift_of_three_areas() {
    let typed = after([Action::Include(1, false), Action::Write(Field::AreaSize(3), "3600".into())]);
    let shift = shift::work(&typed, Marks::POINT);
    assert_eq!(shift.outcome.troubles, []);
    let rows: Vec<(usize, usize)> = shift.rows.iter().map(|row| (row.area, row.setting)).collect();
    assert_eq!(rows, [(0, 1), (2, 1), (3, 2)]);
    for (row, rate, solution, run) in [
        (0, "0.545455", "3.27273", "41.9580"),
        (1, "0.545455", "4.90909", "62.9371"),
        (2, "0.909091", "3.27273", "25.1748"),
    ] {
        assert_printed(in_unit(shift.rows[row].rate, "gal_us_per_1000ft2"), rate);
        assert_printed(in_unit(shift.rows[row].solution, "gal_us"), solution);
        assert_printed(in_unit(shift.rows[row].run, "min"), run);
    }
    let answer = &shift.outcome.answer;
    for (name, code, printed) in [
        (names::SHIFT_AREA, "ft2", "18600.00"),
        (names::SHIFT_RUN_TIME, "min", "130.0699"),
        (names::SHIFT_TOTAL_TIME, "min", "140.0699"),
        (names::SHIFT_SOLUTION, "gal_us", "11.45455"),
        (names::SHIFT_CONCENTRATE, "floz_us", "22.5566"),
        (names::SHIFT_WATER, "gal_us", "11.27832"),
        (names::SHIFT_FILLS, "", "2.0000"),
    ] {
        assert_figure(answer, name, code, printed);
    }
    let fills = shift.plan.expect("a plan").fills;
    let [Fill { at: start, after: none, .. }, second] = fills[..] else { panic!("{fills:?}") };
    assert_eq!((start, none.si()), (Duration::ZERO, 0.0));
    assert_printed(in_unit(fills[0].concentrate, "floz_us"), "19.6923");
    assert_eq!(second.task, 2);
    assert_printed(in_unit(second.after, "ft2"), "2000.00");
    assert_printed(in_unit(second.at, "min"), "128.8811");
    assert_printed(in_unit(second.solution, "gal_us"), "1.45455");
    assert_printed(in_unit(second.concentrate, "floz_us"), "2.8643");
}
