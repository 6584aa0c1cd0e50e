//! What counts as an answer: how exact, in which unit, and what is no answer at all.

use super::exact::{entry, said, typed};
use super::stocks;
use brimline::number::{Marks, plain};
use brimline::practice::Draw;
use brimline::practice::{
    Amount, Exercise, Key, Level, Ready, Reply, Run, Session, Topic, Verdict, judge, make,
};
use brimline::units::unit;
use brimline::words::Words;
use num_traits::ToPrimitive;

/// Tasks of a topic from several sites.
fn tasks(topic: Topic, level: Level) -> impl Iterator<Item = Exercise> {
    stocks::all(8).into_iter().filter(move |stock| stock.lacks(topic, level).is_none()).flat_map(
        move |stock| {
            let ready = Ready::of(&stock);
            (0..40).filter_map(move |seed| make(topic, level, &ready, &mut Draw::new(seed)))
        },
    )
}

fn all(topic: Topic) -> impl Iterator<Item = Exercise> {
    Level::ALL.iter().flat_map(move |level| tasks(topic, *level))
}

fn of(exercise: &Exercise, si: f64, code: &str) -> Verdict {
    let unit = unit(code).expect("a unit");
    judge(exercise, Reply::Number { text: &plain(unit.from_si(si), 15, '.'), unit: code }, Marks::POINT)
}

fn amount(exercise: &Exercise) -> Option<Amount> {
    if let Key::Amount(key) = exercise.key { Some(key) } else { None }
}

/// "How many L are 500 mL?" is not answered by 500 mL.
#[test]
fn an_amount_as_it_was_given_is_no_change_of_units() {
    let words = Words::english();
    let mut seen = 0;
    for exercise in all(Topic::Units) {
        let key = amount(&exercise).expect("an amount");
        let given = typed(said(&exercise, "practice-ask-units").expect("what is asked"), "amount");
        let reply = Reply::Number { text: &given.text, unit: &given.unit };
        let verdict = judge(&exercise, reply, Marks::POINT);
        let Verdict::Wrong { way: Some(way), harm: None } = verdict else {
            panic!("{verdict:?} of {given:?} in {:?}", exercise.asked)
        };
        assert_eq!(way.code(), "as-given");
        let told = words.verdict(&exercise, reply, &verdict);
        let asked = unit(key.unit).expect("its unit").symbol;
        assert!(told.ends_with(&format!("Say it in {asked}.")), "{told}");
        assert_eq!(of(&exercise, key.si, key.unit), Verdict::Right);
        seen += 1;
    }
    assert!(seen > 500, "{seen}");
}

/// Without a measure only what rounds away at three digits is let pass, and the task says so: 100.5 for 100 is off by
/// 0.5 %. With one it is half a step of it.
#[test]
fn how_exact_an_answer_must_be_is_told_and_held() {
    let words = Words::english();
    let (mut with, mut without) = (0, 0);
    for topic in [Topic::Label, Topic::Units, Topic::Dose, Topic::TopUp, Topic::Shift, Topic::Rescue] {
        for exercise in all(topic) {
            let Some(key) = amount(&exercise).filter(|key| key.unit != "one") else { continue };
            let told = words.exercise(&exercise);
            let right = |off: f64| of(&exercise, key.si + off, key.unit).is_right();
            let digits = key.si * 0.005;
            let bound = match said(&exercise, "practice-jug") {
                Some(jug) if topic != Topic::Rescue => {
                    assert!(told.contains("Half a step"), "{told}");
                    with += 1;
                    (entry(typed(jug, "step")).to_f64().expect("a step") / 2.0).max(digits)
                }
                _ => {
                    assert!(told.contains("three digits"), "{told}");
                    without += 1;
                    digits
                }
            };
            for side in [-1.0, 1.0] {
                assert!(right(side * bound * 0.99), "{side} {bound} {told}");
                let poured = key.poured.is_some_and(|poured| {
                    (key.si + side * bound * 1.01 - poured.si).abs() < poured.si * 0.006
                });
                assert!(poured || !right(side * bound * 1.01), "{side} {bound} {told}");
            }
        }
    }
    assert!(with > 500 && without > 500, "{with} with a measure, {without} without");
}

/// A US fluid ounce is 29.573 529 562 5 mL (NIST SP 811, appendix B.8): 18 of them are 532 mL, not 540.
#[test]
fn thirty_millilitres_an_ounce_is_told_as_what_it_is() {
    let ready = Ready::of(&stocks::all(0)[0]);
    let is_it = |one: &Exercise| {
        let given = typed(said(one, "practice-ask-units").expect("what is asked"), "amount");
        (given.text.as_str(), given.unit.as_str(), amount(one).map(|key| key.unit))
            == ("18", "floz_us", Some("ml"))
    };
    let exercise = (0..20_000)
        .filter_map(|seed| make(Topic::Units, Level::Second, &ready, &mut Draw::new(seed)))
        .find(is_it)
        .expect("eighteen ounces");
    let of = |text: &str| judge(&exercise, Reply::Number { text, unit: "ml" }, Marks::POINT);
    assert_eq!(of("532"), Verdict::Right);
    assert!(
        matches!(of("540"), Verdict::Wrong { way: Some(way), .. } if way.code() == "round-factor"),
        "{:?}",
        of("540")
    );
}

/// What is no amount is told, and is no try.
#[test]
fn nothing_zero_and_less_are_no_try() {
    let words = Words::english();
    for topic in [Topic::Units, Topic::Dose, Topic::Shift] {
        let stock = stocks::all(0).swap_remove(0);
        let session =
            Session { topics: vec![topic], count: 1, level: Level::Second, stock, ..Session::default() };
        let exercise = &session.exercises()[0];
        let mut run = Run::begin(session);
        for text in ["", " ", "0", "0.0", "-0", "-3", "−3", "-", "0/4", "-1/2"] {
            run.reply.text = text.into();
            run.check(exercise, Marks::POINT);
            assert!(run.wrong == 0 && !run.is_closed() && run.mark.way.is_empty(), "{text:?} was a try");
            let verdict = run.verdict(exercise, Marks::POINT).expect("it is told");
            let reply = Reply::Number { text, unit: "ml" };
            let told = words.verdict(exercise, reply, &verdict);
            assert!(told.ends_with("This was no try."), "{text:?}: {told}");
        }
        run.reply.text = "98765".into();
        run.check(exercise, Marks::POINT);
        assert_eq!(run.wrong, 1);
    }
}
