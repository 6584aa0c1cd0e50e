//! What is drawn is what was asked and answered: each picture is held against the facts that the task told and its key.

use super::stocks;
use brimline::answer::Value;
use brimline::number::{self, Marks};
use brimline::practice::{
    Exercise, Fact, Fill, Foam, Key, Level, Picture, Range, Rates, Session, State, Stock, Strip, Tanks, Topic,
};
use brimline::site::{Dispenser, Entry, Machine, Measure, Product, Site};
use brimline::units::{System, unit};
use std::collections::BTreeMap;

/// By hand, at 1:64 in 10 gal of 128 fl oz: 1280/65 = 19.69 fl oz. Half a step of 1 fl oz more, 1280/20.192 − 1 =
/// 62.39; less, 1280/19.192 − 1 = 65.69.
#[test]
fn half_a_step_of_a_cup_is_what_it_is_by_hand() {
    let machine =
        Machine { id: "m".into(), name: "M".into(), tank: Entry::new("10", "gal_us"), ..Machine::default() };
    let product = Product { id: "p".into(), name: "P".into(), label: "1:64".into(), ..Product::default() };
    let measure = Measure {
        id: "c".into(),
        name: "C".into(),
        dispenser: Dispenser::Cup,
        step: Entry::new("1", "floz_us"),
        ..Measure::default()
    };
    let site = Site {
        name: "By hand (invented)".into(),
        machines: vec![Machine { vacuum: false, ..machine }],
        products: vec![product],
        measures: vec![measure],
        ..Site::default()
    };
    let stock = Stock::of(&site, System::Us, Marks::POINT);
    let session = Session { topics: vec![Topic::Dose], count: 1, stock, ..Session::default() };
    let exercises = session.exercises();
    let Some(Picture::Fill(drawn)) = &exercises[0].picture else { panic!("a cup and a tank") };
    let ounce = 29.573_529_562_5e-6; // NIST SP 811, Appendix B.8
    for (is, expected) in [
        (drawn.dose / ounce, 1280.0 / 65.0),
        (drawn.total / ounce, 1280.0),
        (drawn.ratio, 64.0),
        (drawn.more, 62.39),
        (drawn.less, 65.69),
    ] {
        assert!((is / expected - 1.0).abs() < 1e-4, "{is}, by hand {expected}");
    }
}

/// A number of a sentence, in SI units; none where the task does not tell it.
fn told(exercise: &Exercise, sentence: &str, name: &str) -> Option<f64> {
    let said = exercise.asked.iter().find(|said| said.key == sentence)?;
    let (_, fact) = said.facts.iter().find(|(one, _)| *one == name)?;
    match fact {
        Fact::Entry(entry) => Some(si(entry)),
        Fact::Count(count) => Some(f64::from(*count)),
        _ => None,
    }
}

fn si(entry: &Entry) -> f64 {
    let number = number::read(&entry.text, Marks::POINT).expect("a number");
    unit(&entry.unit).expect("its unit").to_si(number)
}

#[track_caller]
fn near(is: f64, expected: f64) {
    assert!((is - expected).abs() <= 1e-9 * expected.abs().max(1e-9), "{is}, expected {expected}");
}

fn amount(exercise: &Exercise) -> f64 {
    let Key::Amount(key) = &exercise.key else { panic!("{} asks for an amount", exercise.topic.code()) };
    key.si
}

fn a_fill(exercise: &Exercise, drawn: &Fill) {
    near(drawn.tank, told(exercise, "practice-tank", "tank").expect("a tank"));
    near(drawn.dose, amount(exercise));
    near(drawn.step, told(exercise, "practice-jug", "step").expect("a step"));
    near(drawn.dose * (1.0 + drawn.ratio), drawn.total);
    assert!(drawn.total <= drawn.tank * (1.0 + 1e-9));
    assert!(drawn.more < drawn.ratio && drawn.ratio < drawn.less);
}

/// What a step adds of product, what it adds of mix: the key of a top up is the product that comes in, of a rescue the
/// water that comes in or the mix that is drained.
fn a_tank(exercise: &Exercise, drawn: &Tanks) {
    near(drawn.tank, told(exercise, "practice-tank", "tank").expect("a tank"));
    for state in &drawn.states {
        assert!(state.product > 0.0 && state.product < state.mix && state.mix <= drawn.tank * (1.0 + 1e-9));
    }
    let share = |state: &State| state.product / state.mix;
    match (exercise.topic, drawn.states.as_slice()) {
        (Topic::TopUp, [before, after]) => {
            let rest = ["practice-rest-same", "practice-rest-other"].map(|one| told(exercise, one, "left"));
            near(before.mix, rest.into_iter().flatten().next().expect("a rest"));
            near(after.product - before.product, amount(exercise));
            near(after.mix, told(exercise, "practice-top-up-part", "fill").unwrap_or(drawn.tank));
            if let Some(parts) = told(exercise, "practice-rest-other", "parts") {
                near(share(before), 1.0 / (1.0 + parts));
            } else {
                near(share(before), share(after));
            }
        }
        (Topic::Rescue, [found, rest @ ..]) => {
            near(found.mix, told(exercise, "practice-found", "found").expect("what was found"));
            near(found.product, told(exercise, "practice-found", "poured").expect("what was poured"));
            let (drains, [.., last]) = (rest.len() == 2, rest) else { panic!("it ends") };
            if drains {
                near(found.mix - rest[0].mix, amount(exercise));
                near(share(found), share(&rest[0]));
                near(last.mix, drawn.tank);
                near(last.product, rest[0].product);
            } else {
                near(last.mix - found.mix, amount(exercise));
                near(last.product, found.product);
            }
            assert!(share(last) < share(found));
        }
        other => panic!("no tanks belong to {other:?}"),
    }
}

fn bars(exercise: &Exercise, drawn: &Rates) {
    let Key::Choice { options, right } = &exercise.key else { panic!("a choice") };
    assert_eq!(drawn.rates.len() + 1, options.len());
    assert_eq!(drawn.right.unwrap_or(drawn.rates.len()), *right);
    near(drawn.low, told(exercise, "practice-floor", "low").expect("a least"));
    near(drawn.high, told(exercise, "practice-floor", "high").expect("a most"));
    // The right one is the first bar that ends in the band.
    let meets = drawn.rates.iter().position(|rate| *rate >= drawn.low && *rate <= drawn.high);
    assert_eq!(meets, drawn.right);
}

fn a_strip(exercise: &Exercise, drawn: &Strip) {
    let all: f64 = drawn.areas.iter().sum();
    assert_eq!(drawn.tank, told(exercise, "practice-tank", "tank"));
    let keep = 1.0 - told(exercise, "practice-reuse", "reuse").unwrap_or(0.0);
    let laid: f64 = exercise
        .asked
        .iter()
        .filter(|said| said.key.starts_with("practice-area"))
        .map(|said| {
            let of = |name: &str| match said.facts.iter().find(|(one, _)| *one == name) {
                Some((_, Fact::Entry(entry))) => si(entry),
                _ => panic!("an area and its rate"),
            };
            of("area") * of("rate")
        })
        .sum();
    near(all, laid * keep);
    match exercise.level {
        Level::First => near(all, amount(exercise)),
        Level::Second => near((all / drawn.tank.expect("a tank")).ceil(), amount(exercise)),
        Level::Third => assert!(amount(exercise) < all),
    }
}

fn a_range(exercise: &Exercise, drawn: &Range) {
    assert!(drawn.low.si > 0.0 && drawn.low.si <= drawn.high.si && drawn.high.si.is_finite());
    match (&exercise.key, drawn.asked) {
        (Key::Choice { .. }, asked) => assert_eq!(asked, None),
        (Key::Amount(key), Some(Value { si, .. })) if key.unit == "percent" => near(si, key.si),
        (Key::Amount(key), Some(Value { si, .. })) => near(1.0 / si, key.si),
        (key, asked) => panic!("{key:?} {asked:?}"),
    }
}

fn foam(exercise: &Exercise, drawn: &Foam) {
    let keys: Vec<&str> = exercise.asked.iter().map(|said| said.key.as_str()).collect();
    match drawn {
        Foam::Shaken { first, later } => {
            let height = |name: &str| told(exercise, "practice-foam-shaken", name).expect("a height");
            near(*first, height("first"));
            near(*later, height("later"));
        }
        Foam::Machine { foams, vacuum } => {
            assert!(!keys.contains(&"practice-foam-no-vacuum") || !vacuum);
            assert!(!keys.contains(&"practice-foam-vacuum") || *vacuum);
            if let Key::Choice { options, right } = &exercise.key {
                let verdict = match (foams, vacuum) {
                    (Some(true), true) => "foam-verdict-refuse",
                    (None, true) => "foam-verdict-test-first",
                    _ => "foam-verdict-fits",
                };
                assert_eq!(options[*right].key, verdict);
            }
        }
    }
}

/// Every task has one, and it is of its topic.
fn held(exercise: &Exercise) -> &'static str {
    let picture = exercise.picture.as_ref();
    match (exercise.topic, picture) {
        (Topic::Dose, Some(Picture::Fill(drawn))) => a_fill(exercise, drawn),
        (Topic::TopUp | Topic::Rescue, Some(Picture::Tanks(drawn))) => a_tank(exercise, drawn),
        (Topic::Setting, Some(Picture::Rates(drawn))) => bars(exercise, drawn),
        (Topic::Shift, Some(Picture::Strip(drawn))) => a_strip(exercise, drawn),
        (Topic::Label, Some(Picture::Range(drawn))) => a_range(exercise, drawn),
        (Topic::Foam, Some(Picture::Foam(drawn))) => foam(exercise, drawn),
        (Topic::Units, Some(Picture::Scales(drawn))) => {
            near(drawn.si, told(exercise, "practice-ask-units", "amount").expect("an amount"));
            near(drawn.si, amount(exercise));
            assert!(
                unit(drawn.from).is_some()
                    && matches!(&exercise.key, Key::Amount(key) if key.unit == drawn.to)
            );
        }
        (Topic::Mistake, Some(Picture::Ticket(drawn))) => {
            let Key::Choice { options, right } = &exercise.key else { panic!("a choice") };
            let key = options[*right].key.as_str();
            assert_eq!(drawn.lines, exercise.asked[..exercise.asked.len() - 1]);
            let line = drawn.wrong.as_ref().map(|(line, should)| (drawn.lines[*line].key.as_str(), should));
            match (key, line) {
                ("practice-ticket-nothing", None) => {}
                ("practice-made-product-first", Some((wrong, should))) => {
                    assert_eq!(wrong, "practice-ticket-product-first");
                    assert_eq!(should.key, "practice-ticket-water-first");
                }
                (_, Some((wrong, should))) => {
                    assert_eq!(
                        (wrong, should.key.as_str()),
                        ("practice-ticket-poured", "practice-ticket-poured")
                    );
                    assert_ne!(drawn.lines.last(), Some(should), "what should stand there is something else");
                }
                other => panic!("{other:?}"),
            }
        }
        (Topic::Ppe, Some(Picture::Wear(drawn))) => {
            let Key::Several { options, right } = &exercise.key else { panic!("several") };
            let keys: Vec<&str> = right.iter().map(|one| options[*one].key.as_str()).collect();
            if drawn.wear.is_empty() {
                assert_eq!(keys, ["practice-ppe-nothing"]);
            } else {
                assert_eq!(drawn.wear, keys);
            }
        }
        (Topic::Pairs, Some(Picture::Bottles(drawn))) => {
            let (options, right) = match &exercise.key {
                Key::Choice { options, right } => (options, vec![*right]),
                Key::Several { options, right } => (options, right.clone()),
                other => panic!("{other:?}"),
            };
            let of = |index: &usize| {
                options[*index].facts.iter().map(|(_, fact)| fact.clone()).collect::<Vec<_>>()
            };
            assert!(right.iter().any(|index| of(index) == drawn.names), "a pair that must not meet");
        }
        (topic, other) => panic!("{} has {other:?}", topic.code()),
    }
    exercise.topic.code()
}

#[test]
fn every_task_has_a_picture_of_its_own_numbers() {
    let mut seen: BTreeMap<&str, u32> = BTreeMap::new();
    for stock in stocks::all(12) {
        for level in Level::ALL {
            let topics = stock.offers(*level);
            let session = Session { seed: 6, topics, level: *level, count: 30, stock: stock.clone() };
            for exercise in session.exercises() {
                *seen.entry(held(&exercise)).or_default() += 1;
            }
        }
    }
    println!("{seen:?}");
    assert_eq!(seen.len(), Topic::ALL.len());
    assert!(seen.values().all(|count| *count > 20), "{seen:?}");
}
