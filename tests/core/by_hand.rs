//! Fills worked by hand, held to the digits that the hand wrote down.

use crate::{after, assert_printed};
use brimline::answer::Answer;
use brimline::form::action::{Line, Shelf};
use brimline::form::{Action, Field, Filling, Typed, fill, names};
use brimline::number::Marks;
use brimline::units::{System, unit};

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
