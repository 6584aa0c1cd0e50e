//! Whole answers on the demo site, reached by what a person does.

use crate::{after, assert_printed};
use brimline::answer::{Answer, Fact, Remark, Value, Weight};
use brimline::chemistry::foam::Foam;
use brimline::form::action::{Line, Shelf};
use brimline::form::{Action, Field, Filling, Outcome, Typed, What, fill, flow, names, shift};
use brimline::number::Marks;
use brimline::trade::governing::Aim;
use brimline::trade::setting::Fit;
use brimline::units::System;

fn pick(shelf: Shelf, id: &str) -> Action {
    Action::Pick(shelf, id.into())
}

fn label(text: &str) -> Action {
    Action::Text(Line::Label, text.into())
}

#[track_caller]
fn answer_of_fill(typed: &Typed) -> Answer {
    let fill = fill::work(typed, Marks::POINT);
    assert_eq!(fill.outcome.troubles, []);
    fill.outcome.answer
}

/// A figure in the US unit of its kind, or the plain number.
#[track_caller]
fn us(value: Value) -> f64 {
    value.kind.unit(System::Us).map_or(value.si, |unit| unit.from_si(value.si))
}

#[track_caller]
fn figure(answer: &Answer, name: &str, printed: &str) {
    let value = answer.get(name).unwrap_or_else(|| panic!("{name} is missing"));
    assert_printed(us(value), printed);
}

#[track_caller]
fn remark<'a>(answer: &'a Answer, code: &str) -> &'a Remark {
    let found = answer.remarks.iter().find(|remark| remark.code == code);
    found.unwrap_or_else(|| panic!("no {code} in {:?}", answer.remarks))
}

#[track_caller]
fn fact(remark: &Remark, placeholder: &str, printed: &str) {
    let found = remark.facts.iter().find(|(name, _)| *name == placeholder);
    let Some((_, Fact::Value(value))) = found else { panic!("no {placeholder} in {remark:?}") };
    assert_printed(us(*value), printed);
}

#[track_caller]
fn window(remark: &Remark, placeholder: &str, low: &str, high: &str) {
    let found = remark.facts.iter().find(|(name, _)| *name == placeholder);
    let Some((_, Fact::Window(least, most))) = found else { panic!("no {placeholder} in {remark:?}") };
    assert_printed(us(*least), low);
    assert_printed(us(*most), high);
}

/// The figures and the workings of the three views, whole and in order.
#[test]
fn whole_answers_of_the_demo() {
    let typed = Typed::default();
    let fill = answer_of_fill(&typed);
    let flow = flow::work(&typed, Marks::POINT).outcome.answer;
    let shift = shift::work(&typed, Marks::POINT).outcome.answer;
    for (answer, figures, steps) in [
        (
            fill,
            "total water dose strength ratio label_low label_high count rounded rounded_ratio \
             sure_error sure_ratio_error sure_strongest sure_weakest sure_inside sure_drawn",
            "fill-level plus-water dose water round true-ratio sure",
        ),
        (
            flow,
            "passing setting flow rate tank_time tank_area thickness film film_thickness dry_from dry_to",
            "passing rate tank-time tank-area thickness film thickness drying drying",
        ),
        (
            shift,
            "area run_time total_time labour solution water concentrate waste fills \
             concentrate water labour total each \
             area area solution solution water water concentrate concentrate waste waste labour labour cost cost",
            "productivity run-time solution fills waste concentrate shift-total labour cost cost-each a-month",
        ),
    ] {
        let got: Vec<&str> = answer.figures.iter().filter_map(|one| one.name.split('.').nth(1)).collect();
        assert_eq!(got.join(" "), figures);
        let got: Vec<&str> = answer.steps.iter().map(|one| &one.formula.code["formula-".len()..]).collect();
        assert_eq!(got.join(" "), steps);
    }
}

/// "A self-driving scrubber that filters and reuses its solution takes 3 to 6 fl oz per tank": common
/// practice, no source. The label of 1 to 64 asks for 1280 / 65 = 19.69 fl oz in the same 10 gal.
#[test]
fn a_clash_carries_both_numbers() {
    let answer = answer_of_fill(&after([pick(Shelf::Machine, "self-driving")]));
    figure(&answer, names::LABEL_LOW, "19.6923");
    figure(&answer, names::LABEL_HIGH, "19.6923");
    figure(&answer, names::MACHINE_LOW, "3.0000");
    figure(&answer, names::MACHINE_HIGH, "6.0000");
    figure(&answer, names::FILL_DOSE, "6.0000");
    let clash = remark(&answer, "remark-clash-machine");
    assert_eq!(clash.weight, Weight::Warn);
    window(clash, "label", "19.6923", "19.6923");
    window(clash, "rule", "3.0000", "6.0000");
    fact(clash, "dose", "6.0000");
    assert!(answer.steps.iter().any(|step| step.formula.code == "formula-govern"));

    // Half a tank halves all of them.
    let half = after([pick(Shelf::Machine, "self-driving"), Action::Write(Field::Level, "50".into())]);
    let answer = answer_of_fill(&half);
    figure(&answer, names::MACHINE_HIGH, "3.0000");
    figure(&answer, names::LABEL_LOW, "9.84615");
    figure(&answer, names::FILL_DOSE, "3.0000");
}

#[test]
fn a_label_below_the_machine_governs_too() {
    let answer = answer_of_fill(&after([pick(Shelf::Machine, "self-driving"), label("1 fl oz per tank")]));
    figure(&answer, names::FILL_DOSE, "1.0000");
    window(remark(&answer, "remark-clash-label"), "rule", "3.0000", "6.0000");
}

#[test]
fn rules_that_overlap_do_not_clash() {
    let machine = || pick(Shelf::Machine, "self-driving");
    for (text, aim, dose, code) in [
        ("3 to 6 fl oz per tank", Aim::Low, "3.0000", None),
        ("3 to 6 fl oz per tank", Aim::Middle, "4.5000", None),
        ("3 to 6 fl oz per tank", Aim::High, "6.0000", None),
        ("5 to 9 fl oz per tank", Aim::High, "6.0000", Some("remark-machine-narrows")),
        ("1 to 4 fl oz per tank", Aim::Low, "3.0000", Some("remark-machine-narrows")),
        // 0.6 fl oz to a gallon of finished solution is 6 fl oz in 10 gal: the machine's most.
        ("0.6 fl oz makes 1 gal", Aim::Low, "6.0000", None),
        ("0.3 fl oz makes 1 gal", Aim::High, "3.0000", None),
    ] {
        let answer = answer_of_fill(&after([machine(), label(text), Action::Aim(aim)]));
        figure(&answer, names::FILL_DOSE, dose);
        let said =
            answer.remarks.iter().find(|one| one.code.contains("clash") || one.code.contains("narrows"));
        assert_eq!(said.map(|remark| remark.code), code, "{text} {aim:?}");
        // The workings name the smaller of two amounts where it governs: the least of the machine raises the dose.
        let smaller = answer.steps.iter().any(|step| step.formula.code == "formula-govern");
        assert_eq!(smaller, code.is_some() && dose == "6.0000", "{text} {aim:?}");
    }
}

/// Foam pulled into the vacuum motor stops the machine; unknown foam counts as foam until tested:
/// common practice, no source.
#[test]
fn foam_stands_before_the_amount() {
    for (foam, code) in [(Foam::Foaming, "remark-foam-refuse"), (Foam::Unknown, "remark-foam-test-first")] {
        let stopped = after([Action::Foam(foam)]);
        for view in ["fill", "flow", "shift"] {
            let answer = |typed: &Typed| match view {
                "fill" => fill::work(typed, Marks::POINT).outcome.answer,
                "flow" => flow::work(typed, Marks::POINT).outcome.answer,
                _ => shift::work(typed, Marks::POINT).outcome.answer,
            };
            assert!(answer(&stopped).stopped(), "{view} {foam:?}");
            assert_eq!(remark(&answer(&stopped), code).weight, Weight::Stop);
            let read = after([Action::Foam(foam), Action::StopRead]);
            assert!(!answer(&read).stopped());
            assert_eq!(remark(&answer(&read), code).weight, Weight::Warn, "it stays beside the amount");
            let bucket = after([Action::Foam(foam), Action::Vacuum(false)]);
            assert!(
                answer(&bucket).remarks.iter().all(|remark| remark.code != code),
                "{view} without a vacuum"
            );
        }
    }
    for foam in [Foam::Low, Foam::NonFoaming] {
        assert!(!answer_of_fill(&after([Action::Foam(foam)])).stopped());
    }
    // The warning was read for one product: another one is another warning.
    let other = after([Action::Foam(Foam::Foaming), Action::StopRead, pick(Shelf::Product, "hand-soap")]);
    assert!(answer_of_fill(&other).stopped());
    let machine = after([Action::Foam(Foam::Foaming), Action::StopRead, pick(Shelf::Machine, "ride-on")]);
    assert!(answer_of_fill(&machine).stopped());
}

/// "A maker's normal setting suits sealed floors" and "porous floors need a higher setting": common
/// practice, no source.
#[test]
fn porous_floors_need_a_higher_setting() {
    let setting = |machine: &str, floor: &str| {
        let flow =
            flow::work(&after([pick(Shelf::Machine, machine), pick(Shelf::Floor, floor)]), Marks::POINT);
        assert_eq!(flow.outcome.troubles, []);
        let choice = flow.choice.expect("a setting");
        (choice.index + 1, choice.fit)
    };
    for machine in ["walk-behind", "ride-on"] {
        let (sealed, fits) = setting(machine, "vinyl");
        assert_eq!(fits, Fit::Meets);
        assert_eq!(setting(machine, "wood"), (sealed, Fit::Meets));
        let floors = ["vinyl", "terrazzo", "tile", "concrete"].map(|floor| setting(machine, floor).0);
        assert!(floors.is_sorted() && floors[3] > sealed, "{machine}: {floors:?}");
    }
}

#[test]
fn what_the_measure_makes_is_told() {
    // 10 gal at 1 to 64 is 19.69 fl oz: 20 marks of a fluid ounce, (1280 − 20) / 20 = 63 parts of water.
    let answer = answer_of_fill(&Typed::default());
    figure(&answer, names::FILL_COUNT, "20.0000");
    figure(&answer, names::FILL_ROUNDED, "20.0000");
    figure(&answer, names::FILL_ROUNDED_RATIO, "63.0000");
    // A pump stroke of 30 mL: 582.37 / 30 = 19.4, so 19 strokes.
    figure(&answer_of_fill(&after([pick(Shelf::Measure, "pump")])), names::FILL_COUNT, "19.0000");
    // A litre jug marked only at the top is too coarse.
    let coarse = after([pick(Shelf::Measure, "cup-ml"), Action::Write(Field::MeasureStep, "1000".into())]);
    let answer = answer_of_fill(&coarse);
    assert_eq!(remark(&answer, "remark-measure-coarse").weight, Weight::Warn);
    assert_eq!(answer.get(names::FILL_ROUNDED), None, "a dose more than a tenth off is not offered");
    // A disinfectant is never rounded to less than its label asks: 9 gal at 1 to 256 is 4.48 fl oz, 4.42
    // strokes of 30 mL; four would be 1 to 283.
    let quat =
        [pick(Shelf::Product, "quat"), pick(Shelf::Measure, "pump"), Action::Write(Field::Tank, "9".into())];
    let answer = answer_of_fill(&after(quat));
    assert_eq!(answer.get(names::FILL_COUNT), None, "five would be a tenth over: a finer measure is needed");
    let finer = [
        pick(Shelf::Product, "quat"),
        pick(Shelf::Measure, "cup-ml"),
        Action::Write(Field::Tank, "9".into()),
    ];
    // 132.56 mL on 10 mL marks: 140, not 130.
    figure(&answer_of_fill(&after(finer)), names::FILL_COUNT, "14.0000");
}

#[test]
fn what_was_taken_for_granted_is_told() {
    let answer = answer_of_fill(&after([label("64 to 1")]));
    assert_eq!(remark(&answer, "note-reversed-order").weight, Weight::Assumed);
    fact(remark(&answer, "basis-plus-water"), "n", "64.0000");
    let answer = answer_of_fill(&after([label("2 oz/gal")]));
    remark(&answer, "note-fluid-ounce");
    remark(&answer, "note-us-measure");
    fact(remark(&answer_of_fill(&after([label("1 in 65")])), "basis-of-total"), "n", "65.0000");
    let reuse = shift::work(&after([pick(Shelf::Machine, "self-driving")]), Marks::POINT).outcome.answer;
    fact(remark(&reuse, "remark-reuse"), "share", "75.0000");
}

/// Figures have the dimension and the sign that a reader takes for granted, in every demo question.
#[test]
fn every_demo_answer_is_sound() {
    let site = Typed::default().site;
    for machine in &site.machines {
        for product in &site.products {
            for filling in [Filling::MadeUp, Filling::OnTop] {
                let level = if filling == Filling::OnTop { "90" } else { "100" };
                let typed = after([
                    pick(Shelf::Machine, &machine.id),
                    pick(Shelf::Product, &product.id),
                    Action::Filling(filling),
                    Action::Write(Field::Level, level.into()),
                ]);
                let shift = shift::work(&typed, Marks::POINT).outcome;
                let solid = ["powder", "tablets"].contains(&product.id.as_str());
                if solid {
                    assert_eq!(shift.at(fill::LABEL), Some(&What::NoLiquid), "a shift counts a liquid");
                }
                let views = [
                    fill::work(&typed, Marks::POINT).outcome,
                    flow::work(&typed, Marks::POINT).outcome,
                    if solid { Outcome::default() } else { shift },
                ];
                for outcome in views {
                    assert_eq!(outcome.troubles, [], "{} {}", machine.id, product.id);
                    for figure in &outcome.answer.figures {
                        assert!(names::ALL.contains(&figure.name));
                        assert!(
                            figure.value.si.is_finite()
                                && (figure.value.si > 0.0 || figure.name.contains("sure_")),
                            "{figure:?}"
                        );
                    }
                    let total = outcome.answer.get(names::FILL_TOTAL).map(|value| value.si);
                    let parts = [names::FILL_WATER, names::FILL_DOSE]
                        .iter()
                        .filter_map(|name| outcome.answer.get(name))
                        .map(|value| value.si)
                        .sum::<f64>();
                    assert!(total.is_none_or(|total| (total - parts).abs() < 1e-12));
                }
            }
        }
    }
}
