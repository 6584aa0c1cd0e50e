//! The floor's class from what was typed of it, and what to change where no setting serves. Worked by hand.

use crate::after;
use crate::form_flow::told;
use brimline::answer::Answer;
use brimline::chemistry::floor::thirst::{Joints, Texture};
use brimline::form::action::{Shelf, reduce};
use brimline::form::flow::{thirst, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::site::Entry;
use brimline::trade::porosity::Porosity;

fn write(field: Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

/// The answer for a target in gallons for 1000 ft².
fn asked(low: &str, high: &str) -> Answer {
    work(&after([write(Field::TargetLow, low), write(Field::TargetHigh, high)]), Marks::POINT).outcome.answer
}

fn codes(answer: &Answer) -> Vec<&str> {
    answer.remarks.iter().map(|remark| remark.code).filter(|code| code.starts_with("remark-flow-")).collect()
}

/// The small walk-behind passes 2 mph × 15 in = 13,200 ft²/h. Its 0.12, 0.2 and 0.3 gal/min are 7.2, 12 and
/// 18 gal/h: 0.5455, 0.9091 and 1.3636 gal/1000 ft².
#[test]
fn passes_reach_what_no_setting_reaches() {
    let passes = |low, high| {
        let answer = asked(low, high);
        let si = |name| answer.get(name).map(|value| value.si);
        (si(names::FLOW_PASSES), si(names::FLOW_PASSES_SETTING), codes(&answer).join(" "))
    };
    let helps = "remark-flow-short remark-flow-passes".to_owned();
    // Twice 1.3636 is 2.7273.
    assert_eq!(passes("2.5", "3"), (Some(2.0), Some(3.0), helps.clone()));
    // That is too much here; twice 0.9091 is 1.8182.
    assert_eq!(passes("1.7", "1.9"), (Some(2.0), Some(2.0), helps.clone()));
    // Twice 1.3636 and three times 0.9091 are 2.7273, four times 0.5455 is 2.1818.
    assert_eq!(passes("2.1", "2.2"), (Some(4.0), Some(1.0), helps));
    // None lies between 2.2 and 2.3: nobody is to try it.
    assert_eq!(passes("2.2", "2.3"), (None, None, "remark-flow-short remark-flow-passes-over".to_owned()));
    let (total, _) = told(&asked("2.2", "2.3"), "remark-flow-passes-over", "total");
    assert!((total - 2.0 * 18.0 / 13.2).abs() < 1e-9);
    // Six passes are another machine's job.
    assert_eq!(passes("7.5", "9"), (None, None, "remark-flow-short".to_owned()));
    assert_eq!(passes("0.5", "0.6"), (None, None, String::new()), "one pass is enough");
    // At its speed the floor would take 2.5 to 3 gal/1000 ft² from 33 to 39.6 gal/h.
    let (low, high) = told(&asked("2.5", "3"), "remark-flow-short", "flow");
    assert!((low - 0.55).abs() < 1e-12 && (high - 0.66).abs() < 1e-12, "{low} to {high} gal/min");
}

/// 1.3636 is too much for 1.05 to 1.2. Setting 2 gives 12 gal/h on 1.25 ft: 1.2 at 8000 ft/h, 1.5152 mph,
/// and 1.05 at 9142.9 ft/h, 1.7316 mph. Twice 0.5455 is 1.0909.
#[test]
fn where_it_is_too_wet_a_lower_setting_may_do() {
    let wet = asked("1.05", "1.2");
    assert_eq!(codes(&wet), ["remark-flow-too-wet", "remark-flow-lower", "remark-flow-passes"]);
    let (slowest, fastest) = told(&wet, "remark-flow-lower", "speed");
    assert!(
        (slowest - 8_000.0 / 5_280.0).abs() < 1e-9 && (fastest - 12.0 / 1.05 * 800.0 / 5_280.0).abs() < 1e-9
    );
    assert_eq!(told(&wet, "remark-flow-lower", "setting"), (2.0, 2.0));
    assert_eq!(wet.get(names::FLOW_PASSES).map(|value| value.si), Some(2.0));
    assert_eq!(wet.get(names::FLOW_PASSES_SETTING).map(|value| value.si), Some(1.0));
    // Below the lowest setting there is none to go down to.
    assert_eq!(codes(&asked("0.1", "0.2")), ["remark-flow-too-wet"]);
    assert!(asked("0.1", "0.2").get(names::FLOW_PASSES).is_none());
}

#[test]
fn a_class_is_told_and_never_taken_by_itself() {
    let pick = Action::Pick(Shelf::Floor, "tile".into());
    let typed = after([
        pick.clone(),
        write(Field::Absorption, "7"),
        Action::Joints(Joints::Sealed),
        Action::Texture(Texture::Smooth),
    ]);
    let class = |typed: &Typed| thirst::class(typed, Marks::POINT).expect("a class").class;
    assert_eq!(class(&typed), Porosity::Medium, "7 % is semi-vitreous still");
    assert_eq!(class(&reduce(typed.clone(), write(Field::Absorption, "7.1"))), Porosity::High);
    assert_eq!(typed.floor().map(|floor| floor.porosity), Some(Porosity::Medium));
    // What is no number points nowhere and is said at its field; the answer stands.
    let odd = reduce(typed.clone(), write(Field::Absorption, "a little"));
    assert_eq!(class(&odd), Porosity::Medium);
    let work = work(&odd, Marks::POINT);
    assert!(matches!(work.outcome.at("floor-absorption"), Some(What::Number(_))));
    assert!(work.outcome.answer.get(names::FLOW_SETTING).is_some());
    // A drop is of one floor: the others know nothing of it.
    let dropped = reduce(typed, write(Field::Drop, "5"));
    assert_eq!(class(&dropped), Porosity::High);
    assert_eq!(class(&reduce(dropped, Action::Pick(Shelf::Floor, "wood".into()))), Porosity::Sealed);
}

/// Schema 2 kept one drop test for whatever floor was looked at.
#[test]
fn a_drop_test_of_schema_2_goes_to_the_floor_it_was_made_on() {
    let mut old = after([Action::Pick(Shelf::Floor, "tile".into())]);
    old.schema = 2;
    old.ask.drop = Entry::new("45", "s");
    let new = old.up_to_date();
    assert_eq!(new.floor().map(|floor| floor.drop.clone()), Some(Entry::new("45", "s")));
    assert_eq!((new.ask.drop.text.as_str(), new.schema), ("", brimline::form::typed::SCHEMA));
    let again = reduce(new, write(Field::Drop, "50")).up_to_date();
    assert_eq!(again.floor().map(|floor| floor.drop.text.clone()), Some("50".into()));
}
