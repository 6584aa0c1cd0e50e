//! Sessions: turns, no exercise twice, links, and what stands in their way.

use super::stocks;
use brimline::form::{
    Action, Typed,
    action::{Shelf, reduce},
    fill, names,
};
use brimline::number::Marks;
use brimline::practice::{
    Draw, Exercise, Fact, Key, Level, Ready, Session, SessionMistake, Stock, Topic, make,
};
use brimline::site::passing::link::unpack;
use brimline::units::System;

fn session(seed: u32, level: Level, stock: &Stock) -> Session {
    Session { seed, topics: Topic::ALL.to_vec(), level, count: 30, stock: stock.clone() }
}

fn told(exercise: &Exercise) -> String {
    format!("{:?} {:?}", exercise.asked, exercise.key)
}

#[test]
fn topics_take_turns_and_nothing_comes_twice() {
    let demo = &stocks::all(0)[0];
    for seed in 0..40 {
        for level in Level::ALL {
            let exercises = session(seed, *level, demo).exercises();
            assert_eq!(exercises.len(), 30);
            // The first eleven are one of each.
            let first: Vec<Topic> = exercises[..11].iter().map(|one| one.topic).collect();
            assert!(Topic::ALL.iter().all(|topic| first.contains(topic)), "{first:?}");
            for (index, one) in exercises.iter().enumerate() {
                assert!(exercises[..index].iter().all(|other| told(one) != told(other)));
            }
        }
    }
}

/// What a person would work out: the question, its numbers and the answer, whatever machine, product and measure are
/// named. A dose is the same sum on another measure.
fn sum(exercise: &Exercise) -> Option<String> {
    let ask = exercise.asked.last().expect("a question");
    if let Key::Amount(key) = exercise.key {
        let numbers = if key.unit == "one" { numbers(exercise) } else { String::new() };
        return Some(format!("{ask:?} {:.9e} {numbers}", key.si));
    }
    let numbers = numbers(exercise);
    (exercise.topic == Topic::Setting || exercise.topic == Topic::Mistake)
        .then(|| format!("{ask:?} {numbers}"))
}

fn numbers(exercise: &Exercise) -> String {
    let offered = if let Key::Choice { options, .. } = &exercise.key { options.as_slice() } else { &[] };
    let facts = exercise.asked.iter().chain(offered).flat_map(|said| &said.facts);
    facts
        .filter(|(_, fact)| matches!(fact, Fact::Entry(_) | Fact::Count(_)))
        .map(|one| format!("{one:?}"))
        .collect::<Vec<_>>()
        .join(" ")
}

/// The demo has enough different sums for three of each topic on every level.
#[test]
fn no_sum_comes_twice_under_other_names() {
    let demo = &stocks::all(0)[0];
    for seed in 0..60 {
        for level in Level::ALL {
            let exercises = session(seed, *level, demo).exercises();
            assert_eq!(exercises.len(), 30);
            let sums: Vec<String> = exercises.iter().filter_map(sum).collect();
            for (index, one) in sums.iter().enumerate() {
                assert!(!sums[..index].contains(one), "seed {seed}, {level:?}: {one}");
            }
        }
    }
}

/// One fill is not always enough, and none is asked of more than a few.
#[test]
fn a_small_shift_takes_one_fill_or_several() {
    for stock in stocks::all(20).into_iter().filter(|one| one.lacks(Topic::Shift, Level::Second).is_none()) {
        let ready = Ready::of(&stock);
        let mut fills = [0; 8];
        for seed in 0..200 {
            let made =
                make(Topic::Shift, Level::Second, &ready, &mut Draw::new(seed)).expect("it is offered");
            let Key::Amount(key) = made.key else { panic!("a number of fills") };
            let (_, count) =
                (0..).zip(&mut fills).find(|(n, _)| f64::from(*n) + 0.5 > key.si).expect("a few");
            *count += 1;
        }
        println!("{}: {fills:?}", stock.name);
        assert!(fills.iter().all(|count| *count < 150), "{}: {fills:?}", stock.name);
        assert!(fills.iter().filter(|count| **count > 5).count() >= 2, "{}: {fills:?}", stock.name);
    }
    let demo = Ready::of(&stocks::all(0)[0]);
    let several = (0..200)
        .filter_map(|seed| make(Topic::Shift, Level::Second, &demo, &mut Draw::new(seed)))
        .filter(|made| matches!(made.key, Key::Amount(key) if key.si > 1.5))
        .count();
    assert!((60..190).contains(&several), "{several} of 200 take several fills");
}

#[test]
fn another_seed_is_another_session() {
    let demo = &stocks::all(0)[0];
    let (one, other) = (session(1, Level::Second, demo), session(2, Level::Second, demo));
    let all = |session: &Session| session.exercises().iter().map(told).collect::<String>();
    assert_eq!(all(&one), all(&one.clone()));
    assert_ne!(all(&one), all(&other));
    assert_ne!(one.check(), other.check());
}

/// 1,125 bytes go into a QR code of version 27 at level M (ISO/IEC 18004, table 7).
#[test]
fn a_link_brings_the_same_exercises() {
    for stock in stocks::all(12) {
        let topics = stock.offers(Level::First);
        let session = Session { seed: 9, topics, count: 6, stock, ..Session::default() };
        let (held, link) = session.fitting(1_125).expect("a small stock fits");
        assert!(link.len() <= 1_125, "{} characters", link.len());
        let kept = (held.stock.machines.len(), held.stock.products.len(), held.stock.floors.len());
        println!("{}: {} characters with machines, products, floors {kept:?}", held.stock.name, link.len());
        let there: Session = unpack(&link).expect("it opens");
        assert_eq!((there.check(), &there), (held.check(), &held));
        let all = |session: &Session| session.exercises().iter().map(told).collect::<String>();
        assert_eq!(all(&there), all(&held));
    }
}

#[test]
fn what_stands_in_the_way_is_told() {
    let demo = stocks::all(0).swap_remove(0);
    let whole = session(1, Level::First, &demo);
    assert_eq!(whole.flaw(), None);
    assert_eq!(Session { topics: Vec::new(), ..whole.clone() }.flaw(), Some(SessionMistake::NoTopic));
    assert_eq!(Session { count: 0, ..whole.clone() }.flaw(), Some(SessionMistake::Count));
    assert_eq!(Session { count: 31, ..whole.clone() }.flaw(), Some(SessionMistake::Count));
    // The demo has five products that call for something to wear, so that there are no thirty of them.
    let few = Session { topics: vec![Topic::Ppe], ..whole.clone() };
    let found = few.exercises().len();
    assert!((4..10).contains(&found), "{found}");
    assert_eq!(few.flaw(), Some(SessionMistake::Fewer(found)));
    assert!(matches!(whole.fitting(100), Err(SessionMistake::Link(_))));
}

/// What an exercise calls right is what Fill says of the same fill: with the machine's limit and the standard.
#[test]
fn a_dose_is_what_fill_says() {
    let demo = &stocks::all(0)[0];
    let start = Typed::default();
    let mut compared = 0;
    for seed in 0..40 {
        for level in Level::ALL {
            let exercises = Session { topics: vec![Topic::Dose], ..session(seed, *level, demo) }.exercises();
            for exercise in exercises {
                compared += u32::from(same_in_fill(&start, &exercise));
            }
        }
    }
    println!("{compared} doses compared with Fill");
    assert!(compared > 500, "{compared}");
}

/// None where Fill was asked on a floor whose own standard decides.
fn same_in_fill(start: &Typed, exercise: &Exercise) -> bool {
    use super::exact::{said, text, typed};
    let name = |key: &str, fact: &str| text(said(exercise, key).expect(key), fact).to_owned();
    let site = &start.site;
    let machine =
        site.machines.iter().find(|one| one.name == name("practice-tank", "machine")).expect("a machine");
    let product =
        site.products.iter().find(|one| one.name == name("practice-label", "product")).expect("a product");
    let measure =
        site.measures.iter().find(|one| one.name == name("practice-jug", "measure")).expect("a measure");
    let picks = [
        Action::Pick(Shelf::Machine, machine.id.clone()),
        Action::Pick(Shelf::Product, product.id.clone()),
        Action::Pick(Shelf::Measure, measure.id.clone()),
        Action::Aim(if said(exercise, "practice-aim-high").is_some() {
            brimline::trade::governing::Aim::High
        } else {
            brimline::trade::governing::Aim::Low
        }),
    ];
    let mut asked = picks.into_iter().fold(start.clone(), reduce);
    asked.system = System::Us;
    asked.ask.level = brimline::site::Entry::new("100", "percent");
    if let Some(part) = said(exercise, "practice-fill-part") {
        asked.ask.level = typed(part, "fill").clone();
    }
    if let Some(on_top) = said(exercise, "practice-fill-on-top") {
        asked.ask.level = typed(on_top, "fill").clone();
        asked.ask.filling = brimline::form::Filling::OnTop;
    }
    let answer = fill::work(&asked, Marks::POINT).outcome.answer;
    let dose = answer.get(names::FILL_DOSE).expect("a dose").si;
    let Key::Amount(key) = exercise.key else { panic!("an amount") };
    assert!((key.si / dose - 1.0).abs() < 1e-9, "{} and {dose} of {:?}", key.si, exercise.asked);
    let poured = key.poured.expect("a measure is named");
    let figure = |name: &str| answer.get(name).expect(name).si;
    let (whole, count) = (figure(names::FILL_ROUNDED), figure(names::FILL_COUNT));
    assert!((poured.si / whole - 1.0).abs() < 1e-9, "{poured:?} and {whole} of {:?}", exercise.asked);
    assert!((poured.count - count).abs() < 1e-9, "{poured:?} and {count} of {:?}", exercise.asked);
    true
}
