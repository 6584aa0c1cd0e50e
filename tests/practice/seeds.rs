//! A hundred thousand seeds: every topic, every level, the demo and made-up stocks.

use super::{judged, keys, stocks};
use brimline::practice::{Draw, Key, Lack, Level, Ready, Stock, Topic, make};
use std::collections::BTreeMap;
use std::thread;

/// Seeds that are tried; each makes one exercise, where its stock is said to be enough.
const SEEDS: u32 = 104_000;
/// As many of them at least.
const LEAST: u32 = 100_000;
/// Made-up stocks beside the three of the demo.
const MADE: u32 = 60;
/// The machine that runs the tests has two cores.
const THREADS: u32 = 2;

/// How many exercises, how many roads and of how many it was found that the stock is not enough.
#[derive(Default)]
struct Count {
    made: u32,
    roads: usize,
    lacking: u32,
}

/// A stock, the same as it was read, and the topics that it offers, level by level.
type Offer = (Stock, Ready, Vec<Vec<Topic>>);

fn one(seed: u32, stocks: &[Offer], counts: &mut BTreeMap<(&'static str, &'static str), Count>) {
    // Every other seed takes the demo.
    let made = stocks.len() - 3;
    let mut rest = seed as usize;
    let mut next = |of: usize| {
        let now = rest % of;
        rest /= of;
        now
    };
    let topic = Topic::ALL[next(Topic::ALL.len())];
    let at = next(3);
    let level = Level::ALL[at];
    let (stock, ready, offers) = &stocks[if next(2) == 0 { next(3) } else { 3 + next(made) }];
    let count = counts.entry((topic.code(), level.code())).or_default();
    if !offers[at].contains(&topic) {
        count.lacking += 1;
        return;
    }
    let exercise = make(topic, level, ready, &mut Draw::new(seed)).expect("what is offered can be made");
    keys::readable(&exercise);
    keys::check(&exercise, stock);
    judged::check(&exercise);
    assert!(!exercise.steps.is_empty() || !exercise.reasons.is_empty(), "no workings: {:?}", exercise.asked);
    assert!(!exercise.asked.is_empty() && (exercise.topic, exercise.level) == (topic, level));
    if let Key::Amount(_) = exercise.key {
        count.roads += exercise.roads.len();
    }
    count.made += 1;
}

#[test]
fn every_exercise_has_one_right_answer_and_no_road_leads_to_it() {
    let offer = |stock: Stock| {
        let offers = Level::ALL.iter().map(|level| stock.offers(*level)).collect();
        (stock.clone(), Ready::of(&stock), offers)
    };
    let stocks: Vec<Offer> = stocks::all(MADE).into_iter().map(offer).collect();
    let counted = thread::scope(|scope| {
        let stocks = &stocks;
        let work = |part| {
            move || {
                let mut counts = BTreeMap::new();
                (part..SEEDS).step_by(THREADS as usize).for_each(|seed| one(seed, stocks, &mut counts));
                counts
            }
        };
        let threads: Vec<_> = (0..THREADS).map(|part| scope.spawn(work(part))).collect();
        threads.into_iter().map(|thread| thread.join().expect("no exercise is wrong")).collect::<Vec<_>>()
    });
    let mut counts: BTreeMap<_, Count> = BTreeMap::new();
    for (key, count) in counted.into_iter().flatten() {
        let sum = counts.entry(key).or_default();
        sum.made += count.made;
        sum.roads += count.roads;
        sum.lacking += count.lacking;
    }
    for ((topic, level), count) in &counts {
        let each = count.roads as f64 / f64::from(count.made.max(1));
        println!(
            "{topic:8} {level:6} {:6} made, {:5} lacking, {each:.1} roads to amounts",
            count.made, count.lacking
        );
        assert!(count.made > 1_000, "{topic} {level}: {} were made", count.made);
    }
    let (made, lacking): (u32, u32) =
        counts.values().fold((0, 0), |(made, lacking), count| (made + count.made, lacking + count.lacking));
    println!("{made} exercises of {SEEDS} seeds, {lacking} of stocks that have too little");
    assert!(made + lacking == SEEDS && made >= LEAST);
}

#[test]
fn the_demo_is_enough_for_every_topic_on_every_level() {
    let demo = &stocks::all(0)[0];
    for level in Level::ALL {
        for topic in Topic::ALL {
            assert_eq!(demo.lacks(*topic, *level), None, "{topic:?} {level:?}");
        }
    }
}

/// What a stock is said to have enough of can be made from any seed, and what not, says why.
#[test]
fn what_is_offered_can_be_made() {
    for stock in stocks::all(MADE) {
        let ready = Ready::of(&stock);
        for level in Level::ALL {
            let offered = stock.offers(*level);
            for topic in &offered {
                let made = |seed| make(*topic, *level, &ready, &mut Draw::new(seed)).is_some();
                assert!((1_000..1_004).all(made), "{} {topic:?} {level:?}", stock.name);
            }
        }
    }
}

#[test]
fn a_stock_that_is_too_little_says_what_is_missing() {
    let demo = stocks::all(0).swap_remove(0);
    let without = |change: fn(&mut Stock)| {
        let mut stock = demo.clone();
        change(&mut stock);
        stock
    };
    for (stock, topic, lack) in [
        (without(|one| one.machines.clear()), Topic::TopUp, Lack::Machine),
        (without(|one| one.products.clear()), Topic::Label, Lack::Label),
        (without(|one| one.products.retain(|one| one.id == "powder")), Topic::Dose, Lack::Liquid),
        (without(|one| one.measures.clear()), Topic::Mistake, Lack::Measure),
        (
            without(|one| one.machines.iter_mut().for_each(|one| one.settings.clear())),
            Topic::Setting,
            Lack::Settings,
        ),
        (without(|one| one.floors.clear()), Topic::Shift, Lack::Floor),
        (without(|one| one.products.clear()), Topic::Ppe, Lack::Hazards),
    ] {
        assert_eq!(stock.lacks(topic, Level::First), Some(lack), "{topic:?}");
        assert!(!stock.offers(Level::First).contains(&topic));
    }
    // A measure of five gallons measures nothing here.
    let coarse = without(|one| one.measures.iter_mut().for_each(|one| one.step.unit = "gal_us".into()));
    assert_eq!(coarse.lacks(Topic::Dose, Level::First), Some(Lack::NothingFits));
}
