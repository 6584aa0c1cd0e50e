//! Whole sentences as people read them, and figures that read back as what they were.

use brimline::answer::{Remark, Value, Weight};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::{Action, Field, Typed, What, fill, flow};
use brimline::number::{self, Marks};
use brimline::units::{Kind, System, Volume};
use brimline::words::Words;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn spoken(remark: &Remark, system: System) -> String {
    Words::english().remark(remark, system).replace('\u{202f}', " ")
}

#[track_caller]
fn remark<'a>(remarks: &'a [Remark], code: &str) -> &'a Remark {
    remarks.iter().find(|remark| remark.code == code).unwrap_or_else(|| panic!("no {code} in {remarks:?}"))
}

#[test]
fn the_clash_tells_both_numbers_and_which_governs() {
    let typed = after([Action::Pick(Shelf::Machine, "self-driving".into())]);
    let remarks = fill::work(&typed, Marks::POINT).outcome.answer.remarks;
    assert_eq!(
        spoken(remark(&remarks, "remark-clash-machine"), System::Us),
        "The label asks for 19.7 fl oz for this fill. The machine takes 3 to 6 fl oz. The machine’s limit \
         governs: 6 fl oz. The solution is weaker than the label says, so do not count on it to disinfect."
    );
}

#[test]
fn a_machine_without_a_least_is_told_by_its_most() {
    let typed = after([
        Action::Pick(Shelf::Machine, "self-driving".into()),
        Action::Write(Field::Least, String::new()),
    ]);
    let remarks = fill::work(&typed, Marks::POINT).outcome.answer.remarks;
    let told = spoken(remark(&remarks, "remark-clash-machine"), System::Metric);
    assert!(told.contains("The label asks for 582 mL"), "{told}");
    assert!(told.contains("The machine takes at most 177 mL"), "{told}");
}

#[test]
fn vinegar_on_marble_says_why() {
    let typed =
        after([Action::Pick(Shelf::Product, "vinegar".into()), Action::Pick(Shelf::Floor, "marble".into())]);
    let remarks = fill::work(&typed, Marks::POINT).outcome.answer.remarks;
    assert_eq!(
        spoken(remark(&remarks, "remark-floor-does-not-fit"), System::Us),
        "Foyer marble: Acid eats marble, limestone and travertine. Vinegar and lemon do too."
    );
}

#[test]
fn a_ph_outside_the_window_tells_the_window() {
    let typed = after([Action::Pick(Shelf::Floor, "terrazzo".into()), Action::Text(Line::Ph, "11".into())]);
    let remarks = fill::work(&typed, Marks::POINT).outcome.answer.remarks;
    assert_eq!(
        spoken(remark(&remarks, "remark-floor-does-not-fit"), System::Us),
        "Entrance terrazzo: The use solution is too alkaline for this floor. It bears pH 7 to 10."
    );
}

#[test]
fn too_little_tells_the_speed_that_would_do() {
    let typed =
        after([Action::Pick(Shelf::Floor, "concrete".into()), Action::Write(Field::Speed, "4".into())]);
    let remarks = flow::work(&typed, Marks::POINT).outcome.answer.remarks;
    // 0.3 gal/min × 60 min/h / (1.2 gal/1000 ft² × 15 in) = 12,000 ft/h = 2.27 mph.
    assert_eq!(
        spoken(remark(&remarks, "remark-flow-short"), System::Us),
        "Setting 3 is the wettest and lays down 0.682 gal/1000 ft²; the floor should get 1.2 to 2 gal/1000 ft². \
         Go no faster than 2.27 mph, or use a machine with a setting of 0.528 to 0.88 gal/min."
    );
    // 4 mph × 15 in = 26,400 ft²/h; 1.2 gal/1000 ft² on it is 31.68 gal/h, 0.528 gal/min.
    assert_eq!(
        spoken(remark(&remarks, "remark-flow-passes"), System::Us),
        "2 passes with setting 3 lay down 1.36 gal/1000 ft² in all, which is right. Each pass takes its time \
         and its solution again."
    );
}

#[test]
fn mistakes_name_the_field_the_rule_and_the_way_out() {
    let words = Words::english();
    for (field, text, unit, expected) in [
        (Field::Tank, "", "gal_us", "Solution tank: type a number."),
        (
            Field::Tank,
            "ten",
            "gal_us",
            "Solution tank: “ten” is not a number. Type digits, such as 12, 1.5 or 1/2.",
        ),
        (
            Field::Tank,
            "1e9",
            "l",
            "Solution tank: “1e9” is not a number. Type digits, such as 12, 1.5 or 1/2.",
        ),
        (Field::Tank, "-3", "l", "Solution tank: the least that fits is 0.5 L. You typed -3."),
        (Field::Tank, "99999", "l", "Solution tank: the most that fits is 2,000 L. You typed 99999."),
        (Field::Level, "150", "percent", "Fill the tank to: the most that fits is 100 %. You typed 150."),
        (Field::Level, "11", "gal_us", "This is more than the tank holds. Lower it or correct the tank."),
    ] {
        let typed = after([Action::Unit(field, unit.into()), Action::Write(field, text.into())]);
        let outcome = fill::work(&typed, Marks::POINT).outcome;
        let what = outcome.at(&field.name()).unwrap_or_else(|| panic!("no trouble with {text:?}"));
        let told = words.trouble(what, &words.say(field.key()), Some(field), (text, unit));
        assert_eq!(told.replace('\u{202f}', " "), expected);
    }
}

/// What is typed on Practice has its limit told as everything else has.
#[test]
fn practice_names_the_field_the_rule_and_the_way_out() {
    use brimline::limits::{MONTHS, TASKS};
    use brimline::practice::{Numbers, whole};
    let words = Words::english();
    for (limit, key, text, expected) in [
        (&TASKS, "practice-count", "0", "How many tasks: the least that fits is 1. You typed 0."),
        (&TASKS, "practice-count", "31", "How many tasks: the most that fits is 30. You typed 31."),
        (&TASKS, "practice-count", "2.5", "Type a whole number: 1, 2, 3."),
        (
            &MONTHS,
            "class-months",
            "121",
            "How many months it holds: the most that fits is 120. You typed 121.",
        ),
        (&MONTHS, "class-months", "", "How many months it holds: type a number."),
    ] {
        let what = whole(text, limit, Marks::POINT).expect_err("a mistake");
        assert_eq!(words.trouble(&what, &words.say(key), None, (text, "one")), expected);
    }
    let numbers = Numbers { parts: "1:2001".into(), ..Numbers::default() };
    let mistake = numbers.parts(Marks::POINT).expect_err("too weak");
    let told =
        words.trouble(&What::Number(mistake), &words.say("numbers-parts"), None, (&numbers.parts, "one"));
    assert_eq!(told, "Ratio: the most that fits is 2,000. You typed 1:2001.");
}

#[test]
fn what_is_shown_reads_back_to_the_printed_digits() {
    let words = Words::english();
    for &system in System::ALL {
        for litres in [0.000_3, 0.015, 0.591, 1.0, 37.85, 999.4, 1_234.5] {
            let shown = words.bare(Value::new(Volume::new(litres / 1000.0), Kind::Fill), system);
            let unit = Kind::Fill.unit(system).expect("volumes have units");
            let read = unit.to_si(number::read(&shown, words.marks()).expect("it reads back")) * 1000.0;
            assert!((read / litres - 1.0).abs() < 5e-3, "{litres} L shows as {shown} and reads as {read}");
        }
    }
}

#[test]
fn assumptions_are_told_once_each() {
    let typed = after([Action::Text(Line::Label, "2 oz/gal".into())]);
    let remarks = fill::work(&typed, Marks::POINT).outcome.answer.remarks;
    let assumed: Vec<&str> =
        remarks.iter().filter(|remark| remark.weight == Weight::Assumed).map(|remark| remark.code).collect();
    assert_eq!(assumed, ["note-fluid-ounce", "note-us-measure", "basis-per-water", "sure-cause-alike"]);
}
