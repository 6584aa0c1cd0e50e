//! Numbers as pictures: what is drawn is what was asked and answered.

use super::stocks;
use brimline::number::{self, Marks};
use brimline::practice::{Fact, Key, Level, Session, Stock, Topic};
use brimline::site::{Dispenser, Entry, Machine, Measure, Product, Site};
use brimline::units::{System, unit};

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
    let drawn = session.exercises()[0].picture().expect("a picture");
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

#[test]
fn every_dose_has_a_picture_of_its_own_numbers_and_nothing_else_has_one() {
    let mut seen = 0;
    for stock in stocks::all(12) {
        for level in Level::ALL {
            let topics = stock.offers(*level);
            let session = Session { seed: 6, topics, level: *level, count: 30, stock: stock.clone() };
            for exercise in session.exercises() {
                let Some(drawn) = exercise.picture() else {
                    assert_ne!(exercise.topic, Topic::Dose);
                    continue;
                };
                seen += 1;
                let Key::Amount(key) = &exercise.key else { panic!("a dose is an amount") };
                let tank = exercise.asked.iter().find(|said| said.key == "practice-tank").expect("a tank");
                let Some((_, Fact::Entry(entry))) = tank.facts.iter().find(|(name, _)| *name == "tank")
                else {
                    panic!("its volume")
                };
                let told = number::read(&entry.text, Marks::POINT).expect("a number");
                let told = unit(&entry.unit).expect("its unit").to_si(told);
                assert!((drawn.tank / told - 1.0).abs() < 1e-12);
                assert!((drawn.dose / key.si - 1.0).abs() < 1e-12);
                assert!((drawn.dose * (1.0 + drawn.ratio) / drawn.total - 1.0).abs() < 1e-9);
                assert!(drawn.total <= drawn.tank * (1.0 + 1e-9));
                assert!(drawn.more < drawn.ratio && drawn.ratio < drawn.less);
            }
        }
    }
    assert!(seen > 40, "{seen}");
}
