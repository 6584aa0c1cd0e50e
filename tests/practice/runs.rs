//! A session under way: tries, what is left out, what is handed in, and what comes back after a reload.

use super::stocks;
use brimline::number::{self, Marks};
use brimline::practice::{
    Attempt, Desk, DeskMistake, Exercise, Given, Key, Known, Led, Level, Register, Run, Session, Topic,
    Tries, Verdict,
};
use brimline::units::unit;

fn session(topics: &[Topic], count: u32, seed: u32) -> Session {
    let stock = stocks::all(0).swap_remove(0);
    Session { seed, topics: topics.to_vec(), level: Level::Second, count, stock }
}

fn places(chosen: &[usize]) -> Vec<u32> {
    chosen.iter().map(|one| u32::try_from(*one).expect("few")).collect()
}

/// The right answer as a person gives it.
pub fn right(exercise: &Exercise) -> Given {
    let chosen = match &exercise.key {
        Key::Amount(key) => {
            let asked = unit(key.unit).expect("its unit");
            let text = number::plain(asked.from_si(key.si), 12, '.');
            return Given { text, unit: String::new(), chosen: Vec::new() };
        }
        Key::Choice { right, .. } => places(&[*right]),
        Key::Several { right, .. } | Key::Order { right, .. } => places(right),
    };
    Given { chosen, ..Given::default() }
}

/// An answer that is wrong whatever the exercise.
pub fn wrong(exercise: &Exercise) -> Given {
    let mut chosen = match &exercise.key {
        Key::Amount(key) => {
            let asked = unit(key.unit).expect("its unit");
            let text = number::plain(asked.from_si(key.si * 7.3 + 1.0), 12, '.');
            return Given { text, unit: String::new(), chosen: Vec::new() };
        }
        Key::Choice { right, options } => {
            return Given { chosen: places(&[(right + 1) % options.len()]), ..Given::default() };
        }
        Key::Several { right, options } => {
            let other: Vec<usize> = (0..options.len()).filter(|one| !right.contains(one)).collect();
            return Given {
                chosen: places(if other.is_empty() { &right[1..] } else { &other }),
                ..Given::default()
            };
        }
        Key::Order { right, .. } => places(right),
    };
    chosen.reverse();
    Given { chosen, ..Given::default() }
}

#[test]
fn each_way_through_an_exercise_is_marked_as_what_it_was() {
    let session = session(Topic::ALL, 22, 4);
    let exercises = session.exercises();
    let mut run = Run::begin(session);
    let ways = [Tries::First, Tries::Second, Tries::Never, Tries::Open, Tries::Never];
    for (exercise, way) in exercises.iter().zip(ways.iter().cycle()) {
        let mut answer = |given: Given| {
            run.reply = given;
            run.check(exercise, Marks::POINT);
        };
        answer(Given { text: "a lot".into(), ..Given::default() });
        match way {
            Tries::First => answer(right(exercise)),
            Tries::Second => {
                answer(wrong(exercise));
                answer(right(exercise));
            }
            Tries::Never => {
                answer(wrong(exercise));
                answer(wrong(exercise));
                // What is over can be made right no more.
                answer(right(exercise));
            }
            Tries::Open | Tries::Later => {}
        }
        let is_order = matches!(exercise.key, Key::Order { .. });
        assert!(run.is_closed() || *way == Tries::Open || is_order);
        run.go_on("2026-03-07");
        let mark = run.marks.last().expect("a mark");
        // An order that nobody touched is an order all the same, and no try that does not read.
        assert!(is_order || mark.tries == *way, "{exercise:?}: {mark:?}, not {way:?}");
        assert!(mark.tries != Tries::First || mark.way.is_empty());
    }
    assert!(run.exercise(&exercises).is_none());
    run.initials = " AB ".into();
    let attempt = run.attempt();
    assert_eq!(Attempt::from_code(&attempt.to_code().expect("a code")), Ok(attempt.clone()));
    assert_eq!((attempt.date.as_str(), attempt.initials.as_str()), ("2026-03-07", "AB"));
}

#[test]
fn the_first_road_is_kept_whatever_comes_after_it() {
    let session = session(&[Topic::Dose], 10, 2);
    let exercises = session.exercises();
    let (exercise, road) = exercises
        .iter()
        .find_map(|one| Some((one, one.roads.iter().find(|road| matches!(road.led, Led::To(_)))?)))
        .expect("a road");
    let (Led::To(si), Key::Amount(key)) = (&road.led, &exercise.key) else { panic!("amounts") };
    let text = number::plain(unit(key.unit).expect("its unit").from_si(*si), 12, '.');
    let mut run = Run::begin(session.clone());
    run.reply.text = text;
    run.check(exercise, Marks::POINT);
    assert!(
        matches!(run.verdict(exercise, Marks::POINT), Some(Verdict::Wrong { way: Some(way), .. }) if way == road.way)
    );
    run.reply = right(exercise);
    run.check(exercise, Marks::POINT);
    assert_eq!((run.marks[0].tries, run.marks[0].way.clone()), (Tries::Second, vec![road.way]));
}

#[test]
fn what_lies_in_order_moves_a_place_at_a_time() {
    let session = Session { level: Level::Third, ..session(&[Topic::Foam], 30, 1) };
    let exercises = session.exercises();
    let exercise = exercises.iter().find(|one| matches!(one.key, Key::Order { .. })).expect("an order");
    let mut given = Given::default();
    let count = given.choices(exercise).len();
    assert_eq!(given.choices(exercise), (0..count).collect::<Vec<_>>());
    given.shift(exercise, 0, true);
    assert_eq!(given.choices(exercise), (0..count).collect::<Vec<_>>(), "the first stays first");
    given.shift(exercise, 0, false);
    assert_eq!(given.choices(exercise)[..2], [1, 0]);
    given.shift(exercise, count - 1, false);
    assert_eq!(given.choices(exercise).last(), Some(&(count - 1)), "the last stays last");
}

#[test]
fn what_was_begun_comes_back_as_it_was() {
    let mut desk = Desk { topics: vec![Topic::Units, Topic::Ppe], seed: "77".into(), ..Desk::default() };
    let stock = stocks::all(0).swap_remove(0);
    desk.run = Run::begin(desk.session(&stock, Marks::POINT, 1).expect("a session"));
    let exercises = desk.run.session.exercises();
    desk.run.reply = wrong(&exercises[0]);
    desk.run.check(&exercises[0], Marks::POINT);
    desk.run.reply.text = "1".into();
    let kept = serde_json::to_string(&desk).expect("it is written");
    let back: Desk = serde_json::from_str(&kept).expect("it is read");
    assert_eq!(back, desk);
    assert_eq!((back.run.wrong, back.run.judged.len()), (1, 1));
}

#[test]
fn a_class_number_makes_the_same_session_and_a_slip_in_it_is_told() {
    let stock = stocks::all(0).swap_remove(0);
    let desk = |topics: &[Topic], seed: &str, count: &str| Desk {
        topics: topics.to_vec(),
        seed: seed.into(),
        count: count.into(),
        ..Desk::default()
    };
    let both = [[Topic::Dose, Topic::Units], [Topic::Units, Topic::Dose]];
    let [one, other] =
        both.map(|topics| desk(&topics, "15", " 6 ").session(&stock, Marks::POINT, 1).expect("a session"));
    assert_eq!(one.check(), other.check(), "whatever the order of ticking");
    // The link of a session brings what its number makes.
    assert_eq!(one.clone().for_all(), one);
    let link = brimline::site::passing::link::pack(&one).expect("it fits");
    assert!(link.len() <= 1_310, "{}", link.len());
    for seed in ["-1", "+1", "1.5", "4294967296", "x"] {
        assert_eq!(
            desk(&both[0], seed, "6").session(&stock, Marks::POINT, 1),
            Err(DeskMistake::Seed),
            "{seed}"
        );
    }
    for count in ["", "0", "31", "many", "2.5"] {
        let made = desk(&both[0], "1", count).session(&stock, Marks::POINT, 1);
        assert!(matches!(made, Err(DeskMistake::Count(_))), "{count}");
    }
    for count in ["1", "30"] {
        assert!(desk(&both[0], "1", count).session(&stock, Marks::POINT, 1).is_ok(), "{count}");
    }
    assert!(
        desk(&both[0], "", "6").session(&stock, Marks::POINT, u32::MAX).expect("a session").seed < 1_000_000
    );
}

#[test]
fn handed_out_sessions_stay_while_results_belong_to_them() {
    let mut desk = Desk::default();
    let first = session(&[Topic::Units], 2, 1);
    let mut register = Register::default();
    let mut run = Run::begin(first.clone());
    run.go_on("2026-03-07");
    run.go_on("2026-03-07");
    run.initials = "AB".into();
    let code = run.attempt().to_code().expect("a code");
    let made = [(first.clone(), first.exercises())];
    assert_eq!(register.take(&code, Known { made: &made, ..Known::default() }), (1, Vec::new()));
    desk.give(first.clone(), &register);
    for seed in 2..60 {
        desk.give(session(&[Topic::Units], 2, seed), &register);
    }
    assert_eq!(desk.given.len(), 30);
    assert!(desk.given.contains(&first), "its results would belong to nothing");
    assert_eq!(desk.looked_at().map(|one| one.seed), Some(59));
}
