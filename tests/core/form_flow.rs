//! Flow in depth, from what was typed: catch tests, fading tanks, drying.
//! Worked by hand.

use brimline::answer::{Answer, Fact, Weight};
use brimline::form::action::{Shelf, reduce};
use brimline::form::flow::{calibrate, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::site::Entry;
use brimline::units::{Kind, Quantity, System};

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn write(field: Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

fn answer(actions: impl IntoIterator<Item = Action>) -> Answer {
    work(&after(actions), Marks::POINT).outcome.answer
}

/// A value of a remark in the units that Americans read.
#[track_caller]
pub fn told(answer: &Answer, code: &str, fact: &str) -> (f64, f64) {
    let remark = answer.remarks.iter().find(|remark| remark.code == code).expect(code);
    let us = |value: &brimline::answer::Value| {
        value.kind.unit(System::Us).map_or(value.si, |unit| unit.from_si(value.si))
    };
    match remark.facts.iter().find(|(name, _)| *name == fact) {
        Some((_, Fact::Value(value))) => (us(value), us(value)),
        Some((_, Fact::Window(low, high))) => (us(low), us(high)),
        other => panic!("{code} {fact}: {other:?}"),
    }
}

/// 6/11 gal/1000 ft² is 126 in³ (of 231 in³ a gallon, by definition) on 144,000 in²: 0.000875 in.
#[test]
fn a_film_is_as_thick_as_its_volume_on_its_area() {
    let answer = answer([]);
    let mils =
        |name| Kind::Thickness.unit(System::Us).expect("mil").from_si(answer.get(name).expect(name).si);
    assert!((mils(names::FLOW_THICKNESS) - 0.875).abs() < 1e-12);
    assert!((mils(names::FLOW_FILM_THICKNESS) - 0.0875).abs() < 1e-12);
}

/// 68 °F are 20 °C: 2.33880 kPa over water by `PsychroLib`, half of it in air of 50 %; a film cooled to
/// 13.7834 °C. The heat of evaporation at 20 °C is 2453.55 kJ/kg by IAPWS-97.
#[test]
fn the_workings_of_drying_show_the_vapour() {
    let answer = answer([]);
    let steps: Vec<_> = answer.steps.iter().filter(|step| step.formula.code == "formula-drying").collect();
    let [soonest, latest] = steps[..] else { panic!("two ends, not {}", steps.len()) };
    let given = |step: &brimline::answer::Step, symbol| {
        step.given.iter().find(|(name, _)| *name == symbol).map(|(_, value)| value.si).expect(symbol)
    };
    assert!((given(soonest, "p_w") - 2_338.80).abs() < 0.006);
    assert!((given(soonest, "p_a") - 1_169.40).abs() < 0.006);
    assert!((given(soonest, "Y") - 2_453.55e3).abs() < 40.0);
    assert!((given(latest, "θ") - 273.15 - 13.7834).abs() < 0.005);
    assert!(given(latest, "p_w") < given(soonest, "p_w") && (given(latest, "p_a") - 1_169.40).abs() < 0.006);
    // The formula with these numbers gives the time, in kg/m², kPa, kJ/kg and m/s.
    for step in [soonest, latest] {
        let evaporates = (given(step, "p_w") - given(step, "p_a")) / 1e3
            * (0.089 + 0.0782 * given(step, "V"))
            / (given(step, "Y") / 1e3);
        let time = given(step, "m") * 998.0 / evaporates;
        assert!((time / step.result.si - 1.0).abs() < 1e-12);
    }
}

/// A setting that gives nothing would pull the line of the others down.
#[test]
fn a_catch_test_of_nothing_is_asked_about_and_left_out() {
    for nothing in ["0", "0.0"] {
        let typed = caught(&[("1", "600"), ("2", "800"), ("3", nothing), ("4", "1200")]);
        let calibration = calibrate::work(&typed, Marks::POINT);
        assert_eq!(calibration.outcome.at("catch-3-volume"), Some(&What::NothingCame));
        assert_eq!((calibration.outcome.troubles.len(), calibration.tests.len()), (1, 3));
        for (got, expected) in litres_a_minute(&calibration).into_iter().zip([0.6, 0.8, 1.0, 1.2]) {
            assert!((got - expected).abs() < 1e-9, "{got} is not {expected}");
        }
    }
}

/// The film of setting 1 dries in 46 s to 2.2 min; all that it lays down, ten times that, lasts 7.7 min.
#[test]
fn what_keeps_the_floor_wet_for_the_contact_time_is_said() {
    let early = |contact: &str, more: &[Action]| {
        let answer = answer([write(Field::Contact, contact)].into_iter().chain(more.iter().cloned()));
        let remark = answer.remarks.iter().find(|remark| remark.code == "remark-dries-early").cloned()?;
        let key = |name: &str| match remark.facts.iter().find(|(one, _)| *one == name) {
            Some((_, Fact::Key(key))) => key.clone(),
            other => panic!("{name}: {other:?}"),
        };
        Some((key("dries"), key("act")))
    };
    let keys = |dries: &str, act: &str| Some((format!("dries-early-{dries}"), format!("dries-early-{act}")));
    assert_eq!(early("0.5", &[]), None);
    assert_eq!(early("2", &[]), keys("maybe", "lift"));
    assert_eq!(early("5", &[]), keys("surely", "lift"));
    // The floor of the demo may get less than that.
    let most = |text: &str| write(Field::TargetHigh, text);
    assert_eq!(early("10", &[most("0.5")]), keys("surely", "again-floods"));
    assert_eq!(early("10", &[most("9")]), keys("surely", "again"));
    assert_eq!(early("10", &[most("9"), Action::Vacuum(false)]), keys("maybe", "more"));
    assert_eq!(early("10", &[most("0.5"), Action::Vacuum(false)]), keys("maybe", "floods"));
    // 600 s of 46.1 s: 13 times the film of 0.0545 gal/1000 ft² stays wet for ten minutes.
    let long = answer([write(Field::Contact, "10")]);
    let (need, _) = told(&long, "remark-dries-early", "need");
    let dry = long.get(names::FLOW_DRY_FROM).expect("a time").si;
    assert!((need - 7.2 / 13.2 * 0.1 * 600.0 / dry).abs() < 1e-9);
    // A disinfectant of which nobody typed the contact time is not passed over.
    let quat = answer([Action::Pick(Shelf::Product, "quat".into()), write(Field::Contact, "")]);
    assert!(quat.remarks.iter().any(|remark| remark.code == "remark-contact-unknown"));
}

/// Catch tests of a minute, in mL, setting by setting.
fn caught(tests: &[(&str, &str)]) -> Typed {
    let mut actions = Vec::new();
    for (index, (setting, millilitres)) in tests.iter().enumerate() {
        actions.push(Action::AddCatch);
        actions.push(write(Field::TestSetting(index), setting));
        actions.push(write(Field::TestCaught(index), millilitres));
        actions.push(Action::Unit(Field::TestCaught(index), "ml".into()));
    }
    after(actions)
}

fn litres_a_minute(calibration: &calibrate::Calibration) -> Vec<f64> {
    calibration.settings.iter().map(|setting| setting.flow.si() * 60_000.0).collect()
}

/// 500, 1000 and 1500 mL a minute at 1, 2 and 4 … the line is not through 0: 3 is told from its neighbours.
#[test]
fn a_line_tells_settings_that_were_not_tested() {
    let calibration = calibrate::work(&caught(&[("1", "600"), ("2", "800"), ("4", "1200")]), Marks::POINT);
    assert!(calibration.fits);
    for (got, expected) in litres_a_minute(&calibration).into_iter().zip([0.6, 0.8, 1.0, 1.2]) {
        assert!((got - expected).abs() < 1e-9, "{got} is not {expected}");
    }
    assert!(calibration.settings.iter().all(|setting| setting.error.is_some_and(|error| error.si() > 0.0)));
}

/// No line within a tenth; 3 and 4 fall, so that they share their mean, 1.6, and nothing is to be taken.
#[test]
fn a_table_where_no_line_fits() {
    let calibration =
        calibrate::work(&caught(&[("1", "200"), ("2", "400"), ("3", "1700"), ("4", "1500")]), Marks::POINT);
    assert!(!calibration.fits && calibration.settings.iter().all(|setting| setting.error.is_none()));
    let flows = litres_a_minute(&calibration);
    assert!(
        (flows[0] - 0.2).abs() < 1e-9 && (flows[2] - flows[3]).abs() < 1e-9 && (flows[2] - 1.6).abs() < 1e-9
    );
    assert!(!calibration.rises);
    let rising =
        calibrate::work(&caught(&[("1", "200"), ("2", "400"), ("3", "1500"), ("3", "1700")]), Marks::POINT);
    assert!(rising.rises && !rising.fits);
    assert!((litres_a_minute(&rising)[2] - 1.6).abs() < 1e-9, "the mean of its own tests");
}

#[test]
fn what_is_not_typed_yet_is_passed_over_and_a_slip_is_said() {
    let blank = calibrate::work(&after([Action::AddCatch, Action::AddCatch]), Marks::POINT);
    assert!(blank.outcome.troubles.is_empty() && blank.tests.is_empty() && blank.line.is_none());
    let typed = reduce(caught(&[("1", "200"), ("2", "400")]), write(Field::TestTime(1), "-3"));
    let slip = calibrate::work(&typed, Marks::POINT);
    assert!(matches!(slip.outcome.at("catch-2-time"), Some(What::Number(_))));
    assert_eq!(slip.tests.len(), 1, "the other stays");
    let between = reduce(caught(&[("1", "200"), ("2.5", "400")]), Action::AddCatch);
    assert_eq!(calibrate::work(&between, Marks::POINT).outcome.at("catch-2-setting"), Some(&What::Whole));
    let gone = reduce(reduce(typed, Action::DropCatch(1)), Action::DropCatch(7));
    assert_eq!(gone.machine().map(|machine| machine.tests.len()), Some(1));
    let flows = vec![Entry::new("0.5", "l_per_min"), Entry::new("1", "l_per_min")];
    let taken = reduce(gone, Action::TakeFlows(flows.clone()));
    assert_eq!(taken.machine().map(|machine| machine.settings.clone()), Some(flows));
}

/// Caught with a full tank at 16 in; at 4 in a quarter of the head is left: half the flow.
#[test]
fn gravity_halves_the_flow_at_a_quarter_of_the_head() {
    let answer =
        work(&after([write(Field::HeadFull, "16"), write(Field::HeadLow, "4")]), Marks::POINT).outcome.answer;
    let si = |name| answer.get(name).expect(name).si;
    assert!((si(names::FLOW_LAST) / si(names::FLOW_FULL) - 0.5).abs() < 1e-12);
    assert!((si(names::FLOW_HALF) / si(names::FLOW_FULL) - 0.625_f64.sqrt()).abs() < 1e-12);
    assert!(answer.remarks.iter().any(|remark| remark.code == "remark-fades-short"));
    // 10 gal at 0.12 falling evenly to 0.06 gal/min: 10 / 0.09 minutes.
    assert!((si(names::FLOW_TANK_TIME) / 60.0 - 10.0 / 0.09).abs() < 1e-9);
    let upside_down = work(&after([write(Field::HeadFull, "4"), write(Field::HeadLow, "16")]), Marks::POINT);
    assert_eq!(upside_down.outcome.at("machine-head-low"), Some(&What::LeastAboveMost));
}

/// Setting 1 of the small walk-behind lays 0.5455 gal/1000 ft² (0.12 gal/min over 2 mph × 15 in = 13,200
/// ft²/h), 22.23 mL/m²; a tenth stays: 2.223 g/m². At 20 °C, 50 % and 0.15 m/s the same correlation worked
/// elsewhere dries 20 g/m² in 6.943 to 20.07 minutes.
#[test]
fn a_film_dries_in_its_time() {
    let room = [write(Field::Draught, "0.15"), Action::Unit(Field::Draught, "m_per_s".into())];
    let answer = work(&after(room), Marks::POINT).outcome.answer;
    let si = |name| answer.get(name).expect(name).si;
    assert!((si(names::FLOW_FILM) * 1e6 - 2.2225).abs() < 5e-4, "{}", si(names::FLOW_FILM));
    let share = si(names::FLOW_FILM) * 0.998e6 / 20.0;
    assert!((si(names::FLOW_DRY_FROM) / 60.0 / share / 6.943_06 - 1.0).abs() < 2e-3);
    assert!((si(names::FLOW_DRY_TO) / 60.0 / share / 20.0722 - 1.0).abs() < 3e-3);
}

/// The quat wants 10 minutes; the film of a scrubber is gone in one or two.
#[test]
fn a_contact_time_that_the_film_does_not_last_is_said() {
    let answer = work(&after([Action::Pick(Shelf::Product, "quat".into())]), Marks::POINT).outcome.answer;
    let early = answer.remarks.iter().find(|remark| remark.code == "remark-dries-early");
    assert_eq!(early.map(|remark| remark.weight), Some(Weight::Warn));
    // Without a vacuum all of it stays, and stays longer.
    let mop = work(&after([Action::Vacuum(false)]), Marks::POINT).outcome.answer;
    let si = |answer: &brimline::answer::Answer, name| answer.get(name).expect(name).si;
    assert!((si(&mop, names::FLOW_FILM) / si(&mop, names::FLOW_RATE) - 1.0).abs() < 1e-12);
    let fog = work(&after([write(Field::Humidity, "100")]), Marks::POINT).outcome.answer;
    assert!(fog.remarks.iter().any(|remark| remark.code == "remark-never-dries"));
    assert_eq!(fog.get(names::FLOW_DRY_FROM), None);
    let frost = work(&after([write(Field::Air, "10")]), Marks::POINT);
    assert!(matches!(frost.outcome.at("air-temperature"), Some(What::Number(_))), "10 °F is below freezing");
}
