//! Whatever is typed, the answer is an answer or a trouble at the field that causes it.

use crate::after;
use brimline::error::Mistake;
use brimline::form::action::{Line, Shelf};
use brimline::form::saved::View;
use brimline::form::{Action, Field, Filling, Outcome, Typed, What, fill, flow, shift};
use brimline::limits::{self, OutOfRange};
use brimline::number::{Marks, NumberMistake};
use brimline::trade::label::LabelMistake;
use brimline::units::unit;

fn write(field: Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

fn outcome(view: View, typed: &Typed) -> Outcome {
    match view {
        View::Fill => fill::work(typed, Marks::POINT).outcome,
        View::Flow => flow::work(typed, Marks::POINT).outcome,
        View::Shift => shift::work(typed, Marks::POINT).outcome,
        View::TopUp | View::Rescue | View::Reading => unreachable!("their own tests ask these"),
    }
}

/// The troubles of a view, whole.
#[track_caller]
fn assert_troubles(view: View, actions: impl IntoIterator<Item = Action>, expected: &[(&str, What)]) {
    let outcome = outcome(view, &after(actions));
    let got: Vec<(&str, What)> =
        outcome.troubles.iter().map(|trouble| (trouble.name.as_str(), trouble.what.clone())).collect();
    assert_eq!(got, expected);
}

const MISSING: What = What::Number(Mistake::Missing);
const NO_NUMBER: What = What::Number(Mistake::Number(NumberMistake::NotANumber));
const UNIT: What = What::Number(Mistake::Unit);

fn below(limit: &'static limits::Limit) -> What {
    What::Number(Mistake::Range(OutOfRange::Below(limit)))
}

fn above(limit: &'static limits::Limit) -> What {
    What::Number(Mistake::Range(OutOfRange::Above(limit)))
}

/// Every number field of a view, and whether it may be left empty.
fn fields(view: View) -> Vec<(Field, bool)> {
    match view {
        View::Fill => vec![
            (Field::Tank, false),
            (Field::Level, false),
            (Field::Least, true),
            (Field::Most, true),
            (Field::MeasureStep, false),
        ],
        View::Flow => vec![
            (Field::Tank, false),
            (Field::Path, false),
            (Field::Overlap, true),
            (Field::Speed, false),
            (Field::Reuse, true),
            (Field::Setting(0), false),
            (Field::Setting(2), false),
            (Field::TargetLow, false),
            (Field::TargetHigh, false),
        ],
        View::TopUp | View::Rescue | View::Reading => unreachable!("their own tests ask these"),
        View::Shift => vec![
            (Field::Tank, false),
            (Field::Path, false),
            (Field::Speed, false),
            (Field::Efficiency, false),
            (Field::Setting(1), false),
            (Field::AreaSize(0), false),
            (Field::AreaSize(3), false),
            (Field::Refill, true),
        ],
    }
}

#[test]
fn a_field_is_typed_in_units_of_its_limit() {
    let all: Vec<Field> =
        [View::Fill, View::Flow, View::Shift].into_iter().flat_map(fields).map(|(field, _)| field).collect();
    for field in all {
        assert!(!field.units().is_empty(), "{field:?}");
        for code in field.units() {
            let dimension = unit(code).map(|unit| unit.dimension);
            let share = field == Field::Level && *code == "percent";
            let limit = if share { &limits::LEVEL_SHARE } else { field.limit() };
            assert_eq!(dimension, Some(limit.dimension), "{field:?} in {code}");
        }
        let entry = field.entry(&Typed::default()).cloned().expect("the demo has one");
        assert!(field.units().contains(&entry.unit.as_str()), "{field:?} in {}", entry.unit);
    }
}

#[test]
fn bad_numbers_are_told_at_their_field() {
    for view in [View::Fill, View::Flow, View::Shift] {
        for (field, optional) in fields(view) {
            let name = field.name();
            for text in ["", "  "] {
                let expected: &[(&str, What)] = if optional { &[] } else { &[(&name, MISSING)] };
                assert_troubles(view, [write(field, text)], expected);
            }
            for text in ["ten", "1 2", "1e9", "5 firkin", "1/0", "<script>", "12\t5", "💧", "NaN"] {
                assert_troubles(view, [write(field, text)], &[(&name, NO_NUMBER)]);
            }
            let limit = if field == Field::Level { &limits::LEVEL_SHARE } else { field.limit() };
            assert_troubles(view, [write(field, "1000000000")], &[(&name, above(limit))]);
            assert_troubles(view, [write(field, "-5")], &[(&name, below(limit))]);
            if limit.low > 0.0 {
                assert_troubles(view, [write(field, "0")], &[(&name, below(limit))]);
            }
            for code in ["firkin", "", "h"] {
                if matches!(field, Field::Refill | Field::Overlap | Field::Least | Field::Most | Field::Reuse)
                {
                    continue; // Left empty in the demo, or a time indeed.
                }
                assert_troubles(view, [Action::Unit(field, code.into())], &[(&name, UNIT)]);
            }
        }
    }
}

#[test]
fn good_numbers_are_read_in_every_dress() {
    for (text, gallons) in [
        ("7.5", 7.5),
        ("7,5", 7.5),
        ("7½", 7.5),
        ("7 1/2", 7.5),
        (" 7.5 ", 7.5),
        ("15/2", 7.5),
        ("7.5 gal", 7.5),
    ] {
        let typed = after([write(Field::Tank, text)]);
        let outcome = outcome(View::Fill, &typed);
        assert_eq!(outcome.troubles, [], "{text}");
        let total = outcome.answer.get("fill.total").unwrap().si;
        assert!((total - gallons * 0.003_785_411_784).abs() < 1e-15, "{text}");
    }
}

#[test]
fn numbers_that_do_not_go_together() {
    let level = |text: &str| [Action::Unit(Field::Level, "gal_us".into()), write(Field::Level, text)];
    assert_troubles(View::Fill, level("10"), &[]);
    assert_troubles(View::Fill, level("10.1"), &[("fill-level", What::AboveTank)]);
    assert_troubles(
        View::Fill,
        [write(Field::Least, "6"), write(Field::Most, "3")],
        &[("machine-least", What::LeastAboveMost)],
    );
    for text in ["17", "18"] {
        assert_troubles(
            View::Flow,
            [write(Field::Overlap, text)],
            &[("machine-overlap", What::OverlapTakesPath)],
        );
        assert_troubles(
            View::Shift,
            [write(Field::Overlap, text)],
            &[("machine-overlap", What::OverlapTakesPath)],
        );
    }
    assert_troubles(
        View::Flow,
        [write(Field::TargetLow, "0.7")],
        &[("floor-target-low", What::LeastAboveMost)],
    );
    let settings = || (0..3).map(|_| Action::DropSetting);
    assert_troubles(View::Flow, settings(), &[("machine-setting-1", What::NoRecord)]);
    let none = || (0..5).map(|index| Action::Include(index, false));
    assert_troubles(View::Shift, none(), &[("area-add", What::NoArea)]);
    let gone = || (0..5).map(|_| Action::Remove(Shelf::Area, 0));
    assert_troubles(View::Shift, gone(), &[("area-add", What::NoArea)]);
    let tiny = [
        Action::Unit(Field::Tank, "l".into()),
        write(Field::Tank, "0.5"),
        write(Field::AreaSize(0), "9000000"),
    ];
    assert_troubles(View::Shift, tiny, &[("machine-tank", What::TooManyFills)]);
}

#[test]
fn room_for_the_concentrate() {
    let label = |text: &str| Action::Text(Line::Label, text.into());
    let on_top = || Action::Filling(Filling::OnTop);
    assert_troubles(View::Fill, [on_top()], &[("fill-level", What::NoRoom)]);
    assert_troubles(View::Fill, [on_top(), write(Field::Level, "98")], &[]);
    assert_troubles(View::Fill, [label("100 %")], &[]);
    assert_troubles(View::Fill, [on_top(), label("100 %")], &[("product-label", What::Neat)]);
}

#[test]
fn a_label_is_told_at_its_field() {
    let label = |text: &str| [Action::Text(Line::Label, text.into())];
    let mistake = |mistake| [("product-label", What::Label(mistake))];
    assert_troubles(View::Fill, label(""), &mistake(LabelMistake::Empty));
    assert_troubles(View::Fill, label("64"), &mistake(LabelMistake::NoUnit));
    let readings = vec!["2+5".to_owned(), "5+2".to_owned()];
    assert_troubles(View::Shift, label("2:5"), &mistake(LabelMistake::Ambiguous { readings }));
    assert_troubles(View::Fill, label(&"1:64 ".repeat(99)), &mistake(LabelMistake::TooLong));
}
