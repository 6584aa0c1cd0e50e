//! How long a log of a hundred thousand fills takes.

use brimline::site::log::questions::{By, Filter, dosing, usage};
use brimline::site::log::{Amount, Fill, Log, Named, Part, Stamp, Words, current, read, verify, write};
use brimline::trade::calendar::Date;
use std::time::{Duration, Instant};

/// Fills of three carts over some years.
pub fn many(count: usize) -> Log {
    let mut random = fastrand::Rng::with_seed(11);
    let mut log = Log::default();
    for device in ["cart-1", "cart-2", "cart-3"] {
        for number in 0..count / 3 {
            let day = Date::from_days(20_000 + i64::try_from(number / 20).expect("few")).expect("a day");
            let when = format!("{day}T{:02}:30:00-05:00", number % 24);
            let pick = |random: &mut fastrand::Rng, kind: &str, of: u8| {
                let at = random.u8(..of);
                Named::new(format!("{kind}-{at}"), format!("{kind} {at}"))
            };
            let planned = 0.000_2 + random.f64() * 0.001;
            let fill = Fill {
                machine: pick(&mut random, "machine", 8),
                areas: vec![pick(&mut random, "area", 60)],
                product: pick(&mut random, "product", 6),
                floor: pick(&mut random, "floor", 9),
                standard: pick(&mut random, "standard", 9),
                version: 1,
                concentrate: Amount::new(planned, "so much"),
                water: Amount::new(0.04, "40 L"),
                level: Amount::new(0.04, "40 L"),
                measured: Amount::new(planned * (0.8 + 0.4 * random.f64()), "so much"),
                ..Fill::default()
            };
            let mut bytes = [0; 32];
            random.fill(&mut bytes);
            let words = Words::default().with(Part::Who, ["AB", "CD", "EF"][random.usize(..3)]);
            log.fill(&Stamp { device, when: &when, random: bytes }, fill, words).expect("taken");
        }
    }
    log
}

fn timed<T>(name: &str, work: impl FnOnce() -> T) -> (T, Duration) {
    let began = Instant::now();
    let made = work();
    let took = began.elapsed();
    println!("{name}: {took:?}");
    (made, took)
}

/// What a person waits for is a filter and a sum; reading the file and its hashes happens once.
#[test]
#[ignore = "takes a minute; `cargo run -- test` runs it"]
fn a_hundred_thousand_fills() {
    let (log, _) = timed("writing down 100,000 fills", || many(99_999));
    let (view, _) = timed("as they stand", || current(&log));
    let filter = Filter { product: "product-3".into(), month: "2025-06".into(), ..Filter::default() };
    let (found, narrow) = timed("a product in a month", || usage(filter.of(&view.fills), By::Machine));
    assert!(!found.is_empty());
    let (found, areas) = timed("all, by area", || usage(Filter::default().of(&view.fills), By::Area));
    assert_eq!(found.len(), 60);
    let who = Filter { who: "ab".into(), ..Filter::default() };
    let (found, doses) = timed("doses of a person", || dosing(who.of(&view.fills), 0.1));
    assert!(!found.over.is_empty());
    let (file, _) = timed("written as a file", || write(&log));
    println!("{} bytes, {} a fill", file.len(), file.len() / 99_999);
    let (opened, _) = timed("read", || read(&file).expect("it opens"));
    let (held, _) = timed("verified", || verify(&opened.records));
    assert_eq!(held, Ok(()));
    let (merged, _) = timed("merged with itself", || log.merge(&opened.log()));
    assert_eq!(merged.added, 0);
    for took in [narrow, areas, doses] {
        // Unoptimized, as tests are, and on a machine that others use; optimized it is a tenth.
        assert!(took < Duration::from_millis(100), "{took:?}");
    }
}
